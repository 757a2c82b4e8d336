package org.skewback.desk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;

/**
 * Reads and writes JSON so that the same content always gives the same text.
 *
 * <p>Numbers keep the digits they were written with, an object that names a key twice is refused,
 * and lines end in LF on every system.
 */
public final class Json {

    /** A figure of many hatched regions, as base64, still fits; a runaway one does not. */
    private static final int LONGEST_STRING = 256 * 1024 * 1024;

    private static final JsonMapper MAPPER =
            JsonMapper.builder(
                            JsonFactory.builder()
                                    .streamReadConstraints(
                                            StreamReadConstraints.builder()
                                                    .maxStringLength(LONGEST_STRING)
                                                    .build())
                                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                                    .build())
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                    .build();

    private static final ObjectReader READER = MAPPER.readerFor(JsonNode.class);
    private static final ObjectWriter LINE = MAPPER.writer();
    private static final ObjectWriter PAGE = MAPPER.writer(printer("  ", false));
    private static final ObjectWriter NOTEBOOK =
            MAPPER.writer(printer(" ", true)).with(JsonNodeFeature.WRITE_PROPERTIES_SORTED);

    private Json() {}

    /**
     * Reads one JSON value.
     *
     * @param bytes the text, in UTF-8
     * @return the value
     * @throws IOException when it is not JSON, with the line and column in the message
     */
    public static JsonNode read(byte[] bytes) throws IOException {
        try {
            return present(READER.readValue(bytes));
        } catch (NumberFormatException e) {
            throw beyond(e);
        }
    }

    /**
     * Reads one JSON value.
     *
     * @param text the text
     * @return the value
     * @throws IOException when it is not JSON, with the line and column in the message
     */
    public static JsonNode read(String text) throws IOException {
        try {
            return present(READER.readValue(text));
        } catch (NumberFormatException e) {
            throw beyond(e);
        }
    }

    /** JSON sets no bound to an exponent; the numbers here have one. */
    private static IOException beyond(NumberFormatException cause) {
        return new IOException("it has a number beyond every range", cause);
    }

    private static JsonNode present(JsonNode node) throws IOException {
        if (node.isMissingNode()) {
            throw new IOException("it is empty");
        }
        return node;
    }

    /**
     * Says in one line what is wrong with a JSON text and where.
     *
     * @param cause what {@link #read(byte[])} threw
     * @return such as {@code line 4, column 7: Unexpected character}
     */
    public static String fault(IOException cause) {
        if (cause instanceof JsonProcessingException syntax) {
            String message = syntax.getOriginalMessage();
            int end = message.indexOf('\n');
            String first = end < 0 ? message : message.substring(0, end);
            return syntax.getLocation() == null
                    ? first
                    : "line "
                            + syntax.getLocation().getLineNr()
                            + ", column "
                            + syntax.getLocation().getColumnNr()
                            + ": "
                            + first;
        }
        return String.valueOf(cause.getMessage());
    }

    /**
     * Writes a value on one line.
     *
     * @param node the value
     * @return its text, without a line end
     */
    public static String line(JsonNode node) {
        return text(LINE, node);
    }

    /**
     * Writes a value for people to read and to compare line by line: keys in the order given, one a
     * line; a row of numbers stays on one line.
     *
     * @param node the value
     * @return its text, ending in a line end
     */
    public static String page(JsonNode node) {
        return text(PAGE, node) + "\n";
    }

    /**
     * Writes a value as Jupyter writes a notebook: keys sorted, each key and each element on its
     * own line, so that tools which save notebooks change nothing.
     *
     * @param node the value
     * @return its text, ending in a line end
     */
    public static String notebook(JsonNode node) {
        return text(NOTEBOOK, node) + "\n";
    }

    private static String text(ObjectWriter writer, JsonNode node) {
        try {
            return writer.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a JSON tree that cannot be written", e);
        }
    }

    private static DefaultPrettyPrinter printer(String step, boolean elements) {
        DefaultIndenter lines = new DefaultIndenter(step, "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter(
                        Separators.createDefaultInstance()
                                .withObjectFieldValueSpacing(Spacing.AFTER)
                                .withObjectEmptySeparator("")
                                .withArrayEmptySeparator(""));
        printer.indentObjectsWith(lines);
        if (elements) {
            printer.indentArraysWith(lines);
        }
        return printer;
    }
}
