package org.skewback.slope;

/**
 * A joint that a wedge stands on.
 *
 * @param orientation its orientation
 * @param cohesion cohesion, Pa
 * @param friction friction angle, rad
 */
public record WedgeJoint(Orientation orientation, double cohesion, double friction) {

    /**
     * Makes a joint.
     *
     * @param orientation its orientation
     * @param cohesion cohesion, Pa, at least 0
     * @param friction friction angle, rad, from 0 to less than π/2
     * @throws IllegalArgumentException if cohesion or friction is outside
     */
    public WedgeJoint {
        Require.notNegative("cohesion of the joint", cohesion, "Pa");
        Require.friction(friction);
    }
}
