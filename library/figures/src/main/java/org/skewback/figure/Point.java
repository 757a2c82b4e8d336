package org.skewback.figure;

/**
 * A place in an elevation or a section.
 *
 * @param x distance to the right, in metres (kilonewtons in a force polygon); finite
 * @param y distance upwards, in the same unit; finite
 */
public record Point(double x, double y) {

    /**
     * Checks that both coordinates are numbers.
     *
     * @param x distance to the right, finite
     * @param y distance upwards, finite
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public Point {
        Check.finite("point x", x);
        Check.finite("point y", y);
    }

    /**
     * Gives the point at these coordinates.
     *
     * @param x distance to the right, finite
     * @param y distance upwards, finite
     * @return the point
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public static Point at(double x, double y) {
        return new Point(x, y);
    }

    double distanceTo(Point other) {
        return Math.sqrt((other.x - x) * (other.x - x) + (other.y - y) * (other.y - y));
    }
}
