package org.skewback.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** Plane geometry of the page: boxes, hatching, crossings. */
final class Geometry {

    private Geometry() {}

    /** Smallest upright rectangle about all marks: left, top, right, bottom. */
    static double[] bounds(List<? extends Mark> marks) {
        double[] b = {
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY
        };
        for (Mark mark : marks) {
            if (mark instanceof Mark.Stroke stroke) {
                stroke.lines().forEach(line -> grow(b, line, stroke.pen().width() / 2));
            } else if (mark instanceof Mark.Fill fill) {
                fill.polygons().forEach(polygon -> grow(b, polygon, 0));
            } else if (mark instanceof Mark.Words words) {
                grow(b, words.box(), 0);
            }
        }
        return b;
    }

    /** The same of strokes and fills without their line widths. */
    static double[] extent(List<? extends Mark> marks) {
        double[] b = {
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY
        };
        for (Mark mark : marks) {
            if (mark instanceof Mark.Stroke stroke) {
                stroke.lines().forEach(line -> grow(b, line, 0));
            } else if (mark instanceof Mark.Fill fill) {
                fill.polygons().forEach(polygon -> grow(b, polygon, 0));
            }
        }
        return b;
    }

    private static void grow(double[] b, double[] xy, double margin) {
        for (int i = 0; i < xy.length; i += 2) {
            b[0] = Math.min(b[0], xy[i] - margin);
            b[1] = Math.min(b[1], xy[i + 1] - margin);
            b[2] = Math.max(b[2], xy[i] + margin);
            b[3] = Math.max(b[3], xy[i + 1] + margin);
        }
    }

    /**
     * Leaves out points of a line that lie nearer than a distance to what remains (D. H. Douglas and
     * T. K. Peucker, <i>The Canadian Cartographer</i> 10 (1973) 112).
     */
    static double[] simplified(double[] xy, double distance) {
        int n = xy.length / 2;
        if (n < 3) {
            return xy;
        }
        boolean[] kept = new boolean[n];
        kept[0] = true;
        kept[n - 1] = true;
        // A stack of its own: a long line must not overflow that of the thread.
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, n - 1});
        while (!open.isEmpty()) {
            int[] piece = open.pop();
            int far = farthest(xy, piece[0], piece[1], distance);
            if (far >= 0) {
                kept[far] = true;
                open.push(new int[] {piece[0], far});
                open.push(new int[] {far, piece[1]});
            }
        }
        double[] result = new double[2 * n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (kept[i]) {
                result[count++] = xy[2 * i];
                result[count++] = xy[2 * i + 1];
            }
        }
        return Arrays.copyOf(result, count);
    }

    private static int farthest(double[] xy, int from, int to, double distance) {
        int farthest = -1;
        double most = distance;
        for (int i = from + 1; i < to; i++) {
            double off = distance(xy[2 * i], xy[2 * i + 1], xy, from, to);
            if (off > most) {
                most = off;
                farthest = i;
            }
        }
        return farthest;
    }

    /** Distance of a point from the piece between two points of a line. */
    private static double distance(double x, double y, double[] xy, int from, int to) {
        double dx = xy[2 * to] - xy[2 * from];
        double dy = xy[2 * to + 1] - xy[2 * from + 1];
        double square = dx * dx + dy * dy;
        double along = (x - xy[2 * from]) * dx + (y - xy[2 * from + 1]) * dy;
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, along / square));
        double ox = x - xy[2 * from] - share * dx;
        double oy = y - xy[2 * from + 1] - share * dy;
        return Math.sqrt(ox * ox + oy * oy);
    }

    /** Whether two convex polygons have more than an edge in common (separating axis theorem). */
    static boolean overlap(double[] a, double[] b) {
        return !separated(a, b) && !separated(b, a);
    }

    private static boolean separated(double[] a, double[] b) {
        for (int i = 0; i < a.length; i += 2) {
            int j = (i + 2) % a.length;
            double nx = a[j + 1] - a[i + 1];
            double ny = a[i] - a[j];
            double[] pa = span(a, nx, ny);
            double[] pb = span(b, nx, ny);
            if (pa[1] <= pb[0] + 1e-9 || pb[1] <= pa[0] + 1e-9) {
                return true;
            }
        }
        return false;
    }

    private static double[] span(double[] xy, double nx, double ny) {
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < xy.length; i += 2) {
            double p = xy[i] * nx + xy[i + 1] * ny;
            min = Math.min(min, p);
            max = Math.max(max, p);
        }
        return new double[] {min, max};
    }

    /**
     * Lines at 45° inside a polygon (even-odd rule), at a fixed lattice, so that neighbouring areas
     * with the same spacing hatch through.
     *
     * @param polygon x0, y0, x1, y1, … in points
     * @param spacing distance between lines in points
     * @return segments, each x0, y0, x1, y1
     */
    static List<double[]> hatch(double[] polygon, double spacing) {
        // u runs along the hatch (up to the right on the page), v across it.
        double h = Math.sqrt(0.5);
        int n = polygon.length / 2;
        double[] u = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            u[i] = h * (polygon[2 * i] - polygon[2 * i + 1]);
            v[i] = h * (polygon[2 * i] + polygon[2 * i + 1]);
        }
        double min = Arrays.stream(v).min().orElse(0);
        double max = Arrays.stream(v).max().orElse(0);
        List<double[]> lines = new ArrayList<>();
        // A half step keeps the lattice off coordinates that drawings often use.
        for (double k = Math.floor(min / spacing); (k + 0.5) * spacing < max; k++) {
            double level = (k + 0.5) * spacing;
            List<Double> cuts = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                int j = (i + 1) % n;
                if ((v[i] < level) != (v[j] < level)) {
                    cuts.add(u[i] + (level - v[i]) / (v[j] - v[i]) * (u[j] - u[i]));
                }
            }
            cuts.sort(null);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                double from = cuts.get(i);
                double to = cuts.get(i + 1);
                lines.add(
                        new double[] {
                            h * (level + from),
                            h * (level - from),
                            h * (level + to),
                            h * (level - to)
                        });
            }
        }
        return lines;
    }
}
