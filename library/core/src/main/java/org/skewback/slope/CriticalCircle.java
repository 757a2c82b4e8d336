package org.skewback.slope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Stop;

/**
 * The slip circle of least factor of safety in a window.
 *
 * <p>A grid of circles is tried: each from a left end on the ground to a right end, its arc from
 * nearly straight to nearly upright at the upper end. From the best places of the grid, apart from
 * each other, a pattern search goes on by halving steps (R. Hooke and T. A. Jeeves, Journal of the
 * ACM 8, 1961), so that the least factor found hardly depends on the grid. Circles that rise above
 * the ground, or for which the method has no meaning or no convergence, are passed over and counted.
 * Where a circle passed over has a lower factor by {@link SliceMethod#BISHOP} than the least found,
 * the search throws: most often the upper end is pulled, and a tension crack belongs in the section.
 *
 * @param circle the circle
 * @param left x of its left end, m
 * @param right x of its right end, m
 * @param method the method
 * @param factor least factor of safety
 * @param tried circles of the grid
 * @param passedOver circles of the grid without a factor
 * @param atEdge whether an end of the circle lies at the edge of the window, so that a wider one may
 *     hold a lower factor
 * @param slices number of slices, about
 */
public record CriticalCircle(
        SlipCircle circle,
        double left,
        double right,
        SliceMethod method,
        double factor,
        long tried,
        long passedOver,
        boolean atEdge,
        int slices) {

    private static final double TOLERANCE = 1e-10;
    private static final double ROUGH = 1e-6;

    /** Places of the grid from which the search goes on. */
    private static final int STARTS = 6;

    private static final double LAST_STEP = 1e-6;

    /**
     * Searches on the thread that asks.
     *
     * @param section the section
     * @param window where to look
     * @param method the method
     * @return the circle of least factor
     * @throws IllegalArgumentException if the window reaches beyond the ground line
     * @throws NotConvergedException if no circle of the grid has a factor, or one without a factor by
     *     this method has a lower one by Bishop
     */
    public static CriticalCircle search(
            SlopeSection section, SearchWindow window, SliceMethod method) {
        return search(section, window, method, 1, Stop.onInterrupt());
    }

    /**
     * Searches on a number of threads; the result is the same for any number.
     *
     * @param section the section
     * @param window where to look
     * @param method the method
     * @param threads number of threads, 1 for the one that asks, more for the common pool
     * @param stop asked now and then
     * @return the circle of least factor
     * @throws IllegalArgumentException if the window reaches beyond the ground line
     * @throws NotConvergedException if no circle of the grid has a factor, or one without a factor by
     *     this method has a lower one by Bishop
     */
    public static CriticalCircle search(
            SlopeSection section, SearchWindow window, SliceMethod method, int threads, Stop stop) {
        Require.atLeast("number of threads", threads, 1);
        ProfileLine ground = section.ground();
        if (window.leftFrom() < ground.left() || window.rightTo() > ground.right()) {
            throw new IllegalArgumentException(
                    "The search window reaches from "
                            + window.leftFrom()
                            + " m to "
                            + window.rightTo()
                            + " m; allowed is the ground line, from "
                            + ground.left()
                            + " m to "
                            + ground.right()
                            + " m.");
        }
        SectionModel model = new SectionModel(section);
        int columns = window.leftSteps();
        Row[] rows = new Row[columns];
        IntStream places = IntStream.range(0, columns);
        (threads == 1 ? places : places.parallel())
                .forEach(
                        i -> {
                            stop.check();
                            rows[i] = new Trial(model, window, method, ROUGH).row(i);
                        });
        List<Place> found = new ArrayList<>();
        long passed = 0;
        double unsolved = Double.POSITIVE_INFINITY;
        for (Row row : rows) {
            found.addAll(row.places());
            passed += row.passedOver();
            unsolved = Math.min(unsolved, row.unsolved());
        }
        long all = (long) columns * window.rightSteps() * window.depths();
        if (found.isEmpty()) {
            throw new NotConvergedException(
                    "None of " + all + " circles in the search window has a factor of safety.");
        }
        Trial trial = new Trial(model, window, method, TOLERANCE);
        Place best = found.get(0);
        for (Place start : apart(found, window)) {
            stop.check();
            Place end = trial.follow(start);
            if (end.factor() < best.factor()) {
                best = end;
            }
        }
        if (unsolved < best.factor()) {
            throw new NotConvergedException(
                    "The least factor of safety found by "
                            + method
                            + " is "
                            + best.factor()
                            + ", but a circle without a factor by it has "
                            + unsolved
                            + " by BISHOP. Its upper end is likely pulled: put a tension crack in"
                            + " the section.");
        }
        return trial.result(best, all, passed);
    }

    /** Circles tried from one left end; the least factor by Bishop of those without one. */
    private record Row(List<Place> places, long passedOver, double unsolved) {}

    /** A circle by parts of the ranges of its ends and of its arc, and its factor. */
    private record Place(double left, double right, double arc, double factor) {}

    /** The best places, no two within three steps of the grid of each other. */
    private static List<Place> apart(List<Place> found, SearchWindow window) {
        List<Place> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingDouble(Place::factor));
        List<Place> starts = new ArrayList<>();
        double near = 3.0;
        for (Place place : sorted) {
            boolean alone = true;
            for (Place other : starts) {
                alone &=
                        Math.abs(place.left() - other.left()) * window.leftSteps() > near
                                || Math.abs(place.right() - other.right()) * window.rightSteps()
                                        > near;
            }
            if (alone) {
                starts.add(place);
            }
            if (starts.size() == STARTS) {
                break;
            }
        }
        return starts;
    }

    /** Tries circles, with slices of its own to fill. */
    private static final class Trial {

        private final SectionModel model;
        private final SearchWindow window;
        private final SliceMethod method;
        private final Slices slices;
        private final SliceSolver solver;
        private Slices.Status status = Slices.Status.NO_CROSSING;

        Trial(SectionModel model, SearchWindow window, SliceMethod method, double tolerance) {
            this.model = model;
            this.window = window;
            this.method = method;
            slices = new Slices(model, window.slices());
            solver = new SliceSolver(slices, tolerance);
        }

        Row row(int i) {
            List<Place> places = new ArrayList<>();
            long passed = 0;
            double unsolved = Double.POSITIVE_INFINITY;
            double left = i / (window.leftSteps() - 1.0);
            for (int j = 0; j < window.rightSteps(); j++) {
                double right = j / (window.rightSteps() - 1.0);
                Place best = null;
                for (int k = 0; k < window.depths(); k++) {
                    double arc = (k + 0.5) / window.depths();
                    double factor = factor(left, right, arc);
                    if (Double.isNaN(factor)) {
                        passed++;
                        unsolved = Math.min(unsolved, unsolved(left, right, arc));
                    } else if (best == null || factor < best.factor()) {
                        best = new Place(left, right, arc, factor);
                    }
                }
                if (best != null) {
                    places.add(best);
                }
            }
            return new Row(places, passed, unsolved);
        }

        /** The circle through two places of the ground whose arc is a part of what can be. */
        private SlipCircle circle(double left, double right, double arc) {
            double x0 = window.left(left);
            double x1 = window.right(right);
            double y0 = model.ground.y(x0);
            double y1 = model.ground.y(x1);
            double dx = x1 - x0;
            double dy = y1 - y0;
            double chord = Math.sqrt(dx * dx + dy * dy);
            double half = arc * StrictMath.atan2(dx, Math.abs(dy));
            double radius = chord / (2 * StrictMath.sin(half));
            double up = radius * StrictMath.cos(half) / chord;
            return new SlipCircle((x0 + x1) / 2 - dy * up, (y0 + y1) / 2 + dx * up, radius);
        }

        private double factor(double left, double right, double arc) {
            SlipCircle circle = circle(left, right, arc);
            status = slices.fill(circle, window.left(left), window.right(right));
            return status == Slices.Status.GOOD
                    ? SliceAnalysis.solve(solver, method, circle)
                    : Double.NaN;
        }

        /** The factor by Bishop of a circle that lies in the ground and this method has none for. */
        private double unsolved(double left, double right, double arc) {
            if (method.circlesOnly() || status != Slices.Status.GOOD) {
                return Double.POSITIVE_INFINITY;
            }
            double factor = solver.bishop(circle(left, right, arc));
            return Double.isNaN(factor) ? Double.POSITIVE_INFINITY : factor;
        }

        /** Pattern search: steps along each coordinate, then on in the direction that helped. */
        Place follow(Place start) {
            Place best = at(coordinates(start));
            if (Double.isNaN(best.factor())) {
                best = start;
            }
            double[] step = {
                1.0 / window.leftSteps(), 1.0 / window.rightSteps(), 0.5 / window.depths()
            };
            while (step[0] > LAST_STEP || step[1] > LAST_STEP || step[2] > LAST_STEP) {
                double[] before = coordinates(best);
                Place next = explore(best, step);
                if (next.factor() < best.factor()) {
                    double[] after = coordinates(next);
                    double[] onward = new double[3];
                    for (int i = 0; i < 3; i++) {
                        onward[i] = clamped(2 * after[i] - before[i], i);
                    }
                    best = next;
                    Place leap = explore(at(onward), step);
                    if (leap.factor() < best.factor()) {
                        best = leap;
                    }
                } else {
                    for (int i = 0; i < 3; i++) {
                        step[i] /= 2;
                    }
                }
            }
            return best;
        }

        private Place explore(Place from, double[] step) {
            Place best = from;
            for (int i = 0; i < 3; i++) {
                for (int side = -1; side <= 1; side += 2) {
                    double[] moved = coordinates(best);
                    moved[i] = clamped(moved[i] + side * step[i], i);
                    Place there = at(moved);
                    if (there.factor() < best.factor() || Double.isNaN(best.factor())) {
                        best = there;
                        break;
                    }
                }
            }
            return best;
        }

        private static double clamped(double value, int coordinate) {
            double least = coordinate == 2 ? 1e-3 : 0;
            double most = coordinate == 2 ? 1 - 1e-6 : 1;
            return Math.max(least, Math.min(most, value));
        }

        private static double[] coordinates(Place place) {
            return new double[] {place.left(), place.right(), place.arc()};
        }

        private Place at(double[] c) {
            return new Place(c[0], c[1], c[2], factor(c[0], c[1], c[2]));
        }

        CriticalCircle result(Place place, long tried, long passed) {
            boolean edge =
                    place.left() <= 0
                            || place.left() >= 1
                            || place.right() <= 0
                            || place.right() >= 1;
            return new CriticalCircle(
                    circle(place.left(), place.right(), place.arc()),
                    window.left(place.left()),
                    window.right(place.right()),
                    method,
                    place.factor(),
                    tried,
                    passed,
                    edge,
                    window.slices());
        }
    }

    /**
     * Cuts the ground above the circle into slices again, for another method or a table.
     *
     * @param section the section searched
     * @return the analysis
     * @throws IllegalArgumentException if the circle does not lie in the section's ground
     */
    public SliceAnalysis analysis(SlopeSection section) {
        return SliceAnalysis.between(section, circle, left, right, slices);
    }
}
