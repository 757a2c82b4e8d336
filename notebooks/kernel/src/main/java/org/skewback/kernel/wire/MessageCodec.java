package org.skewback.kernel.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Turns messages into the frames of a ZeroMQ multipart message and back. Safe for many threads. */
public final class MessageCodec {

    private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
    private static final int SIGNED_PARTS = 4;

    private final Signature signature;

    /**
     * Takes the key that messages are signed with.
     *
     * @param key key of the connection file; empty for none
     */
    public MessageCodec(String key) {
        this.signature = new Signature(key);
    }

    /**
     * Writes a message as frames.
     *
     * @param message the message
     * @return frames in the order in which they are sent
     */
    public List<byte[]> encode(Message message) {
        List<byte[]> parts =
                List.of(
                        bytes(message.header()),
                        bytes(message.parentHeader()),
                        bytes(message.metadata()),
                        bytes(message.content()));
        List<byte[]> frames = new ArrayList<>(message.identities());
        frames.add(DELIMITER);
        frames.add(signature.sign(parts));
        frames.addAll(parts);
        frames.addAll(message.buffers());
        return frames;
    }

    /**
     * Reads a message from its frames.
     *
     * @param frames all frames of one multipart message
     * @return the message
     * @throws BadMessageException if the delimiter or a part is missing, the signature is wrong, or
     *     a part is not a JSON object
     */
    public Message decode(List<byte[]> frames) throws BadMessageException {
        int delimiter = 0;
        while (delimiter < frames.size() && !Arrays.equals(frames.get(delimiter), DELIMITER)) {
            delimiter++;
        }
        int first = delimiter + 2;
        if (frames.size() < first + SIGNED_PARTS) {
            throw new BadMessageException(
                    "a message of "
                            + frames.size()
                            + " frames lacks the delimiter or one of its parts");
        }
        List<byte[]> parts = frames.subList(first, first + SIGNED_PARTS);
        if (!signature.accepts(frames.get(delimiter + 1), parts)) {
            throw new BadMessageException("the signature of a message is wrong");
        }
        return new Message(
                frames.subList(0, delimiter),
                object("header", parts.get(0)),
                object("parent header", parts.get(1)),
                object("metadata", parts.get(2)),
                object("content", parts.get(3)),
                frames.subList(first + SIGNED_PARTS, frames.size()));
    }

    private byte[] bytes(JsonNode node) {
        try {
            return ExactJson.write(node);
        } catch (IOException e) {
            throw new IllegalStateException("a tree of JSON could not be written", e);
        }
    }

    private ObjectNode object(String part, byte[] bytes) throws BadMessageException {
        JsonNode node;
        try {
            node = ExactJson.read(bytes);
        } catch (IOException e) {
            throw new BadMessageException("the " + part + " of a message is not JSON", e);
        }
        if (node instanceof ObjectNode object) {
            return object;
        }
        throw new BadMessageException("the " + part + " of a message is not a JSON object");
    }
}
