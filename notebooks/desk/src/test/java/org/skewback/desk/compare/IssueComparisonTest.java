package org.skewback.desk.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.Json;
import org.skewback.desk.TestIssue;

/** What a comparison of two issues says. */
class IssueComparisonTest {

    @TempDir private Path home;

    private Path issue(String name, TestIssue values) throws Exception {
        return values.issue(home.resolve(name), List.of()).folder();
    }

    private Comparison compare(TestIssue before, TestIssue now) throws Exception {
        return IssueComparison.of(issue("before", before), issue("now", now), 0.95);
    }

    private static String plain(String text) {
        return text.replaceAll("[\\u202F\\u00A0]", " ");
    }

    @Test
    void nothingChangedIsSaid() throws Exception {
        Comparison same = compare(TestIssue.FIRST, TestIssue.FIRST);
        assertTrue(same.isSame());
        assertEquals("No given, result or check changed.", same.sentence());
    }

    @Test
    void aRevisedDrawingIsFollowedFromCauseToEffectOverTwoSheets() throws Exception {
        Comparison comparison = compare(TestIssue.FIRST, new TestIssue(342, 148, "C", 0.2));
        // 148 · 342² / (8 · 72) = 30 053.25 kN; 30 053.25 · 0.2 = 6.01065 MN·m above 6 MN·m.
        assertEquals(
                "Revision C of OG-201 moved two checks, one to failed" + " (five results).",
                comparison.sentence());
        Turned moment =
                comparison.checks().stream()
                        .filter(check -> check.name().contains("moment"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("passed", moment.verdictBefore());
        assertEquals("failed", moment.verdictNow());
        assertEquals(29_008 * 0.2 / 6_000, moment.utilisationBefore(), 1e-12);
        assertEquals(30_053.25 * 0.2 / 6_000, moment.utilisationNow(), 1e-12);
        assertEquals(List.of("L → H → (sheet 08) H → M → check 08.1"), moment.chain());
        assertEquals(List.of("drawing OG-201: revision B → revision C"), comparison.sources());
    }

    @Test
    void aChangedGivenIsNamedWithBothValues() throws Exception {
        Comparison comparison = compare(TestIssue.FIRST, new TestIssue(336, 150, "B", 0.2));
        assertEquals(
                "A change of g from 148 kN/m to 150 kN/m moved two checks (four results).",
                plain(comparison.sentence()));
    }

    @Test
    void aRevisionThatChangesNoValueMovesNothing() throws Exception {
        Comparison comparison = compare(TestIssue.FIRST, new TestIssue(336, 148, "C", 0.2));
        assertEquals(2, comparison.givens().size());
        assertEquals("Revision C of OG-201 moved no checks (no results).", comparison.sentence());
    }

    @Test
    void theReportSaysTheSameOnScreenAsPageAndAsJson() throws Exception {
        Comparison comparison = compare(TestIssue.FIRST, new TestIssue(342, 148, "C", 0.2));
        String text = plain(ComparisonReport.text(comparison, true));
        assertTrue(text.contains("06 Form: L  336 m → 342 m (+1.79 %)"), text);
        assertTrue(text.contains("passed → failed, utilisation 0.97 → 1.00"), text);
        String page = ComparisonReport.page(comparison);
        assertTrue(page.contains("default-src 'none'"));
        assertTrue(page.contains("L → H → (sheet 08) H → M → check 08.1"));
        assertEquals(
                "failed",
                Json.read(ComparisonReport.json(comparison))
                        .path("checks")
                        .path(1)
                        .path("verdictNow")
                        .asText());
    }
}
