package org.skewback.frame;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    static double finite(String quantity, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refused(quantity, value, unit, "a finite number");
        }
        return value;
    }

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

    /** Checks a stiffness, which may be infinite: rigid. */
    static double stiffness(String quantity, double value, String unit) {
        if (!(value >= 0)) {
            throw refused(quantity, value, unit, "at least 0, or infinity for rigid");
        }
        return value;
    }

    static double within(String quantity, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw refused(
                    quantity, value, unit, "from " + low + " " + unit + " to " + high + " " + unit);
        }
        return value;
    }

    static String name(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of a " + what + " is blank; allowed is text.");
        }
        return name;
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        return new IllegalArgumentException(
                quantity + " is " + value + " " + unit + "; allowed is " + allowed + ".");
    }
}
