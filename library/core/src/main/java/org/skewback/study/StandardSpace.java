package org.skewback.study;

import java.util.List;

/**
 * The way between independent standard normal numbers u and the values x of uncertain givens: z = L
 * u with L Lᵀ the correlation of the normal numbers, then x = F⁻¹(Φ(z)) each.
 */
final class StandardSpace {

    /** Least square of a pivot, that is, share of a given's spread that those before leave free. */
    private static final double LEAST_FREE = 1e-12;

    private final Shape[] shapes;
    private final double[][] factor;
    private final boolean[] bound;

    /**
     * Sets it up.
     *
     * @throws IllegalArgumentException when the correlations cannot be had together
     */
    StandardSpace(Uncertainty uncertainty) {
        List<Distribution> distributions = uncertainty.distributions();
        shapes = distributions.stream().map(Distribution::shape).toArray(Shape[]::new);
        double[][] wanted = uncertainty.correlations();
        requirePositive(wanted, uncertainty, "");
        bound = new boolean[shapes.length];
        double[][] normal = new double[shapes.length][shapes.length];
        for (int i = 0; i < shapes.length; i++) {
            normal[i][i] = 1;
            for (int j = 0; j < i; j++) {
                if (wanted[i][j] != 0) {
                    bound[i] = true;
                    bound[j] = true;
                    normal[i][j] =
                            Nataf.ofNormals(
                                    shapes[j],
                                    shapes[i],
                                    wanted[i][j],
                                    uncertainty.correlationOf(j, i));
                    normal[j][i] = normal[i][j];
                }
            }
        }
        factor =
                requirePositive(
                        normal,
                        uncertainty,
                        ", carried over to normal numbers as these distributions want,");
    }

    private static double[][] requirePositive(
            double[][] matrix, Uncertainty uncertainty, String how) {
        int n = matrix.length;
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            double free = matrix[i][i];
            for (int j = 0; j < i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = sum / lower[j][j];
                free -= lower[i][j] * lower[i][j];
                if (!(free > LEAST_FREE)) {
                    throw new IllegalArgumentException(
                            uncertainty.correlationOf(j, i)
                                    + " is "
                                    + matrix[i][j]
                                    + how
                                    + " which cannot be together with the other correlations:"
                                    + " the matrix is not positive definite; allowed is one nearer"
                                    + " to 0, or others that agree with it");
                }
            }
            lower[i][i] = Math.sqrt(free);
        }
        return lower;
    }

    int size() {
        return shapes.length;
    }

    double[] means() {
        double[] means = new double[shapes.length];
        for (int i = 0; i < means.length; i++) {
            means[i] = shapes[i].mean();
        }
        return means;
    }

    double[] deviations() {
        double[] deviations = new double[shapes.length];
        for (int i = 0; i < deviations.length; i++) {
            deviations[i] = shapes[i].deviation();
        }
        return deviations;
    }

    /** Correlated normal numbers z from independent ones. */
    double[] correlated(double[] u) {
        double[] z = new double[u.length];
        for (int i = 0; i < z.length; i++) {
            for (int j = 0; j <= i; j++) {
                z[i] += factor[i][j] * u[j];
            }
        }
        return z;
    }

    double[] values(double[] z) {
        double[] x = new double[z.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = shapes[i].ofNormal(z[i]);
        }
        return x;
    }

    /** From derivatives by x to derivatives by z. */
    double[] slopesByNormal(double[] byValue, double[] z, double[] x) {
        double[] byNormal = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            byNormal[i] =
                    shapes[i] instanceof Shape.Fixed
                            ? 0
                            : byValue[i] * shapes[i].slopeOfNormal(z[i], x[i]);
        }
        return byNormal;
    }

    /** From derivatives by z to derivatives by u: Lᵀ times. */
    double[] slopesByStandard(double[] byNormal) {
        double[] byStandard = new double[byNormal.length];
        for (int i = 0; i < byNormal.length; i++) {
            for (int j = 0; j <= i; j++) {
                byStandard[j] += factor[i][j] * byNormal[i];
            }
        }
        return byStandard;
    }

    /**
     * Draws values.
     *
     * @param values where they go, [given][sample]
     * @param room memory of the same shape
     */
    void draw(Draws draws, double[][] values, double[][] room, int count) {
        for (int i = 0; i < shapes.length; i++) {
            if (bound[i]) {
                for (int s = 0; s < count; s++) {
                    room[i][s] = draws.normal();
                }
            } else {
                shapes[i].fill(draws, values[i], count);
            }
        }
        for (int i = 0; i < shapes.length; i++) {
            if (bound[i]) {
                drawBound(i, values[i], room, count);
            }
        }
    }

    private void drawBound(int i, double[] values, double[][] room, int count) {
        for (int s = 0; s < count; s++) {
            values[s] = factor[i][i] * room[i][s];
        }
        for (int j = 0; j < i; j++) {
            double share = factor[i][j];
            if (share != 0) {
                for (int s = 0; s < count; s++) {
                    values[s] += share * room[j][s];
                }
            }
        }
        for (int s = 0; s < count; s++) {
            values[s] = shapes[i].ofNormal(values[s]);
        }
    }
}
