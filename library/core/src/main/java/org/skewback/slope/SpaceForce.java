package org.skewback.slope;

/**
 * A force on a block in space.
 *
 * @param east component to the east, N
 * @param north component to the north, N
 * @param up component upward, N
 */
public record SpaceForce(double east, double north, double up) {

    /**
     * Makes a force.
     *
     * @param east component to the east, N
     * @param north component to the north, N
     * @param up component upward, N
     * @throws IllegalArgumentException if a component is not finite
     */
    public SpaceForce {
        Require.finite("component to the east", east, "N");
        Require.finite("component to the north", north, "N");
        Require.finite("component upward", up, "N");
    }

    /**
     * Gives a force by where it points.
     *
     * @param force the force, N
     * @param trend trend that it points to, clockwise from north, rad
     * @param plunge plunge below the level that it points down, rad
     * @return the force
     * @throws IllegalArgumentException if a value is not finite
     */
    public static SpaceForce of(double force, double trend, double plunge) {
        Require.finite("force", force, "N");
        Vector direction = Vector.ofTrend(trend, plunge);
        return new SpaceForce(force * direction.x(), force * direction.y(), force * direction.z());
    }

    Vector vector() {
        return new Vector(east, north, up);
    }
}
