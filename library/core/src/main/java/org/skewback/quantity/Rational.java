package org.skewback.quantity;

/**
 * An exponent: a fraction in lowest terms with a positive denominator.
 *
 * @param numerator numerator, any sign
 * @param denominator denominator, from 1 to 60
 */
public record Rational(int numerator, int denominator) {

    /** The exponent one half, that of a square root. */
    public static final Rational HALF = new Rational(1, 2);

    /**
     * Reduces to lowest terms.
     *
     * @param numerator numerator, any sign
     * @param denominator denominator, from 1 to 60
     * @throws IllegalArgumentException when the denominator is not from 1 to 60, or the numerator
     *     is beyond ±10 000
     */
    public Rational {
        if (denominator < 1 || denominator > 60 || Math.abs((long) numerator) > 10_000) {
            throw new IllegalArgumentException(
                    "exponent "
                            + numerator
                            + "/"
                            + denominator
                            + " is outside the allowed range: numerator within ±10 000,"
                            + " denominator from 1 to 60");
        }
        int divisor = Math.max(1, divisor(Math.abs(numerator), denominator));
        numerator /= divisor;
        denominator /= divisor;
    }

    /**
     * Gives a whole number as an exponent.
     *
     * @param value the number
     * @return value over 1
     */
    public static Rational of(int value) {
        return new Rational(value, 1);
    }

    /**
     * Reads what {@link #toString()} writes.
     *
     * @param text such as {@code 3} or {@code -1/2}
     * @return the exponent
     * @throws IllegalArgumentException when the text is no such fraction
     */
    public static Rational parse(String text) {
        int slash = text.indexOf('/');
        try {
            return slash < 0
                    ? of(Integer.parseInt(text))
                    : new Rational(
                            Integer.parseInt(text.substring(0, slash)),
                            Integer.parseInt(text.substring(slash + 1)));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("\"" + text + "\" is no exponent", e);
        }
    }

    /**
     * Tells whether this is a whole number.
     *
     * @return whether the denominator is 1
     */
    public boolean isWhole() {
        return denominator == 1;
    }

    private static int divisor(int a, int b) {
        return b == 0 ? a : divisor(b, a % b);
    }

    @Override
    public String toString() {
        return isWhole() ? Integer.toString(numerator) : numerator + "/" + denominator;
    }
}
