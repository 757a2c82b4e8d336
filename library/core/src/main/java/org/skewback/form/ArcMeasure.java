package org.skewback.form;

/** Lengths along a line that is given over the span, as needed to spread a load along it. */
interface ArcMeasure {

    /**
     * Gives the length along the line between two positions.
     *
     * @param from position, m
     * @param to position, m; may lie left of {@code from}, which makes the length negative
     * @return the length in m
     */
    double arcLength(double from, double to);

    /**
     * Gives the first moment of the line between two positions about the left springing, {@code ∫ x
     * ds}.
     *
     * @param from position, m
     * @param to position, m; may lie left of {@code from}, which makes the moment negative
     * @return the moment in m²
     */
    double arcMoment(double from, double to);
}
