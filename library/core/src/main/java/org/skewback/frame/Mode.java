package org.skewback.frame;

/** One natural vibration. */
public final class Mode {

    private final double eigenvalue;
    private final double residual;
    private final double[] vector;
    private final double[] participation;
    private final ModeShape shape;

    Mode(
            double eigenvalue,
            double residual,
            double[] vector,
            double[] participation,
            ModeShape shape) {
        this.eigenvalue = Math.max(0, eigenvalue);
        this.residual = residual;
        this.vector = vector;
        this.participation = participation;
        this.shape = shape;
    }

    /**
     * Gives the circular frequency.
     *
     * @return ω, rad/s; 0 to rounding where the structure is free to move
     */
    public double circularFrequency() {
        return Math.sqrt(eigenvalue);
    }

    /**
     * Gives the frequency.
     *
     * @return ω/2π, Hz
     */
    public double frequency() {
        return circularFrequency() / (2 * Math.PI);
    }

    /**
     * Gives the period.
     *
     * @return 1/frequency, s
     */
    public double period() {
        return 1 / frequency();
    }

    /**
     * Gives the error of the pair of frequency and shape.
     *
     * @return bound of the relative error of ω² from the iteration
     */
    public double residual() {
        return residual;
    }

    /**
     * Gives the shape.
     *
     * @return movements, of no particular size
     */
    public ModeShape shape() {
        return shape;
    }

    /**
     * Gives the participation factor Γ = φᵀM r for ground motion along a global axis, φ scaled to φᵀM φ
     * = 1. Its sign is that of the shape.
     *
     * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
     * @return Γ, √kg
     * @throws IllegalArgumentException if the axis is one of rotation
     */
    public double participation(Motion axis) {
        if (axis.isRotation()) {
            throw new IllegalArgumentException(
                    "direction of the ground is " + axis + "; allowed are along x, y and z.");
        }
        return participation[axis.index()];
    }

    /**
     * Gives the effective modal mass Γ².
     *
     * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
     * @return mass that takes part along the axis, kg
     * @throws IllegalArgumentException if the axis is one of rotation
     */
    public double effectiveMass(Motion axis) {
        double factor = participation(axis);
        return factor * factor;
    }

    /** φ with φᵀM φ = 1; the largest movement of the shape is positive. */
    double[] vector() {
        return vector;
    }
}
