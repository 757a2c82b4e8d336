package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.apart.BoundedJava;
import org.skewback.desk.jupyter.Durations;
import org.skewback.desk.jupyter.KernelCommand;

/** A Java process that does a part of an audit within bounds of memory and time. */
final class ChildJava {

    private static final List<String> SHORT = List.of("-XX:TieredStopAtLevel=1");

    private static final int MOST_LINES = 200_000;
    private static final int LONGEST_LINE = 1 << 20;

    private final AuditTask.Kind kind;
    private final BoundedJava process;

    private ChildJava(AuditTask.Kind kind, BoundedJava process) {
        this.kind = kind;
        this.process = process;
    }

    static ChildJava start(
            AuditTask.Kind kind, Path issue, String program, Map<String, String> keys)
            throws Problem {
        List<String> words = new ArrayList<>();
        words.add(kind.name().toLowerCase(Locale.ROOT));
        words.addAll(List.of(issue.toAbsolutePath().toString(), program));
        keys.forEach((role, key) -> words.add(role + "=" + key));
        // Text is soon read; routines may run for long and then want the better code.
        List<String> options = kind == AuditTask.Kind.PAGES ? SHORT : KernelCommand.LATE_BEST_CODE;
        return new ChildJava(
                kind, BoundedJava.start(options, AuditTask.class.getName(), words, LONGEST_LINE));
    }

    /** Takes what the process finds until it ends or its time is over. */
    void gather(Findings findings, Duration time) {
        process.endAfter(time);
        long start = System.nanoTime();
        boolean ended = false;
        try (process) {
            int count = 0;
            @Nullable String line = process.line();
            while (line != null && count++ < MOST_LINES) {
                ended = take(Json.read(line), findings);
                line = process.line();
            }
        } catch (IOException | IllegalArgumentException e) {
            ended = false;
        }
        if (!ended) {
            boolean late = System.nanoTime() - start >= time.toNanos();
            findings.cannotTell(
                    kind == AuditTask.Kind.NUMBERS ? Subject.NUMBERS : Subject.PAGES,
                    kind == AuditTask.Kind.NUMBERS ? "records" : "pages",
                    late
                            ? "took longer than "
                                    + Durations.words(time)
                                    + ", "
                                    + AuditReport.UNFINISHED
                            : "needed more than the "
                                    + BoundedJava.MEMORY
                                    + "iB of memory that an audit may use, or ended for another"
                                    + " reason, "
                                    + AuditReport.UNFINISHED);
        }
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
        } else if (node.has(EffortJson.STAGE)) {
            findings.spend(EffortJson.read(node));
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
