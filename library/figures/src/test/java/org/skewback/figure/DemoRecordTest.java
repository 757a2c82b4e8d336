package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.quantity.Reevaluation.Outcome;
import org.skewback.sheet.RecordReevaluation;
import org.skewback.sheet.SheetRecord;

/** The notebooks that come with the library give records that hold. */
class DemoRecordTest {

    @TempDir private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gorge-crossing/05-choosing-the-crossing.ipynb",
                "gorge-crossing/06-form-of-the-rib.ipynb",
                "lessons/a-chain-turned-over.ipynb",
                "lessons/b-parabola-circle-catenary.ipynb",
                "lessons/c-one-heavy-load.ipynb",
                "lessons/d-why-the-thrust-must-stay-inside.ipynb"
            })
    void theRecordIsValidAndComesOutAgain(String notebook) throws Exception {
        Path root = Path.of(System.getProperty("skewback.root"));
        String json = record(root.resolve("notebooks").resolve(notebook));
        try (InputStream in =
                Objects.requireNonNull(
                        SheetRecord.class.getResourceAsStream("record.schema.json"))) {
            Schema schema =
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(in);
            assertEquals(List.of(), schema.validate(json, InputFormat.JSON));
        }
        RecordReevaluation again = RecordReevaluation.of(json);
        assertEquals(List.of(), again.contradictions());
        assertEquals(List.of(), again.nodes().all(Outcome.DIFFERS));
        assertEquals(0, again.nodes().count(Outcome.CANNOT_TELL));
        assertTrue(again.nodes().count(Outcome.REPRODUCED) > 20, again.nodes().toString());
    }

    private String record(Path notebook) throws Exception {
        JsonNode cells = new ObjectMapper().readTree(Files.readString(notebook)).path("cells");
        Path file = folder.resolve("record.json");
        try (JShell shell = JShell.builder().executionEngine("local").build()) {
            shell.addToClasspath(
                    System.getProperty(
                            "surefire.test.class.path", System.getProperty("java.class.path")));
            for (String start : List.of("java.util", "java.util.stream", "java.nio.file")) {
                run(shell, "import " + start + ".*;");
            }
            for (JsonNode cell : cells) {
                if (cell.path("cell_type").asText().equals("code")) {
                    run(shell, source(cell));
                }
            }
            run(
                    shell,
                    "Files.writeString(Path.of(\""
                            + file.toString().replace("\\", "\\\\")
                            + "\"), org.skewback.sheet.RecordWriter.write(sheet.record()));");
        }
        return Files.readString(file);
    }

    /** A cell is one text or a list of lines; a line that begins with % speaks to the kernel. */
    private static String source(JsonNode cell) {
        StringBuilder whole = new StringBuilder(cell.path("source").asText(""));
        cell.path("source").forEach(line -> whole.append(line.asText()));
        return whole.toString()
                .lines()
                .filter(line -> !line.startsWith("%"))
                .collect(Collectors.joining("\n"));
    }

    private static void run(JShell shell, String code) {
        String rest = code;
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo next =
                    shell.sourceCodeAnalysis().analyzeCompletion(rest);
            for (SnippetEvent event : shell.eval(next.source())) {
                assertEquals(null, event.exception(), next.source());
                String diagnostics =
                        shell.diagnostics(event.snippet())
                                .map(d -> d.getMessage(Locale.ROOT))
                                .collect(Collectors.joining("\n"));
                if (event.causeSnippet() == null) {
                    assertEquals(Snippet.Status.VALID, event.status(), next.source() + diagnostics);
                }
            }
            rest = next.remaining();
        }
    }
}
