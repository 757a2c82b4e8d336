package org.skewback.figure;

import java.util.List;
import java.util.function.DoubleFunction;

/** Finds the scale at which a drawing with its text fits its page, and sets it on the page. */
final class Fit {

    private static final int HALVINGS = 16;
    private static final double BORDER = 1;
    private static final double MM = Board.MILLIMETRE;

    private Fit() {}

    /**
     * Draws at the largest scale at which all fits, by bisection: text keeps its size and looks for
     * its place anew at each scale, so there is no formula for it.
     *
     * @param title the figure's title
     * @param description what it shows
     * @param width width of the page in mm
     * @param mostHeight greatest height of the page in mm
     * @param extent bounds of the shapes alone at scale 1: left, top, right, bottom
     * @param drawn draws all of it at a scale
     * @throws IllegalArgumentException if the text alone is too large
     */
    static Picture picture(
            String title,
            String description,
            double width,
            double mostHeight,
            double[] extent,
            DoubleFunction<Board> drawn) {
        double roomX = width * MM - 2 * BORDER;
        double roomY = mostHeight * MM - 2 * BORDER;
        double tooLarge =
                Math.min(roomX / (extent[2] - extent[0]), roomY / (extent[3] - extent[1]));
        double small = 0;
        Board best = null;
        for (int i = 0; i < HALVINGS; i++) {
            double scale = (small + tooLarge) / 2;
            Board board = drawn.apply(scale);
            double[] b = Geometry.bounds(board.marks());
            if (b[2] - b[0] <= roomX && b[3] - b[1] <= roomY) {
                small = scale;
                best = board;
            } else {
                tooLarge = scale;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException(
                    "figure \""
                            + title
                            + "\" does not fit "
                            + width
                            + " mm by "
                            + mostHeight
                            + " mm with its text; make it larger or shorten the text");
        }
        return onPage(title, description, width, best.marks());
    }

    /** Sets what is drawn in the middle of a page that is as high as it needs. */
    static Picture onPage(String title, String description, double width, List<Mark> drawn) {
        double[] b = Geometry.bounds(drawn);
        double roomX = width * MM - 2 * BORDER;
        double dx = BORDER - b[0] + (roomX - (b[2] - b[0])) / 2;
        double dy = BORDER - b[1];
        List<Mark> marks = drawn.stream().map(mark -> mark.moved(dx, dy)).toList();
        return new Picture(title, description, width * MM, b[3] - b[1] + 2 * BORDER, marks);
    }
}
