package org.skewback.sheet;

import org.skewback.quantity.Numerals;

/**
 * How many digits the numbers of a column have.
 *
 * @param kind what the digits are counted from
 * @param digits from 0 to 15 decimals, or from 1 to 15 significant digits
 */
public record Precision(Kind kind, int digits) {

    private static final int MOST = 15;

    /** What digits are counted from. */
    public enum Kind {
        /** From the point: 7.850 and 0.012 have three. */
        DECIMALS("decimals"),
        /** From the first that is not zero: 7.85 and 0.0123 have three. */
        SIGNIFICANT("significant");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** Gives the name of the digits in a record. */
        String word() {
            return word;
        }
    }

    /**
     * Checks the count.
     *
     * @param kind what the digits are counted from
     * @param digits from 0 to 15 decimals, or from 1 to 15 significant digits
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public Precision {
        int least = kind == Kind.DECIMALS ? 0 : 1;
        if (digits < least || digits > MOST) {
            throw new IllegalArgumentException(
                    (kind == Kind.DECIMALS ? "decimals" : "significant digits")
                            + " of a column are "
                            + digits
                            + "; allowed: "
                            + least
                            + " to "
                            + MOST);
        }
    }

    /**
     * Counts digits after the point.
     *
     * @param digits from 0 to 15
     * @return the precision
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public static Precision decimals(int digits) {
        return new Precision(Kind.DECIMALS, digits);
    }

    /**
     * Counts significant digits, trailing zeros included.
     *
     * @param digits from 1 to 15; a number with more places before the point is filled with zeros
     * @return the precision
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public static Precision significant(int digits) {
        return new Precision(Kind.SIGNIFICANT, digits);
    }

    /** Writes a number. */
    String write(double value) {
        return kind == Kind.DECIMALS
                ? Numerals.fixed(value, digits)
                : Numerals.significant(value, digits);
    }
}
