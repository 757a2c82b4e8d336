package org.skewback.desk.apart;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.jupyter.KernelCommand;

/**
 * A Java process that may use little memory and time, and whose lines of output are bounded: what a
 * stranger wrote is read there, so that it exhausts nothing here.
 */
public final class BoundedJava implements AutoCloseable {

    /** The most memory for its objects, in the words of the launcher. */
    public static final String MEMORY = "1g";

    private static final List<String> OPTIONS =
            List.of(
                    "-Xmx" + MEMORY,
                    "-XX:+UseSerialGC",
                    "-XX:+ExitOnOutOfMemoryError",
                    "-Djava.awt.headless=true");

    private final Process process;
    private final BufferedReader lines;
    private final int longest;

    private BoundedJava(Process process, int longest) {
        this.process = process;
        this.longest = longest;
        this.lines =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        // A program that is told to end takes its child along.
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    }

    /**
     * Starts a class of this program, on the same Java.
     *
     * @param options further options for Java
     * @param main name of the class
     * @param words what its main method is given
     * @param longest most characters that a line of its output may have
     * @return the process
     * @throws Problem when it cannot be started
     */
    public static BoundedJava start(
            List<String> options, String main, List<String> words, int longest) throws Problem {
        KernelCommand self = KernelCommand.ofThisProgram();
        List<String> command = new ArrayList<>(List.of(self.java().toString()));
        command.addAll(OPTIONS);
        command.addAll(ClassArchive.AUDIT.options(self.classPath()));
        command.addAll(options);
        command.addAll(List.of("-cp", self.classPath(), main));
        command.addAll(words);
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        try {
            Process process = builder.start();
            process.getOutputStream().close();
            return new BoundedJava(process, longest);
        } catch (IOException e) {
            throw Problem.of("cannot start a Java process to read the issue in", e);
        }
    }

    /**
     * Ends the process when its time is over.
     *
     * @param time how long it may run from now
     */
    public void endAfter(Duration time) {
        Thread clock =
                new Thread(
                        () -> {
                            try {
                                if (!process.waitFor(time.toMillis(), TimeUnit.MILLISECONDS)) {
                                    process.destroyForcibly();
                                }
                            } catch (InterruptedException e) {
                                process.destroyForcibly();
                            }
                        },
                        "clock");
        clock.setDaemon(true);
        clock.start();
    }

    /**
     * Reads a line of its output.
     *
     * @return the line, or null at the end
     * @throws IOException when it cannot be read or is too long
     */
    public @Nullable String line() throws IOException {
        StringBuilder line = new StringBuilder();
        int c = lines.read();
        if (c < 0) {
            return null;
        }
        while (c >= 0 && c != '\n') {
            if (line.length() == longest) {
                throw new IOException("a line is too long");
            }
            line.append((char) c);
            c = lines.read();
        }
        return line.toString();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
