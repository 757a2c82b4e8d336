package org.skewback.figure;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.skewback.frame.Vector;

/** What stands below a frame: its axes, scale bars, the key of signs and lines, and notes. */
final class FrameFooter {

    private static final double MM = Board.MILLIMETRE;
    private static final double GAP = 5 * MM;
    private static final double SAMPLE = 9 * MM;
    private static final double SIGN = 7.5 * MM;
    private static final double ROW = 1.75 * Board.SMALL;

    private final Board board;
    private double left;
    private double width;
    private double axesFoot;
    private double x;
    private double y;
    private double rowHigh;

    /**
     * Begins below all that is drawn.
     *
     * @param board the page
     * @param width room in points
     */
    FrameFooter(Board board, double width) {
        this.board = board;
        this.width = width;
        double[] b = Geometry.bounds(board.marks());
        left = (b[0] + b[2]) / 2 - width / 2;
        x = left;
        y = b[3] + 4.5 * MM;
    }

    /** Room for something of a width; a new row where it does not fit this one. Gives its left edge. */
    private double room(double wide, double high) {
        if (x > left && x + wide > left + width) {
            newRow();
        }
        double at = x;
        x += wide + GAP;
        rowHigh = Math.max(rowHigh, high);
        return at;
    }

    void newRow() {
        if (x > left) {
            y += rowHigh;
            x = left;
            rowHigh = 0;
        }
    }

    private void words(String text, double at, double base) {
        board.write(new Mark.Words(text, at, base, Mark.Anchor.START, Board.SMALL, 0, Ink.BLACK));
    }

    /**
     * Draws the global axes as they are seen; all else goes to the right of them.
     *
     * @param view the view
     * @param length length that each axis would have if it were seen true, in points
     * @param says what the length is, such as 20 m; empty where it means nothing
     */
    void axes(FrameView view, double length, String says) {
        double reachLeft = 0;
        double reachDown = 0;
        double reachUp = 0;
        for (Vector axis : List.of(Vector.X, Vector.Y, Vector.Z)) {
            reachLeft = Math.max(reachLeft, -view.x(axis) * length);
            reachDown = Math.max(reachDown, -view.y(axis) * length);
            reachUp = Math.max(reachUp, view.y(axis) * length);
        }
        double ox = left + reachLeft + 4 * MM;
        double oy = y + reachUp + 3.5 * MM;
        Pen pen = Pen.full(0.6, Ink.BLACK);
        String[] names = {"x", "y", "z"};
        Vector[] axes = {Vector.X, Vector.Y, Vector.Z};
        for (int i = 0; i < 3; i++) {
            double ux = view.x(axes[i]);
            double uy = -view.y(axes[i]);
            if (view.seen(axes[i]) < 0.05) {
                towardsOrAway(axes[i].dot(view.towards()) > 0, ox, oy, pen);
                NearText.write(board, ox, oy, names[i], Ink.BLACK, new double[] {-1, 1}, 4);
                continue;
            }
            double tx = ox + ux * length;
            double ty = oy + uy * length;
            board.segment(ox, oy, tx, ty, pen);
            board.arrowhead(tx, ty, ux, uy, 1.9 * MM, Ink.BLACK);
            NearText.write(board, tx, ty, names[i], Ink.BLACK, new double[] {ux, uy}, 4);
        }
        double wide = reachLeft + length + 11 * MM;
        axesFoot = oy + reachDown + 3.5 * MM;
        if (!says.isEmpty()) {
            wide = Math.max(wide, NearText.width(says) + 4 * MM);
            words(says, left, axesFoot + 0.8 * Board.SMALL);
            axesFoot += 1.3 * Board.SMALL;
        }
        left += wide;
        width -= wide;
        x = left;
    }

    /** As a drawing shows an arrow from its end: a point towards the eye, a cross away from it. */
    private void towardsOrAway(boolean towards, double ox, double oy, Pen pen) {
        double r = 0.9 * MM;
        double[] disc = Annotations.disc(ox, oy, r);
        board.fill(disc, Ink.WHITE);
        board.stroke(disc, true, pen);
        if (towards) {
            board.fill(Annotations.disc(ox, oy, 0.35 * MM), Ink.BLACK);
        } else {
            double d = r * Math.sqrt(0.5);
            board.segment(ox - d, oy - d, ox + d, oy + d, pen);
            board.segment(ox - d, oy + d, ox + d, oy - d, pen);
        }
    }

