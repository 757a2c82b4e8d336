package org.skewback.slope;

/**
 * Orientation of a plane: a joint, a face, the upper slope.
 *
 * @param dip dip from the level, rad; beyond π/2 the plane overhangs
 * @param dipDirection direction of the steepest line down, clockwise from north, rad
 */
public record Orientation(double dip, double dipDirection) {

    /**
     * Makes an orientation.
     *
     * @param dip dip from the level, rad, from 0 to less than π; beyond π/2 the rock of a face, or
     *     the block on a joint, lies on the other side of the plane: an overhang
     * @param dipDirection direction of the steepest line down, clockwise from north, rad, from −2π
     *     to 2π
     * @throws IllegalArgumentException if an angle is outside
     */
    public Orientation {
        if (!(dip >= 0 && dip < Math.PI)) {
            throw Require.refused("dip", StrictMath.toDegrees(dip), "°", "from 0° to below 180°");
        }
        if (!(Math.abs(dipDirection) <= 2 * Math.PI)) {
            throw Require.refused(
                    "dip direction", StrictMath.toDegrees(dipDirection), "°", "from −360° to 360°");
        }
    }

    /**
     * Makes an orientation from degrees, as it is read off a compass: dip/dip direction.
     *
     * @param dip dip from the level, °, from 0 to less than 180
     * @param dipDirection dip direction clockwise from north, °, from −360 to 360
     * @return the orientation
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Orientation ofDegrees(double dip, double dipDirection) {
        return new Orientation(StrictMath.toRadians(dip), StrictMath.toRadians(dipDirection));
    }

    /** Unit normal, pointing up out of a plane that does not overhang. */
    Vector normal() {
        double sine = StrictMath.sin(dip);
        return new Vector(
                sine * StrictMath.sin(dipDirection),
                sine * StrictMath.cos(dipDirection),
                StrictMath.cos(dip));
    }

    /**
     * Gives the apparent dip of the plane in an upright section, {@code arctan(tan ψ cos(α − θ))}.
     *
     * @param direction direction of the section clockwise from north, rad
     * @return the apparent dip in that direction, rad, from −π/2 to π/2
     */
    public double apparentDip(double direction) {
        return StrictMath.atan(StrictMath.tan(dip) * StrictMath.cos(dipDirection - direction));
    }
}
