package org.skewback.slope;

/**
 * Where a search looks for slip circles: the ranges of both ends on the ground, and how fine.
 *
 * @param leftFrom least x of the left end, m
 * @param leftTo greatest x of the left end, m
 * @param rightFrom least x of the right end, m
 * @param rightTo greatest x of the right end, m
 * @param leftSteps number of left ends tried
 * @param rightSteps number of right ends tried
 * @param depths number of circles tried between each two ends
 * @param slices number of slices, about
 */
public record SearchWindow(
        double leftFrom,
        double leftTo,
        double rightFrom,
        double rightTo,
        int leftSteps,
        int rightSteps,
        int depths,
        int slices) {

    /**
     * Makes a window.
     *
     * @param leftFrom least x of the left end, m
     * @param leftTo greatest x of the left end, m, more than the least
     * @param rightFrom least x of the right end, m, at least the greatest of the left
     * @param rightTo greatest x of the right end, m, more than the least
     * @param leftSteps number of left ends tried, at least 2
     * @param rightSteps number of right ends tried, at least 2
     * @param depths number of circles tried between each two ends, at least 2
     * @param slices number of slices, about, at least 3
     * @throws IllegalArgumentException if a range is empty, the ranges overlap, or a number is too
     *     small
     */
    public SearchWindow {
        Require.finite("least x of the left end", leftFrom, "m");
        Require.positive("width of the range of left ends", leftTo - leftFrom, "m");
        Require.notNegative("gap between the ranges of ends", rightFrom - leftTo, "m");
        Require.positive("width of the range of right ends", rightTo - rightFrom, "m");
        Require.atLeast("number of left ends", leftSteps, 2);
        Require.atLeast("number of right ends", rightSteps, 2);
        Require.atLeast("number of circles between two ends", depths, 2);
        Require.atLeast("number of slices", slices, 3);
    }

    /**
     * Makes a window of 40 × 40 ends with 20 circles each, of 50 slices: 32 000 circles.
     *
     * @param leftFrom least x of the left end, m
     * @param leftTo greatest x of the left end, m, more than the least
     * @param rightFrom least x of the right end, m, at least the greatest of the left
     * @param rightTo greatest x of the right end, m, more than the least
     * @return the window
     * @throws IllegalArgumentException if a range is empty or the ranges overlap
     */
    public static SearchWindow of(
            double leftFrom, double leftTo, double rightFrom, double rightTo) {
        return new SearchWindow(leftFrom, leftTo, rightFrom, rightTo, 40, 40, 20, 50);
    }

    /**
     * Gives the same window tried with another number of ends and circles.
     *
     * @param left number of left ends tried, at least 2
     * @param right number of right ends tried, at least 2
     * @param circles number of circles tried between each two ends, at least 2
     * @return the window
     * @throws IllegalArgumentException if a number is too small
     */
    public SearchWindow tried(int left, int right, int circles) {
        return new SearchWindow(leftFrom, leftTo, rightFrom, rightTo, left, right, circles, slices);
    }

    /**
     * Gives the same window with another number of slices.
     *
     * @param count number of slices, about, at least 3
     * @return the window
     * @throws IllegalArgumentException if the number is too small
     */
    public SearchWindow sliced(int count) {
        return new SearchWindow(
                leftFrom, leftTo, rightFrom, rightTo, leftSteps, rightSteps, depths, count);
    }

    double left(double part) {
        return leftFrom + (leftTo - leftFrom) * part;
    }

    double right(double part) {
        return rightFrom + (rightTo - rightFrom) * part;
    }
}
