package org.skewback.steel;

/** The dimensions of a cross-section, from which its properties follow. */
public interface Shape {

    /**
     * Gives the properties of the section.
     *
     * @param name what to call the section
     * @return area, shear areas, torsion constant, second moments and the outermost fibres
     */
    Section section(String name);

    /**
     * Gives the shape part of the way to another of the same kind, each dimension changing linearly.
     *
     * @param other shape at the far end
     * @param fraction 0 for this shape, 1 for the other
     * @return the shape between
     * @throws IllegalArgumentException if the other shape is of another kind
     */
    Shape towards(Shape other, double fraction);

    /**
     * Makes the exception for shapes of two kinds.
     *
     * @param from one shape
     * @param to the other
     * @return the exception, to be thrown by the caller
     */
    static IllegalArgumentException kindsDiffer(Shape from, Shape to) {
        return new IllegalArgumentException(
                "a taper from " + from + " to " + to + "; allowed are two shapes of one kind.");
    }

    /**
     * Interpolates linearly.
     *
     * @param from value at fraction 0
     * @param to value at fraction 1
     * @param fraction how far
     * @return {@code from + fraction · (to − from)}
     */
    static double between(double from, double to, double fraction) {
        return from + fraction * (to - from);
    }
}
