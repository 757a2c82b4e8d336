package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;

/** Areas of diagrams, told apart by their hatching and not by colour. */
enum SignArea {
    /** Values above 0: lines across the member on a light ground. */
    POSITIVE,
    /** Values below 0: lines at 45° on a darker ground. */
    NEGATIVE,
    /** Between the lines of an envelope: light. */
    BETWEEN;

    private static final double ACROSS = 4.2;
    private static final double SLANTED = 3.2;
    private static final Pen HATCH = Pen.full(0.4, Ink.HATCH);

    /**
     * Fills and hatches.
     *
     * @param board the page
     * @param polygon the area: x0, y0, x1, y1, …
     * @param across direction of the lines of {@link #POSITIVE}
     */
    void draw(Board board, double[] polygon, double[] across) {
        board.fill(polygon, this == NEGATIVE ? Ink.STEEL : Ink.LIGHT);
        List<double[]> lines = List.of();
        if (this == NEGATIVE) {
            lines = Geometry.hatch(polygon, SLANTED);
        } else if (this == POSITIVE) {
            lines = across(polygon, across);
        }
        if (!lines.isEmpty()) {
            board.strokesBelow(lines, HATCH);
        }
    }

    /** Hatching in any direction: turned to 45°, hatched, and turned back. */
    private static List<double[]> across(double[] polygon, double[] way) {
        double norm = Math.sqrt(way[0] * way[0] + way[1] * way[1]);
        double h = Math.sqrt(0.5);
        // A turn that takes the direction to up and right at 45°, (h, −h) on the page.
        double c = (way[0] * h - way[1] * h) / norm;
        double s = (-way[0] * h - way[1] * h) / norm;
        List<double[]> back = new ArrayList<>();
        for (double[] line : Geometry.hatch(turned(polygon, c, s), ACROSS)) {
            back.add(turned(line, c, -s));
        }
        return back;
    }

    private static double[] turned(double[] xy, double c, double s) {
        double[] turned = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            turned[i] = c * xy[i] - s * xy[i + 1];
            turned[i + 1] = s * xy[i] + c * xy[i + 1];
        }
        return turned;
    }
}
