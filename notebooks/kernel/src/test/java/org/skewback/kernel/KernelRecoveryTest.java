package org.skewback.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What happens when cells take their worker with them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KernelRecoveryTest {

    // Ends the VM behind the back of the checks woven into cells, as a library could.
    private static final String HALT =
            "Runtime.class.getMethod(\"halt\", int.class).invoke(Runtime.getRuntime(), 4);";

    private final KernelClient client;

    KernelRecoveryTest(@TempDir Path folder) throws IOException {
        client = new KernelClient(folder, Map.of());
    }

    @AfterAll
    void close() {
        client.close();
    }

    @Test
    void aWorkerThatEndsIsReportedAndReplaced() throws IOException {
        client.run("int lost = 1;");
        KernelClient.Run run = client.run(HALT);
        assertEquals("WorkerStopped", run.reply().path("ename").asText());
        assertTrue(run.reply().path("evalue").asText().contains("variables are lost"));
        assertEquals("2", client.run("1 + 1").text());
        assertEquals("error", client.run("lost").reply().path("status").asText());
    }

    @Test
    void aLoopInsideALibraryThatObeysNobodyLosesItsWorker() throws IOException {
        // Nothing of the cell is called by the loop, so no check of the cell's can end it.
        var endless =
                KernelClient.execute(
                        """
                        {
                            display("started");
                            Stream.iterate(1, UnaryOperator.identity())
                                .filter(List.of()::contains)
                                .findFirst();
                        }\
                        """);
        client.send(endless);
        client.published(endless, "display_data");
        assertEquals("ok", client.askControl("interrupt_request").path("status").asText());
        KernelClient.Run run = client.await(endless);
        assertEquals("WorkerStopped", run.reply().path("ename").asText());
        assertEquals("2", client.run("1 + 1").text());
    }

    @Test
    void outOfMemoryIsReportedAndTheVariablesAreKept() throws IOException {
        client.run("int kept = 3;");
        KernelClient.Run run = client.run("long[] big = new long[Integer.MAX_VALUE];");
        assertEquals("java.lang.OutOfMemoryError", run.reply().path("ename").asText());
        assertEquals("3", client.run("kept").text());
    }

    @Test
    void shutsDownWhenTold(@TempDir Path folder) throws Exception {
        try (KernelClient other = new KernelClient(folder, Map.of())) {
            assertEquals("ok", other.askControl("shutdown_request").path("status").asText());
            assertEquals(0, other.exitStatus());
        }
    }

    @Test
    void nothingOfTheLastNotebookIsLeftWhenItBeginsAfresh(@TempDir Path folder) throws Exception {
        try (KernelClient other =
                new KernelClient(folder, Map.of("SHELF", "the first", "KEPT", "as launched"))) {
            Files.createFile(Files.createDirectory(folder.resolve("classes")).resolve("some"));
            other.run("%classpath " + folder.resolve("classes"));
            other.run(
                    "int x = 1; static int twice(int n) { return 2 * n; } System.setProperty(\"p\","
                            + " \"q\");");
            String worker = other.run("ProcessHandle.current().pid()").text();
            ObjectNode second = KernelClient.object();
            second.putObject("environment").put("SHELF", "the second");
            assertEquals("ok", other.ask("afresh_request", second).path("status").asText());

            KernelClient.Run run =
                    other.run("System.getenv(\"SHELF\") + \", \" + System.getenv(\"KEPT\")");
            assertEquals("the second, as launched", run.text());
            assertEquals(1, run.reply().path("execution_count").asInt());
            assertEquals("error", other.run("x").reply().path("status").asText());
            assertEquals("error", other.run("twice(2)").reply().path("status").asText());
            assertEquals("null", other.run("System.getProperty(\"p\")").text());
            assertEquals(
                    "nothing is on the class path yet\n", other.run("%classpath").stream("stdout"));
            assertNotEquals(worker, other.run("ProcessHandle.current().pid()").text());
            assertTrue(ProcessHandle.of(Long.parseLong(worker)).isEmpty());
        }
    }

    @Test
    void itBeginsAfreshWhileItStillStarts(@TempDir Path folder) throws Exception {
        try (KernelClient other = new KernelClient(folder, Map.of())) {
            for (int i = 0; i < 3; i++) {
                other.ask("afresh_request", KernelClient.object());
            }
            assertEquals("2", other.run("1 + 1").text());
            assertEquals(
                    "1",
                    other.run("ProcessHandle.current().parent().get().children().count()").text());
        }
    }

    /** The worker and the compiler are still starting then. */
    @RepeatedTest(3)
    void shutsDownWhileItStarts(@TempDir Path folder) throws Exception {
        try (KernelClient other = new KernelClient(folder, Map.of())) {
            other.shutDown();
            assertEquals(0, other.exitStatus());
        }
    }

    @Test
    void whatAThreadPrintsBeforeTheEndStillGoesOut(@TempDir Path folder) throws Exception {
        try (KernelClient other = new KernelClient(folder, Map.of())) {
            var starts =
                    KernelClient.execute(
                            "new Thread(() -> { while (true) { System.out.print('x');"
                                    + " Thread.onSpinWait(); } }).start();");
            other.send(starts);
            other.await(starts);
            other.askControl("shutdown_request");
            assertEquals(0, other.exitStatus());
            assertTrue(
                    other.published(starts, "stream")
                            .content()
                            .path("text")
                            .asText()
                            .contains("x"));
        }
    }

    @Test
    void endsWithTheProgramThatStartedIt(@TempDir Path folder) throws Exception {
        Process program =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "jshell")
                                        .toString())
                        .start();
        String pid = String.valueOf(program.pid());
        try (KernelClient other = new KernelClient(folder, Map.of("JPY_PARENT_PID", pid))) {
            assertEquals("2", other.run("1 + 1").text());
            program.destroyForcibly();
            assertEquals(0, other.exitStatus());
        } finally {
            program.destroyForcibly();
        }
    }
}
