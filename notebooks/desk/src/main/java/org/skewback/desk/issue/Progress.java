package org.skewback.desk.issue;

import java.time.Duration;

/** Hears how far an issue has come. */
public interface Progress {

    /** Hears nothing. */
    Progress SILENT = new Progress() {};

    /**
     * A sheet begins to run.
     *
     * @param sheet its title
     * @param cells number of its cells of code
     */
    default void sheetStarts(String sheet, int cells) {}

    /**
     * A cell begins to run.
     *
     * @param sheet title of its sheet
     * @param cell its number among the cells of code, from 1
     * @param cells number of cells of code in the sheet
     */
    default void cellStarts(String sheet, int cell, int cells) {}

    /**
     * A cell has run.
     *
     * @param sheet title of its sheet
     * @param cell its number among the cells of code, from 1
     * @param cells number of cells of code in the sheet
     * @param time how long it took
     */
    default void cellEnds(String sheet, int cell, int cells, Duration time) {}

    /**
     * A sheet has run.
     *
     * @param sheet its title
     * @param cells number of its cells of code
     * @param time how long it took, the start of its kernel included
     */
    default void sheetEnds(String sheet, int cells, Duration time) {}

    /**
     * All sheets have run; pages are being made.
     *
     * @param time how long the sheets took, one beside the other
     */
    default void pagesStart(Duration time) {}

    /**
     * All pages are made.
     *
     * @param time how long they took, the print included
     */
    default void pagesEnd(Duration time) {}
}
