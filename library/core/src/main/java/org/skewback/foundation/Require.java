package org.skewback.foundation;

import org.skewback.quantity.Quantity;

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

    static double within(String quantity, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw refused(quantity, value, unit, range(low, high, unit));
        }
        return value;
    }

    static Quantity positive(String quantity, Quantity value, String unit) {
        positive(quantity, value.in(unit), unit);
        return value;
    }

    static Quantity notNegative(String quantity, Quantity value, String unit) {
        notNegative(quantity, value.in(unit), unit);
        return value;
    }

    static Quantity within(String quantity, Quantity value, double low, double high, String unit) {
        within(quantity, value.in(unit), low, high, unit);
        return value;
    }

    static int atLeast(String quantity, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(
                    quantity + " is " + value + "; allowed is at least " + least + ".");
        }
        return value;
    }

    private static String range(double low, double high, String unit) {
        String shown = unit.isEmpty() ? "" : " " + unit;
        return "from " + low + shown + " to " + high + shown;
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        String shown = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
        return new IllegalArgumentException(
                quantity + " is " + shown + "; allowed is " + allowed + ".");
    }
}
