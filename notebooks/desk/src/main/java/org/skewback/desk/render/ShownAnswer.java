package org.skewback.desk.render;

import com.fasterxml.jackson.databind.JsonNode;
import org.jspecify.annotations.Nullable;

/**
 * An answer that is hidden until asked for, as a notebook keeps it.
 *
 * @param title what stands on its fold
 * @param markdown what it says
 */
record ShownAnswer(String title, String markdown) {

    /** MIME type under which a notebook keeps it. */
    static final String MIME = "application/vnd.skewback.answer+json";

    private static final String FORMAT = "skewback-answer";
    private static final int EDITION = 1;

    /** Reads what a notebook keeps, or gives null where it is no answer that this program knows. */
    static @Nullable ShownAnswer read(JsonNode shown) {
        boolean known =
                shown.path("format").asText("").equals(FORMAT)
                        && shown.path("edition").asInt() == EDITION
                        && !shown.path("title").asText("").isBlank();
        return known
                ? new ShownAnswer(shown.path("title").asText(""), shown.path("markdown").asText(""))
                : null;
    }
}
