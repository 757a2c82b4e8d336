package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.skewback.desk.TestIssue;
import org.skewback.desk.render.HtmlPackage;

/** A process that issues is killed at each step; the next start leaves one whole issue. */
class KilledIssueTest {

    static final TestIssue LATER = new TestIssue(342, 150, "C", 0.3);

    @TempDir private Path home;

    private Path to = Path.of("");
    private Map<String, String> earlier = Map.of();

    @BeforeEach
    void anEarlierIssue() throws Exception {
        to = home.resolve("issued");
        earlier = issue(TestIssue.FIRST, to);
    }

    private Map<String, String> issue(TestIssue values, Path place) throws Exception {
        Path source = values.source(home.resolve("source"), "");
        Path folder =
                new PackageIssue(
                                values.kernels(),
                                List.of(new HtmlPackage()),
                                Map.of("Skewback", TestIssue.PROGRAM),
                                null,
                                Progress.SILENT)
                        .issue(source, place)
                        .folder();
        return Trees.of(folder);
    }

    private void killAt(String step) throws Exception {
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                StoppingIssue.class.getName(),
                                home.resolve("source").toString(),
                                to.toString(),
                                step)
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try (BufferedReader said =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertEquals("at " + step, said.readLine());
        } finally {
            process.destroyForcibly();
            process.waitFor();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "kernel,false",
        "pages,false",
        "settle,false",
        "before move 1,false",
        "after move 1,false",
        "before move 2,false",
        "after move 2,true",
        "half removed,true",
        "end,true"
    })
    void theEarlierIssueOrTheNewOneIsWhole(String step, boolean later) throws Exception {
        killAt(step);
        IssuePlace.open(to, "two-sheets", FileMoves.REAL).close();
        Map<String, String> left = Trees.of(to.resolve("two-sheets"));
        assertEquals(later ? issue(LATER, home.resolve("other")) : earlier, left);
        assertEquals(List.of(".two-sheets.lock", "two-sheets"), Trees.names(to));
    }

    @Test
    void aKilledProcessHoldsThePlaceNoMore() throws Exception {
        killAt("pages");
        assertEquals(issue(LATER, home.resolve("other")), issue(LATER, to));
    }
}
