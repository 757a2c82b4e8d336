package org.skewback.numeric;

import java.util.Arrays;

/** Vectors kept orthonormal in an inner product xᵀB y, column by column in one array. */
final class Basis {

    final int order;
    final double[] columns;
    int size;
    private final SymmetricMatrix inner;
    private final double[] product;

    Basis(SymmetricMatrix inner, int most) {
        this.inner = inner;
        order = inner.order();
        columns = new double[Math.multiplyExact(order, most)];
        product = new double[order];
    }

    double[] column(int j) {
        return Arrays.copyOfRange(columns, j * order, (j + 1) * order);
    }

    void append(double[] x, double norm) {
        int to = size++ * order;
        for (int i = 0; i < order; i++) {
            columns[to + i] = x[i] / norm;
        }
    }

    /** Norm of x in the inner product. */
    double norm(double[] x) {
        inner.times(x, product);
        return Math.sqrt(Math.max(0, Vectors.dot(x, product)));
    }

    /**
     * Takes from w its part in the span, again where that was most of it (the "twice is enough" of W.
     * Kahan and B. N. Parlett: B. N. Parlett, The symmetric eigenvalue problem, 1980, section 6-9),
     * and adds the coefficients.
     *
     * @return the norm left
     */
    double orthogonalize(double[] w, double[] coefficients) {
        double norm = norm(w);
        for (int pass = 0; pass < 4; pass++) {
            double before = norm;
            double[] h = times(product);
            subtract(w, h);
            for (int j = 0; j < size; j++) {
                coefficients[j] += h[j];
            }
            norm = norm(w);
            if (norm > 0.7 * before) {
                return norm;
            }
        }
        // Four times nearly all of it: what is left is rounding.
        return 0;
    }

    /** Coefficients qⱼᵀz. */
    private double[] times(double[] z) {
        double[] h = new double[size];
        int j = 0;
        for (; j + 4 <= size; j += 4) {
            int q0 = j * order;
            int q1 = q0 + order;
            int q2 = q1 + order;
            int q3 = q2 + order;
            double s0 = 0;
            double s1 = 0;
            double s2 = 0;
            double s3 = 0;
            for (int i = 0; i < order; i++) {
                double value = z[i];
                s0 += columns[q0 + i] * value;
                s1 += columns[q1 + i] * value;
                s2 += columns[q2 + i] * value;
                s3 += columns[q3 + i] * value;
            }
            h[j] = s0;
            h[j + 1] = s1;
            h[j + 2] = s2;
            h[j + 3] = s3;
        }
        for (; j < size; j++) {
            double sum = 0;
            for (int i = 0; i < order; i++) {
                sum += columns[j * order + i] * z[i];
            }
            h[j] = sum;
        }
        return h;
    }

    /** Takes from w its part along column j, where the product is that of w; gives the coefficient. */
    double subtractLast(double[] w, int j) {
        double sum = 0;
        for (int i = 0; i < order; i++) {
            sum += columns[j * order + i] * product[i];
        }
        subtract(w, j, sum);
        return sum;
    }

    /** w −= h qⱼ. */
    void subtract(double[] w, int j, double h) {
        Panels.subtract1(w, 0, columns, j * order, order, h);
    }

    /** w −= Q h. */
    void subtract(double[] w, double[] h) {
        for (int j = 0; j < size; j += Panels.BLOCK) {
            int count = Math.min(Panels.BLOCK, size - j);
            Panels.subtract(w, 0, columns, j * order, order, order, h, j, count);
        }
    }

    /** Replaces the vectors by combinations of them: column i of the coefficients gives vector i. */
    void combine(double[][] coefficients) {
        int kept = coefficients.length;
        int rows = 512;
        double[] strip = new double[rows * kept];
        double[] old = new double[rows * size];
        double[] factors = new double[size];
        for (int top = 0; top < order; top += rows) {
            int count = Math.min(rows, order - top);
            for (int j = 0; j < size; j++) {
                System.arraycopy(columns, j * order + top, old, j * rows, count);
            }
            Arrays.fill(strip, 0);
            for (int k = 0; k < kept; k++) {
                for (int j = 0; j < size; j++) {
                    factors[j] = -coefficients[k][j];
                }
                for (int j = 0; j < size; j += Panels.BLOCK) {
                    int block = Math.min(Panels.BLOCK, size - j);
                    Panels.subtract(strip, k * rows, old, j * rows, rows, count, factors, j, block);
                }
                System.arraycopy(strip, k * rows, columns, k * order + top, count);
            }
        }
        size = kept;
    }
}
