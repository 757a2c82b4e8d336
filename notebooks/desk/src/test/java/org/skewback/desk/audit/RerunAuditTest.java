package org.skewback.desk.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.TestIssue;
import org.skewback.desk.issue.PackageIssue;
import org.skewback.desk.issue.Progress;
import org.skewback.desk.jupyter.KernelLauncher;

/** What is said when the notebooks of an issue run again. */
class RerunAuditTest {

    private static final AuditReport NOTHING =
            new AuditReport(
                    "", "", new Identity("", "", "", "", "", ""), Map.of(), List.of(), List.of());

    @TempDir private Path home;

    private AuditReport rerun(TestIssue again, double tolerance, boolean withSource)
            throws Exception {
        Path issue = TestIssue.FIRST.issue(home, List.of()).folder();
        return new RerunAudit(again.issuer(List.of()), tolerance)
                .audit(issue, withSource ? home.resolve("source") : null, NOTHING);
    }

    @Test
    void theSameComesOutAgain() throws Exception {
        AuditReport report = rerun(TestIssue.FIRST, 0, true);
        assertEquals(Verdict.REPRODUCED, report.verdict(), AuditText.of(report, true));
        // Six givens, L, f, g, H, e, M_Rd; steps H, a, M; two rows of a table.
        assertEquals(11, report.count(Tally.RERUN));
    }

    @Test
    void withoutThePackageFolderTheIssuedNotebooksRun() throws Exception {
        AuditReport report = rerun(TestIssue.FIRST, 0, false);
        assertEquals(Verdict.REPRODUCED, report.verdict(), AuditText.of(report, true));
    }

    @Test
    void aQuantityThatComesOutOtherwiseIsNamedUnlessItIsWithinTheTolerance() throws Exception {
        AuditReport report = rerun(new TestIssue(336, 148 * (1 + 1e-6), "B", 0.2), 1e-9, true);
        assertEquals(Verdict.DIFFERS, report.verdict());
        String said = AuditText.of(report, true);
        assertTrue(said.contains("06 Form: H\n"), said);
        assertTrue(said.contains("08 Forces: M\n"), said);
        assertTrue(said.contains("+1.0e-06"), said);
        assertEquals(
                Verdict.REPRODUCED,
                rerun(new TestIssue(336, 148 * (1 + 1e-6), "B", 0.2), 1e-5, true).verdict());
    }

    @Test
    void nothingRunsWhereTheAuditBeforeItDidNotComeToItsEnd() throws Exception {
        Path issue = TestIssue.FIRST.issue(home, List.of()).folder();
        AuditReport before =
                new Audit(TestIssue.PROGRAM, Duration.ofMillis(1), false, Map.of()).audit(issue);
        KernelLauncher none =
                (folder, environment) -> {
                    throw new AssertionError("a kernel was started");
                };
        PackageIssue issuer = new PackageIssue(none, List.of(), Map.of(), null, Progress.SILENT);
        AuditReport report = new RerunAudit(issuer, 0).audit(issue, null, before);
        assertEquals(Verdict.CANNOT_TELL, report.verdict());
        assertTrue(AuditText.of(report, true).contains("were not run again"));
    }

    @Test
    void aFolderOfOtherNotebooksIsNotRun() throws Exception {
        Path issue = TestIssue.FIRST.issue(home, List.of()).folder();
        Path notebook = home.resolve("source/06-form.ipynb");
        Files.writeString(notebook, Files.readString(notebook).replace("# 06 Form", "# 06 Other"));
        AuditReport report =
                new RerunAudit(TestIssue.FIRST.issuer(List.of()), 0)
                        .audit(issue, home.resolve("source"), NOTHING);
        assertEquals(Verdict.CANNOT_TELL, report.verdict());
        assertTrue(AuditText.of(report, true).contains("is not the notebook that was issued"));
    }
}
