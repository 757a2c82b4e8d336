package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.jupyter.CellRun;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.jupyter.KernelSession;
import org.skewback.desk.jupyter.KernelTrouble;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;

/**
 * Kernels inside the test that do what each line of a cell says: {@code print}, {@code record},
 * {@code part}, {@code living}, {@code earlier}, {@code fail}, {@code throw}, {@code poison}, {@code trouble}.
 */
public final class ScriptedKernels implements KernelLauncher {

    private static final String PART = "application/vnd.skewback.part+json";

    private int open;
    private int launched;

    /** Makes kernels of which none runs yet. */
    public ScriptedKernels() {}

    /** Gives how many are running. */
    int open() {
        return open;
    }

    /** Gives how many were started. */
    int launched() {
        return launched;
    }

    @Override
    public KernelSession launch(Path folder, Map<String, String> environment) {
        open++;
        launched++;
        return new Session(environment);
    }

    private final class Session implements KernelSession {

        private final Map<String, String> environment;
        private final Map<String, List<Output>> outputs = new HashMap<>();
        private final List<Output> living = new ArrayList<>();
        private String first = "";
        private int count;

        Session(Map<String, String> environment) {
            this.environment = environment;
        }

        private final Map<String, String> libraries = new LinkedHashMap<>();

        @Override
        public CellRun run(Cell cell) throws KernelTrouble {
            count++;
            if (first.isEmpty()) {
                first = cell.id();
            }
            List<Output> gives = new ArrayList<>();
            outputs.put(cell.id(), gives);
            for (String line : cell.source().split("\n", -1)) {
                String[] words = line.split(" ", 2);
                String rest = words.length > 1 ? words[1] : "";
                Output.Failure failure = new Output.Failure("Fault", rest, List.of());
                switch (words[0]) {
                    case "print" -> gives.add(new Output.Stream("stdout", rest + "\n"));
                    case "record" -> gives.add(display(SheetRecord.MIME, json(rest)));
                    case "recordtext" ->
                            gives.add(display(SheetRecord.MIME, TextNode.valueOf(rest)));
                    case "part" -> gives.add(display(PART, TextNode.valueOf(rest)));
                    case "living" -> living.add(display(PART, json(rest)));
                    case "earlier" -> gives.add(new Output.Stream("stdout", earlier()));
                    case "fail" -> {
                        return new CellRun(count, failure);
                    }
                    case "throw" -> gives.add(failure);
                    case "poison" ->
                            outputs.computeIfAbsent(first, id -> new ArrayList<>()).add(failure);
                    case "library" -> {
                        String[] named = rest.split(" ", 2);
                        libraries.put(named[0], named[1]);
                    }
                    case "trouble" -> throw new KernelTrouble(rest);
                    default -> throw new IllegalArgumentException(line);
                }
            }
            return new CellRun(count, null, libraries);
        }

        private String earlier() {
            try {
                @Nullable String folder = environment.get(PackageIssue.RECORDS);
                return Trees.of(Path.of(String.valueOf(folder))).toString();
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public List<Output> outputs(String cellId) {
            return outputs.getOrDefault(cellId, List.of());
        }

        @Override
        public List<Output> living() {
            return living;
        }

        @Override
        public void close() {
            open--;
        }
    }

    private static Output display(String type, JsonNode shown) {
        return new Output.Display(
                Map.of(type, shown), JsonNodeFactory.instance.objectNode(), false);
    }

    private static JsonNode json(String text) {
        try {
            return Json.read(text);
        } catch (IOException e) {
            throw new IllegalArgumentException(text, e);
        }
    }
}
