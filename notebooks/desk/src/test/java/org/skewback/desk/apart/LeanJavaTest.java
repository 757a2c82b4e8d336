package org.skewback.desk.apart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that starts itself again is, to whoever started it, one program. */
class LeanJavaTest {

    private static final long SECONDS = 60;

    @TempDir private Path home;

    private static Process start(List<String> options, String... words) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.add(SecondJava.class.getName());
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command);
        // Options that the environment gives count as chosen too.
        builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        return builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static BufferedReader said(Process process) {
        return new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    private static long pid(String line) {
        return Long.parseLong(line.substring(0, line.indexOf(' ')));
    }

    @Test
    void outputPropertiesAndExitCodeAreThoseOfTheSecond() throws Exception {
        Process first = start(List.of("-Dof.user=kept"), "7");
        try (BufferedReader said = said(first)) {
            String line = said.readLine();
            assertTrue(line.endsWith(" kept"), line);
            assertNotEquals(first.pid(), pid(line));
            assertEquals(7, first.waitFor());
        }
    }

    @Test
    void whoChoosesHowJavaRunsIsNotOverruled() throws Exception {
        Process first = start(List.of("-Xmx100m"), "0");
        try (BufferedReader said = said(first)) {
            assertEquals(first.pid(), pid(said.readLine()));
            assertEquals(0, first.waitFor());
        }
        assertTrue(LeanJava.isWanted(List.of()));
        assertTrue(LeanJava.isWanted(List.of("-Dhttp.proxyHost=p")));
        assertFalse(LeanJava.isWanted(List.of("-Da=b", "-XX:+UseG1GC")));
        assertFalse(LeanJava.isWanted(List.of("-agentlib:jdwp=transport=dt_socket")));
    }

    @Test
    void theSecondHasEndedInGoodOrderWhenTheFirstWasToldToEnd() throws Exception {
        Path file = home.resolve("ended");
        Process first = start(List.of(), "wait", file.toString());
        try (BufferedReader said = said(first)) {
            Optional<ProcessHandle> second = ProcessHandle.of(pid(said.readLine()));
            assertEquals("waits", said.readLine());
            first.destroy();
            assertTrue(first.waitFor(SECONDS, TimeUnit.SECONDS));
            assertTrue(Files.exists(file));
            assertFalse(second.isPresent() && second.get().isAlive());
        }
    }

    @Test
    void theSecondEndsInGoodOrderOnceTheFirstIsKilled() throws Exception {
        Path file = home.resolve("ended");
        Process first = start(List.of(), "wait", file.toString());
        try (BufferedReader said = said(first)) {
            said.readLine();
            assertEquals("waits", said.readLine());
            first.destroyForcibly();
        }
        // A process whose parent is gone may count as alive for ever; its last deed tells.
        long latest = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
        while (!Files.exists(file) && System.nanoTime() < latest) {
            Thread.sleep(50);
        }
        assertTrue(Files.exists(file));
    }
}
