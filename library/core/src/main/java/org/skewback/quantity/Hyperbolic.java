package org.skewback.quantity;

/**
 * Inverse hyperbolic functions, which {@link StrictMath} lacks.
 *
 * <p>Through {@code log1p}, which loses no digits near zero (W. Kahan, "Branch cuts for complex
 * elementary functions", in: The State of the Art in Numerical Analysis, 1987, from memory).
 */
final class Hyperbolic {

    private Hyperbolic() {}

    /** arsinh x = sign(x) · ln(|x| + √(x²+1)). */
    static double arsinh(double x) {
        double a = Math.abs(x);
        double value =
                a > 1e8
                        ? StrictMath.log(a) + StrictMath.log(2)
                        : StrictMath.log1p(a + a * a / (1 + Math.sqrt(a * a + 1)));
        return Math.copySign(value, x);
    }

    /** arcosh x = ln(x + √(x²−1)) for x from 1. */
    static double arcosh(double x) {
        double t = x - 1;
        return x > 1e8
                ? StrictMath.log(x) + StrictMath.log(2)
                : StrictMath.log1p(t + Math.sqrt(2 * t + t * t));
    }
}
