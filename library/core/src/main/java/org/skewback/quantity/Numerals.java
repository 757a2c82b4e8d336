package org.skewback.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes numbers as an engineer reads them, whatever the locale.
 *
 * <p>The decimal sign is a point, thousands are set apart by a narrow no-break space (ISO 80000-1,
 * 7.3), and no more digits are shown than mean something.
 */
public final class Numerals {

    /** Narrow no-break space between groups of three digits. */
    public static final char GROUP = '\u202F';

    /** No-break space between a number and its unit. */
    public static final char BEFORE_UNIT = '\u00A0';

    private static final int RESULT_DIGITS = 4;
    private static final int DOUBLE_DIGITS = 17;

    /** No source gives a number with more significant digits. */
    private static final int MOST_GIVEN = 12;

    /** What is left of a number of so few digits beyond the twelfth is the noise of arithmetic. */
    private static final int MOST_BESIDE_NOISE = 9;

    private static final double SMALLEST_PLAIN = 1e-4;
    private static final double LARGEST_PLAIN = 1e9;

    private Numerals() {}

    /**
     * Writes the shortest decimal that reads back as the same double.
     *
     * @param value finite number
     * @return such as {@code 2e23}: no group signs, {@code e} for powers of ten
     */
    public static String exact(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal decimal = shortest(value);
        int magnitude = decimal.precision() - decimal.scale() - 1;
        if (magnitude >= -5 && magnitude < 17) {
            return decimal.setScale(Math.max(0, decimal.scale()), RoundingMode.UNNECESSARY)
                    .toPlainString();
        }
        return decimal.movePointLeft(magnitude).stripTrailingZeros().toPlainString()
                + "e"
                + magnitude;
    }

    /**
     * Writes a calculated value: four significant digits, and never less than the whole number.
     *
     * @param value finite number
     * @return such as {@code 29 008}, {@code 41.14}, {@code 0.003231} or {@code 1.2 × 10⁻⁵}
     */
    public static String result(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = shortest(value);
        BigDecimal rounded = exact.round(new MathContext(RESULT_DIGITS, RoundingMode.HALF_EVEN));
        if (rounded.scale() < 0 || Math.abs(value) >= 1000) {
            rounded = exact.setScale(0, RoundingMode.HALF_EVEN);
        }
        // Trailing zeros would claim digits that 0.5 kN never had, so a round result prints short.
        return readable(exact.compareTo(rounded) == 0 ? rounded.stripTrailingZeros() : rounded);
    }

    /**
     * Writes a number as its author wrote it: all its digits, grouped.
     *
     * @param value finite number
     * @return such as {@code 0.65} or {@code 1 860}
     */
    public static String written(double value) {
        return value == 0 ? "0" : readable(shortest(value));
    }

    /**
     * Writes a number with a stated count of significant digits, trailing zeros included.
     *
     * <p>Where a number has more places before the point than digits are stated, zeros fill them:
     * 29 008 with three digits is 29 000.
     *
     * @param value finite number
     * @param digits significant digits, from 1 to 17
     * @return such as {@code 29.01} or {@code 0.500}
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public static String significant(double value, int digits) {
        if (digits < 1 || digits > DOUBLE_DIGITS) {
            throw new IllegalArgumentException(
                    "significant digits are " + digits + "; allowed are 1 to " + DOUBLE_DIGITS);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = shortest(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int magnitude = rounded.precision() - rounded.scale() - 1;
        return readable(rounded.setScale(digits - 1 - magnitude, RoundingMode.UNNECESSARY));
    }

    /**
     * Reads a number as {@link #exact}, {@link #result}, {@link #written}, {@link #fixed} and {@link
     * #significant} write it, whatever the locale.
     *
     * <p>The decimal sign is a point. Groups of three digits may be set apart by a narrow no-break
     * space, a no-break space or an ordinary one, the same throughout. A power of ten is {@code
     * e-5}, {@code × 10⁻⁵} or {@code × 10^-5}; the minus is {@code −} or a hyphen.
     *
     * @param text such as {@code 29 008} or {@code 1.2 × 10⁻⁵}
     * @return the nearest double
     * @throws IllegalArgumentException when the text is no such number, or not finite as a double
     */
    public static double parse(String text) {
        return QuantityParser.number(text);
    }

