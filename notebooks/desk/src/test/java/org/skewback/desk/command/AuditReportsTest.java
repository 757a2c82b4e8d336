package org.skewback.desk.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.Json;
import org.skewback.desk.TestIssue;
import org.skewback.desk.TestIssue.Twist;
import org.skewback.desk.issue.ScriptedKernels;

/** What an audit reports on the screen, as a page and as JSON, and with which code it ends. */
class AuditReportsTest {

    @TempDir private Path home;

    private final StringWriter out = new StringWriter();

    private int audit(Path issue, String... further) {
        List<String> words =
                new ArrayList<>(
                        List.of(
                                "audit",
                                issue.toString(),
                                "--html",
                                home.resolve("report.html").toString(),
                                "--json",
                                home.resolve("report.json").toString()));
        words.addAll(List.of(further));
        return Skewback.commandLine(
                        List::of,
                        time -> new ScriptedKernels(),
                        new PrintWriter(out),
                        new PrintWriter(out))
                .execute(words.toArray(new String[0]));
    }

    private static String plain(String text) {
        return text.replaceAll("[\\u202F\\u00A0]", " ");
    }

    private JsonNode finding(String quantity) throws Exception {
        JsonNode report = Json.read(Files.readAllBytes(home.resolve("report.json")));
        assertEquals("differs", report.path("verdict").asText());
        for (JsonNode finding : report.path("findings")) {
            if (finding.path("quantity").asText().equals(quantity)) {
                return finding;
            }
        }
        throw new AssertionError(quantity + " is not in " + report);
    }

    private void saidEverywhere(String... words) throws Exception {
        String screen = plain(out.toString());
        String page =
                plain(Files.readString(home.resolve("report.html"))).replaceAll("<[^>]*>", " ");
        for (String word : words) {
            assertTrue(screen.contains(word), word + " is not on the screen:\n" + screen);
            assertTrue(page.contains(word), word + " is not on the page:\n" + page);
        }
    }

    @Test
    void aRoutineChangedByOnePercentIsNamedWithAllThatItFeedsOn() throws Exception {
        Path issue = TestIssue.FIRST.with(Twist.OTHER_ROUTINE).issue(home, List.of()).folder();
        assertEquals(ExitCode.DIFFERS, audit(issue), out.toString());
        JsonNode finding = finding("step 06.2, a");
        assertEquals("06 Form", finding.path("sheet").asText());
        // 1 / 1.01 − 1
        assertEquals(-0.0099, finding.path("relativeChange").asDouble(), 1e-5);
        assertEquals(
                "[\"L = 336.00 m (drawing OG-201, revision B)\",\"f = 72.000 m (drawing OG-201,"
                        + " revision B)\"]",
                plain(finding.path("fedBy").toString()));
        String before = plain(finding.path("recorded").asText());
        String now = plain(finding.path("now").asText());
        saidEverywhere(
                "06 Form",
                "step 06.2, a",
                before,
                now,
                "\u22120.990 %",
                "L = 336.00 m (drawing OG-201, revision B)",
                "f = 72.000 m (drawing OG-201, revision B)");
    }

    @Test
    void aGivenChangedWithoutARerunIsFoundInWhatRestsOnIt() throws Exception {
        Path issue = TestIssue.FIRST.issue(home, List.of()).folder();
        Path record = issue.resolve("records/06-form.json");
        String text = Files.readString(record);
        assertTrue(text.contains("\"value\": 336"), text);
        Files.writeString(record, text.replace("\"value\": 336", "\"value\": 346"));
        assertEquals(ExitCode.DIFFERS, audit(issue), out.toString());
        JsonNode finding = finding("step 06.1, H");
        // 148 · 346² / (8 · 72) = 30 760.4 kN, recorded is that of 336 m.
        assertEquals("29 008 kN", plain(finding.path("recorded").asText()));
        assertEquals("30 760 kN", plain(finding.path("now").asText()));
        assertEquals(346.0 * 346 / 336 / 336 - 1, finding.path("relativeChange").asDouble(), 1e-12);
        saidEverywhere(
                "step 06.1, H",
                "29 008 kN",
                "30 760 kN",
                "+6.04 %",
                "does not follow from what it was worked out from",
                "L = 346.00 m (drawing OG-201, revision B)",
                "is not the record with which its notebook, as run, closes");
    }

    @Test
    void whatEachStageTookIsSaidWhereAskedAndElseEveryReportIsTheSame() throws Exception {
        Path issue = TestIssue.FIRST.issue(home, List.of()).folder();
        audit(issue);
        String first = Files.readString(home.resolve("report.json"));
        String screen = out.toString();
        audit(issue);
        assertEquals(first, Files.readString(home.resolve("report.json")));
        assertEquals(screen + screen, out.toString());
        audit(issue, "--verbose");
        List<String> stages = new ArrayList<>();
        for (JsonNode time :
                Json.read(Files.readAllBytes(home.resolve("report.json"))).path("times")) {
            stages.add(time.path("stage").asText());
            assertTrue(time.path("to").asDouble() >= time.path("from").asDouble(), time.toString());
        }
        for (String stage :
                List.of(
                        "files",
                        "records",
                        "routines",
                        "arithmetic",
                        "numbers-process",
                        "program")) {
            assertTrue(stages.contains(stage), stage + " is not in " + stages);
        }
        saidOnScreen("routines called", "all of the process for numbers");
    }

    private void saidOnScreen(String... words) {
        for (String word : words) {
            assertTrue(out.toString().contains(word), word + " is not in\n" + out);
        }
    }
}
