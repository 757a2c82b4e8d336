package org.skewback.rock;

import java.math.BigDecimal;

/**
 * On which side of a line, and of a circle, a point of the plan lies; never wrong by rounding.
 *
 * <p>The sign of a determinant is that of its value in doubles where this exceeds the greatest
 * error that rounding can have made, and else that of its exact value: every double is a decimal
 * fraction. Source: J. R. Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust
 * Geometric Predicates, Discrete and Computational Geometry 18 (1997), 305–363, error bounds A of
 * section 4 (from memory, widened).
 */
final class PlanePredicates {

    /** Half the distance from 1 to the next double. */
    private static final double ROUNDING = 0x1p-53;

    private static final double LINE_BOUND = 4 * ROUNDING;
    private static final double CIRCLE_BOUND = 12 * ROUNDING;

    private PlanePredicates() {}

    /** Positive where c lies to the left of the line from a to b, negative to the right, 0 on it. */
    static int side(SurveyPoint a, SurveyPoint b, SurveyPoint c) {
        double left = (a.x() - c.x()) * (b.y() - c.y());
        double right = (a.y() - c.y()) * (b.x() - c.x());
        double value = left - right;
        if (Math.abs(value) > LINE_BOUND * (Math.abs(left) + Math.abs(right))) {
            return value > 0 ? 1 : -1;
        }
        return minus(a.x(), c.x())
                .multiply(minus(b.y(), c.y()))
                .subtract(minus(a.y(), c.y()).multiply(minus(b.x(), c.x())))
                .signum();
    }

    /**
     * Positive where d lies within the circle through a, b and c, which go round to the left;
     * negative outside, 0 on it.
     */
    static int inCircle(SurveyPoint a, SurveyPoint b, SurveyPoint c, SurveyPoint d) {
        double ax = a.x() - d.x();
        double ay = a.y() - d.y();
        double bx = b.x() - d.x();
        double by = b.y() - d.y();
        double cx = c.x() - d.x();
        double cy = c.y() - d.y();
        double la = ax * ax + ay * ay;
        double lb = bx * bx + by * by;
        double lc = cx * cx + cy * cy;
        double value =
                la * (bx * cy - by * cx) + lb * (cx * ay - cy * ax) + lc * (ax * by - ay * bx);
        double size =
                la * (Math.abs(bx * cy) + Math.abs(by * cx))
                        + lb * (Math.abs(cx * ay) + Math.abs(cy * ax))
                        + lc * (Math.abs(ax * by) + Math.abs(ay * bx));
        if (Math.abs(value) > CIRCLE_BOUND * size) {
            return value > 0 ? 1 : -1;
        }
        return exact(a, b, c, d);
    }

    private static int exact(SurveyPoint a, SurveyPoint b, SurveyPoint c, SurveyPoint d) {
        BigDecimal ax = minus(a.x(), d.x());
        BigDecimal ay = minus(a.y(), d.y());
        BigDecimal bx = minus(b.x(), d.x());
        BigDecimal by = minus(b.y(), d.y());
        BigDecimal cx = minus(c.x(), d.x());
        BigDecimal cy = minus(c.y(), d.y());
        BigDecimal first = lifted(ax, ay).multiply(cross(bx, by, cx, cy));
        BigDecimal second = lifted(bx, by).multiply(cross(cx, cy, ax, ay));
        BigDecimal third = lifted(cx, cy).multiply(cross(ax, ay, bx, by));
        return first.add(second).add(third).signum();
    }

    private static BigDecimal lifted(BigDecimal x, BigDecimal y) {
        return x.multiply(x).add(y.multiply(y));
    }

    private static BigDecimal cross(BigDecimal ax, BigDecimal ay, BigDecimal bx, BigDecimal by) {
        return ax.multiply(by).subtract(ay.multiply(bx));
    }

    private static BigDecimal minus(double a, double b) {
        return new BigDecimal(a).subtract(new BigDecimal(b));
    }
}
