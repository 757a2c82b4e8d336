package org.skewback.desk.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.TestIssue;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;

/** What an audit says of an issue that is whole, and of what tamperers make of it. */
class AuditTest {

    private static final String RECORD = "records/06-form.json";
    private static final String SHEET = "sheets/06-form.html";

    @TempDir private static Path shared;
    private static Path issue = Path.of("");

    @TempDir private Path home;

    @BeforeAll
    static void anIssue() throws Exception {
        issue = TestIssue.FIRST.issue(shared);
    }

    private static AuditReport audit(Path what) {
        return audit(what, AuditTask.Kind.PAGES, TestIssue.PROGRAM);
    }

    private static AuditReport audit(Path what, AuditTask.Kind pages, String program) {
        AuditReport.Gathering gathering = new AuditReport.Gathering();
        AuditTask.run(AuditTask.Kind.NUMBERS, what, program, Map.of(), gathering, new Stopwatch());
        AuditTask.run(pages, what, program, Map.of(), gathering, new Stopwatch());
        return gathering.report(what.toString(), program);
    }

    private Path copy() throws IOException {
        Path copy = home.resolve("copy");
        Tampering.copy(issue, copy);
        return copy;
    }

    private static String said(AuditReport report) {
        return AuditText.of(report, true);
    }

    @Test
    void anUntouchedIssueIsReproduced() {
        AuditReport report = audit(issue, AuditTask.Kind.REDRAW, TestIssue.PROGRAM);
        assertEquals(Verdict.REPRODUCED, report.verdict(), said(report));
        assertEquals(1, report.findings().size(), "the remark that nobody has signed");
        assertEquals(10, report.count(Tally.INTACT));
        assertEquals(7, report.count(Tally.SHOWN), "five pages, the PDF's text, the PDF drawn");
        assertTrue(report.count(Tally.WORKED_OUT) >= 8, said(report));
    }

    @Test
    void thePdfAloneIsReproduced() {
        AuditReport report = audit(issue.resolve("package.pdf"));
        assertEquals(Verdict.REPRODUCED, report.verdict(), said(report));
        assertEquals(4, report.count(Tally.INTACT));
        assertEquals(1, report.count(Tally.SHOWN));
    }

    @Test
    void theWorkIsDoneInProcessesOfTheirOwn() throws Exception {
        AuditReport report =
                new Audit(TestIssue.PROGRAM, Duration.ofMinutes(30), false, Map.of()).audit(issue);
        assertEquals(Verdict.REPRODUCED, report.verdict(), said(report));
        assertEquals(10, report.count(Tally.INTACT));
        assertEquals("T-1", Objects.requireNonNull(report.identity()).number());
    }

    @Test
    void aProcessThatTakesTooLongIsEndedAndNothingCanBeTold() throws Exception {
        AuditReport report =
                new Audit(TestIssue.PROGRAM, Duration.ofMillis(1), false, Map.of()).audit(issue);
        assertEquals(Verdict.CANNOT_TELL, report.verdict());
        assertTrue(said(report).contains("took longer than"), said(report));
    }

    @Test
    void whatIsNotThereCannotBeAudited() {
        assertThrows(
                Problem.class,
                () ->
                        new Audit(TestIssue.PROGRAM, Duration.ofMinutes(1), false, Map.of())
                                .audit(home.resolve("none")));
    }

