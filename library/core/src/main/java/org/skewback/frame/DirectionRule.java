package org.skewback.frame;

/** How the effects of ground motion along several axes are combined. */
public enum DirectionRule {
    /** Square root of the sum of squares (EN 1998-1:2004, 4.3.3.5.1(2)b, from memory). */
    SUM_OF_SQUARES,
    /** All of one axis with 30 % of the others, whichever is largest (4.3.3.5.1(3), from memory). */
    THIRTY_PERCENT;

    /** Combines values that are not negative. */
    double combine(double[] byAxis) {
        double squares = 0;
        double largest = 0;
        double sum = 0;
        for (double value : byAxis) {
            squares += value * value;
            largest = Math.max(largest, value);
            sum += value;
        }
        return this == SUM_OF_SQUARES ? Math.sqrt(squares) : largest + 0.3 * (sum - largest);
    }
}
