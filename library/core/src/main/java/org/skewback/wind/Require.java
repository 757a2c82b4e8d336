package org.skewback.wind;

import org.skewback.quantity.Quantity;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    static double positive(String quantity, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(quantity, value, unit, "a finite number greater than 0");
        }
        return value;
    }

    /** Checks that a quantity has the dimension of a unit and is greater than 0. */
    static void positive(String quantity, Quantity value, String unit) {
        positive(quantity, value.in(unit), unit);
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        String shown = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
        return new IllegalArgumentException(
                quantity + " is " + shown + "; allowed is " + allowed + ".");
    }
}
