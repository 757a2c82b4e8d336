package org.skewback.form;

/**
 * A vertical point load.
 *
 * @param position position from the left springing, m, not negative
 * @param force force, N, positive downward
 */
public record PointLoad(double position, double force) implements VerticalLoad {

    /**
     * Makes a point load.
     *
     * @param position position from the left springing, m, not negative
     * @param force force, N, positive downward
     * @throws IllegalArgumentException if a value is not finite or the position is negative
     */
    public PointLoad {
        Require.notNegative("position of the point load", position, "m");
        Require.finite("point load", force, "N");
    }

    @Override
    public PointLoad times(double factor) {
        return new PointLoad(position, force * Require.finite("factor", factor, ""));
    }
}
