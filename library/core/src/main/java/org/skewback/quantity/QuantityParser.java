package org.skewback.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers and quantities as they are printed, strictly and whatever the locale. */
final class QuantityParser {

    private static final int LONGEST = 300;

    private static final String SPACE = "[\\u202F\\u00A0 ]";
    private static final String RAISED = "[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,4}";

    private static final String NUMBER =
            "(?<minus>[-−]?)"
                    + "(?<whole>\\d{1,3}(?<gap>"
                    + SPACE
                    + ")\\d{3}(?:\\k<gap>\\d{3})*|\\d+)"
                    + "(?<fraction>(?:\\.\\d+)?)"
                    + "(?:[eE](?<exponent>[-−]?\\d{1,4})"
                    + "|"
                    + SPACE
                    + "?×"
                    + SPACE
                    + "?10(?:(?<raised>⁻?"
                    + RAISED
                    + ")|\\^(?<caret>[-−]?\\d{1,4})))?";

    /** A unit of digits alone would make 5 1 a five; only 1/m and its like begin with one. */
    private static final String UNIT =
            "(?:(?<close>[°′″%‰])|"
                    + SPACE
                    + "(?<unit>(?!"
                    + SPACE
                    + ")(?:\\D|1/).*(?<!"
                    + SPACE
                    + ")))?";

    private static final Pattern PLAIN = Pattern.compile(NUMBER);
    private static final Pattern WHOLE = Pattern.compile(NUMBER + UNIT);

    private QuantityParser() {}

    static double number(String text) {
        return value(matched(PLAIN, text, "number"), text);
    }

    static Quantity quantity(String text) {
        Matcher matcher = matched(WHOLE, text, "quantity");
        String close = matcher.group("close");
        String unit = close != null ? close : matcher.group("unit");
        return Quantity.of(value(matcher, text), unit == null ? "" : unit);
    }

    private static Matcher matched(Pattern pattern, String text, String what) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "a " + what + " of " + text.length() + " characters; at most " + LONGEST);
        }
        Matcher matcher = pattern.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "\""
                            + text
                            + "\" is no "
                            + what
                            + " as printed here: "
                            + (text.indexOf(',') >= 0
                                    ? "write a point before decimals and a space between thousands"
                                    : "allowed are such as 29 008 kN, 0.65, 1.2 × 10⁻⁵ or 38.66°"));
        }
        return matcher;
    }

    private static double value(Matcher matcher, String text) {
        String minus = group(matcher, "minus").isEmpty() ? "" : "-";
        String digits = group(matcher, "whole").replaceAll(SPACE, "") + group(matcher, "fraction");
        String power = group(matcher, "exponent") + group(matcher, "caret");
        StringBuilder exponent = new StringBuilder(power.replace('−', '-'));
        group(matcher, "raised")
                .chars()
                .forEach(c -> exponent.append(Superscript.lowered((char) c)));
        double value =
                Double.parseDouble(minus + digits + (exponent.length() == 0 ? "" : "e" + exponent));
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is beyond the largest number that can be kept");
        }
        return value;
    }

    private static String group(Matcher matcher, String name) {
        String group = matcher.group(name);
        return group == null ? "" : group;
    }
}
