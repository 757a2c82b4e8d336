package org.skewback.form;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A polygon of straight segments from springing to springing: the funicular of point loads, or an
 * axis built of straight pieces.
 *
 * @param vertices corner points from the left springing, at (0, 0), to the right one; positions
 *     ascend
 */
public record FunicularPolygon(List<Vertex> vertices) implements Axis {

    /**
     * A corner of the polygon.
     *
     * @param x position from the left springing, m
     * @param y height above the left springing, m
     */
    public record Vertex(double x, double y) {

        /**
         * Makes a corner.
         *
         * @param x position from the left springing, m
         * @param y height above the left springing, m
         * @throws IllegalArgumentException if a value is not finite
         */
        public Vertex {
            Require.finite("x of a vertex", x, "m");
            Require.finite("y of a vertex", y, "m");
        }
    }

    /**
     * Makes a polygon from its corners.
     *
     * @param vertices corner points from the left springing, at (0, 0), to the right one; positions
     *     ascend
     * @throws IllegalArgumentException if there are fewer than two corners, the first is not at (0,
     *     0), or the positions do not ascend
     */
    public FunicularPolygon {
        vertices = List.copyOf(vertices);
        if (vertices.size() < 2) {
            throw new IllegalArgumentException(
                    "number of vertices is " + vertices.size() + "; allowed is at least 2.");
        }
        if (vertices.get(0).x() != 0 || vertices.get(0).y() != 0) {
            throw new IllegalArgumentException(
                    "first vertex is " + vertices.get(0) + "; allowed is (0, 0).");
        }
        for (int i = 1; i < vertices.size(); i++) {
            if (!(vertices.get(i).x() > vertices.get(i - 1).x())) {
                throw Require.refused(
                        "x of vertex " + (i + 1),
                        vertices.get(i).x(),
                        "m",
                        "more than that of the one before, " + vertices.get(i - 1).x() + " m");
            }
        }
    }

    /**
     * Takes the corners of a funicular under point loads.
     *
     * @param funicular funicular of point loads only
     * @return the polygon through the springings and the points under the loads
     * @throws IllegalArgumentException if part of the load is not a point load
     */
    public static FunicularPolygon of(FunicularCurve funicular) {
        if (!funicular.beam().onlyPointLoads()) {
            throw new IllegalArgumentException(
                    "The funicular is no polygon: part of its load is spread over a length.");
        }
        List<Vertex> vertices = new ArrayList<>();
        vertices.add(new Vertex(0, 0));
        for (double x : funicular.breaks()) {
            vertices.add(new Vertex(x, funicular.y(x)));
        }
        vertices.add(new Vertex(funicular.span(), funicular.rightLevel()));
        return new FunicularPolygon(vertices);
    }

    /**
     * Gives the forces in the segments under a given thrust, {@code H √(1 + slope²)}.
     *
     * @param thrust horizontal component, N, greater than 0
     * @return forces in N from left to right, compression positive; one fewer than the vertices
     * @throws IllegalArgumentException if the thrust is not finite and positive
     */
    public List<Double> segmentForces(double thrust) {
        Require.positive("thrust", thrust, "N");
        List<Double> forces = new ArrayList<>();
        for (int i = 0; i + 1 < vertices.size(); i++) {
            double slope = slopeOf(i);
            forces.add(thrust * Math.sqrt(1 + slope * slope));
        }
        return List.copyOf(forces);
    }

    @Override
    public double span() {
        return vertices.get(vertices.size() - 1).x();
    }

    @Override
    public double rightLevel() {
        return vertices.get(vertices.size() - 1).y();
    }

    @Override
    public double y(double x) {
        double at = Require.within("x", x, 0, span(), "m");
        int segment = segment(at);
        Vertex from = vertices.get(segment);
        return from.y() + slopeOf(segment) * (at - from.x());
    }

    @Override
    public double slope(double x) {
        return slopeOf(segment(Require.within("x", x, 0, span(), "m")));
    }

    @Override
    public OptionalDouble curvature(double x) {
        double at = Require.within("x", x, 0, span(), "m");
        return breaks().contains(at) ? OptionalDouble.empty() : OptionalDouble.of(0);
    }

    @Override
    public List<Double> breaks() {
        return vertices.subList(1, vertices.size() - 1).stream().map(Vertex::x).toList();
    }

    @Override
    public double arcLength(double from, double to) {
        return sum(from, to, false);
    }

    @Override
    public double arcMoment(double from, double to) {
        return sum(from, to, true);
    }

    /** Sum over the pieces of segments between two positions of length, or length times middle. */
    private double sum(double from, double to, boolean moment) {
        double left = Require.within("x", Math.min(from, to), 0, span(), "m");
        double right = Require.within("x", Math.max(from, to), 0, span(), "m");
        double sum = 0;
        for (int i = 0; i + 1 < vertices.size(); i++) {
            double start = Math.max(left, vertices.get(i).x());
            double end = Math.min(right, vertices.get(i + 1).x());
            if (end > start) {
                double slope = slopeOf(i);
                double length = (end - start) * Math.sqrt(1 + slope * slope);
                sum += moment ? length * (start + end) / 2 : length;
            }
        }
        return from <= to ? sum : -sum;
    }

    private double slopeOf(int segment) {
        Vertex from = vertices.get(segment);
        Vertex to = vertices.get(segment + 1);
        return (to.y() - from.y()) / (to.x() - from.x());
    }

    /** Index of the segment at a position; at a corner, of that to the right. */
    private int segment(double x) {
        int segment = 0;
        while (segment + 2 < vertices.size() && x >= vertices.get(segment + 1).x()) {
            segment++;
        }
        return segment;
    }
}
