package org.skewback.desk.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.apart.BoundedJava;
import org.skewback.desk.jupyter.Durations;

/**
 * What is reported of a comparison, worked out in a Java process of its own: both issues may be a
 * stranger's.
 *
 * @param same whether nothing changed
 * @param sentence what moved what, in one sentence
 * @param text for a terminal, shortened
 * @param whole for a terminal, with every change
 * @param page as a page
 * @param json as JSON
 */
public record ComparisonReports(
        boolean same, String sentence, String text, String whole, String page, String json) {

    private static final int LONGEST = 64 << 20;

    /** What a line says instead of reports when there are none. */
    private static final String PROBLEM = "problem";

    /**
     * Compares two issues in a process of its own.
     *
     * @param before the earlier issue, a folder or a PDF
     * @param now the later one
     * @param mark utilisation past which a check is worth a word
     * @param time longest time that it may take
     * @return the reports
     * @throws Problem when one is no issue, or to read them takes too much memory or time
     */
    public static ComparisonReports of(Path before, Path now, double mark, Duration time)
            throws Problem {
        List<String> words =
                List.of(
                        before.toAbsolutePath().toString(),
                        now.toAbsolutePath().toString(),
                        String.valueOf(mark));
        long start = System.nanoTime();
        try (BoundedJava process =
                BoundedJava.start(
                        List.of("-XX:TieredStopAtLevel=1"),
                        ComparisonTask.class.getName(),
                        words,
                        LONGEST)) {
            process.endAfter(time);
            @Nullable String line = process.line();
            if (line != null) {
                return read(Json.read(line));
            }
        } catch (IOException e) {
            throw Problem.of("the comparison cannot be read", e);
        }
        boolean late = System.nanoTime() - start >= time.toNanos();
        throw new Problem(
                late
                        ? "cannot compare: it took longer than " + Durations.words(time)
                        : "cannot compare: an issue needed more than the "
                                + BoundedJava.MEMORY
                                + "iB of memory that reading it may use");
    }

    private static ComparisonReports read(JsonNode line) throws Problem {
        if (line.has(PROBLEM)) {
            throw new Problem(line.path(PROBLEM).asText(""));
        }
        return new ComparisonReports(
                line.path("same").asBoolean(false),
                line.path("sentence").asText(""),
                line.path("text").asText(""),
                line.path("whole").asText(""),
                line.path("page").asText(""),
                line.path("json").asText(""));
    }

    /** One line of JSON with all reports of a comparison. */
    static String line(Comparison comparison) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("same", comparison.isSame());
        node.put("sentence", comparison.sentence());
        node.put("text", ComparisonReport.text(comparison, false));
        node.put("whole", ComparisonReport.text(comparison, true));
        node.put("page", ComparisonReport.page(comparison));
        node.put("json", ComparisonReport.json(comparison));
        return Json.line(node);
    }

    /** One line of JSON that says why there are none. */
    static String line(Problem problem) {
        return Json.line(
                JsonNodeFactory.instance
                        .objectNode()
                        .put(PROBLEM, String.valueOf(problem.getMessage())));
    }
}
