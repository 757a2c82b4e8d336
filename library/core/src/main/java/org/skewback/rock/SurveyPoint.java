package org.skewback.rock;

/**
 * A point of a surface as surveyed or as designed.
 *
 * @param x position to the east, or along the work, m
 * @param y position to the north, or across the work, m
 * @param level level, m
 */
public record SurveyPoint(double x, double y, double level) {

    /**
     * Makes a point.
     *
     * @param x position to the east, or along the work, m, finite
     * @param y position to the north, or across the work, m, finite
     * @param level level, m, finite
     * @throws IllegalArgumentException if a value is not finite
     */
    public SurveyPoint {
        Require.finite("x of the point", x, "m");
        Require.finite("y of the point", y, "m");
        Require.finite("level of the point", level, "m");
    }
}