    /**
     * Writes a number with a fixed count of decimals, for the columns of a table.
     *
     * @param value finite number
     * @param decimals digits after the point, from 0
     * @return such as {@code 7.846}
     */
    public static String fixed(double value, int decimals) {
        return plain(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /**
     * Writes the value of a quantity in the unit it shows, without the unit.
     *
     * @param quantity any quantity
     * @return {@link #written} for a leaf in whatever unit, {@link #result} for anything calculated;
     *     a leaf of more than 12 digits was neither read from a source nor typed but calculated, on
     *     another sheet, by fitting data or in the code, and has the digits of a result too
     */
    public static String of(Quantity quantity) {
        double value = quantity.in(quantity.unit());
        return quantity.isAuthors() ? given(value) : result(value);
    }

    /** Writes all digits of a number that an author wrote without a source, so that it reads back. */
    static String inFull(Quantity quantity) {
        boolean bare = quantity.isAuthors() && quantity.shownAgain().source() == null;
        return bare ? written(clean(quantity.in(quantity.unit()))) : of(quantity);
    }

    private static String given(double value) {
        double cleaned = clean(value);
        if (cleaned == 0 || shortest(cleaned).precision() <= MOST_GIVEN) {
            return written(cleaned);
        }
        BigDecimal rounded = shortest(value).round(new MathContext(MOST_GIVEN));
        // 21.738000000000056 is the difference of two levels read to the millimetre.
        boolean noise = rounded.stripTrailingZeros().precision() <= MOST_BESIDE_NOISE;
        return noise ? written(rounded.doubleValue()) : result(value);
    }

    /**
     * Writes the value of a quantity and its unit.
     *
     * @param quantity any quantity
     * @return such as {@code 29 008 kN}, {@code 38.66°} or {@code 12.5 %}
     */
    public static String withUnit(Quantity quantity) {
        return withUnit(of(quantity), quantity.unit().symbol());
    }

    /**
     * Writes the value of a quantity with a stated count of significant digits, and its unit.
     *
     * @param quantity any quantity
     * @param digits significant digits, from 1 to 17
     * @return such as {@code 29.008 MN} for five
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public static String withUnit(Quantity quantity, int digits) {
        double value = quantity.in(quantity.unit());
        return withUnit(significant(value, digits), quantity.unit().symbol());
    }

    static String withUnit(String number, String unit) {
        if (unit.isEmpty()) {
            return number;
        }
        return standsClose(unit) ? number + unit : number + BEFORE_UNIT + unit;
    }

    /** Tells whether a sign stands close to its number: °, ′, ″ (SI Brochure, 9th ed., §5.4.3). */
    static boolean standsClose(String unit) {
        return "°′″".contains(unit);
    }

    /** Takes out the last-digit noise that converting to SI units and back leaves in a given. */
    private static double clean(double value) {
        double rounded = new BigDecimal(value).round(new MathContext(14)).doubleValue();
        return Math.abs(rounded - value) <= 4 * Math.ulp(value) ? rounded : value;
    }

    private static String readable(BigDecimal number) {
        double size = number.abs().doubleValue();
        if (size >= SMALLEST_PLAIN && size < LARGEST_PLAIN) {
            return plain(number.scale() < 0 ? number.setScale(0) : number);
        }
        int magnitude = number.precision() - number.scale() - 1;
        BigDecimal mantissa = number.movePointLeft(magnitude);
        return plain(mantissa) + BEFORE_UNIT + "×" + BEFORE_UNIT + "10" + Superscript.of(magnitude);
    }

    private static String plain(BigDecimal number) {
        String text = number.abs().toPlainString();
        int point = text.indexOf('.');
        String whole = point < 0 ? text : text.substring(0, point);
        String fraction = point < 0 ? "" : text.substring(point + 1);
        StringBuilder grouped = new StringBuilder();
        if (number.signum() < 0) {
            grouped.append('−');
        }
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0) {
                grouped.append(GROUP);
            }
            grouped.append(whole.charAt(i));
        }
        return fraction.isEmpty() ? grouped.toString() : grouped + "." + fraction;
    }

    private static BigDecimal shortest(double value) {
        BigDecimal all = new BigDecimal(value);
        for (int digits = 1; digits < DOUBLE_DIGITS; digits++) {
            BigDecimal tried = all.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (tried.doubleValue() == value) {
                return tried.stripTrailingZeros();
            }
        }
        return all.round(new MathContext(DOUBLE_DIGITS, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
    }
}