    @Test
    void anEditedNumberIsNamedWithOldAndNewAndItsGivens() throws Exception {
        Path copy = copy();
        Tampering.replace(copy.resolve(RECORD), "29008000", "29108000");
        AuditReport report = audit(copy);
        assertEquals(Verdict.DIFFERS, report.verdict());
        Change change =
                report.findings().stream()
                        .map(Finding::change)
                        .filter(c -> c != null && c.quantity().equals("step 06.1, H"))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(said(report)));
        assertEquals("06 Form", change.sheet());
        assertEquals("29 108 kN", plain(change.before()));
        assertEquals("29 008 kN", plain(change.now()));
        assertEquals(-100.0 / 29_108, change.relative(), 1e-15);
        assertEquals(
                List.of(
                        "L = 336.00 m (drawing OG-201, revision B)",
                        "f = 72.000 m (drawing OG-201, revision B)",
                        "g = 148.00 kN/m (assumption estimate)"),
                change.givens().stream().map(AuditTest::plain).toList());
    }

    private static String plain(String text) {
        return text.replaceAll("[\\u202F\\u00A0]", " ");
    }

    @Test
    void aGivenThatWasChangedAndNotRerunShowsInAllThatRestsOnIt() throws Exception {
        Path copy = copy();
        Tampering.replace(copy.resolve(RECORD), "\"value\": 336", "\"value\": 346");
        Tampering.redoHashes(copy);
        AuditReport report = audit(copy);
        assertEquals(Verdict.DIFFERS, report.verdict());
        List<String> named =
                report.findings().stream()
                        .filter(f -> f.change() != null)
                        .map(f -> Objects.requireNonNull(f.change()).quantity())
                        .toList();
        assertTrue(named.contains("step 06.1, H"), said(report));
        assertTrue(named.contains("step 06.2, a"), said(report));
    }

    @Test
    void aRoutineOfAnotherEditionCannotBeTold() throws Exception {
        Path copy = copy();
        for (String path : List.of(RECORD, "notebooks/06-form.ipynb")) {
            String text = Files.readString(copy.resolve(path));
            String changed = editionOfRoutine(text);
            Files.writeString(copy.resolve(path), changed);
        }
        AuditReport report = audit(copy, AuditTask.Kind.NUMBERS, TestIssue.PROGRAM);
        assertTrue(
                report.findings().stream()
                        .anyMatch(
                                f ->
                                        f.verdict() == Verdict.CANNOT_TELL
                                                && f.words().contains("installed is edition 1")),
                said(report));
    }

    /** The call of the routine is the only place where a name stands beside an edition. */
    private static String editionOfRoutine(String json) throws IOException {
        JsonNode root = Json.read(json);
        change(root);
        return json.contains("cell_type") ? Json.notebook(root) : Json.page(root);
    }

    private static void change(JsonNode node) {
        if (node.path("name").asText("").equals("form.catenary")) {
            ((ObjectNode) node).put("edition", 7);
        }
        node.forEach(AuditTest::change);
    }

    @Test
    void fiveHundredTamperedVariantsAreAllCaught() throws Exception {
        Random random = new Random(20261125);
        Path copy = copy();
        List<Path> files = Tampering.files(copy);
        List<String> missed = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] before = Files.readAllBytes(file);
            String what = tamper(random, copy, file, before);
            AuditReport report = auditFiles(copy);
            if (report.verdict() == Verdict.REPRODUCED) {
                missed.add(i + " " + what);
            }
            Files.write(file, before);
            Files.deleteIfExists(copy.resolve("sheets/added.html"));
        }
        assertEquals(List.of(), missed);
    }

    /** The files alone, since most of the 500 show there; the rest is left to pages and numbers. */
    private static AuditReport auditFiles(Path copy) throws IOException, Problem {
        AuditReport.Gathering files = new AuditReport.Gathering();
        try (Holding holding = Holding.of(copy)) {
            IssuedManifest manifest = FileAudit.manifest(holding, files);
            if (manifest != null) {
                new FileAudit(holding, files).audit(manifest);
            }
        }
        AuditReport report = files.report("", "");
        return report.verdict() == Verdict.REPRODUCED ? audit(copy) : report;
    }

    private static String tamper(Random random, Path root, Path file, byte[] before)
            throws IOException {
        String name = file.getFileName().toString();
        switch (random.nextInt(5)) {
            case 0 -> {
                Files.delete(file);
                return "deleted " + name;
            }
            case 1 -> {
                Files.writeString(root.resolve("sheets/added.html"), "<p>added</p>");
                return "added a file";
            }
            case 2 -> {
                int digit = random.nextInt(before.length);
                byte[] changed = before.clone();
                for (int k = 0; k < changed.length; k++) {
                    int at = (digit + k) % changed.length;
                    if (changed[at] >= '0' && changed[at] <= '9') {
                        changed[at] =
                                (byte) ('0' + (changed[at] - '0' + 1 + random.nextInt(9)) % 10);
                        break;
                    }
                }
                Files.write(file, changed);
                return "one digit in " + name + " from " + digit;
            }
            default -> {
                byte[] changed = before.clone();
                int at = random.nextInt(changed.length);
                changed[at] ^= (byte) (1 + random.nextInt(255));
                Files.write(file, changed);
                return "one byte in " + name + " at " + at;
            }
        }
    }

    @Test
    void withHashesRedoneEveryWorkedOutNumberOfARecordIsCaught() throws Exception {
        Path copy = copy();
        for (String slug : List.of("06-form", "08-forces")) {
            Path record = copy.resolve("records/" + slug + ".json");
            Path notebook = copy.resolve("notebooks/" + slug + ".ipynb");
            String recordText = Files.readString(record);
            String notebookText = Files.readString(notebook);
            int nodes = Json.read(recordText).path("nodes").size();
            for (int i = 0; i < nodes; i++) {
                ObjectNode root = (ObjectNode) Json.read(recordText);
                ObjectNode node = (ObjectNode) root.path("nodes").path(i);
                if (List.of("given", "value").contains(node.path("operation").asText())) {
                    continue;
                }
                node.put("value", Math.nextUp(node.path("value").doubleValue()));
                Files.writeString(record, Json.page(root));
                ObjectNode book = (ObjectNode) Json.read(notebookText);
                putRecord(book, root);
                Files.writeString(notebook, Json.notebook(book));
                Tampering.redoHashes(copy);
                AuditReport.Gathering found = new AuditReport.Gathering();
                AuditTask.run(
                        AuditTask.Kind.NUMBERS,
                        copy,
                        TestIssue.PROGRAM,
                        Map.of(),
                        found,
                        new Stopwatch());
                AuditReport report = found.report("", "");
                assertEquals(Verdict.DIFFERS, report.verdict(), slug + " node " + i);
                assertFalse(
                        report.findings().stream().anyMatch(f -> f.subject() == Subject.FILES),
                        "caught by the numbers, not by a hash: " + said(report));
            }
            Files.writeString(record, recordText);
            Files.writeString(notebook, notebookText);
        }
    }

    private static void putRecord(JsonNode node, JsonNode record) {
        String type = "application/vnd.skewback.record+json";
        if (node instanceof ObjectNode object && object.has(type)) {
            object.set(type, record);
        }
        if (node instanceof ObjectNode || node instanceof ArrayNode) {
            node.forEach(child -> putRecord(child, record));
        }
    }

    @Test
    void withHashesRedoneEveryNumberShownOnAPageIsCaught() throws Exception {
        Path copy = copy();
        int changed = 0;
        for (String path :
                List.of(
                        "index.html",
                        "basis.html",
                        "cautions.html",
                        SHEET,
                        "sheets/08-forces.html")) {
            Path page = copy.resolve(path);
            String text = Files.readString(page);
            int body = text.indexOf("<body>");
            Matcher numbers = Pattern.compile("(?<=>)[^<]*[0-9][^<]*(?=<)").matcher(text);
            while (numbers.find()) {
                if (numbers.start() < body) {
                    continue;
                }
                String shown = numbers.group();
                int digit = shown.length() - 1;
                while (!Character.isDigit(shown.charAt(digit))) {
                    digit--;
                }
                char other = shown.charAt(digit) == '9' ? '8' : '9';
                int at = numbers.start() + digit;
                Files.writeString(page, text.substring(0, at) + other + text.substring(at + 1));
                Tampering.redoHashes(copy);
                AuditReport.Gathering found = new AuditReport.Gathering();
                auditScreen(copy, found);
                AuditReport report = found.report("", "");
                assertEquals(Verdict.DIFFERS, report.verdict(), path + ": " + shown);
                assertTrue(said(report).contains(path), said(report));
                changed++;
            }
            Files.writeString(page, text);
        }
        assertTrue(changed > 90, changed + " numbers were changed");
    }

    private static void auditScreen(Path copy, Findings found) throws Exception {
        try (Holding holding = Holding.of(copy)) {
            IssuedManifest manifest = FileAudit.manifest(holding, found);
            assertNotNull(manifest);
            new FileAudit(holding, found).audit(manifest);
            PageAudit screen = new PageAudit(holding, found, false, new Stopwatch());
            screen.auditScreen(manifest, TestIssue.PROGRAM);
        }
    }

    @Test
    void aPdfOfOtherNumbersIsCaughtBesideItsFolderAndInItsText() throws Exception {
        Path other = new TestIssue(337, 148, "B", 0.2).issue(home.resolve("other"));
        Path copy = copy();
        Files.write(copy.resolve("package.pdf"), Files.readAllBytes(other.resolve("package.pdf")));
        Tampering.redoHashes(copy);
        String said = said(audit(copy));
        assertTrue(said.contains("holds another records/06-form.json than the folder"), said);
        assertTrue(said.contains("package.pdf: 06 Form, step 06.1 shows \"=29181kN"), said);
    }

    @Test
    void aFigureOfThePdfThatWasRedrawnIsCaughtWhenThePdfIsMadeAgain() throws Exception {
        Path copy = copy();
        Path pdf = copy.resolve("package.pdf");
        byte[] bytes = Files.readAllBytes(pdf);
        Files.write(pdf, PdfEdits.withARectangle(bytes));
        Tampering.redoHashes(copy);
        AuditReport report = audit(copy, AuditTask.Kind.REDRAW, TestIssue.PROGRAM);
        assertTrue(said(report).contains("is not what this program makes of the records"));
    }

    @Test
    void aPageOfThePdfThatNamesAnotherIssueAtItsHeadIsCaught() throws Exception {
        Path copy = copy();
        Path pdf = copy.resolve("package.pdf");
        Files.write(pdf, PdfEdits.withAnotherHead(Files.readAllBytes(pdf)));
        Tampering.redoHashes(copy);
        AuditReport report = audit(copy);
        assertEquals(Verdict.DIFFERS, report.verdict(), said(report));
        String told = said(report);
        assertTrue(told.contains("package.pdf: page 1 has the head and foot \""), told);
        assertTrue(told.contains("the manifest gives \"T-1 · revision "), told);
        assertFalse(told.contains("page 2 has"), told);
    }

    @Test
    void aBookmarkThatSaysOrShowsSomethingElseIsCaught() throws Exception {
        Path copy = copy();
        Path pdf = copy.resolve("package.pdf");
        byte[] bytes = Files.readAllBytes(pdf);
        Files.write(pdf, PdfEdits.withABookmarkCalled(bytes, "All is well"));
        Tampering.redoHashes(copy);
        AuditReport report = audit(copy);
        assertEquals(Verdict.DIFFERS, report.verdict());
        assertTrue(said(report).contains("All is well"), said(report));
        Files.write(pdf, PdfEdits.withABookmarkToTheBasis(bytes));
        Tampering.redoHashes(copy);
        report = audit(copy);
        assertEquals(Verdict.DIFFERS, report.verdict());
        assertTrue(
                said(report)
                        .contains(
                                "has a bookmark \"Cautions\" that leads to a page on which this"
                                        + " does not stand"),
                said(report));
    }

    @Test
    void aConsistentForgeryIsReproducedForOnlyASignatureTellsWhoMadeIt() throws Exception {
        Path forged = new TestIssue(320, 148, "B", 0.2).issue(home.resolve("forged"));
        assertEquals(Verdict.REPRODUCED, audit(forged).verdict());
    }

    @Test
    void pagesOfAnotherVersionAreComparedByTheirNumbers() throws Exception {
        Path copy = copy();
        for (Path file : Tampering.files(copy)) {
            if (file.toString().endsWith(".html")) {
                Tampering.replace(file, "Skip to the content", "Go to the content");
            }
        }
        Tampering.redoHashes(copy);
        AuditReport report = audit(copy, AuditTask.Kind.PAGES, "9.9.9");
        assertEquals(Verdict.CANNOT_TELL, report.verdict(), said(report));
        Tampering.replace(copy.resolve(SHEET), "29\u202F008", "29\u202F108");
        Tampering.redoHashes(copy);
        assertEquals(Verdict.DIFFERS, audit(copy, AuditTask.Kind.PAGES, "9.9.9").verdict());
    }

    @Test
    void aSheetThatTookAnOlderResultIsCaught() throws Exception {
        Path copy = copy();
        Path other = new TestIssue(336, 149, "B", 0.2).issue(home.resolve("other"));
        for (String path : List.of(RECORD, "notebooks/06-form.ipynb", SHEET)) {
            Files.write(copy.resolve(path), Files.readAllBytes(other.resolve(path)));
        }
        Tampering.redoHashes(copy);
        String said = said(audit(copy));
        assertTrue(said.contains("was taken from sheet 06, which has another"), said);
        assertTrue(said.contains("H was taken from record"), said);
    }
}
