package org.skewback.numeric;

/** An operator A⁻¹B of symmetric matrices, self-adjoint in the inner product of A or of B. */
record SelfAdjoint(Factorization inverse, SymmetricMatrix right) {

    double[] apply(double[] x) {
        return inverse.solve(right.times(x));
    }

    double[][] apply(double[][] vectors) {
        double[][] products = new double[vectors.length][];
        for (int k = 0; k < vectors.length; k++) {
            products[k] = right.times(vectors[k]);
        }
        return inverse.solve(products);
    }

    /** √|aᵢᵢ|, which brings displacements and turns, forces and moments to one measure. */
    double[] scales() {
        double[] scales = inverse.matrix().diagonal();
        for (int i = 0; i < scales.length; i++) {
            scales[i] = Math.sqrt(Math.abs(scales[i]));
        }
        return scales;
    }

    /**
     * How far y is from A y = B x, measured by multiplication: the largest |A y − B x|ᵢ/√aᵢᵢ over the
     * largest √aᵢᵢ|yᵢ|. Not a number counts as infinite.
     */
    double backwardError(double[] x, double[] y, double[] scales) {
        double[] left = inverse.matrix().times(y);
        double[] given = right.times(x);
        double error = 0;
        double size = 0;
        for (int i = 0; i < y.length; i++) {
            error = Math.max(error, Math.abs(left[i] - given[i]) / scales[i]);
            size = Math.max(size, scales[i] * Math.abs(y[i]));
        }
        return error <= Double.MAX_VALUE && size > 0 ? error / size : Double.POSITIVE_INFINITY;
    }
}
