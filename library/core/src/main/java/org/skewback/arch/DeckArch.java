package org.skewback.arch;

import org.skewback.form.Axis;
import org.skewback.frame.Material;
import org.skewback.steel.Shape;

/**
 * A deck arch of two ribs, as few numbers as describe it; {@link DeckArchFrame#of} makes the frame.
 *
 * @param axis axis of the ribs in elevation, springings at one level
 * @param springings how the ribs are held
 * @param planes where the ribs stand across the bridge
 * @param makeup what a rib is made of
 * @param bracing section of the struts and diagonals between the ribs; diagonals carry axial force alone
 * @param longestPanel longest panel of a rib on plan, m, greater than 0; panel points are the columns and,
 *     between them, as many as keep to it
 * @param deck the deck and its columns
 * @param material material of all members
 */
public record DeckArch(
        Axis axis,
        Springings springings,
        RibPlanes planes,
        RibMakeup makeup,
        Shape bracing,
        double longestPanel,
        DeckOnColumns deck,
        Material material) {

    /**
     * Checks what can be told before the frame is made.
     *
     * @param axis axis of the ribs
     * @param springings how the ribs are held
     * @param planes where the ribs stand across the bridge
     * @param makeup what a rib is made of
     * @param bracing section of the bracing
     * @param longestPanel longest panel of a rib on plan, m
     * @param deck the deck and its columns
     * @param material material of all members
     * @throws IllegalArgumentException if a springing is higher than the other, a column stands off the
     *     span, the deck lies below the axis at a column, or the panel length is not greater than 0
     */
    public DeckArch {
        Require.positive("longest panel", longestPanel, "m");
        if (axis.rightLevel() != 0) {
            throw Require.refused(
                    "level of the right springing",
                    axis.rightLevel(),
                    "m",
                    "0 m, that of the left");
        }
        for (double position : deck.columns()) {
            if (!(position < axis.span())) {
                throw Require.refused(
                        "position of a column",
                        position,
                        "m",
                        "less than the span of " + axis.span() + " m");
            }
            if (!(deck.level() > axis.y(position))) {
                throw Require.refused(
                        "level of the deck above the springings",
                        deck.level(),
                        "m",
                        "more than that of the rib at the column at "
                                + position
                                + " m, "
                                + axis.y(position)
                                + " m");
            }
        }
    }
}
