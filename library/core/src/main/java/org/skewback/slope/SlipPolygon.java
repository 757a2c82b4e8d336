package org.skewback.slope;

/**
 * A surface through given points. Its lower end lies on the ground; where its upper end lies below
 * the ground, an upright tension crack of that depth is above it.
 *
 * @param line the points from left to right
 */
public record SlipPolygon(ProfileLine line) implements SlipSurface {

    /**
     * Makes a surface through points.
     *
     * @param points points as {@code {x, y}}, m, x ascending, at least two
     * @return the surface
     * @throws IllegalArgumentException as for {@link ProfileLine#through}
     */
    public static SlipPolygon through(double[]... points) {
        return new SlipPolygon(ProfileLine.through(points));
    }
}
