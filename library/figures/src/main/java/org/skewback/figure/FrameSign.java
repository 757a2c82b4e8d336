package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Signs for supports and joints of frames, as textbooks of structural mechanics draw them (common
 * practice, no source): triangles for pins, ground as a hatched line, circles for hinges, zigzags for
 * springs.
 *
 * <p>Each is drawn at a node, towards a direction of the page: for supports the one of the ground.
 */
enum FrameSign {
    CLAMP("held against moving and turning"),
    PIN("held against moving, free to turn"),
    ROLLER("held in one direction, free to turn"),
    GUIDE("held in one direction and against turning"),
    STRUT("held along the strut"),
    TURN("held against turning"),
    TURN_AXIS("held against turning about the double arrow"),
    FREE_AXIS("free to turn about this axis only"),
    SPRING("spring to the ground"),
    TURN_SPRING("spring against turning"),
    HINGE("hinge"),
    SPRUNG_JOINT("joint with a spring"),
    SLIDING_JOINT("joint that slides or twists freely"),
    LINK("spring link"),
    ARM("rigid arm"),
    ABSENT("out of action");

    static final Pen ARM_PEN = Pen.full(2.4, Ink.GREY);
    static final Pen ABSENT_PEN = new Pen(0.6, Ink.GREY, List.of(1.0, 2.2));

    private static final double MM = Board.MILLIMETRE;
    private static final Pen LINE = Pen.full(0.7, Ink.BLACK);
    private static final Pen GROUND = Pen.full(0.9, Ink.BLACK);
    private static final Pen HATCH = Pen.full(0.45, Ink.BLACK);

    private final String words;

    FrameSign(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /**
     * Draws the sign.
     *
     * @param board the page
     * @param x node
     * @param y node
     * @param dx direction, of any length
     * @param dy direction
     * @param size 1 for the usual size
     */
    void draw(Board board, double x, double y, double dx, double dy, double size) {
        double norm = Math.sqrt(dx * dx + dy * dy);
        Pose at = new Pose(x, y, dx / norm, dy / norm, size * MM);
        switch (this) {
            case CLAMP -> ground(board, at, 0, 2.3);
            case PIN -> {
                triangle(board, at, 2.7);
                ground(board, at, 2.7, 2.3);
            }
            case ROLLER -> {
                triangle(board, at, 2.3);
                for (double across : new double[] {-0.9, 0.9}) {
                    double[] wheel = at.points(2.85, across);
                    board.stroke(Annotations.disc(wheel[0], wheel[1], 0.55 * at.unit), true, LINE);
                }
                ground(board, at, 3.4, 2.3);
            }
            case GUIDE -> {
                board.stroke(at.points(0, -2, 0, 2), false, GROUND);
                ground(board, at, 1.1, 2.3);
            }
            case STRUT -> {
                board.stroke(at.points(0, 0, 3.2, 0), false, GROUND);
                ground(board, at, 3.2, 1.2);
            }
            case TURN -> {
                double[] square = at.points(-1, -1, 1, -1, 1, 1, -1, 1);
                board.fill(square, Ink.WHITE);
                board.stroke(square, true, LINE);
            }
            case TURN_AXIS -> axis(board, at);
            case FREE_AXIS -> board.stroke(at.points(-4, 0, 4, 0), false, LineStyle.CENTRE.pen());
            case SPRING -> {
                board.stroke(zigzag(at, 4.2), false, LINE);
                ground(board, at, 4.2, 1.6);
            }
            case TURN_SPRING -> board.stroke(spiral(at), false, LINE);
            case HINGE -> circle(board, at, Ink.WHITE);
            case SPRUNG_JOINT -> circle(board, at, Ink.HATCH);
            case SLIDING_JOINT -> {
                board.stroke(at.points(-0.9, -0.7, 0.9, -0.7), false, LINE);
                board.stroke(at.points(-0.9, 0.7, 0.9, 0.7), false, LINE);
            }
            case LINK -> {
                double[] diamond = at.points(-1.1, 0, 0, -1.1, 1.1, 0, 0, 1.1);
                board.fill(diamond, Ink.WHITE);
                board.stroke(diamond, true, LINE);
            }
            case ARM -> board.stroke(at.points(-3, 0, 3, 0), false, ARM_PEN);
            case ABSENT -> board.stroke(at.points(-4, 0, 4, 0), false, ABSENT_PEN);
        }
    }

    /**
     * Where a sign stands.
     *
     * @param x origin
     * @param y origin
     * @param ux unit vector along its direction
     * @param uy the same
     * @param unit points for one unit
     */
    private record Pose(double x, double y, double ux, double uy, double unit) {

        /** Page points from places along and across the direction. */
        double[] points(double... alongAcross) {
            double[] xy = new double[alongAcross.length];
            for (int i = 0; i < xy.length; i += 2) {
                double a = alongAcross[i] * unit;
                double c = alongAcross[i + 1] * unit;
                xy[i] = x + a * ux - c * uy;
                xy[i + 1] = y + a * uy + c * ux;
            }
            return xy;
        }
    }

    private static void triangle(Board board, Pose at, double high) {
        double[] triangle = at.points(0, 0, high, -1.6, high, 1.6);
        board.fill(triangle, Ink.WHITE);
        board.stroke(triangle, true, LINE);
    }

    private static void ground(Board board, Pose at, double off, double half) {
        board.stroke(at.points(off, -half, off, half), false, GROUND);
        List<double[]> ticks = new ArrayList<>();
        int count = (int) Math.round(half / 0.55);
        for (int i = 0; i < count; i++) {
            double across = -half + (i + 0.8) * 2 * half / count;
            ticks.add(at.points(off, across, off + 0.9, across - 0.9));
        }
        board.strokes(ticks, HATCH);
    }

    private static void circle(Board board, Pose at, Ink ink) {
        double[] disc = Annotations.disc(at.x, at.y, 0.65 * at.unit);
        board.fill(disc, ink);
        board.stroke(disc, true, LINE);
    }

    private static double[] zigzag(Pose at, double length) {
        double[] shape = {0, 0, 0.16, 0, 0.25, 1, 0.4, -1, 0.55, 1, 0.7, -1, 0.8, 0, 1, 0};
        for (int i = 0; i < shape.length; i += 2) {
            shape[i] *= length;
            shape[i + 1] *= 0.8;
        }
        return at.points(shape);
    }

    /** A zigzag between two points of the page. */
    static double[] zigzag(double x0, double y0, double x1, double y1) {
        double length = StrictMath.hypot(x1 - x0, y1 - y0);
        Pose at = new Pose(x0, y0, (x1 - x0) / length, (y1 - y0) / length, MM);
        return zigzag(at, length / MM);
    }

    private static double[] spiral(Pose at) {
        double[] turns = new double[2 * 27];
        for (int i = 0; i < 27; i++) {
            double angle = i * Math.PI / 8;
            double radius = 0.5 + 1.5 * i / 26;
            turns[2 * i] = radius * StrictMath.cos(angle);
            turns[2 * i + 1] = radius * StrictMath.sin(angle);
        }
        return at.points(turns);
    }

    /** A line through a node with a double arrow at each end. */
    private static void axis(Board board, Pose at) {
        board.stroke(at.points(-3.2, 0, 3.2, 0), false, LINE);
        for (int side = -1; side <= 1; side += 2) {
            for (double tip : new double[] {3.2, 2.1}) {
                double[] head = at.points(side * tip, 0);
                board.arrowhead(head[0], head[1], side * at.ux, side * at.uy, 1.8 * MM, Ink.BLACK);
            }
        }
    }
}
