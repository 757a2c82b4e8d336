package org.skewback.kernel.evaluation;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;

/** A compiler and its worker, from a clean start until the worker ends. */
final class JavaSession implements Closeable {

    /** After how many pieces of code JShell is replaced. */
    static final int RENEW_AFTER = 300;

    private static final int RENEW_TIMES_DECLARED = 2;

    /** So many declarations may be followed between two cells; more are in the background. */
    private static final int MOST_BETWEEN_CELLS = 3;

    private static final Set<String> HOLDING_NO_OBJECT =
            Set.of("boolean", "byte", "short", "char", "int", "long", "float", "double", "String");

    private final WorkerProcess worker;
    private final CellClasses classes = new CellClasses();
    private final CellErrors errors = new CellErrors();
    private final List<Path> paths = new ArrayList<>();
    private final int renewAfter;
    private volatile Generation now;

    // Used by the thread that runs the cells only.
    private @Nullable CompletableFuture<Optional<Renewal>> renewal;
    private int nextRenewal;
    private boolean announced;

    /**
     * Starts compiler and worker and warms both.
     *
     * @param workerJar jar of the worker's classes
     * @param events told what the cells do
     * @param classPath class path to begin with
     * @param environment environment variables for the worker, besides those of this process
     * @param reserved ports that the worker's connection must not take
     * @param renewAfter after how many pieces of code JShell is replaced, if no more is declared
     * @throws IOException if the worker cannot be started
     */
    JavaSession(
            Path workerJar,
            CellEvents events,
            Collection<Path> classPath,
            Map<String, String> environment,
            Set<Integer> reserved,
            int renewAfter)
            throws IOException {
        worker =
                new WorkerProcess(
                        workerJar,
                        environment,
                        events,
                        (run, thread, exception) ->
                                events.printed(
                                        run, true, errors.failed("thread " + thread, exception)),
                        reserved::contains);
        this.renewAfter = renewAfter;
        nextRenewal = renewAfter;
        paths.addAll(classPath);
        now = new Generation(0, WorkerControl.first(worker, classes), errors, paths);
        // The first expression costs some hundred milliseconds: loading the compiler's classes.
        JShell shell = now.shell();
        shell.eval("1 + 1").forEach(event -> shell.drop(event.snippet()));
    }

    /** Evaluates one piece that stands at a line, from 1, of a cell. */
    List<SnippetEvent> evaluate(String source, int cellNumber, int cellLine) {
        return now.evaluate(source, new CellErrors.Place(cellNumber, cellLine));
    }

    /** Adds to the class path of compiler and worker. */
    void addToClassPath(Path path) {
        paths.add(path);
        now.addToClassPath(List.of(path));
    }

    /**
     * Replaces JShell by a lean one when much has been run, in steps: to be called between cells, by
     * the thread that runs them. Nothing of what a cell could see changes.
     *
     * @return whether what is garbage had better be collected: the next call begins to make a second one, or
     *     one of two is left
     */
    boolean renew() {
        CompletableFuture<Optional<Renewal>> begun = renewal;
        if (begun != null) {
            if (begun.isDone()) {
                goOn(begun.exceptionally(problem -> Optional.empty()).join().orElse(null));
            }
            return renewal == null;
        }
        if (now.evaluations() < nextRenewal) {
            return false;
        }
        if (announced) {
            announced = false;
            begin(now.declared());
            return false;
        }
        // Where most of what was run still holds, a new one would be hardly leaner.
        nextRenewal = RENEW_TIMES_DECLARED * now.declared().size();
        announced = now.evaluations() >= nextRenewal;
        return announced;
    }

    /** Whether a second JShell is being made. */
    boolean isRenewing() {
        return renewal != null;
    }

