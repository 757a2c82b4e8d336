package org.skewback.desk.jupyter;

import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Output;

/**
 * How the run of a cell ended.
 *
 * @param count number of the run in its kernel, or null where the kernel gave none
 * @param failure why it failed, or null where it did not
 */
public record CellRun(@Nullable Integer count, Output.@Nullable Failure failure) {}
