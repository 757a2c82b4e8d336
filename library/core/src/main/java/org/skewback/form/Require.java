package org.skewback.form;

import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    /** Overshoot of a range, relative to its width, that is taken for rounding and clamped. */
    private static final double ROUNDING = 1e-12;

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

    /** Checks that a load has the dimension of a unit. */
    static void dimension(Quantity load, String unit) {
        if (!load.dimension().equals(Unit.of(unit).dimension())) {
            throw new DimensionException(
                    "load or force is " + load + "; allowed is one in the dimension of " + unit);
        }
    }

    static double notNegative(String quantity, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(quantity, value, unit, "a finite number of at least 0");
        }
        return value;
    }

    /** Gives the value, moved onto the limit where it passed it by no more than rounding. */
    static double within(String quantity, double value, double low, double high, String unit) {
        double slack = ROUNDING * (high - low);
        if (!(value >= low - slack && value <= high + slack)) {
            throw refused(
                    quantity, value, unit, "from " + low + " " + unit + " to " + high + " " + unit);
        }
        return Math.min(high, Math.max(low, value));
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        String shown = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
        return new IllegalArgumentException(
                quantity + " is " + shown + "; allowed is " + allowed + ".");
    }
}
