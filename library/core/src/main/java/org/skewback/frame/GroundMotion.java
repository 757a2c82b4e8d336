package org.skewback.frame;

import java.util.EnumMap;
import java.util.Map;

/**
 * An earthquake as it shakes all supports together: accelerations of the ground at equal steps, straight
 * between them.
 *
 * @param step time step Δt, s
 * @param accelerations for each direction accelerations at 0, Δt, 2Δt …, m/s²
 */
public record GroundMotion(double step, Map<Motion, double[]> accelerations) {

    /**
     * Checks the numbers.
     *
     * @param step time step Δt, s, greater than 0
     * @param accelerations for each direction accelerations, m/s²; as many in each, 2 or more
     * @throws IllegalArgumentException if there is no direction, one is a rotation, lengths differ or are
     *     less than 2, or a number is not finite
     */
    public GroundMotion {
        Require.positive("time step", step, "s");
        if (accelerations.isEmpty()) {
            throw new IllegalArgumentException(
                    "there is no acceleration; allowed is at least one direction with its record.");
        }
        Map<Motion, double[]> copy = new EnumMap<>(Motion.class);
        int length = accelerations.values().iterator().next().length;
        accelerations.forEach(
                (axis, record) -> {
                    requireAxis(axis);
                    requireRecord(record, length);
                    copy.put(axis, record.clone());
                });
        accelerations = copy;
    }

    /**
     * Makes a motion along one axis.
     *
     * @param step time step Δt, s, greater than 0
     * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
     * @param accelerations accelerations at 0, Δt, 2Δt …, m/s²
     * @return the motion
     * @throws IllegalArgumentException if the axis is one of rotation or a number is out of range
     */
    public static GroundMotion along(double step, Motion axis, double... accelerations) {
        return new GroundMotion(step, Map.of(axis, accelerations));
    }

    /**
     * Gives the records.
     *
     * @return accelerations at 0, Δt, 2Δt …, m/s², by axis
     */
    @Override
    public Map<Motion, double[]> accelerations() {
        Map<Motion, double[]> copy = new EnumMap<>(Motion.class);
        accelerations.forEach((axis, record) -> copy.put(axis, record.clone()));
        return copy;
    }

    /**
     * Gives the number of times.
     *
     * @return accelerations in each direction
     */
    public int size() {
        return accelerations.values().iterator().next().length;
    }

    static void requireAxis(Motion axis) {
        if (axis.isRotation()) {
            throw new IllegalArgumentException(
                    "direction of the ground is " + axis + "; allowed are along x, y and z.");
        }
    }

    static void requireRecord(double[] record, int length) {
        if (record.length < 2 || record.length != length) {
            throw new IllegalArgumentException(
                    "a record has "
                            + record.length
                            + " accelerations beside "
                            + length
                            + "; allowed are as many in all, at least 2.");
        }
        for (double value : record) {
            Require.finite("acceleration of the ground", value, "m/s²");
        }
    }

    /** Displacement from rest under accelerations that run straight from step to step. */
    static double[] displacement(double[] record, double step) {
        double[] u = new double[record.length];
        double velocity = 0;
        for (int n = 1; n < u.length; n++) {
            double a = record[n - 1];
            double b = record[n];
            u[n] = u[n - 1] + step * velocity + step * step * (2 * a + b) / 6;
            velocity += step * (a + b) / 2;
        }
        return u;
    }
}
