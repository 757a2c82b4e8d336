package org.skewback.desk.checking;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A comment on a sheet, with its answer and its closing out.
 *
 * @param id such as {@code C1}
 * @param sheet number of the sheet
 * @param on what on it is meant, such as {@code step 06.3}; empty for the whole
 * @param opened who said what and when
 * @param answer the answer, or null
 * @param closed who closed it out and when, or null
 */
public record Remark(
        String id,
        String sheet,
        String on,
        Said opened,
        @Nullable Said answer,
        @Nullable Said closed) {

    /**
     * What somebody said.
     *
     * @param by who
     * @param date when
     * @param text what; may be empty where it closes a comment
     */
    public record Said(String by, LocalDate date, String text) {}

    /**
     * Gives the state in words.
     *
     * @return {@code open}, {@code answered} or {@code closed}
     */
    public String state() {
        if (closed != null) {
            return "closed";
        }
        return answer == null ? "open" : "answered";
    }
}
