package org.skewback.form;

/**
 * A vertical load per plan length that is uniform or varies linearly over a range.
 *
 * @param from begin of the loaded range, m, not negative
 * @param to end of the loaded range, m, greater than {@code from}
 * @param atFrom load per plan length at the begin, N/m, positive downward
 * @param atTo load per plan length at the end, N/m, positive downward
 */
public record LineLoad(double from, double to, double atFrom, double atTo) implements VerticalLoad {

    /**
     * Makes a load per plan length.
     *
     * @param from begin of the loaded range, m, not negative
     * @param to end of the loaded range, m, greater than {@code from}
     * @param atFrom load per plan length at the begin, N/m, positive downward
     * @param atTo load per plan length at the end, N/m, positive downward
     * @throws IllegalArgumentException if a value is not finite or the range is empty
     */
    public LineLoad {
        requireRange(from, to);
        Require.finite("load per plan length at the begin of its range", atFrom, "N/m");
        Require.finite("load per plan length at the end of its range", atTo, "N/m");
    }

    @Override
    public LineLoad times(double factor) {
        Require.finite("factor", factor, "");
        return new LineLoad(from, to, atFrom * factor, atTo * factor);
    }

    static void requireRange(double from, double to) {
        Require.notNegative("begin of the loaded range", from, "m");
        Require.finite("end of the loaded range", to, "m");
        if (!(to > from)) {
            throw Require.refused(
                    "end of the loaded range", to, "m", "more than its begin, " + from + " m");
        }
    }
}
