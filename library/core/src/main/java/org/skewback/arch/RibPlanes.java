package org.skewback.arch;

/**
 * Two rib planes, each leaning so that the ribs stand farther apart at the springings than at the crown.
 *
 * @param atCrown distance of the ribs at the crown, centre to centre, m, greater than 0
 * @param atSpringings distance of the ribs at the springings, centre to centre, m, greater than 0
 */
public record RibPlanes(double atCrown, double atSpringings) {

    /**
     * Checks the distances.
     *
     * @param atCrown distance of the ribs at the crown, m
     * @param atSpringings distance of the ribs at the springings, m
     * @throws IllegalArgumentException if one is not greater than 0
     */
    public RibPlanes {
        Require.positive("distance of the ribs at the crown", atCrown, "m");
        Require.positive("distance of the ribs at the springings", atSpringings, "m");
    }

    /** Distance from the middle at a height above the springings, linear between. */
    double offset(double height, double rise) {
        return (atSpringings + (atCrown - atSpringings) * height / rise) / 2;
    }
}
