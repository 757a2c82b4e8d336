package org.skewback.slope;

/**
 * A force per metre run on the ground of a section, such as the thrust of a springing or the load of
 * a pier.
 *
 * @param x position, m
 * @param y height, m
 * @param horizontal level component, positive to the right, N/m
 * @param downward upright component, positive downward, N/m
 */
public record SectionForce(double x, double y, double horizontal, double downward) {

    /**
     * Makes a force.
     *
     * @param x position, m
     * @param y height, m
     * @param horizontal level component, positive to the right, N/m
     * @param downward upright component, positive downward, N/m
     * @throws IllegalArgumentException if a value is not finite
     */
    public SectionForce {
        Require.finite("position of the force", x, "m");
        Require.finite("height of the force", y, "m");
        Require.finite("level component of the force", horizontal, "N/m");
        Require.finite("upright component of the force", downward, "N/m");
    }
}
