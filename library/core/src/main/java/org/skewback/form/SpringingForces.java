package org.skewback.form;

/**
 * The forces with which the springings hold an arch under vertical load.
 *
 * @param thrust horizontal component at both springings, N, inward
 * @param leftVertical vertical component at the left springing, N, upward
 * @param rightVertical vertical component at the right springing, N, upward
 */
public record SpringingForces(double thrust, double leftVertical, double rightVertical) {

    /** Forces of an arch whose line of thrust passes both springings. */
    static SpringingForces of(SimpleBeam beam, double thrust, double rightLevel) {
        double tilt = thrust * rightLevel / beam.span();
        return new SpringingForces(thrust, beam.leftReaction() + tilt, beam.rightReaction() - tilt);
    }

    /**
     * Gives the force at the left springing.
     *
     * @return the force in N
     */
    public double left() {
        return Math.sqrt(thrust * thrust + leftVertical * leftVertical);
    }

    /**
     * Gives the force at the right springing.
     *
     * @return the force in N
     */
    public double right() {
        return Math.sqrt(thrust * thrust + rightVertical * rightVertical);
    }

    /**
     * Gives the inclination of the force at the left springing to the level.
     *
     * @return the angle in rad, positive when the force on the arch points inward and up
     */
    public double leftAngle() {
        return StrictMath.atan2(leftVertical, thrust);
    }

    /**
     * Gives the inclination of the force at the right springing to the level.
     *
     * @return the angle in rad, positive when the force on the arch points inward and up
     */
    public double rightAngle() {
        return StrictMath.atan2(rightVertical, thrust);
    }
}
