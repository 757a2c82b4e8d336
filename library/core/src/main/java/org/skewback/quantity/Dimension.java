package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A physical dimension: powers of length, mass, time and temperature.
 *
 * <p>Each power is kept as a multiple of 1/60 in 16 bits of one {@code long}, so that halves,
 * thirds, quarters, fifths and sixths are exact and two dimensions multiply in a few machine
 * operations. Powers reach ±546. Angle is no dimension of its own (SI Brochure, 9th ed., §2.3.3).
 *
 * @param packed the four powers, lowest 16 bits first: length, mass, time, temperature
 */
public record Dimension(long packed) {

    /** No dimension: plain numbers, ratios and angles. */
    public static final Dimension NONE = new Dimension(0);

    /** Length, in metres. */
    public static final Dimension LENGTH = new Dimension(60L);

    /** Mass, in kilograms. */
    public static final Dimension MASS = new Dimension(60L << 16);

    /** Time, in seconds. */
    public static final Dimension TIME = new Dimension(60L << 32);

    /** Temperature, in kelvins. */
    public static final Dimension TEMPERATURE = new Dimension(60L << 48);

    private static final long HIGH_BITS = 0x8000_8000_8000_8000L;
    private static final int LANES = 4;
    private static final int STEPS = 60;
    private static final String[] BASE_UNITS = {"m", "kg", "s", "K"};

    private static final Map<Dimension, String> NAMES =
            Map.ofEntries(
                    Map.entry(NONE, "a plain number"),
                    Map.entry(LENGTH, "a length"),
                    Map.entry(of(2, 0, 0), "an area"),
                    Map.entry(of(3, 0, 0), "a volume"),
                    Map.entry(of(4, 0, 0), "a second moment of area"),
                    Map.entry(of(-1, 0, 0), "a curvature"),
                    Map.entry(MASS, "a mass"),
                    Map.entry(TIME, "a time"),
                    Map.entry(TEMPERATURE, "a temperature"),
                    Map.entry(of(1, 0, -1), "a speed"),
                    Map.entry(of(1, 0, -2), "an acceleration"),
                    Map.entry(of(0, 0, -1), "a frequency"),
                    Map.entry(of(1, 1, -2), "a force"),
                    Map.entry(of(0, 1, -2), "a force per length"),
                    Map.entry(of(-1, 1, -2), "a pressure"),
                    Map.entry(of(-2, 1, -2), "a force per volume"),
                    Map.entry(of(2, 1, -2), "a moment or an energy"),
                    Map.entry(of(3, 1, -2), "a bending stiffness"),
                    Map.entry(of(2, 1, -3), "a power"),
                    Map.entry(of(-3, 1, 0), "a density"),
                    Map.entry(of(-1, 1, 0), "a mass per length"),
                    Map.entry(of(-2, 1, 0), "a mass per area"),
                    Map.entry(new Dimension(power(TEMPERATURE.packed, -1, 1)), "an expansion"));

    /**
     * Gives the dimension length^l · mass^m · time^t.
     *
     * @param length power of length
     * @param mass power of mass
     * @param time power of time
     * @return the dimension
     */
    public static Dimension of(int length, int mass, int time) {
        return new Dimension(
                product(
                        power(LENGTH.packed, length, 1),
                        product(power(MASS.packed, mass, 1), power(TIME.packed, time, 1))));
    }

    /**
     * Gives the dimension of four powers.
     *
     * @param powers powers of length, mass, time and temperature, as {@link Rational#parse} reads
     * @return the dimension
     * @throws IllegalArgumentException when there are not four, or one is no multiple of 1/60
     */
    public static Dimension ofPowers(List<String> powers) {
        if (powers.size() != LANES) {
            throw new IllegalArgumentException(
                    "a dimension of " + powers.size() + " powers; allowed: " + LANES);
        }
        Dimension[] bases = {LENGTH, MASS, TIME, TEMPERATURE};
        Dimension dimension = NONE;
        for (int lane = 0; lane < LANES; lane++) {
            dimension = dimension.times(bases[lane].power(Rational.parse(powers.get(lane))));
        }
        return dimension;
    }

    /**
     * Gives the four powers.
     *
     * @return powers of length, mass, time and temperature
     */
    public List<Rational> powers() {
        List<Rational> powers = new ArrayList<>();
        for (int lane = 0; lane < LANES; lane++) {
            powers.add(new Rational(lane(packed, lane), STEPS));
        }
        return powers;
    }

    /**
     * Tells whether this is the dimension of plain numbers.
     *
     * @return whether every power is zero
     */
    public boolean isNone() {
        return packed == 0;
    }

    /**
     * Gives the dimension of a product.
     *
     * @param other dimension of the other factor
     * @return the sum of the powers
     */
    public Dimension times(Dimension other) {
        return new Dimension(product(packed, other.packed));
    }

    /**
     * Gives the dimension of a quotient.
     *
     * @param other dimension of the divisor
     * @return the difference of the powers
     */
    public Dimension over(Dimension other) {
        return new Dimension(quotient(packed, other.packed));
    }

    /**
     * Gives the dimension of a power.
     *
     * @param exponent the exponent
     * @return every power times the exponent
     * @throws IllegalArgumentException when a power would not be a multiple of 1/60, or go beyond
     *     ±546
     */
    public Dimension power(Rational exponent) {
        return new Dimension(power(packed, exponent.numerator(), exponent.denominator()));
    }

    /**
     * Says in words what has this dimension.
     *
     * @return such as {@code a force}, or the powers where the trade has no word for it
     */
    public String inWords() {
        String name = NAMES.get(this);
        return name != null ? name : toString();
    }

    /** Whether the trade has a word for what has this dimension. */
    boolean isNamed() {
        return NAMES.containsKey(this);
    }

    /**
     * Writes the powers of the SI base units.
     *
     * @return such as {@code m·kg·s⁻²}; {@code 1} for plain numbers
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int lane = 0; lane < LANES; lane++) {
            int steps = lane(packed, lane);
            if (steps != 0) {
                if (text.length() > 0) {
                    text.append('·');
                }
                text.append(BASE_UNITS[lane]);
                Rational power = new Rational(steps, STEPS);
                if (power.numerator() != 1 || !power.isWhole()) {
                    text.append(Superscript.of(power));
                }
            }
        }
        return text.length() == 0 ? "1" : text.toString();
    }

    /** Adds lane by lane without a carry from one lane into the next. */
    static long product(long a, long b) {
        return ((a & ~HIGH_BITS) + (b & ~HIGH_BITS)) ^ ((a ^ b) & HIGH_BITS);
    }

    static long quotient(long a, long b) {
        return ((a | HIGH_BITS) - (b & ~HIGH_BITS)) ^ ((a ^ ~b) & HIGH_BITS);
    }

    static long power(long packed, int numerator, int denominator) {
        long result = 0;
        for (int lane = 0; lane < LANES; lane++) {
            long steps = (long) lane(packed, lane) * numerator;
            if (steps % denominator != 0 || Math.abs(steps / denominator) > Short.MAX_VALUE) {
                throw new IllegalArgumentException(
                        new Dimension(packed)
                                + " to the power "
                                + new Rational(numerator, denominator)
                                + " has no dimension that can be written here: powers are"
                                + " multiples of 1/60 within ±546");
            }
            result |= (steps / denominator & 0xFFFF) << (16 * lane);
        }
        return result;
    }

    private static int lane(long packed, int lane) {
        return (short) (packed >>> (16 * lane));
    }
}
