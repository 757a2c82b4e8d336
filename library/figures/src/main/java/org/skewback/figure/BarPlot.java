package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;

/** A plot of bars in the making: one horizontal axis with ticks, and marks between its ends. */
final class BarPlot {

    static final double MM = Board.MILLIMETRE;

    private static final double LEAST_BETWEEN = 16 * MM;
    private static final double BELOW = 11 * MM;
    private static final Pen GRID = Pen.full(0.5, Ink.GRID);
    private static final Pen AXIS = Pen.full(0.6, Ink.GREY);

    private final double[] range;
    private final double left;
    private final double right;
    private final double bottom;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * Starts with axis, ticks and grid.
     *
     * @param range least and greatest value, rising
     * @param left place of the least value, in points
     * @param right place of the greatest value, in points
     * @param top where the grid begins, in points
     * @param bottom where the axis lies, in points
     * @param title what the axis measures, with its unit
     */
    BarPlot(double[] range, double left, double right, double top, double bottom, String title) {
        this.range = Check.rising("range of the axis", range);
        this.left = left;
        this.right = right;
        this.bottom = bottom;
        Ticks ticks = Ticks.along(range, left, right, LEAST_BETWEEN);
        for (int i = 0; i < ticks.places().size(); i++) {
            double tick = ticks.places().get(i);
            line(tick, top, tick, bottom, GRID);
            line(tick, bottom, tick, bottom + 0.8 * MM, AXIS);
            words(
                    ticks.labels().get(i),
                    tick,
                    bottom + 2 * MM + 0.66 * Board.SMALL,
                    Mark.Anchor.MIDDLE);
        }
        line(left, bottom, right, bottom, AXIS);
        words(
                Check.printable("name of the axis", title),
                (left + right) / 2,
                bottom + BELOW - 1.5 * MM,
                Mark.Anchor.MIDDLE);
    }

    /** Height of a page whose axis lies here. */
    static double pageBelow(double bottom) {
        return bottom + BELOW;
    }

    double x(double value) {
        return left + (value - range[0]) / (range[1] - range[0]) * (right - left);
    }

    /** A bar from one value to another between two heights of the page, filled and outlined. */
    void bar(double from, double to, double top, double foot, Ink ink) {
        double[] box = {x(from), top, x(to), top, x(to), foot, x(from), foot};
        box(box, ink);
    }

    /** A rectangle of the page, filled and outlined. */
    void box(double[] box, Ink ink) {
        marks.add(new Mark.Fill(List.of(box), ink));
        marks.add(new Mark.Stroke(List.of(box), true, Pen.full(0.5, Ink.BLACK)));
    }

    /** An upright line at a value, from the axis up. */
    void upright(double value, double top, Pen pen) {
        line(x(value), top, x(value), bottom, pen);
    }

    void line(double x0, double y0, double x1, double y1, Pen pen) {
        marks.add(new Mark.Stroke(List.of(new double[] {x0, y0, x1, y1}), false, pen));
    }

    void words(String text, double x, double y, Mark.Anchor anchor) {
        marks.add(new Mark.Words(text, x, y, anchor, Board.SMALL, 0, Ink.BLACK));
    }

    /** Width of a text on the page, in points. */
    static double width(String text) {
        return TextFace.REGULAR.width(text) * Board.SMALL * 1.03;
    }

    List<Mark> marks() {
        return marks;
    }
}
