package org.skewback.frame;

/**
 * A vector in space: a place (m), a force (N), a moment (N·m), a rotation (rad) or a direction.
 *
 * @param x component along x
 * @param y component along y
 * @param z component along z
 */
public record Vector(double x, double y, double z) {

    private static final double ROUNDING = 1e-15;

    /** No vector at all. */
    public static final Vector ZERO = new Vector(0, 0, 0);

    /** The global direction along the bridge. */
    public static final Vector X = new Vector(1, 0, 0);

    /** The global direction across. */
    public static final Vector Y = new Vector(0, 1, 0);

    /** The global direction up. */
    public static final Vector Z = new Vector(0, 0, 1);

    /**
     * Checks the components.
     *
     * @param x component along x
     * @param y component along y
     * @param z component along z
     * @throws IllegalArgumentException if a component is not finite
     */
    public Vector {
        Require.finite("component x", x, "");
        Require.finite("component y", y, "");
        Require.finite("component z", z, "");
    }

    /**
     * Adds a vector.
     *
     * @param other what is added
     * @return the sum
     */
    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    /**
     * Takes a vector away.
     *
     * @param other what is taken away
     * @return the difference
     */
    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    /**
     * Multiplies by a number.
     *
     * @param factor the number
     * @return the multiple
     */
    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    /**
     * Gives the scalar product.
     *
     * @param other the other vector
     * @return x x′ + y y′ + z z′
     */
    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /**
     * Gives the vector product, right-handed.
     *
     * @param other the other vector
     * @return this × other
     */
    public Vector cross(Vector other) {
        return new Vector(
                y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /**
     * Gives the length.
     *
     * @return √(x² + y² + z²)
     */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /**
     * Gives the vector of length 1 in this direction.
     *
     * @return this/|this|
     * @throws IllegalArgumentException if the length is zero
     */
    public Vector unit() {
        if (Math.abs(dot(this) - 1) < ROUNDING) {
            // Dividing again would move the last digit each time.
            return this;
        }
        double length = length();
        if (!(length > 0)) {
            throw new IllegalArgumentException(
                    "direction is " + this + "; allowed is a vector that is not zero.");
        }
        return new Vector(x / length, y / length, z / length);
    }

    /** A component by its number, 0 to 2. */
    double get(int axis) {
        return axis == 0 ? x : axis == 1 ? y : z;
    }

    static Vector of(double[] values, int from) {
        return new Vector(values[from], values[from + 1], values[from + 2]);
    }

    @Override
    public String toString() {
        return "(" + x + ", " + y + ", " + z + ")";
    }
}
