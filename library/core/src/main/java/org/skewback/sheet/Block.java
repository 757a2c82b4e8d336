package org.skewback.sheet;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
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
     * The heading of a section or of a part of one; its number is derived, see {@link Numbering}.
     *
     * @param level 1 for a section, 2 for a part of a section
     * @param title what it deals with
     */
    record Section(int level, String title) implements Block {

        /** The deepest level. */
        public static final int DEEPEST = 2;

        /**
         * Checks the level.
         *
         * @param level 1 for a section, 2 for a part of a section
         * @param title what it deals with
         * @throws IllegalArgumentException when the level is another or the title is blank
         */
        public Section {
            if (level < 1 || level > DEEPEST) {
                throw new IllegalArgumentException(
                        "level of section \"" + title + "\" is " + level + "; allowed: 1 and 2");
            }
            if (title.isBlank()) {
                throw new IllegalArgumentException("a section has a blank title");
            }
        }
    }

    /**
     * Prose; an empty line parts two paragraphs.
     *
     * @param text in words, without markup
     */
    record Note(String text) implements Block {}

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
     * @param restsOn quantities behind its texts and plain numbers, besides those in its columns
     */
    record Tabulated(Table table, List<Quantity> restsOn) implements Block {

        /**
         * Keeps a copy, so that nobody can change it from outside.
         *
         * @param table the table
         * @param restsOn quantities behind its texts and plain numbers, besides those in its columns
         */
        public Tabulated {
            restsOn = List.copyOf(restsOn);
        }
    }

    /**
     * A figure.
     *
     * @param title its title
     * @param description what it shows, in words
     * @param svg the picture
     * @param restsOn quantities that it was drawn from, as far as its author said
     * @param states the states that a reader can turn to; null where there is only this one
     */
    record Drawn(
            String title,
            String description,
            String svg,
            List<Quantity> restsOn,
            @Nullable FigureStates states)
            implements Block {

        /**
         * Keeps a copy, so that nobody can change it from outside.
         *
         * @param title its title
         * @param description what it shows, in words
         * @param svg the picture
         * @param restsOn quantities that it was drawn from, as far as its author said
         * @param states the states that a reader can turn to; null where there is only this one
         * @throws IllegalArgumentException if the picture is not that of the opening state
         */
        public Drawn {
            restsOn = List.copyOf(restsOn);
            if (states != null && !states.states().get(states.opening()).svg().equals(svg)) {
                throw new IllegalArgumentException(
                        "the picture of figure \"" + title + "\" is not its opening state");
            }
        }
    }

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

    /**
     * Somebody who answers for the sheet.
     *
     * @param role what was done
     * @param name who did it
     * @param date when
     */
    record Signed(Role role, String name, LocalDate date) implements Block {

        /**
         * Checks the name.
         *
         * @param role what was done
         * @param name who did it
         * @param date when
         * @throws IllegalArgumentException when the name is blank
         */
        public Signed {
            if (name.isBlank()) {
                throw new IllegalArgumentException(
                        "the name of whom the sheet was " + role.inWords() + " is blank");
            }
        }
    }

    /**
     * A comment on the sheet.
     *
     * @param by who made it
     * @param date when
     * @param text in words
     */
    record Comment(String by, LocalDate date, String text) implements Block {

        /**
         * Checks the name.
         *
         * @param by who made it
         * @param date when
         * @param text in words
         * @throws IllegalArgumentException when the name is blank
         */
        public Comment {
            if (by.isBlank()) {
                throw new IllegalArgumentException("a comment does not say who made it");
            }
        }
    }
}
