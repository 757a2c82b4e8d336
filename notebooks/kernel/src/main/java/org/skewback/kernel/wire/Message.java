package org.skewback.kernel.wire;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;

/**
 * One Jupyter message.
 *
 * @param identities routing frames in front of the delimiter; on the publishing channel the topic
 * @param header header
 * @param parentHeader header of the request this message answers; an empty object where there is
 *     none
 * @param metadata metadata
 * @param content content
 * @param buffers raw frames behind the content
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/messaging.html#general-message-format">Jupyter
 *     client documentation, "General message format"</a>
 */
public record Message(
        List<byte[]> identities,
        ObjectNode header,
        ObjectNode parentHeader,
        ObjectNode metadata,
        ObjectNode content,
        List<byte[]> buffers) {

    /**
     * Version of the message specification that this package speaks: 5.4 brought the welcome on the
     * publishing channel. What a later one leaves to the kernel, subshells and a debugger, is not
     * claimed.
     */
    public static final String PROTOCOL_VERSION = "5.4";

    /** Keeps copies of the lists. */
    public Message {
        identities = List.copyOf(identities);
        buffers = List.copyOf(buffers);
    }

    /**
     * Makes a message that answers nothing, as a client sends it.
     *
     * @param session identifier of the sender's session
     * @param type message type, such as {@code execute_request}
     * @param content content
     * @return the message with a fresh identifier
     */
    public static Message request(String session, String type, ObjectNode content) {
        return new Message(
                List.of(),
                header(session, type),
                JsonNodeFactory.instance.objectNode(),
                JsonNodeFactory.instance.objectNode(),
                content,
                List.of());
    }

    /**
     * Makes a message that belongs to a request.
     *
     * @param session identifier of the sender's session
     * @param type message type, such as {@code execute_reply}
     * @param content content
     * @return a message with this message's routing frames and this message's header as parent
     */
    public Message answer(String session, String type, ObjectNode content) {
        return new Message(
                identities,
                header(session, type),
                header,
                JsonNodeFactory.instance.objectNode(),
                content,
                List.of());
    }

    /**
     * Changes the routing frames.
     *
     * @param frames the new routing frames
     * @return this message with those frames
     */
    public Message routedBy(List<byte[]> frames) {
        return new Message(frames, header, parentHeader, metadata, content, buffers);
    }

    /**
     * Changes the metadata.
     *
     * @param described the new metadata
     * @return this message with that metadata
     */
    public Message describedBy(ObjectNode described) {
        return new Message(identities, header, parentHeader, described, content, buffers);
    }

    /**
     * Gives the message type.
     *
     * @return type, such as {@code status}; empty where the header has none
     */
    public String type() {
        return header.path("msg_type").asText("");
    }

    /**
     * Gives the identifier of the message.
     *
     * @return identifier; empty where the header has none
     */
    public String id() {
        return header.path("msg_id").asText("");
    }

    /**
     * Gives the identifier of the request this message belongs to.
     *
     * @return identifier; empty where there is none
     */
    public String parentId() {
        return parentHeader.path("msg_id").asText("");
    }

    private static ObjectNode header(String session, String type) {
        ObjectNode header = JsonNodeFactory.instance.objectNode();
        header.put("msg_id", UUID.randomUUID().toString());
        header.put("session", session);
        header.put("username", "kernel");
        header.put("date", Instant.now().truncatedTo(ChronoUnit.MICROS).toString());
        header.put("msg_type", type);
        header.put("version", PROTOCOL_VERSION);
        return header;
    }
}
