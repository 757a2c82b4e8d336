package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.desk.Problem;

/** An earlier issue survives whatever happens while a new one is put in its place. */
class IssuePlaceTest {

    private static final Map<String, String> EARLIER = content("earlier");
    private static final Map<String, String> LATER = content("later");

    @TempDir private Path to;

    private static Map<String, String> content(String text) {
        return Map.of(
                "manifest.json",
                "{\"format\":\"skewback-manifest\",\"files\":["
                        + "{\"path\":\"a.txt\"},{\"path\":\"sheets/b.txt\"}]}",
                "a.txt",
                text,
                "sheets/b.txt",
                text);
    }

    private static void write(Path folder, Map<String, String> content) throws IOException {
        for (Map.Entry<String, String> entry : content.entrySet()) {
            Path file = folder.resolve(entry.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, entry.getValue());
        }
    }

    private void issue(Map<String, String> content) throws Exception {
        try (IssuePlace place = IssuePlace.open(to, "bridge", FileMoves.REAL)) {
            write(place.staging(), content);
            place.publish();
        }
    }

    private String fault() {
        return String.valueOf(
                assertThrows(Problem.class, () -> IssuePlace.open(to, "bridge", FileMoves.REAL))
                        .getMessage());
    }

    /** The end of the process, which runs no more of our code. */
    private static final class Crash extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** Ends the process, or refuses, at one of the steps. */
    private static final class Faulty implements FileMoves {

        private final int failing;
        private final boolean crash;
        private int step;

        Faulty(int failing, boolean crash) {
            this.failing = failing;
            this.crash = crash;
        }

        private boolean fails() throws IOException {
            if (step++ != failing) {
                return false;
            }
            if (crash) {
                throw new Crash();
            }
            throw new FileSystemException("x", null, "the disk is full");
        }

        @Override
        public void move(Path from, Path place) throws IOException {
            if (!fails()) {
                REAL.move(from, place);
            }
        }

        @Override
        public void remove(Path folder) throws IOException {
            if (step == failing) {
                // Half of it is gone by then.
                Files.delete(folder.resolve("a.txt"));
            }
            if (!fails()) {
                REAL.remove(folder);
            }
        }

        @Override
        public void settle(Path folder) throws IOException {
            if (!fails()) {
                REAL.settle(folder);
            }
        }
    }

    @Test
    void aNewIssueReplacesTheEarlierOneWhole() throws Exception {
        issue(EARLIER);
        assertEquals(EARLIER, Trees.of(to.resolve("bridge")));
        issue(LATER);
        assertEquals(LATER, Trees.of(to.resolve("bridge")));
        assertEquals(List.of(".bridge.lock", "bridge"), Trees.names(to));
    }

    /** Steps: 0 settle, 1 earlier aside, 2 new in, 3 earlier removed, 4 none. */
    @ParameterizedTest
    @CsvSource({"0,false", "1,false", "2,false", "3,true", "4,true"})
    void afterACrashAtAnyStepTheNextStartLeavesOneWholeIssue(int step, boolean later)
            throws Exception {
        issue(EARLIER);
        IssuePlace place = IssuePlace.open(to, "bridge", new Faulty(step, true));
        write(place.staging(), LATER);
        boolean crashed = false;
        try {
            place.publish();
        } catch (Crash e) {
            crashed = true;
        }
        assertEquals(step < 4, crashed);
        place.abandon();

        try (IssuePlace next = IssuePlace.open(to, "bridge", FileMoves.REAL)) {
            assertEquals(later ? LATER : EARLIER, Trees.of(to.resolve("bridge")));
            assertEquals(List.of(), Trees.names(next.staging()));
            assertEquals(
                    List.of(".bridge.lock", ".bridge.new", "bridge"),
                    Trees.names(to),
                    "nothing else is left");
        }
        issue(LATER);
        assertEquals(LATER, Trees.of(to.resolve("bridge")));
    }

