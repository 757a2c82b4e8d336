package org.skewback.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text, the same in every locale: '.' before decimals, thin spaces between thousands. */
final class Numbers {

    /** Figure space rules of ISO 80000-1, 7.3: groups of three are parted by a small space. */
    private static final char THIN_SPACE = '\u2009';

    private static final char MINUS = '\u2212';

    private Numbers() {}

    /** A value with this many decimals. */
    static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.');
        int whole = point < 0 ? digits.length() : point;
        StringBuilder text = new StringBuilder();
        if (rounded.signum() < 0) {
            text.append(MINUS);
        }
        for (int i = 0; i < whole; i++) {
            if (i > 0 && (whole - i) % 3 == 0 && whole > 4) {
                text.append(THIN_SPACE);
            }
            text.append(digits.charAt(i));
        }
        return text.append(digits.substring(whole)).toString();
    }

    /** A value with no more decimals than it needs, up to a limit. */
    static String shortest(double value, int mostDecimals) {
        int decimals =
                BigDecimal.valueOf(value)
                        .setScale(mostDecimals, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .scale();
        return fixed(value, Math.max(0, decimals));
    }

    /** A value with this many significant digits at most, and never less than the whole number. */
    static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        int decimals = digits - (exact.precision() - exact.scale());
        return shortest(value, Math.max(0, decimals));
    }

    /** A level: sign always, two decimals. */
    static String level(double value) {
        String text = fixed(value, 2);
        if (text.charAt(0) == MINUS) {
            return text;
        }
        return (text.equals("0.00") ? "\u00b1" : "+") + text;
    }

    /** The largest of 1, 2, 5 times a power of ten that is no greater than a value. */
    static double niceBelow(double value) {
        double power = Double.parseDouble("1e" + (int) Math.floor(StrictMath.log10(value)));
        double share = value / power;
        return (share >= 5 ? 5 : share >= 2 ? 2 : 1) * power;
    }

    /** The least of 1, 2 and 5 times a power of ten that is not below a positive value. */
    static double niceAbove(double value) {
        double below = niceBelow(value);
        if (below >= value) {
            return below;
        }
        double next = niceBelow(2 * below);
        return next > below && next >= value ? next : niceBelow(2.5 * below);
    }
}
