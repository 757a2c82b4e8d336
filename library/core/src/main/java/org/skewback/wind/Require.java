package org.skewback.wind;

import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

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

    /** Checks that a quantity has the dimension of a unit and is greater than 0. */
    static void positive(String quantity, Quantity value, String unit) {
        positive(quantity, value.in(unit), unit);
    }

    /** Checks that a quantity has the dimension of a unit. */
    static void dimension(String quantity, Quantity value, String unit) {
        if (!value.dimension().equals(Unit.of(unit).dimension())) {
            throw new DimensionException(
                    quantity + " is " + value + "; allowed is one in the dimension of " + unit);
        }
    }

    static double within(String quantity, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw refused(
                    quantity,
                    value,
                    unit,
                    ("from " + low + " " + unit).strip() + " to " + (high + " " + unit).strip());
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
