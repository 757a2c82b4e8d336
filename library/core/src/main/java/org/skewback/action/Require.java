package org.skewback.action;

import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

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

    static void notNegative(String quantity, Quantity value, String unit) {
        double number = value.in(unit);
        if (!(number >= 0 && number < Double.POSITIVE_INFINITY)) {
            throw refused(quantity, number, unit, "a finite number of at least 0");
        }
    }

    /** Checks that a quantity has the dimension of a unit. */
    static void dimension(String quantity, Quantity value, String unit) {
        if (!value.dimension().equals(Unit.of(unit).dimension())) {
            throw new DimensionException(
                    quantity + " is " + value + "; allowed is one in the dimension of " + unit);
        }
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        String shown = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
        return new IllegalArgumentException(
                quantity + " is " + shown + "; allowed is " + allowed + ".");
    }
}
