package org.skewback.choice;

import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    /** Checks that a quantity has the dimension of a unit and is greater than 0. */
    static void positive(String quantity, Quantity value, String unit) {
        of(quantity, value, unit);
        if (!(value.si() > 0)) {
            throw refused(quantity, value, "greater than 0");
        }
    }

    /** Checks that a quantity has the dimension of a unit and is at least 0. */
    static void notNegative(String quantity, Quantity value, String unit) {
        of(quantity, value, unit);
        if (!(value.si() >= 0)) {
            throw refused(quantity, value, "at least 0");
        }
    }

    private static void of(String quantity, Quantity value, String unit) {
        if (!value.dimension().equals(Unit.of(unit).dimension())) {
            throw new DimensionException(
                    quantity
                            + " is "
                            + value
                            + "; allowed is one in the dimension of "
                            + (unit.isEmpty() ? "a plain number" : unit));
        }
    }

    static IllegalArgumentException refused(String quantity, Quantity value, String allowed) {
        return new IllegalArgumentException(
                quantity + " is " + value + "; allowed is " + allowed + ".");
    }
}
