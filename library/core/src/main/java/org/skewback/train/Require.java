package org.skewback.train;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    static double notNegative(String quantity, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(quantity, value, unit, "a finite number of at least 0");
        }
        return value;
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        String shown = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
        return new IllegalArgumentException(
                quantity + " is " + shown + "; allowed is " + allowed + ".");
    }
}
