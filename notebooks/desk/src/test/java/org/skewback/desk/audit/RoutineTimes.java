package org.skewback.desk.audit;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.apart.BoundedJava;
import org.skewback.desk.jupyter.KernelCommand;
import org.skewback.quantity.CallsAhead;
import org.skewback.sheet.RecordReevaluation;

/**
 * Measures by hand how an audit's routines compare with the same calls and nothing else, each in a
 * process of its own with the options of an audit and as many threads. The two take turns, and
 * medians are shown, since other work on the machine moves single figures.
 *
 * <p>{@code java -cp <program>:<test classes> org.skewback.desk.audit.RoutineTimes <issued folder>
 * <rounds>}
 */
public final class RoutineTimes {

    private static final int LONGEST_LINE = 1 << 20;
    private static final String CALLS = "calls";

    private RoutineTimes() {}

    /**
     * Measures, or makes the calls alone.
     *
     * @param words an issued folder and the number of rounds; or the word {@code calls} and an
     *     issued folder
     */
    public static void main(String[] words) throws Exception {
        if (words[0].equals(CALLS)) {
            callAll(Path.of(words[1]));
        } else {
            compare(words[0], Integer.parseInt(words[1]));
        }
    }

    private static void compare(String folder, int rounds) throws IOException, Problem {
        List<List<Effort>> audits = new ArrayList<>();
        List<List<Effort>> alone = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            alone.add(efforts(RoutineTimes.class.getName(), List.of(CALLS, folder)));
            audits.add(efforts(AuditTask.class.getName(), List.of("numbers", folder, "0")));
        }
        PrintStream out = System.out;
        out.printf(Locale.ROOT, "%-44s%10s%10s%8s%n", "medians, s", "audit", "alone", "ratio");
        row(
                "routines: processor, summed over threads",
                Stage.ROUTINES,
                Effort::processor,
                audits,
                alone);
        row(
                "routines: from first begin to last end",
                Stage.ROUTINES,
                e -> e.to() - e.from(),
                audits,
                alone);
        row("whole process: processor", Stage.NUMBERS_PROCESS, Effort::processor, audits, alone);
        row("whole process: from start to end", Stage.NUMBERS_PROCESS, Effort::to, audits, alone);
    }

    private static void row(
            String what,
            Stage stage,
            ToDoubleFunction<Effort> figure,
            List<List<Effort>> audits,
            List<List<Effort>> alone) {
        double audit = median(stage, figure, audits);
        double own = median(stage, figure, alone);
        System.out.printf(Locale.ROOT, "%-44s%10.2f%10.2f%8.2f%n", what, audit, own, audit / own);
    }

    private static double median(
            Stage stage, ToDoubleFunction<Effort> figure, List<List<Effort>> rounds) {
        double[] sorted =
                rounds.stream()
                        .flatMap(List::stream)
                        .filter(effort -> effort.stage() == stage)
                        .mapToDouble(figure)
                        .sorted()
                        .toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static List<Effort> efforts(String main, List<String> words)
            throws IOException, Problem {
        List<Effort> efforts = new ArrayList<>();
        try (BoundedJava process =
                BoundedJava.start(KernelCommand.LATE_BEST_CODE, main, words, LONGEST_LINE)) {
            @Nullable String line = process.line();
            while (line != null) {
                if (line.contains("\"" + EffortJson.STAGE + "\"")) {
                    efforts.add(EffortJson.read(Json.read(line)));
                }
                line = process.line();
            }
        }
        return efforts;
    }

    /** Makes every call of every record once, with what is recorded, and nothing else. */
    private static void callAll(Path folder) throws Exception {
        Stopwatch watch = new Stopwatch();
        List<CallsAhead.Call> calls = new ArrayList<>();
        try (Stream<Path> records = Files.list(folder.resolve("records"))) {
            for (Path record : records.sorted().toList()) {
                calls.addAll(RecordReevaluation.begin(Files.readString(record)).calls().calls());
            }
        }
        calls.sort(Comparator.comparingInt(CallsAhead.Call::inputs).reversed());
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        List<Future<?>> made = new ArrayList<>();
        for (CallsAhead.Call call : calls) {
            made.add(threads.submit(() -> watch.run(Stage.ROUTINES, call)));
        }
        for (Future<?> call : made) {
            call.get();
        }
        threads.shutdown();
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        watch.tell(
                Stage.NUMBERS_PROCESS,
                new Findings() {
                    @Override
                    public void add(Finding finding) {}

                    @Override
                    public void count(Tally tally, long number) {}

                    @Override
                    public void spend(Effort effort) {
                        out.println(Json.line(EffortJson.of(effort)));
                    }
                });
    }
}
