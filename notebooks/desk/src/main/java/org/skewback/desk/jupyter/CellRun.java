package org.skewback.desk.jupyter;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Output;

/**
 * How the run of a cell ended.
 *
 * @param count number of the run in its kernel, or null where the kernel gave none
 * @param failure why it failed, or null where it did not
 * @param libraries versions of the libraries that the cells of the kernel use so far, by name; empty
 *     where the kernel does not tell
 */
public record CellRun(
        @Nullable Integer count, Output.@Nullable Failure failure, Map<String, String> libraries) {

    /** Keeps a copy of the libraries. */
    public CellRun {
        libraries = Map.copyOf(libraries);
    }

    /** Makes the run of a cell in a kernel that does not tell its libraries. */
    public CellRun(@Nullable Integer count, Output.@Nullable Failure failure) {
        this(count, failure, Map.of());
    }
}
