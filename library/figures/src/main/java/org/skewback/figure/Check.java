package org.skewback.figure;

import java.util.Arrays;

/** Checks of what a figure is given; each error names the quantity, its value and what is allowed. */
final class Check {

    private Check() {}

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + "; it must be finite");
        }
        return value;
    }

    static double positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; it must be positive and finite");
        }
        return value;
    }

    static double within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; it must be from " + least + " to " + most);
        }
        return value;
    }

    static double[] finite(String name, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(
                        name + "[" + i + "] is " + values[i] + "; it must be finite");
            }
        }
        return values.clone();
    }

    static double[] rising(String name, double[] values) {
        double[] copy = finite(name, values);
        for (int i = 1; i < copy.length; i++) {
            if (!(copy[i] > copy[i - 1])) {
                throw new IllegalArgumentException(
                        name
                                + "["
                                + i
                                + "] is "
                                + copy[i]
                                + "; it must be greater than the one before, "
                                + copy[i - 1]);
            }
        }
        return copy;
    }

    static void sameLength(String name, double[] values, String other, double[] others) {
        if (values.length != others.length) {
            throw new IllegalArgumentException(
                    name
                            + " has "
                            + values.length
                            + " values; it must have as many as "
                            + other
                            + ", "
                            + others.length);
        }
    }

    static void atLeast(String name, int count, int least) {
        if (count < least) {
            throw new IllegalArgumentException(
                    name + " has " + count + " points; it must have at least " + least);
        }
    }

    static String words(String name, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(name + " is blank; it must say something");
        }
        text.codePoints()
                .filter(
                        c ->
                                Character.isISOControl(c)
                                        || c == 0xFFFE
                                        || c == 0xFFFF
                                        || surrogate(c))
                .findFirst()
                .ifPresent(
                        c -> {
                            throw new IllegalArgumentException(
                                    name
                                            + " has the control character U+"
                                            + String.format("%04X", c)
                                            + "; it must be one line of text");
                        });
        return text;
    }

    /** Refuses a text that the bundled fonts can't print, so that no box or gap is ever issued. */
    static String printable(String name, String text) {
        words(name, text);
        int[] missing = TextFace.REGULAR.missing(text);
        if (missing.length > 0) {
            throw new IllegalArgumentException(
                    name
                            + " \""
                            + text
                            + "\" has characters the figure font lacks: "
                            + Arrays.toString(
                                    Arrays.stream(missing)
                                            .mapToObj(c -> String.format("U+%04X", c))
                                            .toArray()));
        }
        return text;
    }

    private static boolean surrogate(int codePoint) {
        return codePoint >= 0xD800 && codePoint <= 0xDFFF;
    }
}
