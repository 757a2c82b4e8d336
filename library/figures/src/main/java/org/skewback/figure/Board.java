package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A page at one scale while it is being drawn: keeps the marks, and knows where text and lines
 * already are, so that later text can keep clear of them. Confined to one thread.
 */
final class Board {

    static final double MILLIMETRE = 72 / 25.4;

    /** Usual text size in points. */
    static final double TEXT = 8.5;

    /** Size of notes and dimensions in points. */
    static final double SMALL = 8;

    private static final double OVER_TEXT = 1000;
    private static final double OVER_LINE = 6;

    private final double scale;
    private final boolean hatching;
    private final List<Mark> marks = new ArrayList<>();
    private final List<double[]> texts = new ArrayList<>();
    private final Obstacles segments = new Obstacles();

    /**
     * Starts an empty page.
     *
     * @param scale points on the page for one unit of the drawing, in both directions
     */
    Board(double scale) {
        this(scale, true);
    }

    /**
     * Starts an empty page, perhaps one that is only measured.
     *
     * @param scale points on the page for one unit of the drawing
     * @param hatching whether areas are hatched
     */
    Board(double scale, boolean hatching) {
        this.scale = scale;
        this.hatching = hatching;
    }

    double scale() {
        return scale;
    }

    double x(double metres) {
        return metres * scale;
    }

    double y(double metres) {
        return -metres * scale;
    }

    List<Mark> marks() {
        return marks;
    }

    /** Page coordinates of points of the drawing. */
    double[] page(List<Point> points) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = x(points.get(i).x());
            xy[2 * i + 1] = y(points.get(i).y());
        }
        return xy;
    }

    void stroke(double[] xy, boolean closed, Pen pen) {
        marks.add(new Mark.Stroke(List.of(xy), closed, pen));
        for (int i = 2; i < xy.length; i += 2) {
            segments.add(new double[] {xy[i - 2], xy[i - 1], xy[i], xy[i + 1]});
        }
        if (closed) {
            int n = xy.length;
            segments.add(new double[] {xy[n - 2], xy[n - 1], xy[0], xy[1]});
        }
    }

    /** Draws many open lines with one pen, as one mark. */
    void strokes(List<double[]> lines, Pen pen) {
        if (lines.isEmpty()) {
            return;
        }
        marks.add(new Mark.Stroke(List.copyOf(lines), false, pen));
        for (double[] xy : lines) {
            for (int i = 2; i < xy.length; i += 2) {
                segments.add(new double[] {xy[i - 2], xy[i - 1], xy[i], xy[i + 1]});
            }
        }
    }

    /** Draws hatching, which is no obstacle to text. */
    void strokesBelow(List<double[]> lines, Pen pen) {
        marks.add(new Mark.Stroke(List.copyOf(lines), false, pen));
    }

    void segment(double x0, double y0, double x1, double y1, Pen pen) {
        stroke(new double[] {x0, y0, x1, y1}, false, pen);
    }

    void fill(double[] xy, Ink ink) {
        marks.add(new Mark.Fill(List.of(xy), ink));
    }

    /** Fills and hatches; hatching is no obstacle to text, which stands on white. */
    void area(double[] xy, Area kind) {
        if (kind.fill() != Ink.WHITE || !hatching) {
            fill(xy, kind.fill());
        }
        if (kind.spacing() > 0 && hatching) {
            List<double[]> hatch = Geometry.hatch(xy, kind.spacing());
            if (!hatch.isEmpty()) {
                marks.add(new Mark.Stroke(hatch, false, Pen.full(0.4, Ink.HATCH)));
            }
        }
    }

    /**
     * Draws a slim filled arrowhead.
     *
     * @param x tip
     * @param y tip
     * @param dx direction it points, x
     * @param dy direction it points, y
     * @param length length in points
     */
    void arrowhead(double x, double y, double dx, double dy, double length, Ink ink) {
        double norm = Math.sqrt(dx * dx + dy * dy);
        double ux = dx / norm;
        double uy = dy / norm;
        double half = 0.16 * length;
        double bx = x - ux * length;
        double by = y - uy * length;
        fill(
                new double[] {x, y, bx - uy * half, by + ux * half, bx + uy * half, by - ux * half},
                ink);
    }

    /** Writes on a white rectangle. */
    void write(Mark.Words words) {
        double[] box = words.box();
        marks.add(new Mark.Fill(List.of(box), Ink.WHITE));
        marks.add(words);
        texts.add(box);
    }

    /** Whether text is there already. */
    boolean coversText(Mark.Words words) {
        double[] box = words.box();
        return texts.stream().anyMatch(text -> Geometry.overlap(box, text));
    }

    /** What it would spoil to write here: text far more than lines. */
    double cost(Mark.Words words) {
        double[] box = words.box();
        double cost = 0;
        for (double[] text : texts) {
            if (Geometry.overlap(box, text)) {
                cost += OVER_TEXT;
            }
        }
        cost += OVER_LINE * segments.crossings(box);
        return cost;
    }

    /** What it would spoil to draw a thin line here. */
    double cost(double[] segment) {
        double cost = 0;
        for (double[] text : texts) {
            if (Geometry.overlap(text, segment)) {
                cost += OVER_TEXT / 2;
            }
        }
        cost += OVER_LINE / 3 * segments.crossings(segment);
        return cost;
    }
}
