package org.skewback.desk.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;

/** One output of a cell. */
public sealed interface Output {

    /**
     * Text on one of the standard streams.
     *
     * @param name {@code stdout} or {@code stderr}
     * @param text the text
     */
    record Stream(String name, String text) implements Output {}

    /**
     * A value shown, in one or more formats.
     *
     * @param data content by MIME type; text for text formats, base64 text for binary formats, any
     *     JSON for JSON formats
     * @param metadata metadata by MIME type, an object
     * @param result whether this is the value of the cell's last expression
     */
    record Display(Map<String, JsonNode> data, JsonNode metadata, boolean result)
            implements Output {}

    /**
     * An exception or a compile error.
     *
     * @param name class of the exception
     * @param message its message
     * @param traceback lines to show, perhaps with terminal colours
     */
    record Failure(String name, String message, List<String> traceback) implements Output {

        /** Keeps a copy of the list. */
        public Failure {
            traceback = List.copyOf(traceback);
        }
    }
}
