package org.skewback.form;

/**
 * The section of an arch that uses most of its kern.
 *
 * @param x position from the left springing, m
 * @param eccentricity distance of the force from the axis along the normal, m, positive above
 * @param allowed kern distance on that side, m
 */
public record KernCheck(double x, double eccentricity, double allowed) {

    /**
     * Gives how much of the kern is used.
     *
     * @return eccentricity over kern distance, without sign; 1 is the edge of the kern
     */
    public double use() {
        return Math.abs(eccentricity) / allowed;
    }

    /**
     * Says whether the force is inside the kern everywhere.
     *
     * @return true if no section uses more than its kern
     */
    public boolean inside() {
        return use() <= 1;
    }
}