    private void begin(List<Generation.Declared> declared) {
        postpone(declared.size());
        if (!isWhole(declared)) {
            return;
        }
        int number = now.number() + 1;
        List<Path> classPath = List.copyOf(paths);
        renewal =
                inBackground(
                        () -> {
                            WorkerControl control = WorkerControl.rehearsing(worker, number);
                            Generation next = new Generation(number, control, errors, classPath);
                            return followed(new Renewal(next), declared, classPath);
                        });
    }

    private void goOn(@Nullable Renewal begun) {
        renewal = null;
        if (begun == null) {
            return;
        }
        List<Generation.Declared> declared = now.declared();
        List<Path> classPath = List.copyOf(paths);
        if (isWhole(declared) && begun.missing(declared) > MOST_BETWEEN_CELLS) {
            renewal = inBackground(() -> followed(begun, declared, classPath));
        } else if (isWhole(declared) && isTakenOver(begun, declared, classPath)) {
            Generation former = now;
            now = begun.next();
            postpone(declared.size());
            former.close();
        } else {
            begun.next().close();
        }
    }

    private boolean isTakenOver(
            Renewal begun, List<Generation.Declared> declared, List<Path> classPath) {
        try {
            return begun.follow(declared, classPath) && begun.takeOver(now, classes);
        } catch (RuntimeException e) {
            // The cell that is to run has nothing to do with it; the former JShell serves on.
            System.err.println("skewback: the compiler could not be replaced: " + e);
            return false;
        }
    }

    private static Optional<Renewal> followed(
            Renewal begun, List<Generation.Declared> declared, List<Path> classPath) {
        return begun.follow(declared, classPath) ? Optional.of(begun) : Optional.empty();
    }

    private void postpone(int declared) {
        nextRenewal = now.evaluations() + Math.max(renewAfter, RENEW_TIMES_DECLARED * declared);
    }

    /** Whether all that is declared is complete; what is not refers to its JShell by numbers. */
    private boolean isWhole(List<Generation.Declared> declared) {
        JShell shell = shell();
        return declared.stream()
                .allMatch(one -> shell.status(one.snippet()) == Snippet.Status.VALID);
    }

    private static CompletableFuture<Optional<Renewal>> inBackground(
            Supplier<Optional<Renewal>> work) {
        return CompletableFuture.supplyAsync(
                work,
                task -> {
                    Thread thread = new Thread(task, "skewback-renewal");
                    thread.setDaemon(true);
                    thread.start();
                });
    }

    /** Has JShell replaced as soon as may be, however little has been run. */
    void renewSoon() {
        nextRenewal = 0;
        announced = true;
    }

    /** Waits for what is done in the background. */
    void awaitRenewal() {
        CompletableFuture<Optional<Renewal>> begun = renewal;
        if (begun != null) {
            begun.exceptionally(problem -> Optional.empty()).join();
        }
    }

    /** How often JShell has been replaced. */
    int renewals() {
        return now.number();
    }

    /** How many imports and declarations hold. */
    int declared() {
        return now.declared().size();
    }

    WorkerProcess worker() {
        return worker;
    }

    WorkerControl control() {
        return now.control();
    }

    JShell shell() {
        return now.shell();
    }

    SourceCodeAnalysis analysis() {
        return now.analysis();
    }

    CellErrors errors() {
        return errors;
    }

    /** Where the values of all variables live in the worker; those that hold no object left out. */
    List<WorkerControl.Slot> slots() {
        JShell shell = shell();
        List<WorkerControl.Slot> slots = new ArrayList<>();
        shell.variables()
                .filter(v -> shell.status(v) == Snippet.Status.VALID)
                .filter(v -> !HOLDING_NO_OBJECT.contains(v.typeName()))
                .forEach(v -> slots.add(slot(v)));
        return slots;
    }

    /** Where the value of one variable lives. */
    WorkerControl.Slot slot(VarSnippet variable) {
        shell().varValue(variable);
        WorkerControl.Slot slot = control().asked();
        if (slot == null) {
            throw new IllegalStateException("no slot for variable " + variable.name());
        }
        return slot;
    }

    @Override
    public void close() {
        worker.close();
        shell().close();
    }
}
