package org.skewback.study;

import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/** Checks of arguments; each message names the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    static IllegalArgumentException refused(String what, Object value, String allowed) {
        return new IllegalArgumentException(what + " is " + value + "; allowed is " + allowed);
    }

    /** How a quantity is called in a message: by its symbol, else by its value. */
    static String name(Quantity quantity) {
        String symbol = quantity.symbol();
        return symbol == null ? quantity.toString() : symbol;
    }

    static void sameDimension(String what, Quantity value, String other, Quantity pattern) {
        if (!value.dimension().equals(pattern.dimension())) {
            throw new DimensionException(
                    what
                            + " is "
                            + value
                            + ", "
                            + value.dimension().inWords()
                            + "; allowed is the dimension of "
                            + other
                            + " "
                            + pattern);
        }
    }

    /** Checks that two are both readings in °C, or both none: 20 K is no temperature of 20 °C. */
    static void sameKind(String what, Quantity value, Quantity pattern) {
        if (value.unit().isReading() != pattern.unit().isReading()) {
            throw refused(
                    what,
                    value,
                    pattern.unit().isReading()
                            ? "a reading in °C, as " + pattern + " is"
                            : "no reading in °C, as " + pattern + " is none");
        }
    }

    /** Checks a difference, such as a standard deviation: no reading, and more than zero. */
    static double positiveDifference(String what, Quantity value) {
        if (value.unit().isReading()) {
            throw new DimensionException(
                    what + " is " + value + ", a reading; allowed is a difference, in K");
        }
        if (!(value.si() > 0)) {
            throw refused(what, value, "more than 0");
        }
        return value.si();
    }

    /** The unit of differences of quantities in this unit: kelvin for readings in °C. */
    static Unit ofDifferences(Unit unit) {
        return unit.isReading() ? Unit.of("K") : unit;
    }

    /** Makes a quantity of a value in SI base units, to be shown in a unit. */
    static Quantity quantity(double si, Unit unit) {
        return Quantity.of(unit.fromSi(si), unit.symbol());
    }
}
