package org.skewback.slope;

import java.util.List;

/** A line in a section from left to right: ground, the bottom of a layer, a water table. */
public final class ProfileLine {

    private final double[] x;
    private final double[] y;

    private ProfileLine(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * Makes a line through points; beyond its ends it goes on level.
     *
     * @param points points as {@code {x, y}}, m, x ascending, at least two
     * @return the line
     * @throws IllegalArgumentException if there are fewer than two points, a point has not two
     *     finite numbers, or x does not ascend
     */
    public static ProfileLine through(double[]... points) {
        Require.atLeast("number of points of a line", points.length, 2);
        double[] x = new double[points.length];
        double[] y = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            if (points[i].length != 2) {
                throw new IllegalArgumentException(
                        "point "
                                + (i + 1)
                                + " of a line has "
                                + points[i].length
                                + " numbers; allowed is x and y.");
            }
            x[i] = Require.finite("x of point " + (i + 1), points[i][0], "m");
            y[i] = Require.finite("y of point " + (i + 1), points[i][1], "m");
            if (i > 0 && !(x[i] > x[i - 1])) {
                throw Require.refused(
                        "x of point " + (i + 1),
                        x[i],
                        "m",
                        "more than the one before, " + x[i - 1] + " m");
            }
        }
        return new ProfileLine(x, y);
    }

    /**
     * Makes a line through points given by lists.
     *
     * @param x positions, m, ascending, at least two
     * @param y heights, m, one for each position
     * @return the line
     * @throws IllegalArgumentException as for {@link #through}, or if the lists differ in length
     */
    public static ProfileLine of(List<Double> x, List<Double> y) {
        if (x.size() != y.size()) {
            throw new IllegalArgumentException(
                    "number of heights is "
                            + y.size()
                            + "; allowed is one for each of "
                            + x.size()
                            + " positions.");
        }
        double[][] points = new double[x.size()][];
        for (int i = 0; i < points.length; i++) {
            points[i] = new double[] {x.get(i), y.get(i)};
        }
        return through(points);
    }

    /**
     * Gives the height of the line.
     *
     * @param at position, m
     * @return height, m
     */
    public double y(double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = 1;
        while (x[i] < at) {
            i++;
        }
        return y[i - 1] + (y[i] - y[i - 1]) * ((at - x[i - 1]) / (x[i] - x[i - 1]));
    }

    /**
     * Gives the number of points.
     *
     * @return count, at least 2
     */
    public int size() {
        return x.length;
    }

    /**
     * Gives the position of a point.
     *
     * @param point number of the point, from 0
     * @return x, m
     */
    public double pointX(int point) {
        return x[point];
    }

    /**
     * Gives the height of a point.
     *
     * @param point number of the point, from 0
     * @return y, m
     */
    public double pointY(int point) {
        return y[point];
    }

    double left() {
        return x[0];
    }

    double right() {
        return x[x.length - 1];
    }

    /** The line seen from behind, x turned into −x. */
    ProfileLine mirrored() {
        int n = x.length;
        double[] otherX = new double[n];
        double[] otherY = new double[n];
        for (int i = 0; i < n; i++) {
            otherX[i] = -x[n - 1 - i];
            otherY[i] = y[n - 1 - i];
        }
        return new ProfileLine(otherX, otherY);
    }
}
