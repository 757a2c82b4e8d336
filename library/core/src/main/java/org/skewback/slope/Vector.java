package org.skewback.slope;

/** A vector in space: x east, y north, z up. */
record Vector(double x, double y, double z) {

    static final Vector ORIGIN = new Vector(0, 0, 0);

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector other) {
        return new Vector(
                y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Vector unit() {
        return times(1 / length());
    }

    /** The unit vector of a trend clockwise from north and a plunge below the level. */
    static Vector ofTrend(double trend, double plunge) {
        double level = StrictMath.cos(plunge);
        return new Vector(
                level * StrictMath.sin(trend),
                level * StrictMath.cos(trend),
                -StrictMath.sin(plunge));
    }

    /** Trend clockwise from north, from 0 to 2π. */
    double trend() {
        double angle = StrictMath.atan2(x, y);
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    /** Plunge below the level, negative above it. */
    double plunge() {
        return StrictMath.asin(Math.max(-1, Math.min(1, -z / length())));
    }
}
