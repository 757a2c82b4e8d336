package org.skewback.figure;

import org.skewback.frame.Vector;

/**
 * A board on which a frame is drawn, or a part of one: places of the frame become places of the page.
 *
 * @param board the board
 * @param view from where the frame is seen
 * @param dx shift to the right, in points
 * @param dy shift down, in points
 */
record FramePage(Board board, FrameView view, double dx, double dy) {

    FramePage(Board board, FrameView view) {
        this(board, view, 0, 0);
    }

    double x(Vector place) {
        return dx + board.x(view.x(place));
    }

    double y(Vector place) {
        return dy + board.y(view.y(place));
    }

    /** A line through places. */
    double[] line(Vector... places) {
        double[] xy = new double[2 * places.length];
        for (int i = 0; i < places.length; i++) {
            xy[2 * i] = x(places[i]);
            xy[2 * i + 1] = y(places[i]);
        }
        return xy;
    }

    /** Where a direction of the frame runs on the page; shorter than 1 where it is seen askew. */
    double[] direction(Vector direction) {
        return new double[] {view.x(direction), -view.y(direction)};
    }
}
