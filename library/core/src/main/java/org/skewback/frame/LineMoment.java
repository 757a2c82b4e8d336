package org.skewback.frame;

/**
 * A moment per length along a member or a part of it, changing linearly.
 *
 * @param member member loaded
 * @param from where it begins, distance from the start of the flexible part, m
 * @param to where it ends, m; infinite for the end of the member
 * @param atFrom intensity where it begins, N·m/m
 * @param atTo intensity where it ends, N·m/m
 * @param axes axes in which both are given: global or local
 */
public record LineMoment(
        String member, double from, double to, Vector atFrom, Vector atTo, LoadAxes axes)
        implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member loaded
     * @param from where it begins, distance from the start of the flexible part, m
     * @param to where it ends, m; infinite for the end of the member
     * @param atFrom intensity where it begins, N·m/m
     * @param atTo intensity where it ends, N·m/m
     * @param axes axes in which both are given: global or local
     * @throws IllegalArgumentException if it begins before the member, ends before it begins, or the axes are projected
     */
    public LineMoment {
        Require.notNegative("begin of a moment on member " + member, from, "m");
        if (!(to > from)) {
            throw Require.refused(
                    "end of a moment on member " + member, to, "m", "more than its begin, " + from);
        }
        if (axes == LoadAxes.PROJECTED) {
            throw new IllegalArgumentException(
                    "axes of a moment on member "
                            + member
                            + " are projected; allowed are global and local.");
        }
    }
}
