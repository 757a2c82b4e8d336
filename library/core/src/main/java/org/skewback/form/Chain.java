package org.skewback.form;

/**
 * A chain of uniform weight along its length, hanging between two points: a catenary turned over,
 * in tension. Ordinates are negative below the left support.
 */
public final class Chain {

    private final Catenary arch;
    private final double weight;

    private Chain(Catenary arch, double weight) {
        this.arch = arch;
        this.weight = Require.positive("weight per length", weight, "N/m");
    }

    /**
     * Hangs a chain of given sag.
     *
     * @param span level distance between the supports, m, greater than 0
     * @param sag drop of the chain below the middle of the chord, m, greater than 0
     * @param rightLevel height of the right support above the left one, m
     * @param weight weight per length of chain, N/m, greater than 0
     * @return the chain
     * @throws IllegalArgumentException if a value is not finite or out of its range
     */
    public static Chain ofSag(double span, double sag, double rightLevel, double weight) {
        Require.positive("sag", sag, "m");
        return new Chain(Catenary.ofRise(span, sag, -rightLevel), weight);
    }

    /**
     * Hangs a chain of given length.
     *
     * @param span level distance between the supports, m, greater than 0
     * @param length length of the chain, m, greater than the distance between the supports
     * @param rightLevel height of the right support above the left one, m
     * @param weight weight per length of chain, N/m, greater than 0
     * @return the chain
     * @throws IllegalArgumentException if a value is not finite or out of its range
     */
    public static Chain ofLength(double span, double length, double rightLevel, double weight) {
        return new Chain(Catenary.ofLength(span, length, -rightLevel), weight);
    }

    /**
     * Gives the arch that stands as this chain hangs, mirrored in the level through the left
     * support; its load uniform along the axis makes the same forces, in compression.
     *
     * @return the arch
     */
    public Catenary turnedOver() {
        return arch;
    }

    /**
     * Gives the weight per length.
     *
     * @return the weight in N/m
     */
    public double weight() {
        return weight;
    }

    /**
     * Gives the height of the chain above the left support, negative where it hangs lower.
     *
     * @param x position from the left support, 0 to span, m
     * @return the ordinate in m
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double y(double x) {
        return -arch.y(x);
    }

    /**
     * Gives the inclination of the chain.
     *
     * @param x position from the left support, 0 to span, m
     * @return the angle in rad, positive when rising to the right
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double angle(double x) {
        return -arch.angle(x);
    }

    /**
     * Gives the length of the chain.
     *
     * @return the length in m
     */
    public double length() {
        return arch.arcLength();
    }

    /**
     * Gives the horizontal component of the tension, the same everywhere, {@code H = w a}.
     *
     * @return the force in N
     */
    public double horizontalTension() {
        return weight * arch.parameter();
    }

    /**
     * Gives the tension, {@code T = H √(1 + y′²)}.
     *
     * @param x position from the left support, 0 to span, m
     * @return the tension in N
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double tension(double x) {
        double slope = arch.slope(x);
        return horizontalTension() * Math.sqrt(1 + slope * slope);
    }

    /**
     * Gives the vertical force at the left support.
     *
     * @return the force on the chain in N, positive upward
     */
    public double leftVertical() {
        return horizontalTension() * arch.slope(0);
    }

    /**
     * Gives the vertical force at the right support.
     *
     * @return the force on the chain in N, positive upward
     */
    public double rightVertical() {
        return -horizontalTension() * arch.slope(arch.span());
    }

    /**
     * Gives the position of the lowest point of the curve; it may lie outside the span.
     *
     * @return the position from the left support in m
     */
    public double lowest() {
        return arch.crown();
    }
}
