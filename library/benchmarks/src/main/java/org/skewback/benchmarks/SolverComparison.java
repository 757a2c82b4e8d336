package org.skewback.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.SymbolicFactorization;
import org.skewback.numeric.SymmetricMatrix;

/**
 * Writes matrices of invented structures for another solver to read, and what this library made of
 * them: run by {@code scipy_ratios.py}, which prints both side by side.
 */
public final class SolverComparison {

    private static final int MODES = 20;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Path folder;
    private final String name;
    private final int rounds;

    private SolverComparison(Path folder, String name, int rounds) {
        this.folder = folder;
        this.name = name;
        this.rounds = rounds;
    }

    /**
     * Runs the comparison's own side.
     *
     * @param args folder to write to, rounds, then structures such as {@code A6000} or {@code G60000}
     * @throws IOException when a file cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (String name : Arrays.copyOfRange(args, 2, args.length)) {
            new SolverComparison(folder, name, Integer.parseInt(args[1])).run();
        }
    }

    static TestStructure structure(String name) {
        int unknowns = Integer.parseInt(name.substring(1));
        return name.charAt(0) == 'A'
                ? TestStructure.latticeArch(unknowns)
                : TestStructure.curvedGrillage(unknowns);
    }

    /** A load without pattern that any program can make again. */
    static double[] load(int order) {
        double[] load = new double[order];
        for (int i = 0; i < order; i++) {
            load[i] = i * 7919L % 1000 / 1000.0 - 0.5;
        }
        return load;
    }

    private void run() throws IOException {
        TestStructure.Matrices matrices = structure(name).assemble();
        SymmetricMatrix stiffness = matrices.stiffness();
        MatrixMarket.write(stiffness, folder.resolve(name + "-stiffness.mtx"));
        MatrixMarket.write(matrices.mass(), folder.resolve(name + "-mass.mtx"));
        double[] load = load(stiffness.order());
        double[] answer =
                timed(
                        "factor and solve",
                        rounds,
                        () ->
                                SymbolicFactorization.of(stiffness.pattern())
                                        .factorize(stiffness)
                                        .solve(load));
        write("solution", answer);
        Factorization factorization = Factorization.of(stiffness);
        timed("solve", 4 * rounds, () -> factorization.solve(load));
        double[] modes =
                timed(
                        "modes",
                        Math.max(4, rounds / 2),
                        () ->
                                Eigenproblem.vibration(
                                                stiffness, matrices.mass(), MODES, Monitor.quiet())
                                        .values());
        write("modes", modes);
    }

    private void write(String what, double[] values) throws IOException {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(value).append('\n');
        }
        Files.writeString(
                folder.resolve(name + "-" + what + ".txt"), text, StandardCharsets.US_ASCII);
    }

    /** Does some work several times, keeps the shortest times, and gives the last result. */
    private double[] timed(String work, int times, Supplier<double[]> task) {
        double wall = Double.POSITIVE_INFINITY;
        double processor = Double.POSITIVE_INFINITY;
        double[] result = {};
        for (int k = 0; k < times; k++) {
            long start = System.nanoTime();
            long startProcessor = THREADS.getCurrentThreadCpuTime();
            result = task.get();
            processor =
                    Math.min(processor, (THREADS.getCurrentThreadCpuTime() - startProcessor) / 1e6);
            wall = Math.min(wall, (System.nanoTime() - start) / 1e6);
        }
        String line =
                String.format(
                        Locale.ROOT,
                        "{\"work\": \"%s\", \"wall\": %.3f, \"processor\": %.3f}%n",
                        work,
                        wall,
                        processor);
        try {
            Files.writeString(
                    folder.resolve(name + "-times.jsonl"),
                    line,
                    StandardCharsets.US_ASCII,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return result;
    }
}
