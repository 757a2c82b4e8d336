package org.skewback.quantity;

/** Raised digits for exponents in plain text. */
final class Superscript {

    private static final String DIGITS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private Superscript() {}

    /** Writes ⁻³ for a whole exponent, ^(3/2) for any other. */
    static String of(Rational exponent) {
        return exponent.isWhole() ? of(exponent.numerator()) : "^(" + exponent + ")";
    }

    static String of(int exponent) {
        StringBuilder raised = new StringBuilder();
        for (char c : Integer.toString(exponent).toCharArray()) {
            raised.append(c == '-' ? '⁻' : DIGITS.charAt(c - '0'));
        }
        return raised.toString();
    }

    /** Gives the digit that a raised character stands for, '-' for the raised minus, else 0. */
    static char lowered(char c) {
        int digit = DIGITS.indexOf(c);
        if (digit >= 0) {
            return (char) ('0' + digit);
        }
        return c == '⁻' ? '-' : 0;
    }
}
