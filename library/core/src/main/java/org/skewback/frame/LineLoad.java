package org.skewback.frame;

/**
 * A force per length along a member or a part of it, changing linearly.
 *
 * @param member member loaded
 * @param from where it begins, distance from the start of the flexible part, m
 * @param to where it ends, m; infinite for the end of the member
 * @param atFrom intensity where it begins, N/m
 * @param atTo intensity where it ends, N/m
 * @param axes axes in which both are given
 */
public record LineLoad(
        String member, double from, double to, Vector atFrom, Vector atTo, LoadAxes axes)
        implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member loaded
     * @param from where it begins, distance from the start of the flexible part, m
     * @param to where it ends, m; infinite for the end of the member
     * @param atFrom intensity where it begins, N/m
     * @param atTo intensity where it ends, N/m
     * @param axes axes in which both are given
     * @throws IllegalArgumentException if it begins before the member or ends before it begins
     */
    public LineLoad {
        Require.notNegative("begin of a load on member " + member, from, "m");
        if (!(to > from)) {
            throw Require.refused(
                    "end of a load on member " + member, to, "m", "more than its begin, " + from);
        }
    }

    /**
     * Makes a uniform load all along a member.
     *
     * @param member member loaded
     * @param intensity force per length, N/m
     * @param axes axes in which it is given
     * @return the load
     */
    public static LineLoad uniform(String member, Vector intensity, LoadAxes axes) {
        return linear(member, intensity, intensity, axes);
    }

    /**
     * Makes a load all along a member that changes linearly.
     *
     * @param member member loaded
     * @param atStart intensity at its start, N/m
     * @param atEnd intensity at its end, N/m
     * @param axes axes in which it is given
     * @return the load
     */
    public static LineLoad linear(String member, Vector atStart, Vector atEnd, LoadAxes axes) {
        return new LineLoad(member, 0, Double.POSITIVE_INFINITY, atStart, atEnd, axes);
    }
}
