package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes short texts beside points, where they cover no other text and as few lines as can be. */
final class NearText {

    private static final double MM = Board.MILLIMETRE;
    private static final Pen LEADER = Pen.full(0.4, Ink.GREY);

    /** Beyond this distance a thin line says to which point the text belongs. */
    private static final double ALONE = 3.2 * MM;

    private NearText() {}

    /** A place for a text, and where its leader ends. */
    private record Place(Mark.Words words, double reach, double x, double y) {}

    /**
     * Writes a text near a point.
     *
     * @param board the page
     * @param x the point
     * @param y the point
     * @param text what to write
     * @param ink colour
     * @param way direction that is tried first; (0, −1) is above
     * @param farthest greatest distance in mm
     * @return whether there was room
     */
    static boolean write(
            Board board, double x, double y, String text, Ink ink, double[] way, double farthest) {
        return write(board, x, y, text, ink, way, farthest, Double.POSITIVE_INFINITY);
    }

    /** The same, only where it costs less than a bound: 6 for each line that text would break. */
    static boolean write(
            Board board,
            double x,
            double y,
            String text,
            Ink ink,
            double[] way,
            double farthest,
            double bound) {
        double norm = Math.max(1e-9, Math.sqrt(way[0] * way[0] + way[1] * way[1]));
        double base = StrictMath.atan2(way[1] / norm, way[0] / norm);
        @Nullable Place best = null;
        double least = bound;
        for (double reach : new double[] {1.4, 2.4, 4, 6, 9, 13, 18, 24}) {
            if (reach > farthest) {
                break;
            }
            for (int turn = 0; turn < 16; turn++) {
                int step = turn % 2 == 0 ? turn / 2 : -(turn + 1) / 2;
                double angle = base + step * Math.PI / 8;
                Place place = place(x, y, text, ink, angle, reach * MM);
                double cost = reach * 0.5 + Math.abs(step) * 0.35;
                if (cost >= least) {
                    continue;
                }
                cost += board.cost(place.words());
                if (place.reach() > ALONE) {
                    cost += board.cost(new double[] {x, y, place.x(), place.y()});
                }
                if (cost < least) {
                    least = cost;
                    best = place;
                }
            }
        }
        if (best == null || board.coversText(best.words())) {
            return false;
        }
        if (best.reach() > ALONE) {
            board.segment(x, y, best.x(), best.y(), LEADER);
        }
        board.write(best.words());
        return true;
    }

    /** The text stands off its point in a direction, with its nearer edge at the distance. */
    private static Place place(
            double x, double y, String text, Ink ink, double angle, double reach) {
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        double high = 0.93 * Board.SMALL;
        double px = x + reach * c;
        double py = y + reach * s;
        Mark.Anchor anchor =
                c > 0.35 ? Mark.Anchor.START : c < -0.35 ? Mark.Anchor.END : Mark.Anchor.MIDDLE;
        // From above (s < 0) the foot of the letters is near the point, from below their top.
        double baseLine = py + 0.255 * Board.SMALL + high / 2 * Math.max(-1, Math.min(1, 1.4 * s));
        Mark.Words words = new Mark.Words(text, px, baseLine, anchor, Board.SMALL, 0, ink);
        return new Place(words, reach, px, py);
    }

    /**
     * Writes a text along a straight line, beside its middle or nearby.
     *
     * @param board the page
     * @param xy ends of the line
     * @param text what to write
     * @param ink colour
     * @return whether there was room for it along the line and beside it
     */
    static boolean along(Board board, double[] xy, String text, Ink ink) {
        double dx = xy[2] - xy[0];
        double dy = xy[3] - xy[1];
        double length = Math.sqrt(dx * dx + dy * dy);
        if (length < width(text) + 2 * MM) {
            return false;
        }
        // Read from below or from the right.
        boolean turned = dx < -1e-6 * length || (Math.abs(dx) <= 1e-6 * length && dy > 0);
        double ux = turned ? -dx / length : dx / length;
        double uy = turned ? -dy / length : dy / length;
        double turn = StrictMath.toDegrees(StrictMath.atan2(uy, ux));
        Mark.@Nullable Words best = null;
        double least = 6;
        for (double share : new double[] {0.5, 0.42, 0.58, 0.34, 0.66}) {
            for (double off : new double[] {-0.9 * MM, 0.9 * MM + 0.7 * Board.SMALL}) {
                Mark.Words words =
                        new Mark.Words(
                                text,
                                xy[0] + share * dx - uy * off,
                                xy[1] + share * dy + ux * off,
                                Mark.Anchor.MIDDLE,
                                Board.SMALL,
                                turn,
                                ink);
                double cost = board.cost(words) + Math.abs(share - 0.5) * 4 + (off > 0 ? 0.5 : 0);
                if (cost < least) {
                    least = cost;
                    best = words;
                }
            }
        }
        if (best == null) {
            return false;
        }
        board.write(best);
        return true;
    }

    /** Breaks a text into lines of a width in points. */
    static List<String> lines(String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > width) {
                lines.add(line.toString());
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    static double width(String text) {
        return TextFace.REGULAR.width(text) * Board.SMALL * 1.03;
    }
}
