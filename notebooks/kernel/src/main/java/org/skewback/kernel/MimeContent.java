package org.skewback.kernel;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Map;
import org.skewback.kernel.wire.ExactJson;

/** Puts content by MIME type into a message: JSON types as JSON, all others as text. */
final class MimeContent {

    private MimeContent() {}

    /**
     * Makes the data of a message.
     *
     * @param content content by MIME type
     * @return the data, its numbers written as they came; a JSON type whose text is not JSON is left
     *     out
     */
    static ObjectNode data(Map<String, String> content) {
        ObjectNode data = JsonNodeFactory.instance.objectNode();
        content.forEach(
                (type, text) -> {
                    if (type.equals("application/json") || type.endsWith("+json")) {
                        try {
                            data.set(type, ExactJson.read(text));
                        } catch (IOException e) {
                            KernelSockets.log("a value's " + type + " is not JSON", e);
                        }
                    } else {
                        data.put(type, text);
                    }
                });
        return data;
    }
}
