package org.skewback.quantity;

/** Powers by repeated multiplication: exact where the product is, and the same on every machine. */
final class Powers {

    private static final int LONGEST_PRODUCT = 64;

    private Powers() {}

    static double whole(double base, int exponent) {
        int count = Math.abs(exponent);
        if (count > LONGEST_PRODUCT) {
            return StrictMath.pow(base, exponent);
        }
        double power = 1;
        for (int i = 0; i < count; i++) {
            power *= base;
        }
        return exponent < 0 ? 1 / power : power;
    }

    static double of(double base, Rational exponent) {
        if (exponent.isWhole()) {
            return whole(base, exponent.numerator());
        }
        if (exponent.equals(Rational.HALF)) {
            return Math.sqrt(base);
        }
        if (exponent.denominator() == 3 && exponent.numerator() == 1) {
            return StrictMath.cbrt(base);
        }
        return StrictMath.pow(base, (double) exponent.numerator() / exponent.denominator());
    }
}
