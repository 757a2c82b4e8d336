package org.skewback.form;

/** Hyperbolic functions in forms that keep their digits near zero, on {@link StrictMath}. */
final class Hyperbolic {

    /** Below this argument the power series here are exact to double precision. */
    private static final double SERIES = 0.3;

    private Hyperbolic() {}

    /** Inverse hyperbolic sine. */
    static double asinh(double x) {
        double a = Math.abs(x);
        if (a > 1e150) {
            return Math.copySign(StrictMath.log(a) + StrictMath.log(2), x);
        }
        return Math.copySign(StrictMath.log1p(a + a * a / (1 + Math.sqrt(1 + a * a))), x);
    }

    /** Inverse hyperbolic cosine of {@code 1 + excess}. */
    static double acoshOnePlus(double excess) {
        return StrictMath.log1p(excess + Math.sqrt(excess * (excess + 2)));
    }

    /** {@code ln(sinh(x)/x)} for {@code x ≥ 0}, without overflow. */
    static double logSinhc(double x) {
        if (x < SERIES) {
            // sinh(x)/x − 1 = Σ x^(2k) / (2k+1)!
            double term = 1;
            double sum = 0;
            for (int k = 1; k <= 8; k++) {
                term *= x * x / ((2 * k) * (2 * k + 1));
                sum += term;
            }
            return StrictMath.log1p(sum);
        }
        return x + StrictMath.log1p(-StrictMath.exp(-2 * x)) - StrictMath.log(2 * x);
    }

    /** {@code x cosh x − sinh x}. */
    static double xCoshMinusSinh(double x) {
        if (Math.abs(x) < SERIES) {
            // Σ 2k x^(2k+1) / (2k+1)!
            double q = x * x;
            double term = x;
            double sum = 0;
            for (int k = 1; k <= 8; k++) {
                term *= q / ((2 * k) * (2 * k + 1));
                sum += 2 * k * term;
            }
            return sum;
        }
        return x * StrictMath.cosh(x) - StrictMath.sinh(x);
    }
}
