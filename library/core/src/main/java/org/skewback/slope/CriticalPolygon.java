package org.skewback.slope;

import org.skewback.numeric.NotConvergedException;

/**
 * A surface of any shape with a lower factor of safety than the circle it started from, found by
 * moving its corners.
 *
 * <p>The corners are moved up and down, the ends along the ground, one after the other by steps that
 * halve; a move counts if it lowers the factor and leaves the surface hollow upward, as a mass must
 * be that moves without tearing. It finds a low place near the start, not surely the lowest of all:
 * start from several surfaces where the ground has weak layers.
 *
 * @param surface the surface
 * @param method the method
 * @param factor its factor of safety
 */
public record CriticalPolygon(SlipPolygon surface, SliceMethod method, double factor) {

    private static final int ROUNDS = 400;
    private static final double LAST_STEP = 1e-4;

    /** Bend upward that is none but rounding where a side was halved. */
    private static final double ROUNDING = 1e-9;

    /**
     * Searches from a circle.
     *
     * @param section the section, without a tension crack
     * @param start a circle, with its ends
     * @param method a method for surfaces of any shape
     * @param corners number of corners, at least 4
     * @param slices number of slices, about, at least as many as corners
     * @return the surface found
     * @throws IllegalArgumentException if the method is for circles only, or a number is too small
     * @throws NotConvergedException if the start has no factor by this method
     */
    public static CriticalPolygon search(
            SlopeSection section,
            CriticalCircle start,
            SliceMethod method,
            int corners,
            int slices) {
        Require.atLeast("number of corners", corners, 4);
        Require.atLeast("number of slices", slices, corners);
        if (method.circlesOnly()) {
            throw new IllegalArgumentException(
                    "method is " + method + "; allowed is one for surfaces of any shape.");
        }
        if (section.crackDepth() > 0) {
            throw Require.refused(
                    "depth of the tension crack", section.crackDepth(), "m", "0 in this search");
        }
        Moves moves = new Moves(section, method, slices);
        double[] x = new double[corners];
        double[] y = new double[corners];
        for (int i = 0; i < corners; i++) {
            x[i] = start.left() + (start.right() - start.left()) * i / (corners - 1);
            y[i] = start.circle().low(x[i]);
        }
        y[0] = section.ground().y(x[0]);
        y[corners - 1] = section.ground().y(x[corners - 1]);
        double factor = moves.factor(x, y);
        if (Double.isNaN(factor)) {
            throw new NotConvergedException(
                    "The circle " + start.circle() + " has no factor of safety by " + method + ".");
        }
        return moves.descend(x, y, factor, 20);
    }

    /**
     * Searches on with a corner more in the middle of every side, so that the surface can bend where
     * it could not before.
     *
     * @param section the section that was searched
     * @param slices number of slices, about, at least as many as there are corners then
     * @return a surface with a factor that is as low or lower but for what other slices make of it
     * @throws IllegalArgumentException if there are too few slices
     * @throws NotConvergedException if the surface has no factor in these slices
     */
    public CriticalPolygon refined(SlopeSection section, int slices) {
        ProfileLine line = surface.line();
        int corners = 2 * line.size() - 1;
        Require.atLeast("number of slices", slices, corners);
        double[] x = new double[corners];
        double[] y = new double[corners];
        for (int i = 0; i < corners; i++) {
            x[i] = (line.pointX(i / 2) + line.pointX((i + 1) / 2)) / 2;
            y[i] = (line.pointY(i / 2) + line.pointY((i + 1) / 2)) / 2;
        }
        Moves moves = new Moves(section, method, slices);
        double start = moves.factor(x, y);
        if (Double.isNaN(start)) {
            throw new NotConvergedException(
                    "The surface " + surface + " has no factor of safety by " + method + ".");
        }
        return moves.descend(x, y, start, 10.0 * corners);
    }

    /** Moves of the corners. */
    private static final class Moves {

        private final SlopeSection section;
        private final SliceMethod method;
        private final Slices slices;
        private final SliceSolver solver;

        Moves(SlopeSection section, SliceMethod method, int count) {
            this.section = section;
            this.method = method;
            slices = new Slices(new SectionModel(section), count);
            solver = new SliceSolver(slices, 1e-10);
        }

        double factor(double[] x, double[] y) {
            double[][] points = new double[x.length][];
            for (int i = 0; i < x.length; i++) {
                if (i > 0 && !(x[i] > x[i - 1])) {
                    return Double.NaN;
                }
                if (i > 0
                        && i + 1 < x.length
                        && (y[i] - y[i - 1]) * (x[i + 1] - x[i])
                                        - (y[i + 1] - y[i]) * (x[i] - x[i - 1])
                                > ROUNDING * (x[i + 1] - x[i]) * (x[i] - x[i - 1])) {
                    return Double.NaN;
                }
                points[i] = new double[] {x[i], y[i]};
            }
            SlipPolygon polygon = SlipPolygon.through(points);
            return slices.fill(polygon) == Slices.Status.GOOD
                    ? SliceAnalysis.solve(solver, method, polygon)
                    : Double.NaN;
        }

        /** Moves corners by halving steps, the first a part of the size, until they are small. */
        CriticalPolygon descend(double[] x, double[] y, double start, double part) {
            int last = x.length - 1;
            double size = x[last] - x[0];
            double step = size / part;
            double factor = start;
            for (int round = 0; round < ROUNDS && step > LAST_STEP * size; round++) {
                double after = round(x, y, step, factor);
                if (factor - after < 1e-7 * factor) {
                    step /= 2;
                }
                factor = after;
            }
            double[][] points = new double[x.length][];
            for (int i = 0; i < x.length; i++) {
                points[i] = new double[] {x[i], y[i]};
            }
            return new CriticalPolygon(SlipPolygon.through(points), method, factor);
        }

        /** Tries every corner both ways; gives the factor then. */
        double round(double[] x, double[] y, double step, double start) {
            double factor = start;
            int last = x.length - 1;
            for (int i = 0; i <= last; i++) {
                for (int side = -1; side <= 1; side += 2) {
                    double oldX = x[i];
                    double oldY = y[i];
                    if (i == 0 || i == last) {
                        x[i] = within(oldX + side * step);
                        y[i] = section.ground().y(x[i]);
                    } else {
                        y[i] = oldY + side * step / 2;
                    }
                    double there = factor(x, y);
                    if (there < factor) {
                        factor = there;
                    } else {
                        x[i] = oldX;
                        y[i] = oldY;
                    }
                }
            }
            return factor;
        }

        private double within(double x) {
            return Math.max(section.ground().left(), Math.min(section.ground().right(), x));
        }
    }
}
