package org.skewback.desk.issue;

import java.nio.file.Path;
import java.util.List;

/**
 * A package that has been issued.
 *
 * @param folder where it lies
 * @param sheets number of its notebooks that keep a sheet
 * @param checks count of its checks
 * @param withoutSheet titles of its notebooks that keep no sheet, so that none of their checks can
 *     be counted, in reading order
 * @param unpassed one line for each check that failed or is stale, in reading order
 */
public record Issued(
        Path folder,
        int sheets,
        CheckCount checks,
        List<String> withoutSheet,
        List<String> unpassed) {

    /** Keeps copies of the lists. */
    public Issued {
        withoutSheet = List.copyOf(withoutSheet);
        unpassed = List.copyOf(unpassed);
    }
}
