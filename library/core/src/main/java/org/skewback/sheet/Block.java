package org.skewback.sheet;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** One thing that a sheet says. */
public sealed interface Block {

    /**
     * What the sheet is for.
     *
     * @param text in words
     */
    record Purpose(String text) implements Block {}

    /**
     * Something taken to be so.
     *
     * @param text in words
     */
    record Assumption(String text) implements Block {}

    /**
     * A number that comes from elsewhere, with its source.
     *
     * @param quantity the named quantity
     */
    record Given(Quantity quantity) implements Block {}

    /**
     * A row of numbers that come from elsewhere together.
     *
     * @param symbol symbol without the index
     * @param note what they are, in words
     * @param source where they came from
     * @param values the named quantities, with indices from 1
     */
    record Series(String symbol, String note, Source source, List<Quantity> values)
            implements Block {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param symbol symbol without the index
         * @param note what they are, in words
         * @param source where they came from
         * @param values the named quantities, with indices from 1
         */
        public Series {
            values = List.copyOf(values);
        }
    }

    /**
     * A number that was worked out.
     *
     * @param quantity the named quantity
     */
    record Step(Quantity quantity) implements Block {}

    /**
     * A table.
     *
     * @param table the table
     */
    record Tabulated(Table table) implements Block {}

    /**
     * A figure.
     *
     * @param title its title
     * @param description what it shows, in words
     * @param svg the picture
     */
    record Drawn(String title, String description, String svg) implements Block {}

    /**
     * A check.
     *
     * @param check what is required
     */
    record Checked(Check check) implements Block {}

    /**
     * Something that can hurt someone or mislead.
     *
     * @param text in words
     */
    record Caution(String text) implements Block {}

    /**
     * What follows from the sheet.
     *
     * @param text in words
     */
    record Conclusion(String text) implements Block {}
}
