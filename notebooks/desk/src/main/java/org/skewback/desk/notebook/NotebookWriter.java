package org.skewback.desk.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;

/**
 * Writes a notebook in the open format nbformat 4.5.
 *
 * <p>The text is laid out as Jupyter lays it out, long text as one list element a line, so that two
 * versions of a notebook compare line by line.
 */
public final class NotebookWriter {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private NotebookWriter() {}

    /**
     * Gives the notebook's text.
     *
     * @param notebook the notebook
     * @return JSON, ending in a line end
     */
    public static String text(Notebook notebook) {
        ObjectNode root = MAKE.objectNode();
        ArrayNode cells = root.putArray("cells");
        for (Cell cell : notebook.cells()) {
            cells.add(cell(cell));
        }
        root.set("metadata", notebook.metadata());
        root.put("nbformat", 4);
        root.put("nbformat_minor", 5);
        return Json.notebook(root);
    }

    private static ObjectNode cell(Cell cell) {
        ObjectNode node = MAKE.objectNode();
        node.put("cell_type", cell.kind().name().toLowerCase(Locale.ROOT));
        node.put("id", cell.id());
        node.set("source", lines(cell.source()));
        ObjectNode metadata = ((ObjectNode) cell.metadata()).deepCopy();
        if (cell.kind() == Cell.Kind.CODE) {
            @Nullable Integer count = cell.executionCount();
            if (count == null) {
                node.putNull("execution_count");
            } else {
                node.put("execution_count", count);
            }
            ArrayNode outputs = node.putArray("outputs");
            for (Output output : cell.outputs()) {
                outputs.add(output(output, count));
            }
        } else if (metadata.has(NotebookReader.ATTACHMENTS)) {
            node.set("attachments", metadata.remove(NotebookReader.ATTACHMENTS));
        }
        node.set("metadata", metadata);
        return node;
    }

    private static ObjectNode output(Output output, @Nullable Integer count) {
        ObjectNode node = MAKE.objectNode();
        if (output instanceof Output.Stream stream) {
            node.put("output_type", "stream");
            node.put("name", stream.name());
            node.set("text", lines(stream.text()));
        } else if (output instanceof Output.Display display) {
            node.put("output_type", display.result() ? "execute_result" : "display_data");
            ObjectNode data = node.putObject("data");
            for (Map.Entry<String, JsonNode> entry : display.data().entrySet()) {
                JsonNode value = entry.getValue();
                data.set(
                        entry.getKey(),
                        value.isTextual() && !NotebookReader.isJson(entry.getKey())
                                ? lines(value.textValue())
                                : value);
            }
            node.set("metadata", display.metadata());
            if (display.result()) {
                if (count == null) {
                    node.putNull("execution_count");
                } else {
                    node.put("execution_count", count);
                }
            }
        } else if (output instanceof Output.Failure failure) {
            node.put("output_type", "error");
            node.put("ename", failure.name());
            node.put("evalue", failure.message());
            ArrayNode traceback = node.putArray("traceback");
            failure.traceback().forEach(traceback::add);
        }
        return node;
    }

    private static JsonNode lines(String text) {
        ArrayNode lines = MAKE.arrayNode();
        int from = 0;
        while (from < text.length()) {
            int end = text.indexOf('\n', from);
            int to = end < 0 ? text.length() : end + 1;
            lines.add(text.substring(from, to));
            from = to;
        }
        return lines;
    }
}
