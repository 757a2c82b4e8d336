package org.skewback.desk.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * A notebook document in the open format nbformat 4.5.
 *
 * @param cells the cells in order
 * @param metadata the document's own metadata, an object
 */
public record Notebook(List<Cell> cells, JsonNode metadata) {

    /** Keeps a copy of the list. */
    public Notebook {
        cells = List.copyOf(cells);
    }
}
