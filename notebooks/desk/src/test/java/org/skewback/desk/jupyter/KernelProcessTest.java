package org.skewback.desk.jupyter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;

/** The client against a kernel that misbehaves as told. */
class KernelProcessTest {

    private static final KernelProcess.Limits PATIENT =
            new KernelProcess.Limits(
                    Duration.ofMinutes(1),
                    Duration.ofMinutes(1),
                    Duration.ofSeconds(20),
                    Duration.ofSeconds(5),
                    1_000_000);

    /** Gives a cell little time, and waits as long as is said for it to stop then. */
    private static KernelProcess.Limits hasty(Duration interrupt) {
        return new KernelProcess.Limits(
                Duration.ofMinutes(1),
                Duration.ofMillis(300),
                interrupt,
                Duration.ofSeconds(5),
                1_000_000);
    }

    @TempDir private Path folder;

    private static KernelCommand fake(String... arguments) {
        List<String> words = new ArrayList<>(List.of(FakeKernel.class.getName()));
        words.addAll(List.of(arguments));
        return new KernelCommand(
                KernelCommand.javaOfThisProgram(),
                List.of("-XX:TieredStopAtLevel=1"),
                KernelCommand.classPathOfThisProgram(),
                words);
    }

    private KernelSession launch(KernelProcess.Limits limits) throws KernelTrouble {
        return KernelProcess.launcher(fake(), limits)
                .launch(folder, Map.of("SKEWBACK_RECORDS", "the records"));
    }

    private static Cell cell(String id, String source) {
        return new Cell(
                id, Cell.Kind.CODE, source, JsonNodeFactory.instance.objectNode(), null, List.of());
    }

    private static String text(List<Output> outputs) {
        StringBuilder all = new StringBuilder();
        for (Output output : outputs) {
            if (output instanceof Output.Stream stream) {
                all.append(stream.text());
            } else if (output instanceof Output.Display display) {
                all.append(Objects.requireNonNull(display.data().get("text/plain")));
            }
        }
        return all.toString();
    }

    private static String trouble(KernelSession kernel, String source) {
        return String.valueOf(
                assertThrows(KernelTrouble.class, () -> kernel.run(cell("a", source)))
                        .getMessage());
    }

    @Test
    void whatACellGivesIsGatheredUnderIt() throws Exception {
        try (KernelSession kernel = launch(PATIENT)) {
            assertEquals(
                    new CellRun(1, null), kernel.run(cell("a", "print one\nforge\nprint two")));
            assertEquals(List.of(new Output.Stream("stdout", "one\ntwo\n")), kernel.outputs("a"));

            kernel.run(cell("b", "print gone\nclear\nprint old\nclear wait\nprint new"));
            assertEquals("new\n", text(kernel.outputs("b")));

            kernel.run(cell("c", "show d first"));
            kernel.run(cell("d", "late after the end\nupdate d second\nupdate none x"));
            assertEquals("\"second\"after the end\n", text(kernel.outputs("c")));
            assertEquals(List.of(), kernel.outputs("d"));

            CellRun failed = kernel.run(cell("e", "fail by order"));
            assertEquals(
                    new Output.Failure("Fault", "by order", List.of("Fault: by order")),
                    failed.failure());
            assertEquals(List.of(failed.failure()), kernel.outputs("e"));
        }
    }

    @Test
    void ofTheNotebookBeforeNothingIsLeft() throws Exception {
        try (KernelSession kernel = launch(PATIENT)) {
            kernel.run(cell("a", "print one\nshow d first"));
            assertTrue(kernel.beginAfresh(Map.of("SKEWBACK_RECORDS", "others")));
            assertEquals(List.of(), kernel.outputs("a"));
            assertEquals(
                    new CellRun(1, null),
                    kernel.run(cell("a", "getenv SKEWBACK_RECORDS\nupdate d second")));
            assertEquals("others\n", text(kernel.outputs("a")));
            assertFalse(kernel.beginAfresh(Map.of("stubborn", "1")));
        }
    }

    @Test
    void theKernelKnowsItsFolderItsEnvironmentAndTheCell() throws Exception {
        try (KernelSession kernel = launch(PATIENT)) {
            assertNull(
                    kernel.run(cell("the-id", "folder\ngetenv SKEWBACK_RECORDS\ncell")).failure());
            assertEquals(
                    folder.toRealPath() + "\nthe records\nthe-id\n",
                    text(kernel.outputs("the-id")));
        }
    }

    @Test
    void aCellOverItsTimeIsInterrupted() throws Exception {
        try (KernelSession kernel = launch(hasty(Duration.ofMinutes(1)))) {
            assertEquals("it ran longer than 300 ms and was interrupted", trouble(kernel, "wait"));
        }
    }

    @Test
    void aKernelThatDoesNotStopIsEnded() throws Exception {
        List<ProcessHandle> before = ProcessHandle.current().children().toList();
        try (KernelSession kernel = launch(hasty(Duration.ofMillis(300)))) {
            List<ProcessHandle> started =
                    ProcessHandle.current().children().filter(p -> !before.contains(p)).toList();
            assertEquals(1, started.size());
            assertEquals(
                    "it ran longer than 300 ms, did not stop when interrupted, and so its kernel"
                            + " was ended",
                    trouble(kernel, "wedge"));
            assertFalse(started.get(0).isAlive());
        }
    }

    @Test
    void aCellThatNeverEndsPrintingIsInterrupted() throws Exception {
        try (KernelSession kernel = launch(PATIENT)) {
            assertEquals(
                    "it gave more than 1000000 characters of output and was interrupted",
                    trouble(kernel, "flood"));
        }
    }

    @Test
    void theDeathOfAKernelIsToldWithItsLastWords() throws Exception {
        try (KernelSession kernel = launch(PATIENT)) {
            assertEquals(
                    "its kernel ended while it ran (exit status 7); the last it said was\n"
                            + "  out of luck",
                    trouble(kernel, "print before\nhalt 7"));
        }
    }

    @Test
    void aKernelThatCannotStartSaysWhy() {
        KernelLauncher launcher = KernelProcess.launcher(fake("spanner"), PATIENT);
        assertEquals(
                "its kernel ended while it started (exit status 3); the last it said was\n"
                        + "  cannot find the spanner",
                assertThrows(KernelTrouble.class, () -> launcher.launch(folder, Map.of()))
                        .getMessage());
    }

    @Test
    void nothingIsLeftOfAKernelThatWasClosed(@TempDir Path temporary) throws Exception {
        KernelSession kernel =
                KernelProcess.launcher(fake(), PATIENT, temporary).launch(folder, Map.of());
        List<Path> during = files(temporary);
        assertEquals(1, during.size(), during.toString());
        kernel.close();
        assertEquals(List.of(), files(temporary));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
