package org.skewback.desk.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One cell of a notebook.
 *
 * @param id identifier, unique in the notebook
 * @param kind what the source is
 * @param source the text as the author wrote it
 * @param metadata the cell's own metadata, an object
 * @param executionCount number of the run, or null where the cell has not run
 * @param outputs what the run gave, in order; empty for prose
 */
public record Cell(
        String id,
        Kind kind,
        String source,
        JsonNode metadata,
        @Nullable Integer executionCount,
        List<Output> outputs) {

    /** What the source of a cell is. */
    public enum Kind {
        /** Prose in Markdown. */
        MARKDOWN,
        /** Code in the language of the kernel. */
        CODE,
        /** Text that is neither. */
        RAW
    }

    /** Keeps a copy of the list. */
    public Cell {
        outputs = List.copyOf(outputs);
    }

    /**
     * Gives the same cell with the outcome of a run.
     *
     * @param count number of the run
     * @param seen what the run gave
     * @return the cell as run
     */
    public Cell ran(@Nullable Integer count, List<Output> seen) {
        return new Cell(id, kind, source, metadata, count, seen);
    }
}
