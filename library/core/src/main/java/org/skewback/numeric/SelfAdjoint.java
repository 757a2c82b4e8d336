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
}
