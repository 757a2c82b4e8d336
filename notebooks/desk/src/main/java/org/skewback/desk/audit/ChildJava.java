package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.jupyter.Durations;
import org.skewback.desk.jupyter.KernelCommand;

/** A Java process that does a part of an audit within bounds of memory and time. */
final class ChildJava {

    private static final String MEMORY = "1g";
    private static final List<String> OPTIONS =
            List.of(
                    "-Xmx" + MEMORY,
                    "-XX:+UseSerialGC",
                    "-XX:+ExitOnOutOfMemoryError",
                    "-Djava.awt.headless=true");
    private static final List<String> SHORT = List.of("-XX:TieredStopAtLevel=1");

    /**
     * The better code is made ten times later than by default, or it would take most of the time of
     * a record that is soon worked out.
     */
    private static final List<String> LONG =
            List.of(
                    "-XX:Tier4InvocationThreshold=50000",
                    "-XX:Tier4MinInvocationThreshold=6000",
                    "-XX:Tier4CompileThreshold=150000",
                    "-XX:Tier4BackEdgeThreshold=400000");

    private static final int MOST_LINES = 200_000;
    private static final int LONGEST_LINE = 1 << 20;

    private final AuditTask.Kind kind;
    private final Process process;

    private ChildJava(AuditTask.Kind kind, Process process) {
        this.kind = kind;
        this.process = process;
        // A program that is told to end takes its child along.
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    }

    static ChildJava start(
            AuditTask.Kind kind, Path issue, String program, Map<String, String> keys)
            throws Problem {
        KernelCommand self = KernelCommand.ofThisProgram();
        List<String> words = new ArrayList<>();
        words.add(self.java().toString());
        words.addAll(OPTIONS);
        words.addAll(ClassArchive.options(self.classPath()));
        // Text is soon read; routines may run for long and then want the better code.
        words.addAll(kind == AuditTask.Kind.PAGES ? SHORT : LONG);
        words.addAll(List.of("-cp", self.classPath(), AuditTask.class.getName()));
        words.add(kind.name().toLowerCase(Locale.ROOT));
        words.addAll(List.of(issue.toAbsolutePath().toString(), program));
        keys.forEach((role, key) -> words.add(role + "=" + key));
        ProcessBuilder builder = new ProcessBuilder(words);
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        try {
            Process process = builder.start();
            process.getOutputStream().close();
            return new ChildJava(kind, process);
        } catch (IOException e) {
            throw Problem.of("cannot start a Java process for the audit", e);
        }
    }

    /** Takes what the process finds until it ends or its time is over. */
    void gather(Findings findings, Duration time) {
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
                        "audit-clock");
        clock.setDaemon(true);
        clock.start();
        long start = System.nanoTime();
        boolean ended = false;
        try (BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            int count = 0;
            @Nullable String line = line(lines);
            while (line != null && count++ < MOST_LINES) {
                ended = take(Json.read(line), findings);
                line = line(lines);
            }
        } catch (IOException | IllegalArgumentException e) {
            ended = false;
        } finally {
            process.destroyForcibly();
        }
        if (!ended) {
            boolean late = System.nanoTime() - start >= time.toNanos();
            findings.cannotTell(
                    kind == AuditTask.Kind.NUMBERS ? Subject.NUMBERS : Subject.PAGES,
                    kind == AuditTask.Kind.NUMBERS ? "records" : "pages",
                    late
                            ? "took longer than "
                                    + Durations.words(time)
                                    + ", so the rest was not looked at"
                            : "needed more than the "
                                    + MEMORY
                                    + "iB of memory that an audit may use, or ended for another"
                                    + " reason, so the rest was not looked at");
        }
    }

    /** Reads a line of bounded length, or null at the end. */
    private static @Nullable String line(BufferedReader in) throws IOException {
        StringBuilder line = new StringBuilder();
        int c = in.read();
        if (c < 0) {
            return null;
        }
        while (c >= 0 && c != '\n') {
            if (line.length() == LONGEST_LINE) {
                throw new IOException("a line is too long");
            }
            line.append((char) c);
            c = in.read();
        }
        return line.toString();
    }

    private static boolean take(JsonNode node, Findings findings) {
        if (node.has(AuditTask.END)) {
            return true;
        } else if (node.has("title")) {
            findings.identify(
                    new Identity(
                            node.path("title").asText(""),
                            node.path("number").asText(""),
                            node.path("revision").asText(""),
                            node.path("status").asText(""),
                            node.path("date").asText(""),
                            node.path("program").asText("")));
        } else if (node.has("verdict")) {
            findings.add(FindingJson.read(node));
        } else {
            for (Tally tally : Tally.values()) {
                if (node.has(FindingJson.key(tally))) {
                    findings.count(tally, node.path(FindingJson.key(tally)).asLong(0));
                }
            }
        }
        return false;
    }
}