    /** The recovery of a crash may crash too: its steps are 0 aside back, 1 leftovers removed. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void aCrashWhileTheNextStartRestoresDoesNoHarm(int step) throws Exception {
        issue(EARLIER);
        IssuePlace place = IssuePlace.open(to, "bridge", new Faulty(2, true));
        write(place.staging(), LATER);
        assertThrows(Crash.class, place::publish);
        place.abandon();
        Faulty faulty = new Faulty(step, true);
        assertThrows(Crash.class, () -> IssuePlace.open(to, "bridge", faulty));

        try (IssuePlace next = IssuePlace.open(to, "bridge", FileMoves.REAL)) {
            assertEquals(EARLIER, Trees.of(to.resolve("bridge")));
            assertEquals(List.of(), Trees.names(next.staging()));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void whenTheSystemRefusesAStepTheEarlierIssueIsWhereItWas(int step) throws Exception {
        issue(EARLIER);
        try (IssuePlace place = IssuePlace.open(to, "bridge", new Faulty(step, false))) {
            write(place.staging(), LATER);
            assertEquals(
                    "cannot move the new issue to " + to.resolve("bridge") + ": the disk is full",
                    assertThrows(Problem.class, place::publish).getMessage());
            assertEquals(EARLIER, Trees.of(to.resolve("bridge")));
        }
        assertEquals(List.of(".bridge.lock", "bridge"), Trees.names(to));
    }

    @Test
    void aCrashOfTheFirstIssueLeavesNothing() throws Exception {
        IssuePlace place = IssuePlace.open(to, "bridge", new Faulty(1, true));
        write(place.staging(), LATER);
        assertThrows(Crash.class, place::publish);
        place.abandon();
        IssuePlace.open(to, "bridge", FileMoves.REAL).close();
        assertEquals(List.of(".bridge.lock"), Trees.names(to));
    }

    @Test
    void twoRunsOfOneProcessDoNotShareAPlace() throws Exception {
        try (IssuePlace place = IssuePlace.open(to, "bridge", FileMoves.REAL)) {
            assertTrue(fault().startsWith("bridge is being issued to " + to));
            IssuePlace.open(to, "other", FileMoves.REAL).close();
            assertTrue(Files.exists(place.staging()));
        }
    }

    @Test
    void twoProcessesDoNotShareAPlace() throws Exception {
        Process other =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                LockHolder.class.getName(),
                                to.toString(),
                                "bridge")
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try (BufferedReader said =
                new BufferedReader(
                        new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8))) {
            assertEquals(to.resolve(".bridge.new").toString(), said.readLine());
            assertTrue(fault().startsWith("bridge is being issued to " + to));
            other.getOutputStream().close();
            assertEquals(0, other.waitFor());
            IssuePlace.open(to, "bridge", FileMoves.REAL).close();
        } finally {
            other.destroyForcibly();
        }
    }

    @Test
    void whatNoIssueWroteIsNeverReplaced() throws Exception {
        write(to.resolve("bridge"), Map.of("photo.jpg", "mine"));
        assertTrue(fault().contains("is not an issued package, so it is left alone"));
        Files.delete(to.resolve("bridge/photo.jpg"));
        Files.delete(to.resolve("bridge"));
        Files.writeString(to.resolve("bridge"), "a file");
        assertTrue(fault().contains("is not an issued package, so it is left alone"));
    }

    @Test
    void filesAddedToAnEarlierIssueAreNotLost() throws Exception {
        issue(EARLIER);
        Files.writeString(to.resolve("bridge/sheets/remarks.txt"), "check 7 again");
        assertTrue(fault().contains("would be lost: sheets/remarks.txt. Move them away first"));
        Files.move(to.resolve("bridge/sheets/remarks.txt"), to.resolve("remarks.txt"));
        Files.writeString(to.resolve("bridge/.DS_Store"), "left by looking");
        issue(LATER);
        assertEquals(LATER, Trees.of(to.resolve("bridge")));
    }
}
