package org.skewback.cable;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    static double positive(String quantity, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(quantity, value, unit, "a finite number greater than 0");
        }
        return value;
    }

    static double notNegative(String quantity, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(quantity, value, unit, "a finite number of at least 0");
        }
        return value;
    }

    static double finite(String quantity, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refused(quantity, value, unit, "a finite number");
        }
        return value;
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        return new IllegalArgumentException(
                quantity + " is " + value + " " + unit + "; allowed is " + allowed + ".");
    }
}
