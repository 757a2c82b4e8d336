package org.skewback.figure;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width line width in points
 * @param ink colour
 * @param dash lengths of dash and gap in turn, in points; empty for a full line
 */
record Pen(double width, Ink ink, List<Double> dash) {

    Pen {
        Check.positive("line width", width);
        dash = List.copyOf(dash);
    }

    static Pen full(double width, Ink ink) {
        return new Pen(width, ink, List.of());
    }
}
