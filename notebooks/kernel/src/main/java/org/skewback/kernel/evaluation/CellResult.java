package org.skewback.kernel.evaluation;

import java.util.List;
import java.util.Map;

/** How a cell ended. */
public sealed interface CellResult {

    /**
     * The cell ran to its end.
     *
     * @param content value of its last expression by MIME type; empty where it has none
     */
    record Done(Map<String, String> content) implements CellResult {}

    /**
     * The cell failed.
     *
     * @param name name of the error, an exception class where the cell threw one
     * @param message what is wrong, in words
     * @param traceback lines to show, without line ends
     */
    record Failed(String name, String message, List<String> traceback) implements CellResult {

        /** Keeps a copy of the list. */
        public Failed {
            traceback = List.copyOf(traceback);
        }
    }
}
