package org.skewback.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;

/** The register says what was found, also when a row disagrees or its routine fails. */
class RegisterTest {

    private static Row row(String expected, double tolerance) {
        return new Row(
                "T1",
                "test",
                "half",
                "whole = 4 m",
                "half",
                expected,
                "m",
                tolerance,
                "given",
                Kind.CLOSED_FORM,
                "half of \"four\", a <test>");
    }

    private static Subject subject(Checked checked) {
        return new Subject() {
            @Override
            public String topic() {
                return "test";
            }

            @Override
            public Map<String, Checked> routines() {
                return Map.of("half", checked);
            }
        };
    }

    private static final Checked HALF = inputs -> Map.of("half", inputs.quantity("whole").over(2));

    @Test
    void aRowWithinItsToleranceAgrees() {
        Outcome outcome = Outcome.of(row("2.001", 1e-3), subject(HALF));
        assertEquals(-0.001 / 2.001, outcome.deviation().orElseThrow(), 1e-15);
        assertTrue(outcome.agrees());
        assertFalse(Outcome.of(row("2.001", 1e-4), subject(HALF)).agrees());
    }

    @Test
    void theDeviationFromZeroIsTheDifference() {
        Outcome outcome =
                Outcome.of(
                        row("0", 1e-3),
                        subject(inputs -> Map.of("half", inputs.quantity("whole").times(1e-4))));
        assertEquals(4e-4, outcome.deviation().orElseThrow(), 1e-18);
        assertTrue(outcome.agrees());
    }

    @Test
    void aRoutineThatFailsDisagreesAndSaysWhy() {
        Outcome outcome =
                Outcome.of(
                        row("2", 1e-3),
                        subject(
                                inputs -> {
                                    throw new IllegalArgumentException("no such half");
                                }));
        assertEquals(OptionalDouble.empty(), outcome.computed());
        assertEquals("disagrees", outcome.verdict());
        assertTrue(new Register(List.of(outcome)).html().contains("✗ disagrees: no such half"));
    }

    @Test
    void anInputThatTheRoutineDoesNotKnowIsAMistake() {
        Outcome outcome =
                Outcome.of(row("2", 1e-3), subject(inputs -> Map.of("half", Quantity.of(2, "m"))));
        assertEquals("disagrees", outcome.verdict());
    }

    @Test
    void theFilesAreWholeAndReadBack(@TempDir Path folder) throws IOException {
        Outcome good = Outcome.of(row("2", 1e-9), subject(HALF));
        Outcome bad = Outcome.of(row("3", 1e-9), subject(HALF));
        new Register(List.of(good, bad)).writeTo(folder);
        String csv = Files.readString(folder.resolve("register.csv"));
        assertTrue(
                csv.startsWith(
                        "id,topic,routine,quantity,expected,computed,unit,deviation,tolerance,"
                                + "kind,source,verdict\r\n"));
        CsvTable table = CsvTable.parse("register.csv", csv);
        assertEquals(List.of("agrees", "disagrees"), table.texts("verdict"));
        assertEquals(2, table.numbers("computed", "")[0]);
        assertEquals("half of \"four\", a <test>", table.texts("source").get(0));
        String html = Files.readString(folder.resolve("register.html"));
        assertTrue(html.contains("1 of 2 checks disagree."));
        assertTrue(html.contains("a &lt;test&gt;"));
        try (var files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }
}
