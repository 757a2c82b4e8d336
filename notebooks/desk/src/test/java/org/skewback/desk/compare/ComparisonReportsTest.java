package org.skewback.desk.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.Problem;
import org.skewback.desk.TestIssue;

/** Issues are compared in a process of its own, which a stranger's issue can exhaust alone. */
class ComparisonReportsTest {

    private static final Duration TIME = Duration.ofMinutes(10);

    @TempDir private Path home;

    private Path issue(String name, TestIssue values) throws Exception {
        return values.issue(home.resolve(name), List.of()).folder();
    }

    private static String problem(Path before, Path now, Duration time) {
        return String.valueOf(
                assertThrows(Problem.class, () -> ComparisonReports.of(before, now, 0.95, time))
                        .getMessage());
    }

    @Test
    void theReportsAreThoseOfTheComparison() throws Exception {
        Path before = issue("before", TestIssue.FIRST);
        Path now = issue("now", new TestIssue(342, 148, "C", 0.2));
        Comparison here = IssueComparison.of(before, now, 0.95);
        assertEquals(
                new ComparisonReports(
                        false,
                        here.sentence(),
                        ComparisonReport.text(here, false),
                        ComparisonReport.text(here, true),
                        ComparisonReport.page(here),
                        ComparisonReport.json(here)),
                ComparisonReports.of(before, now, 0.95, TIME));
    }

    @Test
    void whatIsNoIssueIsSaid() throws Exception {
        Path issue = issue("before", TestIssue.FIRST);
        assertEquals(home + " is no issue: it has no manifest.json", problem(issue, home, TIME));
    }

    @Test
    void whatTakesTooLongEndsItsProcessOnly() throws Exception {
        Path issue = issue("before", TestIssue.FIRST);
        assertEquals(
                "cannot compare: it took longer than 1 ms",
                problem(issue, issue, Duration.ofMillis(1)));
    }

    @Test
    void aRecordThatIsNoneIsSaidWithItsPath() throws Exception {
        Path issue = issue("before", TestIssue.FIRST);
        Files.writeString(issue.resolve("records/06-form.json"), "[".repeat(1_000_000));
        String said = problem(issue, issue, TIME);
        assertTrue(said.startsWith(issue + ", records/06-form.json: "), said);
    }
}
