package org.skewback.desk.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.desk.issue.PackageReader;
import org.skewback.desk.issue.ScriptedKernels;
import org.skewback.desk.render.PackageRenderer;

/** What the program says and the code it ends with. */
class SkewbackTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final List<Duration> cellTimes = new ArrayList<>();

    @TempDir private Path home;

    private int run(String... words) {
        return run(List.of(), words);
    }

    private int run(List<PackageRenderer> renderers, String... words) {
        return Skewback.commandLine(
                        () -> renderers,
                        time -> {
                            cellTimes.add(time);
                            return new ScriptedKernels();
                        },
                        new PrintWriter(out),
                        new PrintWriter(err))
                .execute(words);
    }

    private String[] issue(String... more) {
        List<String> words = new ArrayList<>();
        words.addAll(List.of("issue", home.resolve("p").toString()));
        words.addAll(List.of("--to", home.resolve("issued").toString()));
        words.addAll(List.of(more));
        return words.toArray(String[]::new);
    }

    private void aPackage(String source) throws IOException {
        Path folder = Files.createDirectories(home.resolve("p"));
        Files.writeString(
                folder.resolve(PackageReader.FILE),
                """
                name = "p"
                title = "T"
                number = "1"
                revision = "A"
                status = "preliminary"
                date = 2026-03-31
                prepared-by = "P"
                checked-by = ""
                summary = "S"
                cautions = ["C"]
                order = ["01-a.ipynb"]
                """);
        Files.writeString(
                folder.resolve("01-a.ipynb"),
                "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{},\"cells\":[{\"id\":\"m\","
                        + "\"cell_type\":\"markdown\",\"metadata\":{},\"source\":\"# 01 A\"},"
                        + "{\"id\":\"c\",\"cell_type\":\"code\",\"metadata\":{},"
                        + "\"outputs\":[],\"execution_count\":null,\"source\":\""
                        + source.replace("\"", "\\\"")
                        + "\"}]}");
    }

    private static String record(String verdict) {
        return "record {\"format\":\"skewback-record\",\"edition\":2,\"checks\":[{\"title\":"
                + "\"thrust at the springing\",\"verdict\":\""
                + verdict
                + "\"}]}";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "issue --help",
                "audit --help",
                "compare --help",
                "sign --help",
                "key --help",
                "kernel --help",
                "kernel install --help",
                "kernel check --help",
                "kernel remove --help"
            })
    void everyVerbExplainsItself(String words) {
        assertEquals(0, run(words.split(" ", -1)));
        assertTrue(out.toString().contains("Usage: skewback"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void theVersionsAreTold() {
        assertEquals(0, run("--version"));
        assertTrue(out.toString().matches("(?s)Skewback \\d+\\.\\d+\\.\\d+.*\\RJava .*"), "" + out);
    }

    @ParameterizedTest
    @CsvSource({
        "'','Say what to do: issue, audit, compare, sign, key or kernel',skewback",
        "kernel,'Say which: kernel install, kernel check or kernel remove',skewback kernel",
        "isue,\"isue\" is not understood here; did you mean issue,skewback",
        "issue p q,\"q\" is not understood here,skewback issue",
        "issue,Missing required parameter: '<package-folder>',skewback issue",
        "issue p --fast,Unknown option: '--fast',skewback issue",
        "issue p --cell-time 5,\"5\" is not a time to wait; write such as 90s,skewback issue"
    })
    void aCommandLineThatIsNotUnderstoodEndsWith64(String words, String said, String help) {
        assertEquals(64, run(words.isEmpty() ? new String[0] : words.split(" ", -1)));
        assertTrue(err.toString().contains(said), err.toString());
        assertTrue(err.toString().contains("See " + help + " --help"), err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void anIssueWithAllChecksPassedEndsWith0AndTellsWhereToLook() throws Exception {
        aPackage(record("passed"));
        PackageRenderer pages =
                (run, folder) -> {
                    Files.writeString(folder.resolve("index.html"), "");
                    Files.writeString(folder.resolve("package.pdf"), "");
                };
        assertEquals(0, run(List.of(pages), issue("--quiet", "--cell-time", "90s")));
        assertEquals(
                "\nIssued 1 sheet and 1 check: 1 passed, 0 failed, 0 stale\n  "
                        + home.resolve("issued/p/index.html")
                        + "\n  "
                        + home.resolve("issued/p/package.pdf")
                        + "\n",
                out.toString().replace(System.lineSeparator(), "\n"));
        assertEquals(List.of(Duration.ofSeconds(90)), cellTimes);
    }

    @Test
    void aNotebookThatKeepsNoSheetIsNamedBeforeTheCount() throws Exception {
        aPackage("print hello");
        assertEquals(0, run(issue("--quiet")));
        assertTrue(out.toString().contains("keeps no sheet, so none of its checks are counted"));
        assertTrue(out.toString().contains("Issued 0 sheets and 0 checks"), out.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"failed", "stale"})
    void anIssueWithACheckThatIsNotPassedEndsWith1AndNamesIt(String verdict) throws Exception {
        aPackage(record(verdict));
        assertEquals(1, run(issue()));
        assertTrue(
                out.toString().contains("01 A  " + verdict + ": thrust at the springing"),
                out.toString());
        assertTrue(out.toString().contains("01 A   cell 1 of 1   "), out.toString());
        assertTrue(Files.exists(home.resolve("issued/p/manifest.json")));
    }

    @Test
    void anIssueWithAStaleNumberAndNoStaleCheckEndsWith1AndSaysSo() throws Exception {
        String record = record("passed");
        aPackage(
                record.substring(0, record.lastIndexOf('}'))
                        + ",\"entries\":[{\"kind\":\"step\",\"stale\":true}]}");
        assertEquals(1, run(issue()), err.toString());
        assertTrue(
                out.toString()
                        .contains("01 A  stale: 1 number, table or figure besides the checks"),
                out.toString());
    }

    @Test
    void whatCannotBeIssuedEndsWith2AndNoStackTrace() throws Exception {
        assertEquals(2, run(issue()));
        assertEquals(
                "skewback: there is no package folder " + home.resolve("p"),
                err.toString().strip());
        aPackage("fail of it");
        assertEquals(2, run(issue()));
        assertTrue(err.toString().contains("skewback: 01 A, cell 1 of 1 (c): it failed with"));
        assertFalse(err.toString().contains("\tat "), err.toString());
        assertFalse(Files.exists(home.resolve("issued/p")));
    }

    @Test
    void aFaultOfTheProgramItselfEndsWith2AndAsksForAReport() throws Exception {
        aPackage("print a");
        PackageRenderer faulty =
                (run, folder) -> {
                    throw new IllegalStateException("a slip of ours");
                };
        assertEquals(2, run(List.of(faulty), issue()));
        assertTrue(err.toString().contains("please report"), err.toString());
        assertTrue(err.toString().contains("a slip of ours"), err.toString());
    }

    @Test
    void aKernelThatIsNotThereCannotBeRemoved() {
        assertEquals(2, run("kernel", "remove", "--data", home.toString()));
        assertEquals(
                "skewback: no kernel is installed in " + home.resolve("kernels/skewback"),
                err.toString().strip());
    }

    @Test
    void aLookAtAKernelThatIsNotThereSaysSoAndHowToInstallIt() {
        assertEquals(
                2,
                run("kernel", "check", "--data", home.toString(), "--jupyter", "no-such-program"));
        assertTrue(out.toString().contains("no kernel is installed in"), out.toString());
        assertTrue(out.toString().contains("-> skewback kernel install"), out.toString());
        assertTrue(out.toString().contains("Jupyter is not found"), out.toString());
    }

    @Test
    void aKernelGoesToOnePlaceOnly() {
        assertEquals(64, run("kernel", "remove", "--data", "a", "--prefix", "b"));
    }

    @Test
    void onlyThePackagedProgramInstallsItsKernel() {
        assertEquals(2, run("kernel", "install", "--data", home.toString()));
        assertTrue(err.toString().contains("only the packaged program"), err.toString());
    }
}
