package org.skewback.numeric;

/** Refuses bad input by the name of the quantity, its value and what is allowed. */
final class Require {

    private Require() {}

    static int index(String name, int value, int order) {
        if (value < 0 || value >= order) {
            throw new IllegalArgumentException(
                    name + " " + value + " is outside; allowed is 0 to " + (order - 1) + ".");
        }
        return value;
    }

    static int length(String name, int value, int wanted) {
        if (value != wanted) {
            throw new IllegalArgumentException(
                    name + " has length " + value + "; allowed is " + wanted + ".");
        }
        return value;
    }

    static int atLeast(String name, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; allowed is " + least + " or more.");
        }
        return value;
    }

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; allowed are finite numbers.");
        }
        return value;
    }

    static double positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; allowed are finite numbers above 0.");
        }
        return value;
    }

    static double notNegative(String name, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; allowed are finite numbers from 0.");
        }
        return value;
    }

    static double[] finite(String name, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(
                        name + "[" + i + "] is " + values[i] + "; allowed are finite numbers.");
            }
        }
        return values;
    }

    static double[] vector(String name, double[] values, int order) {
        length(name, values.length, order);
        return finite(name, values);
    }
}
