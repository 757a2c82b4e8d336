package org.skewback.desk.jupyter;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;
import org.skewback.kernel.wire.ConnectionFile;

/** A kernel in a process of its own, spoken to over loopback sockets. */
public final class KernelProcess implements KernelSession {

    private static final int TRIES = 3;
    private static final int LAST_WORDS = 20;
    private static final int KILLED = 128 + 9;

    private final Path workplace;
    private final Process process;
    private final Thread endWithProgram;
    private final JupyterClient client;
    private final Limits limits;

    /**
     * How long and how much a kernel may take.
     *
     * @param start until it first answers
     * @param cell until a cell ends
     * @param interrupt until a cell ends that was told to stop
     * @param farewell until the process ends that was told to end
     * @param output most characters that a cell may give
     */
    public record Limits(
            Duration start, Duration cell, Duration interrupt, Duration farewell, long output) {

        /**
         * Gives the usual limits.
         *
         * @param cell longest time that a cell may run, positive
         * @return the limits
         */
        public static Limits ofCell(Duration cell) {
            return new Limits(
                    Duration.ofMinutes(1),
                    cell,
                    Duration.ofSeconds(10),
                    Duration.ofSeconds(2),
                    32L * 1024 * 1024);
        }
    }

    private KernelProcess(
            Path workplace, Process process, ConnectionFile connection, Limits limits) {
        this.workplace = workplace;
        this.process = process;
        this.limits = limits;
        this.endWithProgram =
                new Thread(
                        () -> {
                            end(process, limits);
                            discard(workplace);
                        },
                        "end-kernel");
        Runtime.getRuntime().addShutdownHook(endWithProgram);
        this.client = new JupyterClient(connection, process::isAlive, limits.output());
    }

    /**
     * Gives a launcher of such kernels.
     *
     * @param command the command line
     * @param limits how long and how much a kernel may take
     * @return the launcher
     */
    public static KernelLauncher launcher(KernelCommand command, Limits limits) {
        return launcher(command, limits, Path.of(System.getProperty("java.io.tmpdir")));
    }

    /** Gives a launcher of kernels that have their workplaces in a folder. */
    static KernelLauncher launcher(KernelCommand command, Limits limits, Path temporary) {
        return (folder, environment) -> launch(command, limits, temporary, folder, environment);
    }

    private static KernelSession launch(
            KernelCommand command,
            Limits limits,
            Path temporary,
            Path folder,
            Map<String, String> environment)
            throws KernelTrouble {
        // Another program may take a port between the moment it is found free and the moment the
        // kernel binds it, so a start that fails is tried again with other ports.
        for (int attempt = 1; ; attempt++) {
            KernelProcess kernel = start(command, limits, temporary, folder, environment);
            JupyterClient.End end = kernel.client.awaitReady(limits.start());
            if (end == JupyterClient.End.DONE) {
                return kernel;
            }
            boolean dead = end == JupyterClient.End.DEAD;
            String why =
                    dead
                            ? "its kernel ended while it started" + kernel.exit()
                            : "its kernel did not answer within " + Durations.words(limits.start());
            String lastWords = kernel.lastWords();
            kernel.close();
            if (!dead || attempt == TRIES) {
                throw new KernelTrouble(why + lastWords);
            }
        }
    }

    private static KernelProcess start(
            KernelCommand command,
            Limits limits,
            Path temporary,
            Path folder,
            Map<String, String> environment)
            throws KernelTrouble {
        try {
            // Private to the user: the connection file holds the key.
            Path workplace = Files.createTempDirectory(temporary, "skewback-desk-");
            try {
                ConnectionFile connection = ConnectionFile.onLoopback();
                Path file = workplace.resolve("connection.json");
                connection.write(file);
                // What the kernel keeps in temporary files goes when its workplace goes.
                ProcessBuilder builder =
                        new ProcessBuilder(command.words(file, "-Djava.io.tmpdir=" + workplace));
                builder.directory(folder.toFile());
                // What is issued was not typed by anybody and has no place in the user's history.
                builder.environment().put("SKEWBACK_HISTORY", "off");
                builder.environment().putAll(environment);
                // A kernel may watch the process that started it and end with it.
                builder.environment().put("JPY_PARENT_PID", "" + ProcessHandle.current().pid());
                builder.redirectErrorStream(true);
                builder.redirectOutput(workplace.resolve("log.txt").toFile());
                Process process = builder.start();
                process.getOutputStream().close();
                return new KernelProcess(workplace, process, connection, limits);
            } catch (IOException e) {
                discard(workplace);
                throw e;
            }
        } catch (IOException e) {
            throw new KernelTrouble("its kernel could not be started: " + e.getMessage(), e);
        }
    }

