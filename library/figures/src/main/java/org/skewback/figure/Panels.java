package org.skewback.figure;

import java.util.List;
import java.util.function.Consumer;

/** Small pictures of one frame side by side, all at one scale, each with words below it. */
final class Panels {

    private static final double MM = Board.MILLIMETRE;
    private static final double GAP = 5 * MM;
    private static final double BETWEEN_ROWS = 4 * MM;

    /** Room about each picture for the signs of supports. */
    private static final double BESIDE = 3 * MM;

    private static final double BELOW = 4.5 * MM;
    private static final double LINE = 1.28 * Board.SMALL;
    private static final double LEAST_WIDTH = 36 * MM;
    private static final int MOST_COLUMNS = 4;

    /** Height kept for what stands below all. */
    private static final double FOOTER = 22 * MM;

    private final FrameView view;
    private final double room;
    private final double high;
    private final double[] extent;
    private final List<Panel> panels;

    /**
     * One picture.
     *
     * @param words lines that are broken where they are too long
     * @param draw draws it
     */
    record Panel(List<String> words, Consumer<FramePage> draw) {}

    /**
     * How the pictures lie.
     *
     * @param columns pictures in a row
     * @param cell width of one in points
     * @param words lines of words below the picture that has most
     * @param scale points for a metre
     */
    private record Layout(int columns, double cell, int words, double scale) {}

    /**
     * Makes ready to draw.
     *
     * @param view from where all are seen
     * @param room width in points
     * @param high greatest height in points
     * @param extent bounds of each picture at scale 1: left, top, right, bottom
     * @param panels the pictures, at least one
     */
    Panels(FrameView view, double room, double high, double[] extent, List<Panel> panels) {
        this.view = view;
        this.room = room;
        this.high = high;
        this.extent = extent;
        this.panels = panels;
    }

    private Layout layout() {
        Layout best = new Layout(0, 0, 0, 0);
        for (int columns = 1; columns <= MOST_COLUMNS && columns <= panels.size(); columns++) {
            double cell = (room - (columns - 1) * GAP) / columns;
            if (columns > 1 && cell < LEAST_WIDTH) {
                break;
            }
            int words = 0;
            for (Panel panel : panels) {
                words = Math.max(words, lines(panel, cell).size());
            }
            int rows = (panels.size() + columns - 1) / columns;
            double rowHigh = (high - FOOTER) / rows - words * LINE - BETWEEN_ROWS - BELOW;
            double scale =
                    Math.min(
                            (cell - 2 * BESIDE) / (extent[2] - extent[0]),
                            rowHigh / (extent[3] - extent[1]));
            if (scale > best.scale) {
                best = new Layout(columns, cell, words, scale);
            }
        }
        return best;
    }

    private static List<String> lines(Panel panel, double width) {
        return panel.words.stream()
                .flatMap(words -> NearText.lines(words, width).stream())
                .toList();
    }

    /** Draws all and gives the board, or refuses. */
    Board drawn(String title) {
        Layout layout = layout();
        if (!(layout.scale > 0)) {
            throw new IllegalArgumentException(
                    "figure \""
                            + title
                            + "\" has "
                            + panels.size()
                            + " pictures, which do not fit "
                            + Numbers.shortest(room / MM, 0)
                            + " mm by "
                            + Numbers.shortest(high / MM, 0)
                            + " mm; draw fewer or make it larger");
        }
        Board board = new Board(layout.scale);
        double wide = (extent[2] - extent[0]) * layout.scale;
        double tall = (extent[3] - extent[1]) * layout.scale;
        double row = tall + BELOW + layout.words * LINE + BETWEEN_ROWS;
        for (int i = 0; i < panels.size(); i++) {
            double left = i % layout.columns * (layout.cell + GAP);
            int down = i / layout.columns;
            double top = down * row;
            double middle = left + layout.cell / 2;
            panels.get(i)
                    .draw
                    .accept(
                            new FramePage(
                                    board,
                                    view,
                                    middle - wide / 2 - extent[0] * layout.scale,
                                    top - extent[1] * layout.scale));
            double base = top + tall + BELOW + 0.8 * Board.SMALL;
            for (String line : lines(panels.get(i), layout.cell)) {
                board.write(
                        new Mark.Words(
                                line, middle, base, Mark.Anchor.MIDDLE, Board.SMALL, 0, Ink.BLACK));
                base += LINE;
            }
        }
        return board;
    }
}
