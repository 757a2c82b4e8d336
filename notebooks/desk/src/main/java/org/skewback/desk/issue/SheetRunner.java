package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.jupyter.CellRun;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.jupyter.KernelSession;
import org.skewback.desk.jupyter.KernelTrouble;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.Output;

/** Runs all cells of a notebook in order in a fresh kernel. */
final class SheetRunner {

    /** Key of a cell's metadata where notebook programs keep the times of its last run. */
    private static final String TIMES = "execution";

    private final KernelLauncher kernels;
    private final Progress progress;

    SheetRunner(KernelLauncher kernels, Progress progress) {
        this.kernels = kernels;
        this.progress = progress;
    }

    /**
     * Runs a notebook.
     *
     * @param title title of the sheet, for messages
     * @param notebook the notebook; outputs it already has do not matter
     * @param folder folder the kernel works in
     * @param environment environment variables for the kernel
     * @return the notebook with its outputs, without any time of day, and what live values hold
     * @throws Problem when a cell fails, does not end, or the kernel fails
     */
    Ran run(String title, Notebook notebook, Path folder, Map<String, String> environment)
            throws Problem {
        List<Cell> cells = notebook.cells();
        int codeCells = (int) cells.stream().filter(SheetRunner::runs).count();
        long start = System.nanoTime();
        progress.sheetStarts(title, codeCells);
        try (KernelSession kernel = launch(title, folder, environment)) {
            List<Cell> ran = new ArrayList<>();
            Map<String, String> libraries = new LinkedHashMap<>();
            int number = 0;
            for (Cell cell : cells) {
                if (runs(cell)) {
                    number++;
                    ran.add(run(kernel, title, cell, number, codeCells, libraries));
                } else {
                    ran.add(withoutTimes(cell).ran(null, List.of()));
                }
            }
            settle(kernel, title);
            Notebook whole = new Notebook(gather(kernel, title, ran), notebook.metadata());
            List<Output> living = living(kernel, title);
            progress.sheetEnds(title, codeCells, since(start));
            return new Ran(whole, living, libraries);
        }
    }

    /**
     * What a run gave.
     *
     * @param notebook the notebook with its outputs
     * @param living what live values held at the end, whether a cell showed it or not
     * @param libraries versions of the libraries that the cells used, by name
     */
    record Ran(Notebook notebook, List<Output> living, Map<String, String> libraries) {}

    private static void settle(KernelSession kernel, String title) throws Problem {
        try {
            kernel.settle();
        } catch (KernelTrouble e) {
            throw afterwards(title, e);
        }
    }

    private static List<Output> living(KernelSession kernel, String title) throws Problem {
        try {
            return kernel.living();
        } catch (KernelTrouble e) {
            throw afterwards(title, e);
        }
    }

    private static Problem afterwards(String title, KernelTrouble e) {
        return new Problem(title + ": after its last cell the kernel failed: " + e.getMessage(), e);
    }

    private KernelSession launch(String title, Path folder, Map<String, String> environment)
            throws Problem {
        try {
            return kernels.launch(folder, environment);
        } catch (KernelTrouble e) {
            throw new Problem(title + " cannot run: " + e.getMessage(), e);
        }
    }

    private Cell run(
            KernelSession kernel,
            String title,
            Cell cell,
            int number,
            int of,
            Map<String, String> libraries)
            throws Problem {
        progress.cellStarts(title, number, of);
        long start = System.nanoTime();
        CellRun run;
        try {
            run = kernel.run(cell);
        } catch (KernelTrouble e) {
            throw stop(title, cell, number, of, String.valueOf(e.getMessage()), e);
        }
        libraries.putAll(run.libraries());
        Output.@Nullable Failure failure = run.failure();
        if (failure == null) {
            failure = failureAmong(kernel.outputs(cell.id()));
        }
        if (failure != null) {
            throw stop(title, cell, number, of, "it failed with\n" + words(failure), null);
        }
        progress.cellEnds(title, number, of, since(start));
        return withoutTimes(cell).ran(run.count(), List.of());
    }

    /** Takes the outputs only when all cells have run, since a later cell may change them. */
    private static List<Cell> gather(KernelSession kernel, String title, List<Cell> ran)
            throws Problem {
        List<Cell> whole = new ArrayList<>();
        int of = (int) ran.stream().filter(SheetRunner::runs).count();
        int number = 0;
        for (Cell cell : ran) {
            if (!runs(cell)) {
                whole.add(cell);
                continue;
            }
            number++;
            List<Output> outputs = kernel.outputs(cell.id());
            Output.@Nullable Failure failure = failureAmong(outputs);
            if (failure != null) {
                throw stop(
                        title, cell, number, of, "it failed later with\n" + words(failure), null);
            }
            whole.add(cell.ran(cell.executionCount(), outputs));
        }
        return whole;
    }

    private static boolean runs(Cell cell) {
        return cell.kind() == Cell.Kind.CODE && !cell.source().isBlank();
    }

    private static Output.@Nullable Failure failureAmong(List<Output> outputs) {
        for (Output output : outputs) {
            if (output instanceof Output.Failure failure) {
                return failure;
            }
        }
        return null;
    }

    private static Cell withoutTimes(Cell cell) {
        if (!cell.metadata().has(TIMES)) {
            return cell;
        }
        ObjectNode metadata = ((ObjectNode) cell.metadata()).deepCopy();
        metadata.remove(TIMES);
        return new Cell(
                cell.id(),
                cell.kind(),
                cell.source(),
                metadata,
                cell.executionCount(),
                cell.outputs());
    }

    private static Problem stop(
            String title, Cell cell, int number, int of, String why, @Nullable Throwable cause) {
        String message =
                title
                        + ", cell "
                        + number
                        + " of "
                        + of
                        + " ("
                        + cell.id()
                        + "): "
                        + why
                        + "\n\nThe cell:\n"
                        + indented(cell.source());
        return cause == null ? new Problem(message) : new Problem(message, cause);
    }

    private static String words(Output.Failure failure) {
        List<String> lines =
                failure.traceback().isEmpty()
                        ? List.of(failure.name() + ": " + failure.message())
                        : failure.traceback();
        return indented(TerminalText.plain(String.join("\n", lines)));
    }

    private static String indented(String text) {
        return String.join("\n", text.stripTrailing().lines().map(line -> "  " + line).toList());
    }

    private static Duration since(long start) {
        return Duration.ofNanos(System.nanoTime() - start);
    }
}
