package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.notebook.NotebookReader;
import org.skewback.desk.render.PackageRenderer;

/** What an issue holds, and that an issue that stops leaves the earlier one alone. */
class PackageIssueTest {

    private static final Map<String, String> SOFTWARE = Map.of("Skewback", "0.0-test");

    /** Stands for the pages. */
    private static final PackageRenderer PAGES =
            (run, folder) -> {
                Files.createDirectory(folder.resolve("sheets"));
                for (RunDocument document : run.documents()) {
                    Files.writeString(
                            folder.resolve("sheets").resolve(document.slug() + ".html"),
                            document.title());
                }
                Files.writeString(folder.resolve("index.html"), run.info().title());
            };

    @TempDir private Path home;

    private final ScriptedKernels kernels = new ScriptedKernels();

    private Path folder() {
        return home.resolve("package");
    }

    private Path to() {
        return home.resolve("issued");
    }

    private Path place() {
        return to().resolve("small-crossing");
    }

    private static String record(String number, String... verdicts) {
        StringBuilder checks = new StringBuilder();
        for (String verdict : verdicts) {
            checks.append(checks.length() == 0 ? "" : ",")
                    .append("{\"title\":\"check of ")
                    .append(number)
                    .append("\",\"verdict\":\"")
                    .append(verdict)
                    .append("\"}");
        }
        return "{\"format\":\"skewback-record\",\"edition\":2,\"number\":\""
                + number
                + "\",\"title\":\"T\",\"checks\":["
                + checks
                + "]}";
    }

    private void notebook(String path, String... cells) throws IOException {
        List<String> written = new ArrayList<>();
        for (int i = 0; i < cells.length; i++) {
            boolean prose = cells[i].startsWith("#");
            String rest = prose ? "" : ",\"outputs\":[],\"execution_count\":7";
            written.add(
                    "{\"id\":\"c"
                            + (i + 1)
                            + "\",\"cell_type\":\""
                            + (prose ? "markdown" : "code")
                            + "\",\"metadata\":{\"execution\":{\"iopub.status.idle\":\"10:30\"}},"
                            + "\"source\":"
                            + Json.line(TextNode.valueOf(cells[i]))
                            + rest
                            + "}");
        }
        Path file = folder().resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(
                file,
                "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{},\"cells\":["
                        + String.join(",", written)
                        + "]}");
    }

