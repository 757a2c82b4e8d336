package org.skewback.kernel.wire;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/**
 * Reads and writes JSON so that each number is written with the digits it was read with.
 *
 * <p>A number that is read as a double and written again may change its digits (1e-7 to 1.0E-7), and
 * with them the bytes of a document that is to be the same whoever passes it on.
 */
public final class ExactJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private ExactJson() {}

    /**
     * Reads one JSON value.
     *
     * @param json its bytes in UTF-8, with nothing but blanks around it
     * @return the value
     * @throws IOException if the bytes are not JSON
     */
    public static JsonNode read(byte[] json) throws IOException {
        try (JsonParser parser = MAPPER.createParser(json)) {
            return whole(parser);
        }
    }

    /**
     * Reads one JSON value.
     *
     * @param json its text, with nothing but blanks around it
     * @return the value
     * @throws IOException if the text is not JSON
     */
    public static JsonNode read(String json) throws IOException {
        try (JsonParser parser = MAPPER.createParser(json)) {
            return whole(parser);
        }
    }

    /**
     * Writes a JSON value.
     *
     * @param value the value
     * @return its bytes in UTF-8
     * @throws IOException if it cannot be written
     */
    public static byte[] write(JsonNode value) throws IOException {
        return MAPPER.writeValueAsBytes(value);
    }

    private static JsonNode whole(JsonParser parser) throws IOException {
        if (parser.nextToken() == null) {
            throw new IOException("there is no JSON");
        }
        JsonNode value = value(parser);
        if (parser.nextToken() != null) {
            throw new IOException("something follows the JSON");
        }
        return value;
    }

    // The parser bounds the depth of nesting (StreamReadConstraints), and so this recursion.
    private static JsonNode value(JsonParser parser) throws IOException {
        JsonNodeFactory make = JsonNodeFactory.instance;
        JsonToken token = parser.currentToken();
        switch (token) {
            case START_OBJECT -> {
                ObjectNode object = make.objectNode();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    object.set(name, value(parser));
                }
                return object;
            }
            case START_ARRAY -> {
                ArrayNode array = make.arrayNode();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    array.add(value(parser));
                }
                return array;
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                return number(parser, make);
            }
            case VALUE_STRING -> {
                return make.textNode(parser.getText());
            }
            case VALUE_TRUE, VALUE_FALSE -> {
                return make.booleanNode(token == JsonToken.VALUE_TRUE);
            }
            case VALUE_NULL -> {
                return make.nullNode();
            }
            default -> throw new IOException("unexpected " + token);
        }
    }

    private static JsonNode number(JsonParser parser, JsonNodeFactory make) throws IOException {
        String text = parser.getText();
        if (parser.currentToken() == JsonToken.VALUE_NUMBER_INT && !text.equals("-0")) {
            return switch (parser.getNumberType()) {
                case INT -> make.numberNode(parser.getIntValue());
                case LONG -> make.numberNode(parser.getLongValue());
                default -> make.numberNode(parser.getBigIntegerValue());
            };
        }
        try {
            return new WrittenNumber(text, parser.getDecimalValue());
        } catch (ArithmeticException e) {
            throw new IOException("the exponent of " + text + " is too large", e);
        }
    }
}