    @Override
    public CellRun run(Cell cell) throws KernelTrouble {
        return run(cell.id(), cell.source());
    }

    @Override
    public void settle() throws KernelTrouble {
        // A kernel that does not know this fails with it, and has nothing that could be waited for.
        run("", "%settle");
    }

    @Override
    public List<Output> living() throws KernelTrouble {
        // No cell of a notebook has the empty identifier, and no value hears of a cell without one.
        boolean known = run("", "%living").failure() == null;
        return known ? client.outputs("") : List.of();
    }

    @Override
    public boolean beginAfresh(Map<String, String> environment) throws KernelTrouble {
        return switch (client.beginAfresh(environment, limits.start())) {
            case DONE -> client.run().failure() == null;
            case LATE ->
                    throw new KernelTrouble(
                            "its kernel did not begin afresh within "
                                    + Durations.words(limits.start()));
            case FLOOD, DEAD ->
                    throw new KernelTrouble(
                            "its kernel ended while it began afresh" + exit() + lastWords());
        };
    }

    private CellRun run(String cellId, String source) throws KernelTrouble {
        JupyterClient.End end = client.execute(cellId, source, limits.cell());
        return switch (end) {
            case DONE -> client.run();
            case LATE -> throw overrun("it ran longer than " + Durations.words(limits.cell()));
            case FLOOD ->
                    throw overrun("it gave more than " + limits.output() + " characters of output");
            case DEAD ->
                    throw new KernelTrouble("its kernel ended while it ran" + exit() + lastWords());
        };
    }

    private KernelTrouble overrun(String what) {
        client.interrupt();
        if (client.drain(limits.interrupt())) {
            return new KernelTrouble(what + " and was interrupted");
        }
        end(process, limits);
        return new KernelTrouble(
                what
                        + ", did not stop when interrupted, and so its kernel was ended"
                        + lastWords());
    }

    @Override
    public List<Output> outputs(String cellId) {
        return client.outputs(cellId);
    }

    @Override
    public void end() {
        end(process, limits);
    }

    @Override
    public void close() {
        if (process.isAlive()) {
            client.shutdown();
            waitForEnd(process, limits);
        }
        client.close();
        end(process, limits);
        try {
            Runtime.getRuntime().removeShutdownHook(endWithProgram);
        } catch (IllegalStateException e) {
            // The program is ending, and the hook ends the kernel.
        }
        discard(workplace);
    }

    private static void end(Process process, Limits limits) {
        List<ProcessHandle> family = process.descendants().toList();
        process.destroyForcibly();
        family.forEach(ProcessHandle::destroyForcibly);
        waitForEnd(process, limits);
    }

    private static void waitForEnd(Process process, Limits limits) {
        try {
            process.waitFor(limits.farewell().toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private String exit() {
        waitForEnd(process, limits);
        if (process.isAlive()) {
            return "";
        }
        return process.exitValue() == KILLED
                ? ", killed from outside, as systems do when memory runs out"
                : " (exit status " + process.exitValue() + ")";
    }

    private String lastWords() {
        try {
            byte[] log = Files.readAllBytes(workplace.resolve("log.txt"));
            List<String> lines = new String(log, StandardCharsets.UTF_8).lines().toList();
            int from = Math.max(0, lines.size() - LAST_WORDS);
            return lines.isEmpty()
                    ? ""
                    : "; the last it said was\n  "
                            + String.join("\n  ", lines.subList(from, lines.size()));
        } catch (IOException e) {
            return "";
        }
    }

    private static void discard(Path workplace) {
        try (Stream<Path> files = Files.walk(workplace)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException e) {
            // A leftover in the system's folder for temporary files harms nobody.
        }
    }
}
