package org.skewback.rock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A surface of plane triangles through points: the ground as surveyed, or as it is to be cut.
 *
 * <p>The triangles are those of B. Delaunay in plan, found without error of rounding. Between four
 * points on one circle, such as those of a square grid, either diagonal is right; the same points
 * give the same one. Edges of the ground, such as crests and toes, are kept only where points stand
 * close enough along them: survey them closer than the points beside them.
 */
public final class GroundSurface {

    private final List<Triangle> triangles;

    private GroundSurface(List<Triangle> triangles) {
        this.triangles = List.copyOf(triangles);
    }

    /**
     * A triangle of the surface, its corners going round to the left as seen from above.
     *
     * @param first first corner
     * @param second second corner
     * @param third third corner
     */
    public record Triangle(SurveyPoint first, SurveyPoint second, SurveyPoint third) {

        /**
         * Gives its area in plan.
         *
         * @return area, m²
         */
        public double planArea() {
            return ((second.x() - first.x()) * (third.y() - first.y())
                            - (second.y() - first.y()) * (third.x() - first.x()))
                    / 2;
        }

        private double longest() {
            return Math.max(
                    distance(first, second),
                    Math.max(distance(second, third), distance(third, first)));
        }

        private double least(boolean alongX) {
            return alongX
                    ? Math.min(first.x(), Math.min(second.x(), third.x()))
                    : Math.min(first.y(), Math.min(second.y(), third.y()));
        }

        private double greatest(boolean alongX) {
            return alongX
                    ? Math.max(first.x(), Math.max(second.x(), third.x()))
                    : Math.max(first.y(), Math.max(second.y(), third.y()));
        }

        /** Level of its plane. */
        private double level(double x, double y) {
            double alongSecond =
                    (x - first.x()) * (third.y() - first.y())
                            - (y - first.y()) * (third.x() - first.x());
            double alongThird =
                    (second.x() - first.x()) * (y - first.y())
                            - (second.y() - first.y()) * (x - first.x());
            return first.level()
                    + (alongSecond * (second.level() - first.level())
                                    + alongThird * (third.level() - first.level()))
                            / (2 * planArea());
        }

        private boolean holds(SurveyPoint at) {
            return PlanePredicates.side(first, second, at) >= 0
                    && PlanePredicates.side(second, third, at) >= 0
                    && PlanePredicates.side(third, first, at) >= 0;
        }
    }

    /**
     * Volumes between two surfaces.
     *
     * @param cut volume where the first is above, m³
     * @param fill volume where it is below, m³
     * @param planArea area in plan that both cover, m²
     */
    public record Volumes(double cut, double fill, double planArea) {}

