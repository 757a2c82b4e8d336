package org.skewback.figure;

import java.util.List;

/** Markers of single points, told apart by shape and by being full or hollow. */
enum Marker {
    /** A hollow circle. */
    CIRCLE,
    /** A full triangle. */
    TRIANGLE,
    /** A hollow square. */
    SQUARE,
    /** A cross. */
    CROSS;

    /** The order in which rows of points take them. */
    static final List<Marker> IN_TURN = List.of(CIRCLE, TRIANGLE, SQUARE, CROSS);

    private static final double HALF = 0.85 * Board.MILLIMETRE;
    private static final Pen PEN = Pen.full(0.7, Ink.BLACK);

    /** Draws one about a place of the page. */
    void draw(List<Mark> marks, double x, double y) {
        switch (this) {
            case CIRCLE -> {
                double[] disc = Annotations.disc(x, y, HALF);
                marks.add(new Mark.Fill(List.of(disc), Ink.WHITE));
                marks.add(new Mark.Stroke(List.of(disc), true, PEN));
            }
            case TRIANGLE ->
                    marks.add(
                            new Mark.Fill(
                                    List.of(
                                            new double[] {
                                                x,
                                                y - 1.15 * HALF,
                                                x - HALF,
                                                y + 0.7 * HALF,
                                                x + HALF,
                                                y + 0.7 * HALF
                                            }),
                                    Ink.BLUE));
            case SQUARE -> {
                double h = 0.85 * HALF;
                double[] square = {x - h, y - h, x + h, y - h, x + h, y + h, x - h, y + h};
                marks.add(new Mark.Fill(List.of(square), Ink.WHITE));
                marks.add(new Mark.Stroke(List.of(square), true, PEN));
            }
            case CROSS ->
                    marks.add(
                            new Mark.Stroke(
                                    List.of(
                                            new double[] {x - HALF, y - HALF, x + HALF, y + HALF},
                                            new double[] {x - HALF, y + HALF, x + HALF, y - HALF}),
                                    false,
                                    PEN));
        }
    }
}
