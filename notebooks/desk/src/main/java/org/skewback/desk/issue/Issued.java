package org.skewback.desk.issue;

import java.nio.file.Path;
import java.util.List;

/**
 * A package that has been issued.
 *
 * @param folder where it lies
 * @param sheets number of its notebooks
 * @param checks count of its checks
 * @param unpassed one line for each check that failed or is stale, in reading order
 */
public record Issued(Path folder, int sheets, CheckCount checks, List<String> unpassed) {

    /** Keeps a copy of the list. */
    public Issued {
        unpassed = List.copyOf(unpassed);
    }
}
