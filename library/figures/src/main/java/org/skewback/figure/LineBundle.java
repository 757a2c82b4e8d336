package org.skewback.figure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Lines that are drawn with one pen. What coincides on the page is drawn once, so that two ribs in
 * elevation are one line and its dashes stay dashes.
 */
final class LineBundle {

    /** Above it a page is black and the file is megabytes. */
    static final int MOST_LINES = 40_000;

    /** Farther apart than this, in points, the eye sees it. */
    private static final double SEEN = 0.05;

    private final List<double[]> lines = new ArrayList<>();
    private final Set<Object> known = new HashSet<>();

    /** A straight line by its ends, to what can be seen. */
    private record Ends(long x0, long y0, long x1, long y1) {}

    /** The same for both directions of a line. */
    private static Object key(double[] xy) {
        int n = xy.length;
        long[] rounded = new long[n];
        for (int i = 0; i < n; i++) {
            rounded[i] = Math.round(xy[i] / SEEN);
        }
        boolean turned =
                rounded[0] > rounded[n - 2]
                        || (rounded[0] == rounded[n - 2] && rounded[1] > rounded[n - 1]);
        if (n == 4) {
            return turned
                    ? new Ends(rounded[2], rounded[3], rounded[0], rounded[1])
                    : new Ends(rounded[0], rounded[1], rounded[2], rounded[3]);
        }
        List<Long> places = new ArrayList<>(n);
        for (int i = 0; i < n; i += 2) {
            int at = turned ? n - 2 - i : i;
            places.add(rounded[at]);
            places.add(rounded[at + 1]);
        }
        return places;
    }

    void add(double[] line) {
        double[] xy = Geometry.simplified(line, SEEN);
        // A line too short to be seen stays: thousands of them may be one long line.
        if (known.add(key(xy))) {
            lines.add(xy);
        }
        if (lines.size() > MOST_LINES) {
            throw new IllegalArgumentException(
                    "lines that do not coincide in this view are more than "
                            + MOST_LINES
                            + "; draw fewer members, chosen by only");
        }
    }

    /** Draws them as one mark, lines that join end to start as one polyline. */
    void draw(Board board, Pen pen) {
        List<double[]> joined = new ArrayList<>();
        List<Double> run = new ArrayList<>();
        for (double[] line : lines) {
            int n = run.size();
            boolean goesOn =
                    n > 0
                            && Math.abs(run.get(n - 2) - line[0]) < 1.5 * SEEN
                            && Math.abs(run.get(n - 1) - line[1]) < 1.5 * SEEN;
            if (!goesOn) {
                flush(run, joined);
            }
            for (int i = goesOn ? 2 : 0; i < line.length; i++) {
                run.add(line[i]);
            }
        }
        flush(run, joined);
        board.strokes(joined, pen);
    }

    private static void flush(List<Double> run, List<double[]> joined) {
        if (!run.isEmpty()) {
            double[] xy = run.stream().mapToDouble(Double::doubleValue).toArray();
            joined.add(Geometry.simplified(xy, SEEN));
            run.clear();
        }
    }
}
