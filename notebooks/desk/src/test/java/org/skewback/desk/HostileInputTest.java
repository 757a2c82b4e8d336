package org.skewback.desk;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.skewback.desk.checking.Checking;
import org.skewback.desk.checking.CheckingReader;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.NotebookReader;
import org.skewback.sheet.RecordReader;
import org.skewback.sheet.RecordReevaluation;

/**
 * Readers of what a stranger wrote give a value or say what is wrong; nothing else comes out of them,
 * whatever is changed in a file that they would read.
 */
class HostileInputTest {

    /** Pieces that parsers stumble over. */
    private static final List<String> PIECES =
            List.of(
                    "{",
                    "}",
                    "[",
                    "]",
                    "\"",
                    "\\",
                    ",",
                    ":",
                    "null",
                    "true",
                    "-1",
                    "1e999",
                    "1e-999",
                    "99999999999999999999",
                    "NaN",
                    "\u0000",
                    "\uFFFF",
                    "\"\\ud800\"",
                    "../../x",
                    "#9",
                    "-0",
                    "0.1e",
                    "\"call\":-2,",
                    "\"arguments\":[7,7,7,7,7],",
                    "'''",
                    "[[",
                    "=",
                    "\n",
                    "[".repeat(3_000),
                    "{\"a\":".repeat(2_000));

    private static byte[] record = new byte[0];
    private static byte[] notebook = new byte[0];
    private static byte[] manifest = new byte[0];

    @BeforeContainer
    static void anIssue() throws Exception {
        Path home = Files.createTempDirectory("hostile");
        Path issue = TestIssue.FIRST.issue(home, List.of()).folder();
        record = Files.readAllBytes(issue.resolve("records/06-form.json"));
        notebook = Files.readAllBytes(issue.resolve("notebooks/06-form.ipynb"));
        manifest = Files.readAllBytes(issue.resolve("manifest.json"));
    }

    /** Changes a text here and there: bytes flipped, stretches moved or dropped, pieces put in. */
    private static byte[] changed(byte[] text, long seed, int changes) {
        Random random = new Random(seed);
        StringBuilder changed = new StringBuilder(new String(text, StandardCharsets.ISO_8859_1));
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(changed.length() + 1);
            int end = Math.min(changed.length(), at + 1 + random.nextInt(40));
            switch (random.nextInt(5)) {
                case 0 -> {
                    if (at < changed.length()) {
                        changed.setCharAt(at, (char) random.nextInt(256));
                    }
                }
                case 1 -> changed.delete(at, end);
                case 2 ->
                        changed.insert(
                                random.nextInt(changed.length() + 1), changed.substring(at, end));
                case 3 -> number(changed, at, random);
                default ->
                        changed.insert(
                                at,
                                new String(
                                        PIECES.get(random.nextInt(PIECES.size()))
                                                .getBytes(StandardCharsets.UTF_8),
                                        StandardCharsets.ISO_8859_1));
            }
        }
        return changed.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Puts another number in place of the next one, so that what is read stays well-formed. */
    private static void number(StringBuilder text, int from, Random random) {
        int start = from;
        while (start < text.length() && !Character.isDigit(text.charAt(start))) {
            start++;
        }
        int end = start;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        List<String> numbers = List.of("0", "-1", "7", "2147483647", "1e308", "4.9e-324", "0.5");
        text.replace(start, end, numbers.get(random.nextInt(numbers.size())));
    }

    @Example
    void aNumberWithAnExponentBeyondEveryRangeIsRefused() {
        String json = "{\"cells\": [], \"metadata\": {\"n\": 1e99929008000}, \"nbformat\": 4}";
        Problem refused =
                assertThrows(
                        Problem.class,
                        () -> NotebookReader.parse("n", json.getBytes(StandardCharsets.UTF_8)));
        assertTrue(
                Objects.requireNonNull(refused.getMessage())
                        .contains("it has a number beyond every range"),
                refused.getMessage());
    }

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void aNotebookIsReadOrRefused(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int changes) {
        try {
            Notebook read = NotebookReader.parse("n", changed(notebook, seed, changes));
            assertNotNull(read);
        } catch (Problem e) {
            assertTrue(Objects.requireNonNull(e.getMessage()).startsWith("n"), e.getMessage());
        }
    }

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void aRecordIsReadAndWorkedOutOrRefused(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int changes) {
        String text = new String(changed(record, seed, changes), StandardCharsets.UTF_8);
        try {
            assertNotNull(RecordReader.read(text));
            assertNotNull(RecordReevaluation.of(text));
        } catch (IllegalArgumentException e) {
            assertNotNull(e.getMessage());
        }
    }

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void aManifestIsReadOrRefusedAndLeadsNowhereElse(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int changes) {
        try {
            IssuedManifest read = IssuedManifest.read(changed(manifest, seed, changes));
            Path root = Path.of("/issue");
            for (IssuedManifest.File file : read.files()) {
                assertTrue(root.resolve(file.path()).normalize().startsWith(root), file.path());
            }
        } catch (Problem e) {
            assertNotNull(e.getMessage());
        }
    }

    @Property(tries = 1_000, shrinking = ShrinkingMode.OFF)
    void theCheckersFilesAreReadOrRefused(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int changes) {
        Map<String, String> texts =
                Map.of(
                        Checking.NUMBERS,
                        "sheet,quantity,value,unit,tolerance,method\n06,H,29,MN,1 %,by hand\n",
                        Checking.REMARKS,
                        """
                        [[comment]]
                        id = "C1"
                        sheet = "06"
                        by = "B"
                        date = 2026-01-01
                        text = "t"
                        closed = { by = "B", date = 2026-01-02 }
                        """,
                        Checking.CONCESSIONS,
                        """
                        [[concession]]
                        sheet = "06"
                        check = "c"
                        reason = "r"
                        by = "B"
                        until = 2027-01-01
                        """,
                        Checking.signaturePath("checked"),
                        "name = \"B\"\ndate = 2026-01-01\nkey = \"k\"\nsignature = \"s\"\n");
        for (Map.Entry<String, String> file : texts.entrySet()) {
            byte[] bytes = changed(file.getValue().getBytes(StandardCharsets.UTF_8), seed, changes);
            try {
                assertNotNull(CheckingReader.of(Map.of(file.getKey(), bytes)));
            } catch (Problem e) {
                assertNotNull(e.getMessage());
            }
        }
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void bytesOfNoKindAreRefused(@ForAll @Size(max = 2_000) byte[] bytes) {
        assertThrows(Problem.class, () -> NotebookReader.parse("n", bytes));
        assertThrows(Problem.class, () -> IssuedManifest.read(bytes));
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertThrows(IllegalArgumentException.class, () -> RecordReader.read(text));
    }

    @Property(tries = 3)
    void whatIsNestedDeepIsRefusedAndExhaustsNoStack(
            @ForAll @IntRange(min = 0, max = 2) int which) {
        String deep =
                List.of(
                                "[".repeat(5_000_000),
                                "{\"a\":".repeat(2_000_000),
                                "[{\"a\":".repeat(900_000))
                        .get(which);
        byte[] bytes = deep.getBytes(StandardCharsets.UTF_8);
        assertThrows(Problem.class, () -> NotebookReader.parse("n", bytes));
        assertThrows(Problem.class, () -> IssuedManifest.read(bytes));
        assertThrows(IllegalArgumentException.class, () -> RecordReader.read(deep));
    }
}
