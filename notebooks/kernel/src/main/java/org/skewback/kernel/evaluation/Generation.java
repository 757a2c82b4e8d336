package org.skewback.kernel.evaluation;

import java.io.Closeable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.skewback.kernel.worker.CellFunctions;

/** One JShell and its way to the worker. JShell keeps all that it has ever run, so it is replaced. */
final class Generation implements Closeable {

    /**
     * A declaration that holds.
     *
     * @param snippet what JShell made of it
     * @param place where it stands
     */
    record Declared(Snippet snippet, CellErrors.Place place) {}

    private static final List<String> IMPORTS =
            List.of(
                    "import java.io.*;",
                    "import java.math.*;",
                    "import java.nio.file.*;",
                    "import java.util.*;",
                    "import java.util.function.*;",
                    "import java.util.stream.*;",
                    "import static " + CellFunctions.class.getName() + ".*;");

    private final int number;
    private final WorkerControl control;
    private final CellErrors errors;
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final Set<Path> paths = new HashSet<>();
    private CellErrors.Place place = CellErrors.Place.NONE;
    private int evaluations;

    /**
     * Starts a JShell with the imports that every notebook has.
     *
     * @param number how many there were before it
     * @param control its way to the worker
     * @param errors told where snippets stand
     * @param classPath class path to begin with
     */
    Generation(int number, WorkerControl control, CellErrors errors, Collection<Path> classPath) {
        this.number = number;
        this.control = control;
        this.errors = errors;
        shell =
                JShell.builder()
                        .executionEngine(new WorkerControl.Provider(control), null)
                        .idGenerator(this::identify)
                        .build();
        analysis = shell.sourceCodeAnalysis();
        addToClassPath(classPath);
        IMPORTS.forEach(shell::eval);
    }

    private String identify(Snippet snippet, int index) {
        String id = index + ClassNames.mark(number);
        errors.place(id, place);
        return id;
    }

    int number() {
        return number;
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

    /** How much has been evaluated. */
    int evaluations() {
        return evaluations;
    }

    /** Adds what is not on the class path yet. */
    void addToClassPath(Collection<Path> more) {
        for (Path path : more) {
            if (paths.add(path)) {
                shell.addToClasspath(path.toString());
            }
        }
    }

    /** Evaluates one piece of a cell. */
    List<SnippetEvent> evaluate(String source, CellErrors.Place where) {
        place = where;
        evaluations++;
        List<SnippetEvent> events = shell.eval(source);
        // A declaration that replaces another keeps its identifier, and JShell asks for none.
        for (SnippetEvent event : events) {
            if (event.causeSnippet() == null) {
                errors.place(event.snippet().id(), where);
                if (event.status() == Snippet.Status.VALID && hasClass(event.snippet())) {
                    errors.place(CellErrors.identifier(workerClass(event.snippet())), where);
                }
            }
        }
        return events;
    }

    /** Whether JShell wraps a class around a snippet. */
    static boolean hasClass(Snippet snippet) {
        return snippet.kind() != Snippet.Kind.IMPORT && snippet.kind() != Snippet.Kind.ERRONEOUS;
    }

    /** What JShell calls the class around a snippet. */
    String wrappingClass(Snippet snippet) {
        return analysis.wrapper(snippet).fullClassName();
    }

    /** What the worker calls the class around a snippet. */
    String workerClass(Snippet snippet) {
        return control.names().toWorker(wrappingClass(snippet));
    }

    /** Imports and declarations that hold, complete or not, in the order in which they were made. */
    List<Declared> declared() {
        List<Declared> declared = new ArrayList<>();
        shell.snippets()
                .filter(snippet -> snippet.kind().isPersistent())
                .filter(snippet -> shell.status(snippet).isActive())
                .forEach(snippet -> declared.add(new Declared(snippet, place(snippet))));
        return declared;
    }

    /** Where a snippet stands. */
    CellErrors.Place place(Snippet snippet) {
        return errors.place(snippet.id());
    }

    /** Ends the JShell; the worker runs on. */
    @Override
    public void close() {
        control.detach();
        shell.close();
    }
}
