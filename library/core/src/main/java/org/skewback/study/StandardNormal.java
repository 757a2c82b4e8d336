package org.skewback.study;

import org.apache.commons.math3.special.Erf;

/** The normal distribution with mean 0 and standard deviation 1. */
@SuppressWarnings("FloatingPointLiteralPrecision") // coefficients as they were published
final class StandardNormal {

    private static final double ROOT_TWO = Math.sqrt(2);
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Half-width of the middle range of probabilities, and its square. */
    private static final double MIDDLE = 0.425;

    private static final double MIDDLE_SQUARED = 0.180625;

    private static final double[] MIDDLE_ABOVE = {
        3.3871328727963666080e0,
        1.3314166789178437745e+2,
        1.9715909503065514427e+3,
        1.3731693765509461125e+4,
        4.5921953931549871457e+4,
        6.7265770927008700853e+4,
        3.3430575583588128105e+4,
        2.5090809287301226727e+3
    };
    private static final double[] MIDDLE_BELOW = {
        1.0,
        4.2313330701600911252e+1,
        6.8718700749205790830e+2,
        5.3941960214247511077e+3,
        2.1213794301586595867e+4,
        3.9307895800092710610e+4,
        2.8729085735721942674e+4,
        5.2264952788528545610e+3
    };
    private static final double[] NEAR_ABOVE = {
        1.42343711074968357734e0,
        4.63033784615654529590e0,
        5.76949722146069140550e0,
        3.64784832476320460504e0,
        1.27045825245236838258e0,
        2.41780725177450611770e-1,
        2.27238449892691845833e-2,
        7.74545014278341407640e-4
    };
    private static final double[] NEAR_BELOW = {
        1.0,
        2.05319162663775882187e0,
        1.67638483018380384940e0,
        6.89767334985100004550e-1,
        1.48103976427480074590e-1,
        1.51986665636164571966e-2,
        5.47593808499534494600e-4,
        1.05075007164441684324e-9
    };
    private static final double[] FAR_ABOVE = {
        6.65790464350110377720e0,
        5.46378491116411436990e0,
        1.78482653991729133580e0,
        2.96560571828504891230e-1,
        2.65321895265761230930e-2,
        1.24266094738807843860e-3,
        2.71155556874348757815e-5,
        2.01033439929228813265e-7
    };
    private static final double[] FAR_BELOW = {
        1.0,
        5.99832206555887937690e-1,
        1.36929880922735805310e-1,
        1.48753612908506148525e-2,
        7.86869131145613259100e-4,
        1.84631831751005468180e-5,
        1.42151175831644588870e-7,
        2.04426310338993978564e-15
    };

    private StandardNormal() {}

    /** φ(z) = e^(−z²/2)/√(2π). */
    static double density(double z) {
        return StrictMath.exp(-0.5 * z * z) / ROOT_TWO_PI;
    }

    /** Φ(z) = ½ erfc(−z/√2), to full relative precision in the lower tail. */
    static double below(double z) {
        return 0.5 * Erf.erfc(-z / ROOT_TWO);
    }

    /**
     * Φ⁻¹(p) for 0 ≤ p ≤ 1, to about 16 digits: M. J. Wichura, Algorithm AS 241: The percentage
     * points of the normal distribution, Applied Statistics 37 (1988), 477–484, routine PPND16. The
     * inverse of the error function in Commons Math starts from 1 − 2p, where the tails are lost.
     */
    static double inverse(double p) {
        return inverse(p, 1 - p);
    }

    /** Φ⁻¹ from both tails p and q = 1 − p, of which the lesser counts. */
    static double inverse(double p, double q) {
        double fromMiddle = p <= q ? p - 0.5 : 0.5 - q;
        if (Math.abs(fromMiddle) <= MIDDLE) {
            double r = MIDDLE_SQUARED - fromMiddle * fromMiddle;
            return fromMiddle * polynomial(MIDDLE_ABOVE, r) / polynomial(MIDDLE_BELOW, r);
        }
        double tail = Math.min(p, q);
        double size;
        if (tail > 0) {
            double r = Math.sqrt(-StrictMath.log(tail));
            size =
                    r <= 5
                            ? polynomial(NEAR_ABOVE, r - 1.6) / polynomial(NEAR_BELOW, r - 1.6)
                            : polynomial(FAR_ABOVE, r - 5) / polynomial(FAR_BELOW, r - 5);
        } else {
            size = Double.POSITIVE_INFINITY;
        }
        return p <= q ? -size : size;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
