package org.skewback.frame;

/**
 * A force and a moment on a member at one place.
 *
 * @param member member loaded
 * @param position distance from the start of the flexible part, m
 * @param force force, N
 * @param moment moment, N·m
 * @param axes axes in which both are given: global or local
 */
public record PointLoad(String member, double position, Vector force, Vector moment, LoadAxes axes)
        implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member loaded
     * @param position distance from the start of the flexible part, m
     * @param force force, N
     * @param moment moment, N·m
     * @param axes axes in which both are given: global or local
     * @throws IllegalArgumentException if the position is negative or the axes are projected
     */
    public PointLoad {
        Require.notNegative("position of a load on member " + member, position, "m");
        if (axes == LoadAxes.PROJECTED) {
            throw new IllegalArgumentException(
                    "axes of a point load on member "
                            + member
                            + " are projected; allowed are global and local.");
        }
    }

    /**
     * Makes a force in global axes.
     *
     * @param member member loaded
     * @param position distance from the start of the flexible part, m
     * @param force force, N
     * @return the load
     */
    public static PointLoad of(String member, double position, Vector force) {
        return new PointLoad(member, position, force, Vector.ZERO, LoadAxes.GLOBAL);
    }
}
