package org.skewback.arch;

/**
 * What moves an arch without loading it.
 *
 * @param strain free strain of the rib, α ΔT for warming, without unit, positive where it lengthens
 * @param spread how far the springings moved apart, m
 * @param rightRise how far the right springing rose against the left one, m
 * @param leftTurn rotation of the left springing, rad, positive counter-clockwise
 * @param rightTurn rotation of the right springing, rad, positive counter-clockwise
 */
public record SpringingMovement(
        double strain, double spread, double rightRise, double leftTurn, double rightTurn) {

    /** Nothing moves. */
    public static final SpringingMovement NONE = new SpringingMovement(0, 0, 0, 0, 0);

    /**
     * Checks the numbers.
     *
     * @param strain free strain of the rib
     * @param spread how far the springings moved apart, m
     * @param rightRise how far the right springing rose against the left one, m
     * @param leftTurn rotation of the left springing, rad
     * @param rightTurn rotation of the right springing, rad
     * @throws IllegalArgumentException if one is not finite
     */
    public SpringingMovement {
        Require.finite("free strain", strain, "");
        Require.finite("spread of the springings", spread, "m");
        Require.finite("rise of the right springing", rightRise, "m");
        Require.finite("rotation of the left springing", leftTurn, "rad");
        Require.finite("rotation of the right springing", rightTurn, "rad");
    }

    /**
     * Makes a free strain alone.
     *
     * @param strain α ΔT, without unit
     * @return the movement
     */
    public static SpringingMovement warmed(double strain) {
        return new SpringingMovement(strain, 0, 0, 0, 0);
    }

    /**
     * Makes a spread alone.
     *
     * @param spread how far the springings moved apart, m
     * @return the movement
     */
    public static SpringingMovement spread(double spread) {
        return new SpringingMovement(0, spread, 0, 0, 0);
    }
}
