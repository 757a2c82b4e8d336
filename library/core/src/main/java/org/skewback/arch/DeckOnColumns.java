package org.skewback.arch;

import java.util.List;
import org.skewback.steel.Section;
import org.skewback.steel.Shape;

/**
 * A deck on columns that stand on the ribs.
 *
 * @param level level of the deck's axis above the springings, m
 * @param columns positions of the columns from the left springing, ascending, each within the span, m
 * @param leg section of a column's leg, one on each rib
 * @param beam section of the beam across the heads of two legs
 * @param girder section of the whole deck as one member
 * @param held which columns hold the deck along the bridge, by index from 0; on the others it slides
 */
public record DeckOnColumns(
        double level,
        List<Double> columns,
        Shape leg,
        Shape beam,
        Section girder,
        List<Integer> held) {

    /**
     * Checks and copies.
     *
     * @param level level of the deck's axis above the springings, m
     * @param columns positions of the columns from the left springing, m
     * @param leg section of a column's leg
     * @param beam section of the beam across
     * @param girder section of the whole deck
     * @param held which columns hold the deck along the bridge
     * @throws IllegalArgumentException if there is no column, positions do not ascend, no column holds the
     *     deck, or an index is not one of a column
     */
    public DeckOnColumns {
        columns = List.copyOf(columns);
        held = List.copyOf(held);
        Require.finite("level of the deck", level, "m");
        double before = 0;
        for (double position : columns) {
            if (!(position > before)) {
                throw Require.refused(
                        "position of a column", position, "m", "more than " + before + " m");
            }
            before = position;
        }
        if (held.isEmpty()) {
            throw new IllegalArgumentException(
                    "number of columns that hold the deck along the bridge is 0; allowed is at"
                            + " least 1: a deck that slides everywhere drifts away.");
        }
        for (int index : held) {
            Require.within(
                    "index of a column that holds the deck", index, 0, columns.size() - 1, "");
        }
    }
}
