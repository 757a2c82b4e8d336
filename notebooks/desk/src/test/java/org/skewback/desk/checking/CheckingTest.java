package org.skewback.desk.checking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.desk.Problem;
import org.skewback.desk.TestIssue;
import org.skewback.desk.audit.Audit;
import org.skewback.desk.audit.AuditReport;
import org.skewback.desk.audit.AuditText;
import org.skewback.desk.audit.Verdict;
import org.skewback.desk.render.HtmlPackage;
import org.skewback.desk.render.PackageRenderer;
import org.skewback.desk.render.PdfPackage;

/** A package is issued for construction only when nothing stands against it, and says what does. */
class CheckingTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);
    private static final TestIssue FAILING = new TestIssue(342, 148, "C", 0.2);

    @TempDir private Path home;

    private final Map<String, KeyPair> keys = new LinkedHashMap<>();
    private Path source = Path.of("");

    @BeforeEach
    void signatories() throws Exception {
        source = TestIssue.FIRST.source(home.resolve("source"), "");
        Files.createDirectories(source.resolve("checking"));
        StringBuilder toml = new StringBuilder();
        for (String role : Checking.ROLES) {
            KeyPair pair = Keys.fresh();
            keys.put(role, pair);
            toml.append("[" + role + "]\nname = \"N. " + role + "\"\nkey = \"")
                    .append(Keys.text(pair.getPublic()))
                    .append("\"\n");
        }
        Files.writeString(source.resolve(Checking.SIGNATORIES), toml);
    }

    private void write(String path, String text) throws Exception {
        Files.writeString(source.resolve(path), text);
    }

    private void status(String words) throws Exception {
        Path file = source.resolve("package.toml");
        Files.writeString(
                file,
                Files.readString(file)
                        .replaceFirst("status = \".*\"", "status = \"" + words + "\""));
    }

    private Path issue(TestIssue values, List<PackageRenderer> renderers) throws Exception {
        return values.issuer(renderers).issue(source, home.resolve("issued")).folder();
    }

    private Path issue(TestIssue values) throws Exception {
        return issue(values, List.of());
    }

    private void signAll(Path issue) throws Exception {
        for (String role : Checking.ROLES) {
            Signing.sign(issue, source, role, DAY, keys.get(role).getPrivate(), false);
        }
    }

    private String refusal(TestIssue values) throws Exception {
        status("for construction");
        String said = String.valueOf(assertThrows(Problem.class, () -> issue(values)).getMessage());
        assertTrue(said.startsWith("cannot be issued for construction:"), said);
        return said.replaceAll("[\\u202F\\u00A0]", " ");
    }

    @Test
    void whatIsCheckedAndSignedIsIssuedForConstruction() throws Exception {
        signAll(issue(TestIssue.FIRST));
        status("for construction");
        Path issue = issue(TestIssue.FIRST);
        assertTrue(Files.exists(issue.resolve("checking/signatures/approved.toml")));
        assertTrue(Files.exists(issue.resolve("checking/signatures/manifest.json")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"prepared", "checked", "approved"})
    void eachRoleMustHaveSigned(String missing) throws Exception {
        Path issue = issue(TestIssue.FIRST);
        for (String role : Checking.ROLES) {
            if (!role.equals(missing)) {
                Signing.sign(issue, source, role, DAY, keys.get(role).getPrivate(), false);
            }
        }
        assertEquals(
                "cannot be issued for construction:\n  the signature of who "
                        + missing
                        + " it is missing",
                refusal(TestIssue.FIRST));
    }

    /** Signs an issue for checking, and gives what alone stands against construction. */
    private String onlyReason(TestIssue values) throws Exception {
        status("for checking");
        signAll(issue(values));
        String said = refusal(values);
        String first = "cannot be issued for construction:\n  ";
        assertTrue(said.startsWith(first) && said.lines().count() == 2, said);
        return said.substring(first.length());
    }

    @Test
    void aFailedCheckAloneStandsAgainstConstruction() throws Exception {
        assertEquals(
                "check 08.1, moment in the rib, is failed without a concession",
                onlyReason(FAILING));
    }

    @Test
    void aConcessionThatIsOverAloneStandsAgainstConstruction() throws Exception {
        write(
                Checking.CONCESSIONS,
                """
                [[concession]]
                sheet = "08"
                check = "moment in the rib"
                reason = "first stage only"
                by = "B. Checker"
                until = 2026-11-24
                """);
        assertEquals(
                "check 08.1, moment in the rib, is failed and its concession ended on 2026-11-24",
                onlyReason(FAILING));
    }

    @Test
    void aStaleCheckAloneStandsAgainstConstruction() throws Exception {
        assertEquals(
                "check 08.1, moment in the rib, is stale without a concession",
                onlyReason(TestIssue.FIRST.with(TestIssue.Twist.STALE)));
    }

    @Test
    void anOpenCommentAloneStandsAgainstConstruction() throws Exception {
        write(
                Checking.REMARKS,
                """
                [[comment]]
                id = "C1"
                sheet = "06"
                by = "B. Checker"
                date = 2026-11-20
                text = "Where does g come from?"
                """);
        assertEquals("comment C1 on sheet 06 is open and not closed", onlyReason(TestIssue.FIRST));
    }

    @Test
    void aCheckersNumberThatDisagreesAloneStandsAgainstConstruction() throws Exception {
        write(
                Checking.NUMBERS,
                """
                sheet,quantity,value,unit,tolerance,method
                06,H,29.095,MN,0.2 %,by hand
                """);
        assertEquals(
                "the checker finds H = 29.095 MN on sheet 06, the author 29 008 kN",
                onlyReason(TestIssue.FIRST));
    }

    @Test
    void aSignatureOverOtherNumbersDoesNotHold() throws Exception {
        signAll(issue(TestIssue.FIRST));
        String said = refusal(new TestIssue(336, 147, "B", 0.2));
        assertTrue(
                said.contains(
                        "the signature of who prepared it is over something else: since then"
                                + " changed notebooks/06-form.ipynb, notebooks/08-forces.ipynb,"
                                + " records/06-form.json, records/08-forces.json"),
                said);
    }

    @Test
    void aSignatureByAnotherKeyDoesNotHold() throws Exception {
        Path issue = issue(TestIssue.FIRST);
        signAll(issue);
        KeyPair other = Keys.fresh();
        Path file = source.resolve(Checking.signaturePath("checked"));
        byte[] manifest = Files.readAllBytes(issue.resolve("manifest.json"));
        write(
                Checking.signaturePath("checked"),
                Files.readString(file)
                        .replaceFirst(
                                "signature = \".*\"",
                                "signature = \"" + Keys.sign(other.getPrivate(), manifest) + "\""));
        assertTrue(
                refusal(TestIssue.FIRST)
                        .contains("who checked it does not hold over the manifest signed"));
        Problem wrong =
                assertThrows(
                        Problem.class,
                        () ->
                                Signing.sign(
                                        issue, source, "checked", DAY, other.getPrivate(), false));
        assertTrue(String.valueOf(wrong.getMessage()).contains("not that of N. checked"));
    }

    @Test
    void aFailedCheckNeedsAConcessionThatStillHolds() throws Exception {
        String failed = "check 08.1, moment in the rib, is failed";
        assertTrue(refusal(FAILING).contains(failed + " without a concession"));
        String concession =
                "[[concession]]\nsheet = \"08\"\ncheck = \"moment in the rib\"\n"
                        + "reason = \"first stage only\"\nby = \"B. Checker\"\nuntil = ";
        write(Checking.CONCESSIONS, concession + "2026-11-24\n");
        assertTrue(refusal(FAILING).contains(failed + " and its concession ended on 2026-11-24"));
        write(Checking.CONCESSIONS, concession + "2026-11-25\n");
        assertFalse(refusal(FAILING).contains(failed));
        status("for checking");
        signAll(issue(FAILING));
        status("for construction");
        Path pages = issue(FAILING, List.of(new HtmlPackage()));
        assertTrue(
                Files.readString(pages.resolve("index.html"))
                        .contains("failed</b>, conceded by B. Checker until 2026-11-25"));
    }

    @Test
    void aCommentMustBeClosed() throws Exception {
        String opened =
                """
                [[comment]]
                id = "C1"
                sheet = "06"
                on = "step 06.1"
                by = "B. Checker"
                date = 2026-11-20
                text = "Where does g come from?"
                """;
        write(Checking.REMARKS, opened);
        assertTrue(
                refusal(TestIssue.FIRST).contains("comment C1 on sheet 06 is open and not closed"));
        String answered =
                opened
                        + "answer = { by = \"A. Designer\", date = 2026-11-21, text = \"From 07.\""
                        + " }\n";
        write(Checking.REMARKS, answered);
        assertTrue(refusal(TestIssue.FIRST).contains("comment C1 on sheet 06 is answered"));
        write(Checking.REMARKS, answered + "closed = { by = \"B. Checker\", date = 2026-11-22 }\n");
        assertFalse(refusal(TestIssue.FIRST).contains("comment"));
    }

    @Test
    void aCheckersNumberStandsBesideTheAuthorsAndMustAgree() throws Exception {
        // 148 · 336² / (8 · 72) = 29 008 kN; 0.3 % above it is 29 095 kN.
        write(
                Checking.NUMBERS,
                """
                sheet,quantity,value,unit,tolerance,method
                06,H,29.095,MN,0.2 %,by hand
                08,M,5.8,MN·m,0.5 %,by hand
                """);
        String said = refusal(TestIssue.FIRST);
        assertTrue(
                said.contains("the checker finds H = 29.095 MN on sheet 06, the author 29 008 kN"),
                said);
        assertFalse(said.contains("finds M"), said);
        status("for checking");
        Path pages = issue(TestIssue.FIRST, List.of(new HtmlPackage()));
        String sheet = Files.readString(pages.resolve("sheets/06-form.html"));
        assertTrue(sheet.contains("does not agree"), "on the sheet");
        assertTrue(
                Files.readString(pages.resolve("sheets/08-forces.html")).contains(">agrees</b>"));
    }

    @Test
    void slipsInTheCheckersFilesAreToldAtOnce() throws Exception {
        write(Checking.NUMBERS, "sheet,quantity,value,unit,tolerance,method\n06,H,many,kN,1 %,x\n");
        write(Checking.REMARKS, "[[comment]]\nid = \"C1\"\nsheet = \"06\"\nwho = \"B\"\n");
        write(Checking.CONCESSIONS, "[[concession]]\nuntil = \"soon\"\n");
        String said =
                String.valueOf(
                        assertThrows(Problem.class, () -> issue(TestIssue.FIRST)).getMessage());
        assertTrue(said.contains("checking/numbers.csv, line 2"), said);
        assertTrue(said.contains("the key \"who\" is not known"), said);
        assertTrue(said.contains("until must be a day"), said);
    }

    @Test
    void whatSpeaksOfNoSheetIsRefused() throws Exception {
        write(
                Checking.CONCESSIONS,
                """
                [[concession]]
                sheet = "08"
                check = "no such check"
                reason = "r"
                by = "B"
                until = 2027-01-01
                """);
        String said =
                String.valueOf(
                        assertThrows(Problem.class, () -> issue(TestIssue.FIRST)).getMessage());
        assertTrue(said.contains("a concession is for \"no such check\" of sheet 08"), said);
    }

    @Test
    void aConsistentForgeryIsCaughtByTheSignatureOnlyAndThatIsSaid() throws Exception {
        List<PackageRenderer> all = List.of(new HtmlPackage(), new PdfPackage());
        signAll(issue(TestIssue.FIRST));
        status("for construction");
        Path genuine = issue(TestIssue.FIRST, all);
        Map<String, String> known = new LinkedHashMap<>();
        keys.forEach((role, pair) -> known.put(role, Keys.text(pair.getPublic())));
        AuditReport whole = audit(genuine, known);
        assertEquals(Verdict.REPRODUCED, whole.verdict(), AuditText.of(whole, true));
        assertTrue(AuditText.of(whole, true).contains("3 signatures that hold"));

        // Everything is made anew with other numbers, and the old signatures are kept.
        status("for checking");
        Path forged = issue(new TestIssue(330, 148, "B", 0.2), all);
        AuditReport caught = audit(forged, known);
        assertEquals(Verdict.DIFFERS, caught.verdict());
        assertEquals(
                3,
                caught.findings().stream().filter(f -> f.verdict() == Verdict.DIFFERS).count(),
                "the three signatures and nothing else: " + AuditText.of(caught, true));
        assertTrue(AuditText.of(caught, true).contains("is over something else"));

        // Signed anew by the forger: all holds, but not by the keys that the auditor has.
        for (String role : Checking.ROLES) {
            keys.put(role, Keys.fresh());
        }
        StringBuilder toml = new StringBuilder();
        keys.forEach(
                (role, pair) ->
                        toml.append("[" + role + "]\nname = \"N. " + role + "\"\nkey = \"")
                                .append(Keys.text(pair.getPublic()))
                                .append("\"\n"));
        write(Checking.SIGNATORIES, toml.toString());
        for (String role : Checking.ROLES) {
            Files.delete(source.resolve(Checking.signaturePath(role)));
        }
        Path again = issue(new TestIssue(330, 148, "B", 0.2), all);
        signAll(again);
        Path signed = issue(new TestIssue(330, 148, "B", 0.2), all);
        String said = AuditText.of(audit(signed, known), true);
        assertTrue(said.contains("is by another key than yours"), said);
        AuditReport unnamed = audit(signed, Map.of());
        assertEquals(Verdict.REPRODUCED, unnamed.verdict(), AuditText.of(unnamed, true));
        assertTrue(
                AuditText.of(unnamed, true).contains("so whose it is cannot be seen"),
                AuditText.of(unnamed, true));
    }

    private static AuditReport audit(Path issue, Map<String, String> known) throws Exception {
        return new Audit(TestIssue.PROGRAM, Duration.ofMinutes(30), false, known).audit(issue);
    }
}
