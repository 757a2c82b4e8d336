package org.skewback.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.skewback.quantity.FlatGraph;

/** A graph laid flat as one line of JSON, in the words of a record: the same text for the same graph. */
public final class GraphText {

    private GraphText() {}

    /**
     * Writes a graph.
     *
     * @param graph the graph
     * @return one line of JSON with the fields {@code nodes}, {@code calls} and, where there are any,
     *     {@code tables}, as a record has them
     */
    public static String write(FlatGraph graph) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            new RecordWriter(json).graph(graph);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return text.toString();
    }

    /**
     * Reads a graph back; runs nothing and trusts nothing.
     *
     * @param text what {@link #write} wrote
     * @return the graph
     * @throws IllegalArgumentException when the text is no graph; says where
     */
    public static FlatGraph read(String text) {
        return RecordReader.nodes(Json.object(text, "the graph"));
    }
}
