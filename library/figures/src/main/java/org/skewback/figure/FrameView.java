package org.skewback.figure;

import org.skewback.frame.Vector;

/**
 * From where a frame is seen: a parallel projection at right angles to the picture.
 *
 * @param name what the view is called, such as elevation
 * @param right direction that runs to the right in the picture, global axes, a unit vector
 * @param up direction that runs up in the picture, global axes, a unit vector at right angles to
 *     {@code right}
 */
public record FrameView(String name, Vector right, Vector up) {

    /** How far from a right angle the two directions may be. */
    private static final double SQUARE = 1e-9;

    /** A direction this near to the line of sight is not seen as one. */
    private static final double FLAT = 1e-9;

    /**
     * Checks the directions.
     *
     * @param name what the view is called
     * @param right direction that runs to the right
     * @param up direction that runs up
     * @throws IllegalArgumentException if the name is blank, a direction is zero, or the two are not at
     *     right angles
     */
    public FrameView {
        Check.printable("name of the view", name);
        right = right.unit();
        up = up.unit();
        if (Math.abs(right.dot(up)) > SQUARE) {
            throw new IllegalArgumentException(
                    "directions of view "
                            + name
                            + " are "
                            + right
                            + " and "
                            + up
                            + "; they must be at right angles");
        }
    }

    /**
     * Gives the elevation: x to the right, z up, seen along +y.
     *
     * @return the view
     */
    public static FrameView elevation() {
        return new FrameView("elevation", Vector.X, Vector.Z);
    }

    /**
     * Gives the plan: x to the right, y up in the picture, seen from above.
     *
     * @return the view
     */
    public static FrameView plan() {
        return new FrameView("plan", Vector.X, Vector.Y);
    }

    /**
     * Gives the cross-section: y to the right, z up, seen against +x.
     *
     * @return the view
     */
    public static FrameView section() {
        return new FrameView("cross-section", Vector.Y, Vector.Z);
    }

    /**
     * Gives an axonometric view in which a bridge shows its length, its width and its height.
     *
     * @return the view turned by 35° and tilted by 14°
     */
    public static FrameView axonometric() {
        return axonometric(35, 14);
    }

    /**
     * Gives an axonometric view: the elevation, seen from farther to the right and from above.
     *
     * @param turn how far the eye goes round the vertical axis to the right, degrees, −180 to 180
     * @param tilt how far the eye goes up, degrees, −89 to 89
     * @return the view
     * @throws IllegalArgumentException if an angle is out of its range
     */
    public static FrameView axonometric(double turn, double tilt) {
        double t = StrictMath.toRadians(Check.within("turn of the view in °", turn, -180, 180));
        double a = StrictMath.toRadians(Check.within("tilt of the view in °", tilt, -89, 89));
        Vector right = new Vector(StrictMath.cos(t), StrictMath.sin(t), 0);
        Vector level = right.cross(Vector.Z);
        return new FrameView(
                "axonometric view",
                right,
                Vector.Z.times(StrictMath.cos(a)).minus(level.times(StrictMath.sin(a))));
    }

    /** The direction towards the eye. */
    Vector towards() {
        return right.cross(up);
    }

    /** Whether the eye looks along a global axis, so that lengths in the picture are true. */
    boolean isTrue() {
        Vector eye = towards();
        double most = Math.max(Math.abs(eye.x()), Math.max(Math.abs(eye.y()), Math.abs(eye.z())));
        return most > 1 - FLAT;
    }

    /** Distance to the right of the origin in the picture. */
    double x(Vector place) {
        return right.dot(place);
    }

    /** Height above the origin in the picture. */
    double y(Vector place) {
        return up.dot(place);
    }

    /** Share of a unit vector's length that is seen. */
    double seen(Vector direction) {
        return Math.sqrt(x(direction) * x(direction) + y(direction) * y(direction));
    }
}
