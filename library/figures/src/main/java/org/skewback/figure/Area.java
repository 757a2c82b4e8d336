package org.skewback.figure;

/** Kinds of area. */
public enum Area {
    /** A surface seen: light fill. */
    SEEN(Ink.LIGHT, 0),
    /** A surface cut: light fill, hatched at 45°. */
    CUT(Ink.STEEL, 3.2),
    /** Ground or rock cut: hatched wide at 45°, no fill. */
    GROUND(Ink.WHITE, 5.5);

    private final Ink fill;
    private final double spacing;

    Area(Ink fill, double spacing) {
        this.fill = fill;
        this.spacing = spacing;
    }

    Ink fill() {
        return fill;
    }

    /** Distance between hatch lines in points; 0 for none. */
    double spacing() {
        return spacing;
    }
}
