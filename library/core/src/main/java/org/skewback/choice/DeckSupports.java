package org.skewback.choice;

import org.skewback.quantity.Quantity;

/**
 * What stands or hangs between a parabolic arch and a level deck, as areas in elevation: over the
 * spacing they are the lengths of all columns or hangers together.
 *
 * <p>A deck above the crown stands on columns all along; one at the springings hangs all along; one
 * between goes through the arch and does both. Spreading the columns evenly takes half a column at each
 * springing, where the deck has a pier.
 */
public final class DeckSupports {

    private DeckSupports() {}

    /**
     * Gives the length over which the deck hangs, {@code 2a = L √(1 − h/f)}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param deckHeight height of the deck above the springings, h, at least 0
     * @return the length; 0 for a deck at or above the crown
     * @throws IllegalArgumentException if an argument is out of its range or no length
     */
    public static Quantity hungLength(Quantity span, Quantity rise, Quantity deckHeight) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Require.notNegative("height of the deck", deckHeight, "m");
        Quantity under = Quantity.of(1).minus(Quantity.min(deckHeight, rise).over(rise));
        return span.times(under.root());
    }

    /**
     * Gives the area between arch and deck where the deck hangs, {@code (2/3) · 2a (f − h)}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param deckHeight height of the deck above the springings, h, at least 0
     * @return the area, a segment of the parabola; 0 for a deck at or above the crown
     * @throws IllegalArgumentException if an argument is out of its range or no length
     */
    public static Quantity hungArea(Quantity span, Quantity rise, Quantity deckHeight) {
        Quantity above = rise.minus(Quantity.min(deckHeight, rise));
        return hungLength(span, rise, deckHeight).times(above).times(2).over(3);
    }

    /**
     * Gives the area between deck and arch where the deck stands, {@code h L − (2/3) f L} and the area
     * where it hangs.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param deckHeight height of the deck above the springings, h, at least 0
     * @return the area; 0 for a deck at the springings
     * @throws IllegalArgumentException if an argument is out of its range or no length
     */
    public static Quantity columnArea(Quantity span, Quantity rise, Quantity deckHeight) {
        return deckHeight
                .times(span)
                .minus(rise.times(span).times(2).over(3))
                .plus(hungArea(span, rise, deckHeight));
    }
}
