package org.skewback.rock;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** A line across a cross-section from left to right: the ground, or a design line. */
public final class SectionLine {

    private final List<Double> offsets;
    private final List<Double> levels;

    private SectionLine(List<Double> offsets, List<Double> levels) {
        this.offsets = List.copyOf(offsets);
        this.levels = List.copyOf(levels);
    }

    /**
     * Makes a line.
     *
     * @param offsets distances across, m, ascending, at least two
     * @param levels levels, m, one for each
     * @return the line
     * @throws IllegalArgumentException if the lists differ in length, hold too few or not finite
     *     values, or distances do not ascend
     */
    public static SectionLine of(List<Double> offsets, List<Double> levels) {
        Require.atLeast("number of points of a line", offsets.size(), 2);
        if (offsets.size() != levels.size()) {
            throw new IllegalArgumentException(
                    "number of levels is "
                            + levels.size()
                            + "; allowed is one for each of "
                            + offsets.size()
                            + " distances.");
        }
        for (int i = 0; i < offsets.size(); i++) {
            Require.finite("distance across of point " + (i + 1), offsets.get(i), "m");
            Require.finite("level of point " + (i + 1), levels.get(i), "m");
            if (i > 0 && !(offsets.get(i) > offsets.get(i - 1))) {
                throw Require.refused(
                        "distance across of point " + (i + 1),
                        offsets.get(i),
                        "m",
                        "more than the one before, " + offsets.get(i - 1) + " m");
            }
        }
        return new SectionLine(offsets, levels);
    }

    /**
     * Gives the level of the line.
     *
     * @param offset distance across, m, within the line
     * @return level, m
     * @throws IllegalArgumentException if the distance lies beyond the line
     */
    public double level(double offset) {
        Require.within("distance across", offset, left(), right(), "m");
        int i = 1;
        while (offsets.get(i) < offset) {
            i++;
        }
        double part = (offset - offsets.get(i - 1)) / (offsets.get(i) - offsets.get(i - 1));
        return levels.get(i - 1) + part * (levels.get(i) - levels.get(i - 1));
    }

    /**
     * Gives the left end.
     *
     * @return distance across, m
     */
    public double left() {
        return offsets.get(0);
    }

    /**
     * Gives the right end.
     *
     * @return distance across, m
     */
    public double right() {
        return offsets.get(offsets.size() - 1);
    }

    /**
     * Gives the distances across of its points.
     *
     * @return distances, m, ascending
     */
    public List<Double> offsets() {
        return offsets;
    }

    /**
     * Gives the levels of its points.
     *
     * @return levels, m
     */
    public List<Double> levels() {
        return levels;
    }

    /**
     * Gives the inclination of each piece of the line.
     *
     * @return angles to the level, rad, positive where the line rises to the right
     */
    public List<Double> slopes() {
        List<Double> slopes = new ArrayList<>();
        for (int i = 1; i < offsets.size(); i++) {
            slopes.add(
                    StrictMath.atan2(
                            levels.get(i) - levels.get(i - 1),
                            offsets.get(i) - offsets.get(i - 1)));
        }
        return slopes;
    }

    /**
     * Gives the line half-way to another: of the mean of both levels wherever both are.
     *
     * @param other another line
     * @return the line between, over what they have in common
     * @throws IllegalArgumentException if they have nothing in common
     */
    public SectionLine between(SectionLine other) {
        double from = Math.max(left(), other.left());
        double to = Math.min(right(), other.right());
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "The lines have no distances across in common: "
                            + left()
                            + " to "
                            + right()
                            + " m and "
                            + other.left()
                            + " to "
                            + other.right()
                            + " m.");
        }
        SortedSet<Double> places = new TreeSet<>(offsets);
        places.addAll(other.offsets);
        List<Double> at = new ArrayList<>();
        List<Double> mean = new ArrayList<>();
        for (double offset : places) {
            if (offset >= from && offset <= to) {
                at.add(offset);
                mean.add((level(offset) + other.level(offset)) / 2);
            }
        }
        return new SectionLine(at, mean);
    }
}
