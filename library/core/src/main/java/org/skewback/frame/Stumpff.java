package org.skewback.frame;

/**
 * The functions c_n(z) = 1/n! + z/(n+2)! + z²/(n+4)! + … of K. Stumpff (Himmelsmechanik, volume 1, 1959,
 * section 41): cos, cosh and their repeated integrals in one, without a seam where z changes its sign. A
 * solution of y″ = k² y + x^j/j! that starts from rest is x^{j+2} c_{j+2}(k² x²).
 */
final class Stumpff {

    private static final int MOST_TERMS = 60;
    private static final int MOST_HIGHEST = 12;

    /** 1/n!. */
    private static final double[] INVERSE = inverseFactorials();

    private Stumpff() {}

    private static double[] inverseFactorials() {
        double[] inverse = new double[MOST_HIGHEST + 1];
        inverse[0] = 1;
        for (int n = 1; n <= MOST_HIGHEST; n++) {
            inverse[n] = inverse[n - 1] / n;
        }
        return inverse;
    }

    /**
     * Gives c₀ … c_n.
     *
     * @param highest n, from 1 to 12
     * @param z argument; large ones lose digits: between −40 and 20 some 15 are right
     */
    static double[] upTo(int highest, double z) {
        double[] c = new double[highest + 1];
        for (int n = highest; n > highest - 2; n--) {
            double term = INVERSE[n];
            double sum = term;
            for (int k = 1; k < MOST_TERMS && Math.abs(term) > 1e-19 * Math.abs(sum); k++) {
                term *= z / ((n + 2.0 * k - 1) * (n + 2.0 * k));
                sum += term;
            }
            c[n] = sum;
        }
        for (int n = highest - 2; n >= 0; n--) {
            c[n] = INVERSE[n] + z * c[n + 2];
        }
        return c;
    }
}
