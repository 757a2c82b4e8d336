package org.skewback.quantity;

import java.util.Locale;

/**
 * Where a number came from, as an engineer would cite it.
 *
 * @param kind what sort of source
 * @param reference what to look up: a number, a title, a file
 * @param place where in it: revision, clause, page, row; empty where there is none
 */
public record Source(Kind kind, String reference, String place) {

    /** What sort of source a number has. */
    public enum Kind {
        /** A published standard. */
        STANDARD,
        /** A book. */
        BOOK,
        /** A paper. */
        PAPER,
        /** A drawing, with its revision. */
        DRAWING,
        /** A survey. */
        SURVEY,
        /** A report of tests. */
        TEST_REPORT,
        /** A file of data. */
        DATA,
        /** A result of another sheet. */
        SHEET,
        /** A fact of the trade without a source. */
        COMMON_PRACTICE,
        /** The author's own assumption. */
        ASSUMPTION;

        /**
         * Gives the kind in words.
         *
         * @return such as {@code test report}
         */
        public String inWords() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * Checks that there is something to look up.
     *
     * @param kind what sort of source
     * @param reference what to look up: a number, a title, a file
     * @param place where in it: revision, clause, page, row; empty where there is none
     * @throws IllegalArgumentException when the reference is blank
     */
    public Source {
        if (reference.isBlank()) {
            throw new IllegalArgumentException(
                    "the source of kind " + kind.inWords() + " has a blank reference");
        }
    }

    /**
     * Cites a standard.
     *
     * @param number such as {@code EN 1991-2}
     * @param clause clause, table or equation
     * @return the source
     */
    public static Source standard(String number, String clause) {
        return new Source(Kind.STANDARD, number, clause);
    }

    /**
     * Cites a book.
     *
     * @param title author and title
     * @param place edition and section
     * @return the source
     */
    public static Source book(String title, String place) {
        return new Source(Kind.BOOK, title, place);
    }

    /**
     * Cites a paper.
     *
     * @param title author, title and journal
     * @param place equation or page
     * @return the source
     */
    public static Source paper(String title, String place) {
        return new Source(Kind.PAPER, title, place);
    }

    /**
     * Cites a drawing.
     *
     * @param number drawing number
     * @param revision its revision
     * @return the source
     */
    public static Source drawing(String number, String revision) {
        return new Source(Kind.DRAWING, number, "revision " + revision);
    }

    /**
     * Cites a survey.
     *
     * @param title which survey
     * @param place date, section or point
     * @return the source
     */
    public static Source survey(String title, String place) {
        return new Source(Kind.SURVEY, title, place);
    }

    /**
     * Cites a report of tests.
     *
     * @param title which report
     * @param place page or specimen
     * @return the source
     */
    public static Source testReport(String title, String place) {
        return new Source(Kind.TEST_REPORT, title, place);
    }

    /**
     * Cites a file of data.
     *
     * @param file name of the file
     * @param place column or row
     * @return the source
     */
    public static Source data(String file, String place) {
        return new Source(Kind.DATA, file, place);
    }

    /**
     * Cites a result of another sheet.
     *
     * @param number the sheet's number
     * @param place the symbol there
     * @return the source
     */
    public static Source sheet(String number, String place) {
        return new Source(Kind.SHEET, number, place);
    }

    /**
     * Marks a fact of the trade that has no source.
     *
     * @param what the practice
     * @return the source
     */
    public static Source commonPractice(String what) {
        return new Source(Kind.COMMON_PRACTICE, what, "");
    }

    /**
     * Marks an assumption of the author's.
     *
     * @param why why it is assumed
     * @return the source
     */
    public static Source assumption(String why) {
        return new Source(Kind.ASSUMPTION, why, "");
    }

    @Override
    public String toString() {
        String cited = kind.inWords() + " " + reference;
        return place.isEmpty() ? cited : cited + ", " + place;
    }
}