    /**
     * Lays the surface through points.
     *
     * @param points points, at least three, no two at one place in plan, not all on one line
     * @return the surface over the whole outline of the points
     * @throws IllegalArgumentException if there are fewer than three points, two stand at one place
     *     in plan, or all on one line
     */
    public static GroundSurface through(List<SurveyPoint> points) {
        Require.atLeast("number of points of a surface", points.size(), 3);
        List<SurveyPoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(SurveyPoint::x).thenComparingDouble(SurveyPoint::y));
        boolean flat = true;
        for (int i = 1; i < sorted.size(); i++) {
            SurveyPoint a = sorted.get(i - 1);
            SurveyPoint b = sorted.get(i);
            if (a.x() == b.x() && a.y() == b.y()) {
                throw new IllegalArgumentException(
                        "Two points stand at x = "
                                + a.x()
                                + " m, y = "
                                + a.y()
                                + " m, at levels "
                                + a.level()
                                + " m and "
                                + b.level()
                                + " m; allowed is one point at each place.");
            }
            flat &= i == 1 || PlanePredicates.side(sorted.get(0), sorted.get(1), b) == 0;
        }
        if (flat) {
            throw new IllegalArgumentException(
                    "All "
                            + points.size()
                            + " points of the surface stand on one line in plan; allowed is at"
                            + " least one beside it.");
        }
        int[] corners = Delaunay.triangles(sorted);
        List<Triangle> triangles = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 3) {
            triangles.add(
                    new Triangle(
                            sorted.get(corners[i]),
                            sorted.get(corners[i + 1]),
                            sorted.get(corners[i + 2])));
        }
        return new GroundSurface(triangles);
    }

    /**
     * Leaves out triangles with a long side in plan, which bridge bays of the outline and gaps of the
     * survey.
     *
     * @param longest longest side that stays, m, greater than 0
     * @return the surface without them
     * @throws IllegalArgumentException if the length is not positive, or no triangle would stay
     */
    public GroundSurface trimmed(double longest) {
        Require.positive("longest side of a triangle", longest, "m");
        List<Triangle> kept = triangles.stream().filter(t -> t.longest() <= longest).toList();
        if (kept.isEmpty()) {
            throw Require.refused(
                    "longest side of a triangle", longest, "m", "one that keeps some triangle");
        }
        return new GroundSurface(kept);
    }

    /**
     * Gives the triangles.
     *
     * @return triangles
     */
    public List<Triangle> triangles() {
        return triangles;
    }

    /**
     * Gives the area that the surface covers in plan.
     *
     * @return area, m²
     */
    public double planArea() {
        return triangles.stream().mapToDouble(Triangle::planArea).sum();
    }

    /**
     * Gives the level of the surface.
     *
     * @param x position, m
     * @param y position, m
     * @return level, m
     * @throws IllegalArgumentException if the surface does not cover the place
     */
    public double level(double x, double y) {
        SurveyPoint at = new SurveyPoint(x, y, 0);
        for (Triangle triangle : triangles) {
            if (triangle.holds(at)) {
                return triangle.level(x, y);
            }
        }
        throw new IllegalArgumentException(
                "place is x = "
                        + x
                        + " m, y = "
                        + y
                        + " m; allowed is one within the outline of the surface.");
    }

    /**
     * Gives the volumes between this surface and another, exact for plane triangles.
     *
     * <p>Each triangle of one is cut by each of the other in plan; over what they have in common the
     * difference of levels is a plane, whose part above and part below are prisms with a sloping top.
     *
     * @param design the other surface
     * @return cut where this one is above, fill where it is below, over what both cover
     * @throws IllegalArgumentException if they cover nothing in common
     */
    public Volumes volumesDownTo(GroundSurface design) {
        List<Triangle> others = new ArrayList<>(design.triangles);
        others.sort(Comparator.comparingDouble(t -> t.least(true)));
        double cut = 0;
        double fill = 0;
        double area = 0;
        for (Triangle a : triangles) {
            double left = a.least(true);
            double right = a.greatest(true);
            double low = a.least(false);
            double high = a.greatest(false);
            for (Triangle b : others) {
                if (b.least(true) >= right) {
                    break;
                }
                if (b.greatest(true) <= left
                        || b.greatest(false) <= low
                        || b.least(false) >= high) {
                    continue;
                }
                List<double[]> piece = common(a, b);
                for (int i = 2; i < piece.size(); i++) {
                    double[] p = piece.get(0);
                    double[] q = piece.get(i - 1);
                    double[] r = piece.get(i);
                    double base =
                            Math.abs((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]))
                                    / 2;
                    double whole = base * (p[2] + q[2] + r[2]) / 3;
                    double above = base * above(p[2], q[2], r[2]);
                    area += base;
                    cut += above;
                    fill += above - whole;
                }
            }
        }
        if (!(area > 0)) {
            throw new IllegalArgumentException("The two surfaces cover no ground in common.");
        }
        return new Volumes(cut, Math.max(0, fill), area);
    }

    /** What two triangles have in common in plan: corners with the difference of levels. */
    private static List<double[]> common(Triangle a, Triangle b) {
        List<double[]> piece = new ArrayList<>();
        for (SurveyPoint corner : List.of(a.first(), a.second(), a.third())) {
            piece.add(
                    new double[] {
                        corner.x(), corner.y(), corner.level() - b.level(corner.x(), corner.y())
                    });
        }
        SurveyPoint[] rim = {b.first(), b.second(), b.third(), b.first()};
        for (int side = 0; side < 3 && piece.size() > 2; side++) {
            piece = leftOf(rim[side], rim[side + 1], piece);
        }
        return piece;
    }

    private static List<double[]> leftOf(SurveyPoint from, SurveyPoint to, List<double[]> piece) {
        List<double[]> kept = new ArrayList<>();
        double[] before = piece.get(piece.size() - 1);
        double last = distanceLeft(from, to, before);
        for (double[] at : piece) {
            double here = distanceLeft(from, to, at);
            if (last * here < 0) {
                double part = last / (last - here);
                double[] met = new double[3];
                for (int k = 0; k < 3; k++) {
                    met[k] = before[k] + part * (at[k] - before[k]);
                }
                kept.add(met);
            }
            if (here >= 0) {
                kept.add(at);
            }
            before = at;
            last = here;
        }
        return kept;
    }

    private static double distanceLeft(SurveyPoint from, SurveyPoint to, double[] at) {
        return (to.x() - from.x()) * (at[1] - from.y()) - (to.y() - from.y()) * (at[0] - from.x());
    }

    /** Mean over a triangle of the positive part of a plane with these values at its corners. */
    private static double above(double a, double b, double c) {
        double mean = (a + b + c) / 3;
        double least = Math.min(a, Math.min(b, c));
        double most = Math.max(a, Math.max(b, c));
        if (least >= 0) {
            return mean;
        }
        if (most <= 0) {
            return 0;
        }
        double middle = a + b + c - least - most;
        return middle <= 0 ? tip(most, middle, least) : mean + tip(-least, -middle, -most);
    }

    /** Only one corner is positive: the part above is a tetrahedron. */
    private static double tip(double high, double low, double lowest) {
        return high / 3 * (high / (high - low)) * (high / (high - lowest));
    }

    private static double distance(SurveyPoint a, SurveyPoint b) {
        return StrictMath.hypot(a.x() - b.x(), a.y() - b.y());
    }
}
