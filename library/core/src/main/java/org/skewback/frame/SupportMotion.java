package org.skewback.frame;

import java.util.List;

/**
 * An earthquake as it shakes some supports: accelerations at equal steps, straight between them, from
 * rest.
 *
 * @param nodes nodes whose supports move together
 * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
 * @param accelerations accelerations at 0, Δt, 2Δt …, m/s²
 */
@SuppressWarnings("ArrayRecordComponent") // copied in and out
public record SupportMotion(List<String> nodes, Motion axis, double[] accelerations) {

    /**
     * Checks the numbers.
     *
     * @param nodes nodes whose supports move together
     * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
     * @param accelerations accelerations at 0, Δt, 2Δt …, m/s², 2 or more
     * @throws IllegalArgumentException if the axis is one of rotation or a number is not finite
     */
    public SupportMotion {
        nodes = List.copyOf(nodes);
        GroundMotion.requireAxis(axis);
        GroundMotion.requireRecord(accelerations, accelerations.length);
        accelerations = accelerations.clone();
    }

    /**
     * Gives the record.
     *
     * @return accelerations at 0, Δt, 2Δt …, m/s²
     */
    @Override
    public double[] accelerations() {
        return accelerations.clone();
    }
}
