package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Writes efforts as JSON and reads them back. */
final class EffortJson {

    /** The field that names the stage, by which an effort is told from other lines. */
    static final String STAGE = "stage";

    private EffortJson() {}

    /** Writes an effort; its times are in seconds. */
    static ObjectNode of(Effort effort) {
        return JsonNodeFactory.instance
                .objectNode()
                .put(STAGE, effort.stage().key())
                .put("from", effort.from())
                .put("to", effort.to())
                .put("threads", effort.threads())
                .put("processor", effort.processor());
    }

    /**
     * Reads an effort.
     *
     * @throws IllegalArgumentException when it names no stage
     */
    static Effort read(JsonNode node) {
        String key = node.path(STAGE).asText("");
        for (Stage stage : Stage.values()) {
            if (stage.key().equals(key)) {
                return new Effort(
                        stage,
                        node.path("from").asDouble(0),
                        node.path("to").asDouble(0),
                        node.path("threads").asDouble(0),
                        node.path("processor").asDouble(0));
            }
        }
        throw new IllegalArgumentException("no stage is called \"" + key + "\"");
    }
}