    /** Draws a scale bar of lengths of the frame. */
    void scaleBar() {
        double total = Numbers.niceBelow(40 * MM / board.scale());
        double half = total / 2 * board.scale();
        double high = 1.1 * MM;
        String end = Numbers.shortest(total, 6) + " m";
        double at = room(2 * half + NearText.width(end), 7 * MM) + 1.5 * MM;
        double top = y + 4.2 * MM;
        board.fill(box(at, top, half, high), Ink.BLACK);
        board.fill(box(at + half, top, half, high), Ink.WHITE);
        board.stroke(box(at, top, 2 * half, high), true, Pen.full(0.5, Ink.BLACK));
        double base = top - 1 * MM;
        String[] numbers = {"0", Numbers.shortest(total / 2, 6), end};
        for (int i = 0; i < 3; i++) {
            String number = i == 2 ? Numbers.shortest(total, 6) : numbers[i];
            words(numbers[i], at + i * half - NearText.width(number) / 2, base);
        }
    }

    /**
     * Draws a bar with end marks that says how long something is.
     *
     * @param length its length in points
     * @param says what it stands for
     */
    void measure(double length, String says) {
        double at = room(length + 2 * MM + NearText.width(says), 7 * MM) + 0.5 * MM;
        double middle = y + ROW / 2 + 0.6 * MM;
        Pen pen = Pen.full(0.7, Ink.BLACK);
        board.segment(at, middle, at + length, middle, pen);
        board.segment(at, middle - MM, at, middle + MM, pen);
        board.segment(at + length, middle - MM, at + length, middle + MM, pen);
        words(says, at + length + 1.6 * MM, middle + 0.33 * Board.SMALL);
    }

    /** Explains a kind of line. */
    void key(Pen pen, String words) {
        key(words, SAMPLE, at -> board.segment(at[0], at[1], at[0] + SAMPLE, at[1], pen));
    }

    /** Explains a kind of area. */
    void key(SignArea area, String words) {
        key(
                words,
                SAMPLE,
                at -> {
                    double h = 1.35 * MM;
                    double[] box = box(at[0], at[1] - h, SAMPLE, 2 * h);
                    area.draw(board, box, new double[] {0, 1});
                    board.stroke(box, true, Pen.full(0.5, Ink.BLACK));
                });
    }

    /** Explains a sign. */
    void key(FrameSign sign) {
        boolean ground = sign.compareTo(FrameSign.TURN) < 0 || sign == FrameSign.SPRING;
        key(
                sign.words(),
                SIGN,
                at ->
                        sign.draw(
                                board,
                                at[0] + SIGN / 2,
                                ground && sign != FrameSign.CLAMP ? at[1] - 1.6 * MM : at[1],
                                ground ? 0 : 1,
                                ground ? 1 : 0,
                                ground ? 0.85 : 1));
    }

    private void key(String text, double wide, Consumer<double[]> sample) {
        double at = room(wide + 1.6 * MM + NearText.width(text), ROW + 1.2 * MM);
        double middle = y + ROW / 2 + 0.6 * MM;
        sample.accept(new double[] {at, middle});
        words(text, at + wide + 1.6 * MM, middle + 0.33 * Board.SMALL);
    }

    /** Writes notes, one after the other, over as many lines as they need. */
    void notes(List<String> notes) {
        newRow();
        if (notes.isEmpty()) {
            return;
        }
        y += 0.6 * MM;
        String all = String.join("; ", notes) + ".";
        all = all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1);
        for (String line : NearText.lines(all, width)) {
            words(line, left, y + 0.9 * Board.SMALL);
            y += 1.3 * Board.SMALL;
        }
    }

    private static double[] box(double x, double y, double width, double height) {
        return new double[] {x, y, x + width, y, x + width, y + height, x, y + height};
    }
}
