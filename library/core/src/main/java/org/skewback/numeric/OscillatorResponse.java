package org.skewback.numeric;

/** Displacement, velocity and acceleration of one coordinate at equal steps of time. */
public final class OscillatorResponse {

    private final double step;
    private final double[] displacement;
    private final double[] velocity;
    private final double[] acceleration;

    OscillatorResponse(
            double step, double[] displacement, double[] velocity, double[] acceleration) {
        this.step = step;
        this.displacement = displacement;
        this.velocity = velocity;
        this.acceleration = acceleration;
    }

    /**
     * Gives the time step.
     *
     * @return Δt in s
     */
    public double step() {
        return step;
    }

    /**
     * Gives the displacements.
     *
     * @return u at 0, Δt, 2Δt …, a copy
     */
    public double[] displacement() {
        return displacement.clone();
    }

    /**
     * Gives the velocities.
     *
     * @return u̇ at 0, Δt, 2Δt …, a copy
     */
    public double[] velocity() {
        return velocity.clone();
    }

    /**
     * Gives the accelerations.
     *
     * @return ü at 0, Δt, 2Δt …, a copy
     */
    public double[] acceleration() {
        return acceleration.clone();
    }

    /**
     * Gives the largest size of the displacement at the steps.
     *
     * @return max|u|
     */
    public double peakDisplacement() {
        return Vectors.largest(displacement);
    }
}
