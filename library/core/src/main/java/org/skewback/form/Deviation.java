package org.skewback.form;

import java.util.TreeSet;

/**
 * A vertical distance between two lines, or between the line of thrust and the axis, and where it
 * is.
 *
 * @param x position from the left springing, m
 * @param value distance, m, with its sign
 */
public record Deviation(double x, double value) {

    /**
     * Finds the largest vertical gap between two axes of the same span.
     *
     * <p>The gap is sampled at 96 positions between each two breaks and refined there; its position
     * is good to about 1e-8 of the span, its size to rounding.
     *
     * @param upper the axis from which the gap counts as positive where it is the higher one
     * @param lower the other axis
     * @return the largest gap, {@code upper − lower}, in magnitude
     * @throws IllegalArgumentException if the spans differ
     */
    public static Deviation between(Axis upper, Axis lower) {
        if (upper.span() != lower.span()) {
            throw new IllegalArgumentException(
                    "The spans of the two axes are "
                            + upper.span()
                            + " m and "
                            + lower.span()
                            + " m; they must be the same.");
        }
        TreeSet<Double> breaks = new TreeSet<>(upper.breaks());
        breaks.addAll(lower.breaks());
        Extremum largest = Extremum.ofMagnitude(upper.span(), breaks, x -> upper.y(x) - lower.y(x));
        return new Deviation(largest.x(), largest.value());
    }
}
