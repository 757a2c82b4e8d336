package org.skewback.kernel;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Puts content by MIME type into a message: JSON types as JSON, all others as text. */
final class MimeContent {

    private static final ObjectMapper JSON = new ObjectMapper();

    private MimeContent() {}

    /**
     * Makes the data of a message.
     *
     * @param content content by MIME type
     * @return the data; a JSON type whose text is not JSON is left out
     */
    static ObjectNode data(Map<String, String> content) {
        ObjectNode data = JsonNodeFactory.instance.objectNode();
        content.forEach(
                (type, text) -> {
                    if (type.equals("application/json") || type.endsWith("+json")) {
                        try {
                            data.set(type, JSON.readTree(text));
                        } catch (JsonProcessingException e) {
                            KernelSockets.log("a value's " + type + " is not JSON", e);
                        }
                    } else {
                        data.put(type, text);
                    }
                });
        return data;
    }
}
