package org.skewback.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.issue.CheckCount;
import org.skewback.desk.issue.Issued;
import org.skewback.desk.issue.PackageIssue;
import org.skewback.desk.issue.Progress;
import org.skewback.desk.jupyter.KernelCommand;
import org.skewback.desk.jupyter.KernelProcess;
import org.skewback.display.Displayable;

/** A package of two sheets, issued with the kernel that comes with the program. */
class RealKernelTest {

    /** Far more than anything here takes, however busy the machine. */
    private static final KernelProcess.Limits PATIENT = limits(Duration.ofMinutes(5));

    @TempDir private Path home;

    private Path folder = Path.of("");

    @BeforeEach
    void aPackageAndALibrary() throws Exception {
        folder = Files.createDirectory(home.resolve("package"));
        Path resources =
                Path.of(
                        Objects.requireNonNull(getClass().getResource("/packages/two-sheets"))
                                .toURI());
        try (Stream<Path> files = Files.list(resources)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        library();
    }

    /** Puts a library into a local repository: the interface that a cell's value shows itself by. */
    private void library() throws IOException {
        Path place = home.resolve("repository/org/skewback/test/display/1");
        Files.createDirectories(place);
        Files.writeString(
                place.resolve("display-1.pom"),
                "<project><modelVersion>4.0.0</modelVersion><groupId>org.skewback.test</groupId>"
                        + "<artifactId>display</artifactId><version>1</version></project>");
        String name = "org/skewback/display/Displayable.class";
        try (OutputStream file = Files.newOutputStream(place.resolve("display-1.jar"));
                ZipOutputStream jar = new ZipOutputStream(file);
                InputStream in =
                        Objects.requireNonNull(
                                Displayable.class.getResourceAsStream("Displayable.class"))) {
            jar.putNextEntry(new ZipEntry(name));
            in.transferTo(jar);
        }
    }

    private static KernelProcess.Limits limits(Duration cell) {
        return new KernelProcess.Limits(
                Duration.ofMinutes(5),
                cell,
                Duration.ofMinutes(5),
                Duration.ofSeconds(2),
                32L * 1024 * 1024);
    }

    private Issued issue(KernelProcess.Limits limits, String to) throws Problem {
        return new PackageIssue(
                        KernelProcess.launcher(KernelCommand.ofThisProgram(), limits),
                        List.of(),
                        Map.of("Skewback", "test"),
                        home.resolve("repository"),
                        Progress.SILENT)
                .issue(folder, home.resolve(to));
    }

    private String stops(String source, KernelProcess.Limits limits) throws IOException {
        Path notebook = folder.resolve("02-second.ipynb");
        JsonNode json = Json.read(Files.readAllBytes(notebook));
        ((ObjectNode) json.path("cells").get(1)).set("source", TextNode.valueOf(source));
        Files.writeString(notebook, Json.notebook(json));
        String said =
                String.valueOf(
                        assertThrows(Problem.class, () -> issue(limits, "issued")).getMessage());
        assertFalse(Files.exists(home.resolve("issued/two-sheets")));
        return said;
    }

    private static Map<String, String> tree(Path folder) throws IOException {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                tree.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return tree;
    }

    @Test
    void aPackageIsIssuedAndIsTheSameTheSecondTime() throws Exception {
        Issued issued = issue(PATIENT, "issued");
        assertEquals(2, issued.sheets());
        assertEquals(new CheckCount(2, 1, 0), issued.checks());
        assertEquals(List.of("02 Second  failed: width"), issued.unpassed());
        Map<String, String> tree = tree(issued.folder());
        assertEquals(
                List.of(
                        "manifest.json",
                        "notebooks/01-first.ipynb",
                        "notebooks/02-second.ipynb",
                        "records/01-first.json",
                        "records/02-second.json"),
                List.copyOf(tree.keySet()));
        JsonNode manifest = Json.read(String.valueOf(tree.get("manifest.json")));
        assertEquals("1", manifest.path("software").path("org.skewback.test:display").asText());
        JsonNode second = Json.read(String.valueOf(tree.get("records/02-second.json")));
        assertEquals(
                "[01-first.json]", second.path("seen").asText(), "the records of earlier sheets");
        assertEquals("beside the notebook", second.path("data").asText(), "the working folder");

        issue(PATIENT, "again");
        assertEquals(tree, tree(home.resolve("again/two-sheets")));
    }

    @Test
    void aCellThatThrowsIsShownWithItsSourceAndItsLine() throws Exception {
        String said =
                stops(
                        "int span = -3;\nthrow new IllegalArgumentException(\"span is \" + span);",
                        PATIENT);
        assertTrue(said.startsWith("02 Second, cell 1 of 2 (b1): it failed with\n"), said);
        assertTrue(said.contains("IllegalArgumentException: span is -3"), said);
        assertTrue(said.contains("\n\nThe cell:\n  int span = -3;\n  throw new"), said);
    }

    @Test
    void whatIsPrintedAfterTheLastCellIsIssuedUnderIt() throws Exception {
        Path notebook = folder.resolve("02-second.ipynb");
        JsonNode json = Json.read(Files.readAllBytes(notebook));
        ObjectNode last = (ObjectNode) json.path("cells").get(2);
        String source = last.path("source").toString();
        String starts =
                "new Thread(() -> { try { Thread.sleep(200); } catch (InterruptedException e) { }"
                        + " System.out.println(\"late\"); }).start();\n";
        StringBuilder lines = new StringBuilder(starts);
        Json.read(source).forEach(line -> lines.append(line.asText()));
        last.set("source", TextNode.valueOf(lines.toString()));
        Files.writeString(notebook, Json.notebook(json));
        Path issued = issue(PATIENT, "issued").folder();
        JsonNode outputs =
                Json.read(Files.readAllBytes(issued.resolve("notebooks/02-second.ipynb")))
                        .path("cells")
                        .get(2)
                        .path("outputs");
        // Where the machine is busy, the thread is done before the cell.
        String printed = "";
        for (JsonNode output : outputs) {
            if (output.path("name").asText().equals("stdout")) {
                printed += output.path("text").toString();
            }
        }
        assertEquals("[\"late\\n\"]", printed, outputs::toString);
    }

    /** A cell that has no value shows nothing, but its checks count all the same. */
    @Test
    void aConclusionThatIsNotShownStopsTheIssue() throws Exception {
        String sheet =
                libraryOnThePath()
                        + "import org.skewback.sheet.*;\n"
                        + "import org.skewback.quantity.*;\n"
                        + "Sheet sheet = Sheet.numbered(\"02\", \"Second\");\n"
                        + "sheet.check(\"length\", Quantity.of(3, \"m\"))"
                        + ".atMost(Quantity.of(2, \"m\"));\n";
        Path notebook = folder.resolve("02-second.ipynb");
        JsonNode json = Json.read(Files.readAllBytes(notebook));
        ((ObjectNode) json.path("cells").get(2))
                .set(
                        "source",
                        TextNode.valueOf("Part part = sheet.conclude(\"It does not fit.\");"));
        Files.writeString(notebook, Json.notebook(json));
        String said = stops(sheet, PATIENT);
        assertTrue(
                said.startsWith(
                        "02 Second: it keeps a sheet \"02 Second\" and never shows its conclusion,"
                                + " so its checks would be lost"),
                said);
    }

    /** The core library as it is tested here, with what it needs. */
    private static String libraryOnThePath() {
        StringBuilder lines = new StringBuilder();
        for (String entry :
                System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
            String path = entry.replace('\\', '/');
            if (path.contains("core") || path.contains("commons-math")) {
                lines.append("%classpath ").append(entry).append('\n');
            }
        }
        return lines.toString();
    }

    @Test
    void aCellThatTriesToEndTheProgramStopsTheIssue() throws Exception {
        String said = stops("System.exit(0);", PATIENT);
        assertTrue(said.startsWith("02 Second, cell 1 of 2 (b1): it failed with\n"), said);
    }

    /**
     * The endless cell is the first that runs and alone must keep the time, so that no other cell is
     * late where the machine is busy; it may take as long as it needs to stop.
     */
    @Test
    void aCellOverItsTimeIsInterrupted() throws Exception {
        Path about = folder.resolve("package.toml");
        String both = "[\"01-first.ipynb\", \"02-second.ipynb\"]";
        String text = Files.readString(about);
        assertTrue(text.contains(both), text);
        Files.writeString(about, text.replace(both, "[\"02-second.ipynb\"]"));
        String said = stops("long n = 0; while (true) { n++; }", limits(Duration.ofSeconds(4)));
        assertTrue(
                said.startsWith(
                        "02 Second, cell 1 of 2 (b1): it ran longer than 4 s and was interrupted"),
                said);
    }
}
