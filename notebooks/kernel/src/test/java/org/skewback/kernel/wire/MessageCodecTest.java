package org.skewback.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MessageCodecTest {

    private final MessageCodec codec = new MessageCodec("a key");

    private static Message message() {
        return Message.request(
                        "session",
                        "execute_request",
                        JsonNodeFactory.instance.objectNode().put("code", "é + \"x\""))
                .routedBy(List.of(bytes("client")));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** RFC 4231, section 4.3 (test case 2), the text cut in two as a message is cut in four. */
    @Test
    void signsAsThePublishedTestCaseOfHmacSha256() {
        byte[] signature =
                new Signature("Jefe")
                        .sign(List.of(bytes("what do ya want "), bytes("for nothing?")));
        assertEquals(
                "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
                new String(signature, StandardCharsets.US_ASCII));
    }

    @Test
    void readsBackWhatItWrote() throws BadMessageException {
        Message sent = message();
        Message received = codec.decode(codec.encode(sent));
        assertEquals(sent.header(), received.header());
        assertEquals(sent.content(), received.content());
        assertArrayEquals(bytes("client"), received.identities().get(0));
    }

    @Test
    void numbersKeepTheirDigitsInEveryPart() throws Exception {
        String numbers = "{\"n\":[1.10,1e400,-0.0,1E5,123456789012345678901234567890,0.1e-999]}";
        ObjectNode part = (ObjectNode) ExactJson.read(numbers);
        Message sent = new Message(List.of(), part, part, part, part, List.of());
        Message received = codec.decode(codec.encode(sent));
        for (ObjectNode back :
                List.of(
                        received.header(),
                        received.parentHeader(),
                        received.metadata(),
                        received.content())) {
            assertEquals(numbers, new String(ExactJson.write(back), StandardCharsets.UTF_8));
        }
    }

    @Test
    void anAnswerNamesItsRequestAndGoesBackTheSameWay() {
        Message request = message();
        Message answer =
                request.answer("kernel", "execute_reply", JsonNodeFactory.instance.objectNode());
        assertEquals(request.id(), answer.parentId());
        assertArrayEquals(bytes("client"), answer.identities().get(0));
    }

    @Test
    void refusesAContentThatWasChanged() {
        List<byte[]> frames = new ArrayList<>(codec.encode(message()));
        frames.set(frames.size() - 1, bytes("{\"code\":\"other\"}"));
        BadMessageException e = assertThrows(BadMessageException.class, () -> codec.decode(frames));
        assertTrue(String.valueOf(e.getMessage()).contains("signature"));
    }

    @Test
    void refusesASignedPartThatIsNotJson() {
        List<byte[]> parts = List.of(bytes("{}"), bytes("{}"), bytes("{}"), bytes("{broken"));
        List<byte[]> frames = new ArrayList<>();
        frames.add(bytes("<IDS|MSG>"));
        frames.add(new Signature("a key").sign(parts));
        frames.addAll(parts);
        BadMessageException e = assertThrows(BadMessageException.class, () -> codec.decode(frames));
        assertTrue(String.valueOf(e.getMessage()).contains("content"));
    }

    @Test
    void refusesFramesWithoutDelimiter() {
        assertThrows(BadMessageException.class, () -> codec.decode(List.of(bytes("x"))));
    }
}
