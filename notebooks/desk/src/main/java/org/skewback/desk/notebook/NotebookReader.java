package org.skewback.desk.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;

/**
 * Reads a notebook document of the open format nbformat, version 4.5 or a later 4.
 *
 * <p>All metadata is kept as it is. Images pasted into a cell of prose ({@code attachments} in the
 * format) are kept in the cell's metadata under the key {@value #ATTACHMENTS}, and {@link
 * NotebookWriter} puts them back.
 */
public final class NotebookReader {

    /** Key of the cell's metadata that holds images pasted into its prose. */
    public static final String ATTACHMENTS = "attachments";

    private static final int MAJOR = 4;
    private static final int MINOR = 5;
    private static final Pattern ID = Pattern.compile("[a-zA-Z0-9_-]{1,64}");

    private final String where;

    private NotebookReader(String where) {
        this.where = where;
    }

    /**
     * Reads a notebook.
     *
     * @param file the notebook
     * @return its content
     * @throws Problem when the file is missing, is not JSON, or is not such a notebook; the message
     *     names the file and, where one is to blame, the cell
     */
    public static Notebook read(Path file) throws Problem {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw Problem.of("cannot read the notebook " + file, e);
        }
        return parse(file.toString(), bytes);
    }

    /**
     * Reads a notebook from its text.
     *
     * @param where name to use in messages
     * @param bytes the notebook's JSON, in UTF-8
     * @return its content
     * @throws Problem when it is not JSON or not such a notebook
     */
    public static Notebook parse(String where, byte[] bytes) throws Problem {
        return new NotebookReader(where).notebook(bytes);
    }

    private Notebook notebook(byte[] bytes) throws Problem {
        JsonNode root;
        try {
            root = Json.read(bytes);
        } catch (IOException e) {
            throw new Problem(where + " is not a notebook: " + Json.fault(e), e);
        }
        if (!root.isObject() || !root.path("nbformat").isInt()) {
            throw new Problem(where + " is not a notebook: it states no nbformat");
        }
        int major = root.path("nbformat").intValue();
        int minor = root.path("nbformat_minor").asInt(0);
        if (major != MAJOR || minor < MINOR) {
            throw new Problem(
                    where
                            + " is in notebook format "
                            + major
                            + "."
                            + minor
                            + "; 4.5 is needed, which gives each cell an identifier. Open it in"
                            + " Jupyter and save it there to bring it up to date");
        }
        JsonNode cells = root.path("cells");
        if (!cells.isArray()) {
            throw new Problem(where + " is not a whole notebook: it has no list of cells");
        }
        List<Cell> read = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cell(cells.get(i), "cell " + (i + 1));
            @Nullable Integer before = seen.putIfAbsent(cell.id(), i + 1);
            if (before != null) {
                throw new Problem(
                        where
                                + ", cells "
                                + before
                                + " and "
                                + (i + 1)
                                + ": both have the identifier \""
                                + cell.id()
                                + "\"; each cell needs its own");
            }
            read.add(cell);
        }
        return new Notebook(read, object(root, "metadata", "the notebook"));
    }

    private Cell cell(JsonNode node, String position) throws Problem {
        if (!node.isObject()) {
            throw fault(position, "is not a cell");
        }
        String id = node.path("id").asText("");
        if (!ID.matcher(id).matches()) {
            throw fault(
                    position,
                    id.isEmpty()
                            ? "has no identifier (its key \"id\")"
                            : "has the identifier \""
                                    + id
                                    + "\"; allowed are 1 to 64 of the letters a to z and A to Z,"
                                    + " digits, - and _");
        }
        String label = position + " (" + id + ")";
        String type = node.path("cell_type").asText("");
        Cell.Kind kind =
                switch (type) {
                    case "markdown" -> Cell.Kind.MARKDOWN;
                    case "code" -> Cell.Kind.CODE;
                    case "raw" -> Cell.Kind.RAW;
                    default ->
                            throw fault(
                                    label,
                                    "is of the kind \""
                                            + type
                                            + "\"; a cell is markdown, code or raw");
                };
        if (!node.has("source")) {
            throw fault(label, "has no source");
        }
        String source = text(node.get("source"), label, "source");
        JsonNode metadata = object(node, "metadata", label);
        if (node.has("attachments")) {
            ObjectNode both = ((ObjectNode) metadata).deepCopy();
            both.set(ATTACHMENTS, object(node, "attachments", label));
            metadata = both;
        }
        if (kind != Cell.Kind.CODE) {
            return new Cell(id, kind, source, metadata, null, List.of());
        }
        JsonNode count = node.path("execution_count");
        List<Output> outputs = new ArrayList<>();
        for (JsonNode output : node.path("outputs")) {
            outputs.add(output(output, label));
        }
        return new Cell(
                id, kind, source, metadata, count.isInt() ? count.intValue() : null, outputs);
    }

    private Output output(JsonNode node, String label) throws Problem {
        String type = node.path("output_type").asText("");
        return switch (type) {
            case "stream" ->
                    new Output.Stream(
                            node.path("name").asText("stdout"),
                            text(node.path("text"), label, "printed text"));
            case "display_data", "execute_result" -> display(node, type, label);
            case "error" -> {
                List<String> traceback = new ArrayList<>();
                for (JsonNode line : node.path("traceback")) {
                    traceback.add(line.asText());
                }
                yield new Output.Failure(
                        node.path("ename").asText(""), node.path("evalue").asText(""), traceback);
            }
            default -> throw fault(label, "has an output of the unknown kind \"" + type + "\"");
        };
    }

    private Output display(JsonNode node, String type, String label) throws Problem {
        Map<String, JsonNode> data = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry :
                object(node, "data", label + ", output").properties()) {
            data.put(
                    entry.getKey(),
                    isJson(entry.getKey())
                            ? entry.getValue()
                            : TextNode.valueOf(text(entry.getValue(), label, entry.getKey())));
        }
        return new Output.Display(
                data, object(node, "metadata", label + ", output"), type.equals("execute_result"));
    }

    /**
     * Tells whether the content of a MIME type is kept as JSON rather than as text.
     *
     * @param mime MIME type
     * @return true for {@code application/json} and for every type ending in {@code +json}
     */
    public static boolean isJson(String mime) {
        return mime.equals("application/json") || mime.endsWith("+json");
    }

    private String text(JsonNode node, String label, String what) throws Problem {
        if (node.isTextual()) {
            return node.textValue();
        }
        if (node.isArray()) {
            StringBuilder all = new StringBuilder();
            for (JsonNode line : node) {
                if (!line.isTextual()) {
                    throw fault(label, "has a " + what + " that is not text");
                }
                all.append(line.textValue());
            }
            return all.toString();
        }
        throw fault(label, "has a " + what + " that is not text");
    }

    private JsonNode object(JsonNode node, String key, String label) throws Problem {
        JsonNode value = node.path(key);
        if (value.isMissingNode()) {
            return JsonNodeFactory.instance.objectNode();
        }
        if (!value.isObject()) {
            throw fault(label, "has a \"" + key + "\" that is not a JSON object");
        }
        return value;
    }

    private Problem fault(String label, String what) {
        return new Problem(where + ", " + label + ": it " + what);
    }
}
