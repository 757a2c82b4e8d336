package org.skewback.desk.jupyter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Output;
import org.skewback.kernel.wire.Message;

/**
 * Gathers the outputs of a notebook's cells from the messages a kernel publishes.
 *
 * <p>An output belongs to the cell whose request it names, however late it comes. {@code
 * clear_output} and {@code update_display_data} are carried out as the messaging specification says.
 *
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/messaging.html">Jupyter client
 *     documentation, "Messaging in Jupyter", messages on the IOPub channel</a>
 */
final class OutputLog {

    private final Map<String, CellOutputs> byRequest = new HashMap<>();
    private final Map<String, CellOutputs> byCell = new HashMap<>();
    private final Map<String, List<Shown>> shownById = new HashMap<>();

    /** A place among a cell's outputs, so that a later message can change what stands there. */
    private static final class Shown {
        private Output output;

        Shown(Output output) {
            this.output = output;
        }
    }

    /** What one cell has given. */
    private static final class CellOutputs {
        private final List<Shown> shown = new ArrayList<>();
        private boolean clearBeforeNext;
        private long size;

        void add(Shown next, long length) {
            if (clearBeforeNext) {
                shown.clear();
                clearBeforeNext = false;
            }
            size += length;
            shown.add(next);
        }
    }

    /** Says that a request runs a cell. */
    void start(String request, String cellId) {
        CellOutputs outputs = new CellOutputs();
        byRequest.put(request, outputs);
        byCell.put(cellId, outputs);
    }

    /** Gives how much a request has published so far, in characters. */
    long size(String request) {
        @Nullable CellOutputs outputs = byRequest.get(request);
        return outputs == null ? 0 : outputs.size;
    }

    /** Gives the outputs of a cell, texts on the same stream that follow each other joined. */
    List<Output> outputs(String cellId) {
        List<Output> joined = new ArrayList<>();
        @Nullable CellOutputs outputs = byCell.get(cellId);
        if (outputs == null) {
            return joined;
        }
        String name = "";
        StringBuilder text = new StringBuilder();
        for (Shown shown : outputs.shown) {
            if (shown.output instanceof Output.Stream stream) {
                if (!stream.name().equals(name)) {
                    flush(name, text, joined);
                    name = stream.name();
                }
                text.append(stream.text());
            } else {
                flush(name, text, joined);
                joined.add(shown.output);
            }
        }
        flush(name, text, joined);
        return joined;
    }

    private static void flush(String name, StringBuilder text, List<Output> to) {
        if (text.length() > 0) {
            to.add(new Output.Stream(name, text.toString()));
            text.setLength(0);
        }
    }

    /** Takes a published message; those that are no output are let pass. */
    void accept(Message message) {
        JsonNode content = message.content();
        if (message.type().equals("update_display_data")) {
            update(content);
            return;
        }
        @Nullable CellOutputs outputs = byRequest.get(message.parentId());
        if (outputs == null) {
            return;
        }
        switch (message.type()) {
            case "stream" -> {
                String text = content.path("text").asText("");
                String name = content.path("name").asText("stdout");
                outputs.add(new Shown(new Output.Stream(name, text)), text.length());
            }
            case "display_data" -> display(outputs, content, false);
            case "execute_result" -> display(outputs, content, true);
            case "error" -> {
                Output.Failure failure = failure(content);
                outputs.add(new Shown(failure), failure.message().length());
            }
            case "clear_output" -> {
                if (content.path("wait").asBoolean(false)) {
                    outputs.clearBeforeNext = true;
                } else {
                    outputs.shown.clear();
                }
            }
            default -> {
                // Status, input and comm messages are no outputs.
            }
        }
    }

    /** Reads the error of an {@code error} message or of a failed {@code execute_reply}. */
    static Output.Failure failure(JsonNode content) {
        List<String> traceback = new ArrayList<>();
        for (JsonNode line : content.path("traceback")) {
            traceback.add(line.asText());
        }
        return new Output.Failure(
                content.path("ename").asText(""), content.path("evalue").asText(""), traceback);
    }

    private void display(CellOutputs outputs, JsonNode content, boolean result) {
        Output.Display display = display(content, result);
        Shown shown = new Shown(display);
        outputs.add(shown, length(display));
        String id = content.path("transient").path("display_id").asText("");
        if (!id.isEmpty()) {
            shownById.computeIfAbsent(id, any -> new ArrayList<>()).add(shown);
        }
    }

    private void update(JsonNode content) {
        String id = content.path("transient").path("display_id").asText("");
        for (Shown shown : shownById.getOrDefault(id, List.of())) {
            boolean result = shown.output instanceof Output.Display old && old.result();
            shown.output = display(content, result);
        }
    }

    private static Output.Display display(JsonNode content, boolean result) {
        Map<String, JsonNode> data = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : content.path("data").properties()) {
            data.put(entry.getKey(), entry.getValue());
        }
        JsonNode metadata = content.path("metadata");
        return new Output.Display(
                data,
                metadata.isObject() ? metadata : JsonNodeFactory.instance.objectNode(),
                result);
    }

    private static long length(Output.Display display) {
        long length = 0;
        for (JsonNode value : display.data().values()) {
            length += value.isTextual() ? value.textValue().length() : value.toString().length();
        }
        return length;
    }
}
