package org.skewback.desk.audit;

import java.util.List;

/**
 * A quantity that does not come out as recorded.
 *
 * @param sheet number and title of its sheet
 * @param quantity its name on the sheet, such as {@code step 06.3, H}
 * @param before what is recorded, with its unit
 * @param now what comes out, with its unit; empty where there is nothing
 * @param relative change over the recorded value; NaN where it would mean nothing
 * @param givens the givens that feed it, each with value and source
 */
public record Change(
        String sheet,
        String quantity,
        String before,
        String now,
        double relative,
        List<String> givens) {

    /** Keeps a copy of the list. */
    public Change {
        givens = List.copyOf(givens);
    }
}
