package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Dimensions, levels, labels, loads and the scale bar, as they are drawn on a board. */
final class Annotations {

    private static final Pen THIN = Pen.full(0.5, Ink.GREY);
    private static final double MM = Board.MILLIMETRE;

    /** A level mark that covers more than a line or two says less than a label beside. */
    private static final double MOST_LEVEL_COST = 14;

    private Annotations() {}

    /** Draws a level dimension line at a height y, in the drawing's units. */
    static void level(Board board, Point from, Point to, double y, String text) {
        dimension(
                board, from, to, board.x(from.x()), board.y(y), board.x(to.x()), board.y(y), text);
    }

    /** Draws an upright dimension line at a place x, in the drawing's units. */
    static void upright(Board board, Point from, Point to, double x, String text) {
        dimension(
                board, from, to, board.x(x), board.y(from.y()), board.x(x), board.y(to.y()), text);
    }

    /**
     * Draws a dimension line between two points of the drawing, measured along a direction.
     *
     * @param board the page
     * @param from first point measured
     * @param to second point measured
     * @param startX foot of the dimension line for the first point, page x
     * @param startY the same, page y
     * @param endX foot for the second point, page x
     * @param endY the same, page y
     * @param text what the dimension says
     */
    static void dimension(
            Board board,
            Point from,
            Point to,
            double startX,
            double startY,
            double endX,
            double endY,
            String text) {
        double length = StrictMath.hypot(endX - startX, endY - startY);
        double ux = (endX - startX) / length;
        double uy = (endY - startY) / length;
        extension(board, board.x(from.x()), board.y(from.y()), startX, startY);
        extension(board, board.x(to.x()), board.y(to.y()), endX, endY);
        double head = 2.4 * MM;
        double textWidth = TextFace.REGULAR.width(text) * Board.SMALL * 1.03;
        boolean tight = length < 2.4 * head;
        if (tight) {
            // Arrows from outside, where there is no room within.
            board.segment(startX - 2 * head * ux, startY - 2 * head * uy, startX, startY, THIN);
            board.segment(endX, endY, endX + 2 * head * ux, endY + 2 * head * uy, THIN);
            board.segment(startX, startY, endX, endY, THIN);
            board.arrowhead(startX, startY, ux, uy, head, Ink.GREY);
            board.arrowhead(endX, endY, -ux, -uy, head, Ink.GREY);
        } else {
            board.segment(startX, startY, endX, endY, THIN);
            board.arrowhead(startX, startY, -ux, -uy, head, Ink.GREY);
            board.arrowhead(endX, endY, ux, uy, head, Ink.GREY);
        }

        // Text reads from below or from the right.
        double turn = StrictMath.toDegrees(StrictMath.atan2(uy, ux));
        if (turn > 90 - 1e-6) {
            turn -= 180;
        } else if (turn < -90 - 1e-6) {
            turn += 180;
        }
        double tx = StrictMath.cos(StrictMath.toRadians(turn));
        double ty = StrictMath.sin(StrictMath.toRadians(turn));
        double along = ux * tx + uy * ty > 0 ? 1 : -1;
        List<Double> shares = new ArrayList<>();
        if (textWidth + 2 * head <= length) {
            double most = 0.5 - (textWidth / 2 + head) / length;
            for (double share :
                    new double[] {0, 0.12, -0.12, 0.2, -0.2, 0.28, -0.28, 0.36, -0.36}) {
                if (Math.abs(share) <= most) {
                    shares.add(0.5 + share);
                }
            }
        } else {
            double beside = (textWidth / 2 + (tight ? 2 * head : 0) + MM) / length;
            shares.add(textWidth + MM < length ? 0.5 : 1 + beside);
            shares.add(1 + beside);
            shares.add(-beside);
        }
        Mark.@Nullable Words best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < shares.size(); i++) {
            // Above the line first, as it is read; else below.
            for (double off : new double[] {-0.9 * MM, 0.9 * MM + 0.66 * Board.SMALL}) {
                double share = along > 0 ? shares.get(i) : 1 - shares.get(i);
                Mark.Words words =
                        new Mark.Words(
                                text,
                                startX + share * (endX - startX) - ty * off,
                                startY + share * (endY - startY) + tx * off,
                                Mark.Anchor.MIDDLE,
                                Board.SMALL,
                                turn,
                                Ink.BLACK);
                double cost = board.cost(words) + i + (off > 0 ? 1.5 : 0);
                if (cost < least) {
                    least = cost;
                    best = words;
                }
            }
        }
        if (best != null) {
            board.write(best);
        }
    }

    private static void extension(Board board, double x, double y, double footX, double footY) {
        double length = StrictMath.hypot(footX - x, footY - y);
        double gap = 0.8 * MM;
        if (length <= gap) {
            return;
        }
        double ux = (footX - x) / length;
        double uy = (footY - y) / length;
        board.segment(
                x + ux * gap, y + uy * gap, footX + ux * 1.2 * MM, footY + uy * 1.2 * MM, THIN);
    }

    /** Draws a level mark: a triangle whose tip stands on the level. */
    static void level(Board board, Point at, String text) {
        double x = board.x(at.x());
        double y = board.y(at.y());
        double half = 1.15 * MM;
        double high = 2.0 * MM;
        double textWidth = TextFace.REGULAR.width(text) * Board.SMALL * 1.03;
        double least = Double.POSITIVE_INFINITY;
        double bestShift = 0;
        double bestSide = 1;
        Mark.@Nullable Words best = null;
        for (double shift : new double[] {2.2 * MM, 5 * MM, 8 * MM, 12 * MM, 17 * MM}) {
            for (double side : new double[] {1, -1}) {
                Mark.Words words =
                        new Mark.Words(
                                text,
                                x + side * (shift + half + 0.9 * MM),
                                y - 0.8 * MM,
                                side > 0 ? Mark.Anchor.START : Mark.Anchor.END,
                                Board.SMALL,
                                0,
                                Ink.BLACK);
                double[] line = {
                    x + side * 0.6 * MM, y, x + side * (shift + half + 0.9 * MM + textWidth), y
                };
                double[] triangle = {
                    x + side * shift - half, y - high / 2, x + side * shift + half, y - high / 2
                };
                double cost =
                        board.cost(words)
                                + board.cost(line)
                                + board.cost(triangle)
                                + shift / MM * 0.4;
                if (cost < least) {
                    least = cost;
                    bestShift = shift;
                    bestSide = side;
                    best = words;
                }
            }
        }
        if (best == null || least > MOST_LEVEL_COST) {
            // No room beside the point: the same words, farther off.
            label(board, at, text, Ink.BLACK);
            return;
        }
        double cx = x + bestSide * bestShift;
        board.segment(
                x + bestSide * 0.6 * MM,
                y,
                x + bestSide * (bestShift + half + 0.9 * MM + textWidth),
                y,
                THIN);
        double[] triangle = {cx, y, cx - half, y - high, cx + half, y - high};
        board.fill(triangle, Ink.WHITE);
        board.stroke(triangle, true, Pen.full(0.6, Ink.BLACK));
        board.write(best);
    }

    /** Draws a label with its leader, where it spoils least. */
    static void label(Board board, Point at, String text, Ink ink) {
        double x = board.x(at.x());
        double y = board.y(at.y());
        double least = Double.POSITIVE_INFINITY;
        double[] best = {0, 0};
        for (double reach : new double[] {4, 6, 8.5, 12, 16, 21}) {
            for (double[] way :
                    new double[][] {
                        {0.7, -0.7}, {-0.7, -0.7}, {0.7, 0.7}, {-0.7, 0.7}, {0.35, -0.93},
                        {-0.35, -0.93}, {0.35, 0.93}, {-0.35, 0.93}, {0.95, -0.3}, {-0.95, -0.3},
                        {0.95, 0.3}, {-0.95, 0.3}
                    }) {
                double dx = way[0] * reach * MM;
                double dy = way[1] * reach * MM;
                double cost =
                        board.cost(labelWords(x, y, dx, dy, text, ink))
                                + board.cost(
                                        new double[] {x + 0.08 * dx, y + 0.08 * dy, x + dx, y + dy})
                                + reach * 0.35;
                if (cost < least) {
                    least = cost;
                    best = new double[] {dx, dy};
                }
            }
        }
        label(board, at, text, ink, best[0], best[1]);
    }

    /** Draws a label at a given shift from its point, in points of the page. */
    static void label(Board board, Point at, String text, Ink ink, double dx, double dy) {
        double x = board.x(at.x());
        double y = board.y(at.y());
        double shelf = Math.copySign(1.4 * MM, dx);
        board.stroke(new double[] {x, y, x + dx, y + dy, x + dx + shelf, y + dy}, false, THIN);
        board.fill(disc(x, y, 0.35 * MM), Ink.GREY);
        board.write(labelWords(x, y, dx, dy, text, ink));
    }

    private static Mark.Words labelWords(
            double x, double y, double dx, double dy, String text, Ink ink) {
        return new Mark.Words(
                text,
                x + dx + Math.copySign(2.1 * MM, dx),
                y + dy + 0.25 * Board.TEXT,
                dx >= 0 ? Mark.Anchor.START : Mark.Anchor.END,
                Board.TEXT,
                0,
                ink);
    }

    /** Writes a value to the right of a point, unless another is there. */
    static void value(Board board, Point at, String text) {
        Mark.Words words =
                new Mark.Words(
                        text,
                        board.x(at.x()) + 1.8 * MM,
                        board.y(at.y()) + 0.33 * Board.SMALL,
                        Mark.Anchor.START,
                        Board.SMALL,
                        0,
                        Ink.RUST);
        if (!board.coversText(words)) {
            board.write(words);
        }
    }

    static double[] disc(double x, double y, double radius) {
        double[] xy = new double[24];
        for (int i = 0; i < 12; i++) {
            xy[2 * i] = x + radius * StrictMath.cos(i * Math.PI / 6);
            xy[2 * i + 1] = y + radius * StrictMath.sin(i * Math.PI / 6);
        }
        return xy;
    }

    /** Draws vertical loads to one scale, tips at their points, with their values. */
    static void loads(Board board, double[] x, double[] y, double[] values, double longest) {
        double most = 0;
        double spacing = Double.POSITIVE_INFINITY;
        double widest = 0;
        for (int i = 0; i < x.length; i++) {
            most = Math.max(most, Math.abs(values[i]));
            String text = Numbers.shortest(values[i], 1);
            widest = Math.max(widest, TextFace.REGULAR.width(text) * Board.SMALL);
            if (i > 0) {
                spacing = Math.min(spacing, Math.abs(board.x(x[i]) - board.x(x[i - 1])));
            }
        }
        if (most == 0) {
            return;
        }
        boolean upright = widest + 3 > spacing;
        int step = upright ? (int) Math.max(1, Math.ceil(1.15 * Board.SMALL / spacing)) : 1;
        for (int i = 0; i < x.length; i++) {
            double length = longest * values[i] / most;
            if (length == 0) {
                continue;
            }
            double px = board.x(x[i]);
            double tip = board.y(y[i]);
            double tail = tip - length;
            double head = Math.min(2.2 * MM, 0.6 * Math.abs(length));
            board.segment(
                    px, tail, px, tip - Math.copySign(0.8 * head, length), Pen.full(0.9, Ink.RUST));
            board.arrowhead(px, tip, 0, length, head, Ink.RUST);
            if (i % step == 0) {
                boolean up = length < 0;
                board.write(
                        new Mark.Words(
                                Numbers.shortest(values[i], 1),
                                upright ? px + 0.26 * Board.SMALL : px,
                                up ? tail + (upright ? MM : MM + 0.7 * Board.SMALL) : tail - MM,
                                upright
                                        ? up ? Mark.Anchor.END : Mark.Anchor.START
                                        : Mark.Anchor.MIDDLE,
                                Board.SMALL,
                                upright ? -90 : 0,
                                Ink.RUST));
            }
        }
    }

    /**
     * Draws the scale bar, and notes beside it, below all that is drawn.
     *
     * @param board the page
     * @param unit unit of the drawing
     * @param notes what to say beside it
     */
    static void scaleBar(Board board, String unit, List<String> notes) {
        double[] bounds = Geometry.bounds(board.marks());
        double total = Numbers.niceBelow(48 * MM / board.scale());
        double left = bounds[0] + 2 * MM;
        double high = 1.2 * MM;
        double top = bounds[3] + 8 * MM;
        double half = board.x(total) / 2;
        board.fill(rectangle(left, top, half / 2, high), Ink.BLACK);
        board.fill(rectangle(left + half, top, half, high), Ink.BLACK);
        board.stroke(rectangle(left, top, 2 * half, high), true, Pen.full(0.5, Ink.BLACK));
        double base = top - 1.1 * MM;
        for (int i = 0; i <= 2; i++) {
            String number = Numbers.shortest(total * i / 2, 3);
            // The number stays centred on its mark; its unit follows it.
            board.write(bar(number, left + i * half, base, Mark.Anchor.MIDDLE));
            if (i == 2) {
                double width = TextFace.REGULAR.width(number) * Board.SMALL * 1.03;
                board.write(
                        bar(unit, left + 2 * half + width / 2 + 0.8 * MM, base, Mark.Anchor.START));
            }
        }
        double x = left + 2 * half + 16 * MM;
        if (!notes.isEmpty()) {
            board.write(bar(String.join("; ", notes), x, top + high, Mark.Anchor.START));
        }
    }

    private static Mark.Words bar(String text, double x, double y, Mark.Anchor anchor) {
        return new Mark.Words(text, x, y, anchor, Board.SMALL, 0, Ink.BLACK);
    }

    private static double[] rectangle(double x, double y, double width, double height) {
        return new double[] {x, y, x + width, y, x + width, y + height, x, y + height};
    }
}
