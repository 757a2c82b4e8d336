package org.skewback.steel;

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

    /** Checks a shear area, which may be infinite: no shear flexibility then. */
    static double positiveOrInfinite(String quantity, double value, String unit) {
        if (!(value > 0)) {
            throw refused(quantity, value, unit, "a number greater than 0, or infinity for none");
        }
        return value;
    }

    static void below(String quantity, double value, double limit, String unit) {
        if (!(value < limit)) {
            throw refused(quantity, value, unit, "less than " + limit + " " + unit);
        }
    }

    static IllegalArgumentException refused(
            String quantity, double value, String unit, String allowed) {
        return new IllegalArgumentException(
                quantity + " is " + value + " " + unit + "; allowed is " + allowed + ".");
    }
}