    private void twoSheets() throws IOException {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve(PackageReader.FILE), PackageReaderTest.GOOD);
        notebook(
                "01-first.ipynb",
                "# 01 First *sheet*",
                "print hello",
                "record " + record("01"),
                "record " + record("01", "passed", "passed"));
        notebook(
                "more/02-second.ipynb",
                "# 02 Second",
                "earlier SKEWBACK_RECORDS",
                "recordtext " + record("02", "passed", "failed", "stale"),
                "");
    }

    private Issued issue(PackageRenderer... renderers) throws Problem {
        return new PackageIssue(kernels, List.of(renderers), SOFTWARE, null, Progress.SILENT)
                .issue(folder(), to());
    }

    /** Issues once, then changes something, and proves that the next issue stops harmlessly. */
    private String stops(PackageRenderer... renderers) throws IOException {
        Map<String, String> before = Trees.of(place());
        assertTrue(before.containsKey("manifest.json"), "there must be an earlier issue to harm");
        String said =
                String.valueOf(assertThrows(Problem.class, () -> issue(renderers)).getMessage());
        assertEquals(before, Trees.of(place()));
        assertEquals(List.of(".small-crossing.lock", "small-crossing"), Trees.names(to()));
        assertEquals(0, kernels.open(), "every kernel that was started has been ended");
        return said;
    }

    @Test
    void anIssueHoldsPagesRecordsNotebooksAndManifest() throws Exception {
        twoSheets();
        Issued issued = issue(PAGES);
        assertEquals(
                new Issued(
                        place(),
                        2,
                        new CheckCount(3, 1, 1),
                        List.of(),
                        List.of("02 Second  failed: check of 02", "02 Second  stale: check of 02")),
                issued);
        Map<String, String> tree = Trees.of(place());
        assertEquals(
                List.of(
                        "index.html",
                        "manifest.json",
                        "notebooks/01-first.ipynb",
                        "notebooks/02-second.ipynb",
                        "records/01-first.json",
                        "records/02-second.json",
                        "sheets/01-first.html",
                        "sheets/02-second.html"),
                List.copyOf(tree.keySet()));
        assertEquals("01 First sheet", tree.get("sheets/01-first.html"));
        assertEquals(
                "01",
                Json.read(String.valueOf(tree.get("records/01-first.json")))
                        .path("number")
                        .asText());
        assertEquals(2, kernels.launched(), "each notebook has a kernel of its own");
        assertEquals(0, kernels.open());
    }

    @Test
    void aSheetFindsTheRecordsOfTheSheetsBeforeIt() throws Exception {
        twoSheets();
        issue();
        Map<String, String> tree = Trees.of(place());
        JsonNode second = Json.read(String.valueOf(tree.get("notebooks/02-second.ipynb")));
        String seen = second.path("cells").get(1).path("outputs").get(0).path("text").toString();
        assertTrue(seen.contains("01-first.json"), seen);
        assertFalse(seen.contains("02-second"), seen);
    }

    @Test
    void theManifestNamesTheLibrariesOfAllNotebooks() throws Exception {
        twoSheets();
        notebook("01-first.ipynb", "# 01 First", "library a:rib 1\nlibrary a:deck 7");
        notebook("more/02-second.ipynb", "# 02 Second", "library a:rib 2");
        issue();
        JsonNode software =
                Json.read(Files.readAllBytes(place().resolve("manifest.json"))).path("software");
        assertEquals("1, 2", software.path("a:rib").asText());
        assertEquals("7", software.path("a:deck").asText());
        assertEquals("0.0-test", software.path("Skewback").asText());
    }

    @Test
    void theManifestNamesEveryFileWithItsHash() throws Exception {
        twoSheets();
        issue(PAGES);
        JsonNode manifest = Json.read(Files.readAllBytes(place().resolve("manifest.json")));
        assertEquals("skewback-manifest", manifest.path("format").asText());
        assertEquals(2, manifest.path("edition").asInt());
        assertEquals("2026-03-31", manifest.path("package").path("date").asText());
        assertEquals("0.0-test", manifest.path("software").path("Skewback").asText());
        List<String> named = new ArrayList<>();
        for (JsonNode file : manifest.path("files")) {
            byte[] bytes = Files.readAllBytes(place().resolve(file.path("path").asText()));
            named.add(file.path("path").asText());
            assertEquals(bytes.length, file.path("size").asLong());
            assertEquals(
                    HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)),
                    file.path("sha256").asText());
        }
        assertEquals(
                Trees.of(place()).keySet().stream()
                        .filter(path -> !path.equals("manifest.json"))
                        .collect(Collectors.toList()),
                named);
        assertFalse(Files.readString(place().resolve("manifest.json")).contains("\r"));
    }

    @Test
    void issuedNotebooksHoldWhatWasRunAndNoTimeOfDay() throws Exception {
        twoSheets();
        issue();
        String text = Files.readString(place().resolve("notebooks/01-first.ipynb"));
        assertFalse(text.contains("10:30"), text);
        var notebook =
                NotebookReader.parse("issued", text.getBytes(StandardCharsets.UTF_8)).cells();
        assertEquals(1, notebook.get(1).executionCount());
        assertEquals(1, notebook.get(1).outputs().size());
    }

    @Test
    void twoIssuesOfOnePackageAreTheSameToTheByte() throws Exception {
        twoSheets();
        issue(PAGES);
        Map<String, String> first = Trees.of(place());
        Thread.sleep(1100);
        issue(PAGES);
        assertEquals(first, Trees.of(place()));
    }

    @ParameterizedTest
    @CsvSource({
        "fail of a span of −3 m,it failed with\\n  Fault: of a span of −3 m",
        "throw it,it failed with\\n  Fault: it",
        "trouble it ran longer than 5 min,it ran longer than 5 min"
    })
    void aCellThatFailsStopsTheIssueAndIsShown(String source, String message) throws Exception {
        twoSheets();
        issue(PAGES);
        notebook("more/02-second.ipynb", "# 02 Second", source, "print never");
        assertEquals(
                "02 Second, cell 1 of 2 (c2): "
                        + message.replace("\\n", "\n")
                        + "\n\nThe cell:\n  "
                        + source,
                stops(PAGES));
    }

    @Test
    void aCellThatFailsAfterItsEndStopsTheIssueToo() throws Exception {
        twoSheets();
        issue(PAGES);
        notebook("more/02-second.ipynb", "# 02 Second", "print early", "poison all");
        assertEquals(
                "02 Second, cell 1 of 2 (c2): it failed later with\n  Fault: all\n\n"
                        + "The cell:\n  print early",
                stops(PAGES));
    }

    @Test
    void aMissingNotebookStopsTheIssueBeforeAnyCellRuns() throws Exception {
        twoSheets();
        issue(PAGES);
        Files.delete(folder().resolve("more/02-second.ipynb"));
        int before = kernels.launched();
        assertTrue(
                stops(PAGES).startsWith("the notebook more/02-second.ipynb, which package.toml"));
        assertEquals(before, kernels.launched());
    }

    @Test
    void aNotebookWithTwoEqualIdentifiersStopsTheIssueBeforeAnyCellRuns() throws Exception {
        twoSheets();
        issue(PAGES);
        Path file = folder().resolve("more/02-second.ipynb");
        Files.writeString(file, Files.readString(file).replace("\"c3\"", "\"c2\""));
        int before = kernels.launched();
        assertTrue(stops(PAGES).contains("cells 2 and 3: both have the identifier \"c2\""));
        assertEquals(before, kernels.launched());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "record {\"format\":\"x\"}|02 Second: its record does not state the format",
                "recordtext {oops|02 Second: its record is not JSON",
                "record {\"format\":\"skewback-record\",\"edition\":9}|is of edition 9; this",
                "record {\"format\":\"skewback-record\",\"edition\":2,\"checks\":[{\"title\":\"a\","
                        + "\"verdict\":\"fine\"}]}|the check \"a\" the verdict \"fine\""
            })
    void aRecordThatIsNotUnderstoodStopsTheIssue(String source, String message) throws Exception {
        twoSheets();
        issue(PAGES);
        notebook("more/02-second.ipynb", "# 02 Second", source);
        String said = stops(PAGES);
        assertTrue(said.contains(message), said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "part {\"blocks\":[\"b1\"]}|it keeps a sheet and never shows its conclusion",
                "living {\"number\":\"02\",\"title\":\"T\",\"blocks\":[\"b1\"]}|it keeps a"
                        + " sheet \"02 T\" and never shows its conclusion",
                "record {ENTRIES}#living {\"number\":\"02\",\"title\":\"T\",\"blocks\":"
                        + "[\"b2\",\"b3\"]}|more after its conclusion",
                "record {ENTRIES}#part {\"number\":\"07\",\"title\":\"U\",\"blocks\":[\"b2\"]}|"
                        + "it concludes the sheet \"02 T\" and never \"07 U\"",
                "record {ENTRIES}#living {\"number\":\"07\",\"title\":\"U\",\"blocks\":"
                        + "[\"b2\"]}|it concludes the sheet \"02 T\" and never \"07 U\"",
                "record {ENTRIES}#part {\"blocks\":[\"b2\",\"b3\"]}|more after its conclusion",
                "record {ENTRIES}#record {OTHER}|two sheets, \"02 T\" and \"03 T\"",
            })
    void aCheckThatTheRecordWouldMissStopsTheIssue(String source, String message) throws Exception {
        twoSheets();
        issue(PAGES);
        String said = refusalOf(source);
        assertTrue(said.startsWith("02 Second: it ") && said.contains(message), said);
    }

    @Test
    void twoSheetsOfOneNumberStopTheIssue() throws Exception {
        twoSheets();
        issue(PAGES);
        notebook("more/02-second.ipynb", "# 02 Second", "record " + record("01", "passed"));
        assertEquals(
                "the notebooks 01-first and 02-second both keep a sheet of number 01; give each"
                        + " sheet of a package its own",
                stops(PAGES));
    }

    @Test
    void twoSheetsThatNameOneNumberInTheirCodeStopTheIssueBeforeAnythingRuns() throws Exception {
        twoSheets();
        issue(PAGES);
        int before = kernels.launched();
        String code = "print Sheet.numbered(\"07\", \"T\")";
        notebook("01-first.ipynb", "# 01 First", code);
        notebook("more/02-second.ipynb", "# 02 Second", code);
        assertTrue(stops(PAGES).contains("both keep a sheet of number 07"));
        assertEquals(before, kernels.launched());
    }

    @Test
    void nothingMoreRunsOnceASecondSheetOfANumberHasShownItsRecord() throws Exception {
        twoSheets();
        Path file = folder().resolve(PackageReader.FILE);
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("/02-second.ipynb\"", "/02-second.ipynb\", \"03-c.ipynb\""));
        notebook("03-c.ipynb", "# 03 Third", "earlier SKEWBACK_RECORDS", "record " + record("03"));
        issue(PAGES);
        int before = kernels.launched();
        notebook("more/02-second.ipynb", "# 02 Second", "record " + record("01", "passed"));
        assertTrue(stops(PAGES).contains("both keep a sheet of number 01"));
        assertEquals(before + 2, kernels.launched(), "the third notebook did not start");
    }

    private String refusalOf(String source) throws Exception {
        String closing = record("02").replace("}", ",\"entries\":[{\"id\":\"b2\"}]}");
        String filled =
                source.replace("{ENTRIES}", closing)
                        .replace("{OTHER}", record("03", "failed"))
                        .replace('#', '\n');
        notebook("more/02-second.ipynb", "# 02 Second", filled);
        return stops(PAGES);
    }

    /** Each counts its blocks from b1, so that the pages would show one for the other. */
    @Test
    void twoSheetsOfOneNumberAndTitleInOneNotebookStopTheIssue() throws Exception {
        twoSheets();
        issue(PAGES);
        String part = "part {\"number\":\"02\",\"title\":\"T\",\"blocks\":[\"b1\"]}";
        notebook(
                "more/02-second.ipynb",
                "# 02 Second",
                part + "\nrecord " + record("02", "failed"),
                part + "\nrecord " + record("02", "passed"));
        String said = stops(PAGES);
        assertTrue(said.contains("it begins the sheet \"02 T\" twice"), said);
    }

    /** In one cell, or never shown, they are told apart by what their blocks say. */
    @ParameterizedTest
    @ValueSource(strings = {"part", "living"})
    void twoSheetsOfOneNumberAndTitleInOneCellStopTheIssue(String second) throws Exception {
        twoSheets();
        issue(PAGES);
        String part = " {\"number\":\"02\",\"title\":\"T\",\"blocks\":[\"b1\"],\"sums\":[\"SUM\"]}";
        String shown = "part" + part.replace("SUM", "a1");
        String closing = record("02").replace("}", ",\"entries\":[{\"id\":\"b1\"}]}");
        notebook(
                "more/02-second.ipynb",
                "# 02 Second",
                shown + "\nrecord " + closing + "\n" + shown);
        issue(PAGES);
        String other = second + part.replace("SUM", "b2");
        notebook(
                "more/02-second.ipynb",
                "# 02 Second",
                shown + "\n" + other + "\nrecord " + closing);
        String said = stops(PAGES);
        assertTrue(said.contains("it begins the sheet \"02 T\" twice"), said);
    }

    @Test
    void aSheetMayShowAgainWhatItsRecordHolds() throws Exception {
        twoSheets();
        String closing = record("02", "passed").replace("]}", "],\"entries\":[{\"id\":\"b2\"}]}");
        notebook(
                "more/02-second.ipynb",
                "# 02 Second",
                "part {\"blocks\":[\"b1\"]}",
                "record " + record("02"),
                "record " + closing,
                "part {\"blocks\":[\"b2\"]}");
        assertEquals(new CheckCount(3, 0, 0), issue(PAGES).checks());
    }

    @Test
    void aNotebookWithoutASheetIsIssuedAndNamed() throws Exception {
        twoSheets();
        notebook("more/02-second.ipynb", "# 02 Second", "print hello");
        Issued issued = issue(PAGES);
        assertEquals(1, issued.sheets());
        assertEquals(List.of("02 Second"), issued.withoutSheet());
    }

    @Test
    void aRecordThatCannotBeShownStopsTheIssue() throws Exception {
        twoSheets();
        issue(PAGES);
        assertEquals(
                "the pages could not be made: the record of 01-first is no record",
                stops(
                        (run, folder) -> {
                            throw new IllegalArgumentException(
                                    "the record of 01-first is no record");
                        }));
    }

    @Test
    void aPageThatCannotBeWrittenStopsTheIssue() throws Exception {
        twoSheets();
        issue(PAGES);
        assertEquals(
                "the pages could not be made: the disk is full",
                stops(
                        PAGES,
                        (run, folder) -> {
                            throw new IOException("the disk is full");
                        }));
        assertTrue(
                stops(
                                (run, folder) -> {
                                    throw new UncheckedIOException(new IOException("no paper"));
                                })
                        .contains("no paper"));
    }

    @Test
    void aFaultInThePageMakerLeavesTheEarlierIssueAlone() throws Exception {
        twoSheets();
        issue(PAGES);
        Map<String, String> before = Trees.of(place());
        assertThrows(
                IllegalStateException.class,
                () ->
                        issue(
                                PAGES,
                                (run, folder) -> {
                                    throw new IllegalStateException("a slip of ours");
                                }));
        assertEquals(before, Trees.of(place()));
        assertEquals(List.of(".small-crossing.lock", "small-crossing"), Trees.names(to()));
    }

    @Test
    void aNotebookWithoutASheetIsIssuedWithoutARecord() throws Exception {
        twoSheets();
        notebook("more/02-second.ipynb", "# A lesson", "print only this");
        Issued issued = issue(PAGES);
        assertEquals(new CheckCount(2, 0, 0), issued.checks());
        assertEquals(List.of("01-first.json"), Trees.names(place().resolve("records")));
    }
}
