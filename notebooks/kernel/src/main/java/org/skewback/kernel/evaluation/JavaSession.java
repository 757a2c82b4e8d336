package org.skewback.kernel.evaluation;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import org.skewback.kernel.worker.CellFunctions;

/** A compiler and its worker, from a clean start until the worker ends. */
final class JavaSession implements Closeable {

    private static final List<String> IMPORTS =
            List.of(
                    "import java.io.*;",
                    "import java.math.*;",
                    "import java.nio.file.*;",
                    "import java.util.*;",
                    "import java.util.function.*;",
                    "import java.util.stream.*;",
                    "import static " + CellFunctions.class.getName() + ".*;");

    private static final Set<String> HOLDING_NO_OBJECT =
            Set.of("boolean", "byte", "short", "char", "int", "long", "float", "double", "String");

    private final WorkerProcess worker;
    private final WorkerControl control;
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final CellErrors errors = new CellErrors();
    private int cell;
    private int line;

    /**
     * Starts compiler and worker and warms both.
     *
     * @param workerJar jar of the worker's classes
     * @param events told what the cells do
     * @param classPath class path to begin with
     * @throws IOException if the worker cannot be started
     */
    JavaSession(Path workerJar, CellEvents events, Collection<Path> classPath) throws IOException {
        worker =
                new WorkerProcess(
                        workerJar,
                        events,
                        (run, thread, exception) ->
                                events.printed(
                                        run, true, errors.failed("thread " + thread, exception)));
        control = new WorkerControl(worker);
        shell =
                JShell.builder()
                        .executionEngine(new WorkerControl.Provider(control), null)
                        .idGenerator(this::identify)
                        .build();
        analysis = shell.sourceCodeAnalysis();
        classPath.forEach(path -> shell.addToClasspath(path.toString()));
        IMPORTS.forEach(shell::eval);
        // The first expression costs some hundred milliseconds: loading the compiler's classes.
        shell.eval("1 + 1").forEach(event -> shell.drop(event.snippet()));
    }

    private String identify(Snippet snippet, int index) {
        String id = String.valueOf(index);
        errors.place(id, cell, line);
        return id;
    }

    /** Evaluates one piece that stands at a line, from 1, of a cell. */
    List<SnippetEvent> evaluate(String source, int cellNumber, int cellLine) {
        cell = cellNumber;
        line = cellLine;
        List<SnippetEvent> events = shell.eval(source);
        // A declaration that replaces another keeps its identifier, and JShell asks for none.
        for (SnippetEvent event : events) {
            if (event.causeSnippet() == null) {
                errors.place(event.snippet().id(), cellNumber, cellLine);
            }
        }
        return events;
    }

    WorkerProcess worker() {
        return worker;
    }

    WorkerControl control() {
        return control;
    }

    JShell shell() {
        return shell;
    }

    SourceCodeAnalysis analysis() {
        return analysis;
    }

    CellErrors errors() {
        return errors;
    }

    /** Where the values of all variables live in the worker; those that hold no object left out. */
    List<WorkerControl.Slot> slots() {
        List<WorkerControl.Slot> slots = new ArrayList<>();
        shell.variables()
                .filter(v -> shell.status(v) == Snippet.Status.VALID)
                .filter(v -> !HOLDING_NO_OBJECT.contains(v.typeName()))
                .forEach(v -> slots.add(slot(v)));
        return slots;
    }

    /** Where the value of one variable lives. */
    WorkerControl.Slot slot(VarSnippet variable) {
        shell.varValue(variable);
        WorkerControl.Slot slot = control.asked();
        if (slot == null) {
            throw new IllegalStateException("no slot for variable " + variable.name());
        }
        return slot;
    }

    @Override
    public void close() {
        worker.close();
        shell.close();
    }
}
