package org.skewback.figure;

import java.util.List;

/** One stroke, fill or text on the page; in points, x to the right, y downwards. */
sealed interface Mark {

    /** Moves the mark. */
    Mark moved(double dx, double dy);

    /**
     * Lines drawn with one pen.
     *
     * @param lines polylines, each x0, y0, x1, y1, …
     * @param closed whether each is closed
     * @param pen the pen
     */
    record Stroke(List<double[]> lines, boolean closed, Pen pen) implements Mark {
        @Override
        public Stroke moved(double dx, double dy) {
            return new Stroke(
                    lines.stream().map(line -> shift(line, dx, dy)).toList(), closed, pen);
        }
    }

    /**
     * Filled polygons.
     *
     * @param polygons each x0, y0, x1, y1, …
     * @param ink the colour
     */
    record Fill(List<double[]> polygons, Ink ink) implements Mark {
        @Override
        public Fill moved(double dx, double dy) {
            return new Fill(polygons.stream().map(p -> shift(p, dx, dy)).toList(), ink);
        }
    }

    /**
     * A line of text.
     *
     * @param text what it says
     * @param x anchor point
     * @param y base line
     * @param anchor which part of the text is at x
     * @param size font size in points
     * @param turn degrees, clockwise on the page, about the anchor point
     * @param ink colour
     */
    record Words(String text, double x, double y, Anchor anchor, double size, double turn, Ink ink)
            implements Mark {

        @Override
        public Words moved(double dx, double dy) {
            return new Words(text, x + dx, y + dy, anchor, size, turn, ink);
        }

        /** Corners of the box the text needs, with a little room for another font's widths. */
        double[] box() {
            double width = TextFace.REGULAR.width(text) * size * 1.03;
            double left = x - anchor.share() * width;
            double[] box = {
                left,
                y - 0.72 * size,
                left + width,
                y - 0.72 * size,
                left + width,
                y + 0.21 * size,
                left,
                y + 0.21 * size
            };
            double c = StrictMath.cos(StrictMath.toRadians(turn));
            double s = StrictMath.sin(StrictMath.toRadians(turn));
            for (int i = 0; i < box.length; i += 2) {
                double dx = box[i] - x;
                double dy = box[i + 1] - y;
                box[i] = x + c * dx - s * dy;
                box[i + 1] = y + s * dx + c * dy;
            }
            return box;
        }
    }

    /** Which part of a text is at its anchor point. */
    enum Anchor {
        START(0, "start"),
        MIDDLE(0.5, "middle"),
        END(1, "end");

        private final double share;
        private final String svg;

        Anchor(double share, String svg) {
            this.share = share;
            this.svg = svg;
        }

        double share() {
            return share;
        }

        String svg() {
            return svg;
        }
    }

    private static double[] shift(double[] xy, double dx, double dy) {
        double[] moved = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            moved[i] = xy[i] + dx;
            moved[i + 1] = xy[i + 1] + dy;
        }
        return moved;
    }
}
