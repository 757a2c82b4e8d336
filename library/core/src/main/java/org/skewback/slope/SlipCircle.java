package org.skewback.slope;

/**
 * The lower arc of a circle.
 *
 * @param x position of the centre, m
 * @param y height of the centre, m
 * @param radius radius, m
 */
public record SlipCircle(double x, double y, double radius) implements SlipSurface {

    /**
     * Makes a circle.
     *
     * @param x position of the centre, m
     * @param y height of the centre, m
     * @param radius radius, m, greater than 0
     * @throws IllegalArgumentException if a value is not finite or the radius not positive
     */
    public SlipCircle {
        Require.finite("position of the centre", x, "m");
        Require.finite("height of the centre", y, "m");
        Require.positive("radius of the slip circle", radius, "m");
    }

    /** Height of the lower arc. */
    double low(double at) {
        double off = at - x;
        return y - Math.sqrt(Math.max(0, radius * radius - off * off));
    }
}
