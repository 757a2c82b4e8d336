package org.skewback.steel;

/**
 * A point of a cross-section at which stresses are wanted.
 *
 * @param name what it is called, such as {@code top left}
 * @param y distance from the centroid across, m
 * @param z distance from the centroid upward, m
 */
public record Fibre(String name, double y, double z) {

    /**
     * Checks the point.
     *
     * @param name what it is called
     * @param y distance from the centroid across, m
     * @param z distance from the centroid upward, m
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public Fibre {
        Require.finite("y of fibre " + name, y, "m");
        Require.finite("z of fibre " + name, z, "m");
    }
}
