package org.skewback.kernel.evaluation;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.worker.Link;

/**
 * Runs cells. One thread runs them; another may interrupt. When the worker ends, the next cell finds
 * a fresh one.
 */
public final class Evaluator implements Closeable {

    /** Name of the error of a cell that has taken the worker with it, and all variables. */
    public static final String WORKER_STOPPED = "WorkerStopped";

    /** How long a cell may take to obey an interrupt before the worker is ended. */
    private static final long PATIENCE_MILLIS = 3000;

    private static final String CONSTRUCTOR_CODE =
            "compiler.err.invalid.canonical.constructor.in.record";

    private static final long REMIND_MILLIS = 250;

    /** What a program that runs notebooks sends after the last cell. */
    private static final String SETTLE = "%settle";

    /** How long what cells have left running may take to end. */
    private static final int SETTLE_MILLIS = 5000;

    private static final String WORKER_JAR = "worker.jar";

    /** The cell that runs. */
    private static final class Running {
        private final int run;
        private final CountDownLatch ended = new CountDownLatch(1);
        private volatile boolean interrupted;
        private volatile @Nullable JavaSession session;

        Running(int run) {
            this.run = run;
        }
    }

    private final CellEvents events;
    private final Path folder;
    private final Path workerJar;
    private final Libraries libraries;
    private final HeapTidying tidying = new HeapTidying();
    private final Set<Integer> reserved;
    private final int renewAfter;
    private CompletableFuture<JavaSession> session;
    private ClassPath classPath;
    private Map<String, String> environment = Map.of();
    private boolean cellsAreNamed;
    private volatile boolean closed;
    private volatile @Nullable Running running;

    /**
     * Starts the compiler and the first worker in the background.
     *
     * @param events told what cells do while they run
     * @param libraries where {@code %maven} finds libraries
     * @param reserved ports that are meant for somebody else, though nobody may listen on them yet
     * @throws IOException if the worker's jar cannot be written
     */
    public Evaluator(CellEvents events, Libraries libraries, Set<Integer> reserved)
            throws IOException {
        this(events, libraries, reserved, JavaSession.RENEW_AFTER);
    }

    /** As above, with a compiler that is replaced after so many pieces of code. */
    Evaluator(CellEvents events, Libraries libraries, Set<Integer> reserved, int renewAfter)
            throws IOException {
        this.events = events;
        this.reserved = Set.copyOf(reserved);
        this.renewAfter = renewAfter;
        this.libraries = libraries;
        this.classPath = new ClassPath(libraries);
        this.folder = Files.createTempDirectory("skewback-kernel-");
        Path installed = InstalledWorker.ofThisKernel().jar();
        this.workerJar = installed == null ? folder.resolve(WORKER_JAR) : installed;
        if (installed == null) {
            WorkerJar.write(workerJar);
        }
        // JShell compiles against this property; cells must see the worker's functions and nothing
        // of the kernel's own libraries. The VM itself read it long ago.
        System.setProperty("java.class.path", workerJar.toString());
        this.session = start();
        tidying.start();
    }

    private CompletableFuture<JavaSession> start() {
        List<Path> paths = classPath.paths();
        Map<String, String> variables = environment;
        return CompletableFuture.supplyAsync(
                () -> {
                    try {
                        return new JavaSession(
                                workerJar, events, paths, variables, reserved, renewAfter);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                task -> {
                    Thread thread = new Thread(task, "skewback-start");
                    thread.setDaemon(true);
                    thread.start();
                });
    }

    /**
     * Runs a cell.
     *
     * @param cell the cell
     * @return how it ended
     */
    public CellResult run(Cell cell) {
        Running now = new Running(cell.run());
        running = now;
        try {
            JavaSession java = session.join();
            now.session = java;
            return run(cell, java, now);
        } catch (CompletionException e) {
            return lost("the worker could not be started (" + e.getCause() + ")");
        } finally {
            running = null;
            now.ended.countDown();
            tidying.cellEnded();
        }
    }

    private CellResult run(Cell cell, JavaSession java, Running now) {
        try {
            if (java.renew()) {
                tidying.compilerChanges();
            }
            tidying.twoCompilers(java.isRenewing());
            java.control().begin(cell.run());
            if (cell.code().strip().equals(SETTLE)) {
                return settle(cell, java);
            }
            cellStarts(cell, java);
            CellResult result = runAll(cell, java, now);
            String gone = java.control().gone();
            return gone == null ? result : lost(gone);
        } catch (WorkerGoneException e) {
            return lost(String.valueOf(e.getMessage()));
        } catch (IllegalStateException e) {
            // JShell refuses to go on when it has learnt that the worker is gone.
            String gone = java.worker().end();
            if (gone == null) {
                throw e;
            }
            return lost(gone);
        }
    }

    /**
     * Waits, within bounds, for what cells have left running. No cell starts with this: threads that
     * belong to whichever cell ran last go on belonging to it.
     */
    private static CellResult settle(Cell cell, JavaSession java) throws WorkerGoneException {
        Link.Reader answer =
                java.worker()
                        .ask(
                                Link.Kind.SETTLE,
                                packet -> packet.number(cell.run()).number(SETTLE_MILLIS));
        return answer.outcome() == Link.Outcome.DONE
                ? new CellResult.Done(Map.of())
                : interrupted();
    }

    // A session that is still starting has a worker that ends by itself when its link breaks.
    private void closeSession() {
        if (session.isDone() && !session.isCompletedExceptionally()) {
            session.join().close();
        }
    }

    /**
     * Forgets all that cells have declared, run and put on their class path, ends the worker and starts
     * another. To be called between cells, by the thread that runs them.
     *
     * @param variables environment variables for the cells, besides those of this process
     */
    public void beginAfresh(Map<String, String> variables) {
        // One that is still starting would go on to start, and stay.
        session.handle((started, problem) -> started).join();
        closeSession();
        environment = Map.copyOf(variables);
        classPath = new ClassPath(libraries);
        cellsAreNamed = false;
        if (!closed) {
            session = start();
        }
    }

    private CellResult lost(String reason) {
        closeSession();
        if (!closed) {
            session = start();
        }
        String message =
                reason
                        + "; all variables are lost. A fresh worker is starting: run the cells"
                        + " above again";
        return new CellResult.Failed(WORKER_STOPPED, message, List.of(message));
    }

    private void cellStarts(Cell cell, JavaSession java) throws WorkerGoneException {
        String id = cell.id();
        if (id != null && id.isEmpty()) {
            // What once knew its cell must not take the next, nameless one for the same.
            id = cellsAreNamed ? "run " + cell.run() : null;
        } else if (id != null) {
            cellsAreNamed = true;
        }
        String told = id == null ? "" : id;
        List<WorkerControl.Slot> slots = id == null ? List.of() : java.slots();
        java.worker()
                .ask(
                        Link.Kind.CELL_STARTS,
                        packet -> {
                            packet.number(cell.run()).text(told).number(slots.size());
                            for (WorkerControl.Slot slot : slots) {
                                packet.text(slot.className()).text(slot.fieldName());
                            }
                        });
    }

    private CellResult runAll(Cell cell, JavaSession java, Running now) throws WorkerGoneException {
        Magic.Parted parted = Magic.part(cell.code());
        for (Magic magic : parted.magics()) {
            CellResult.Failed failed = obey(magic, cell, java);
            if (failed != null) {
                return failed;
            }
        }
        List<Piece> pieces = new ArrayList<>(Piece.of(parted.java(), java.analysis()));
        // What the parser cannot read is told before anything of the cell has run.
        for (Piece piece : pieces) {
            if (piece.broken() && isErroneous(java, piece)) {
                return rejected(cell, parted.java(), java, piece);
            }
        }
        Snippet value = null;
        List<Snippet> declared = new ArrayList<>();
        while (!pieces.isEmpty()) {
            Piece piece = pieces.remove(0);
            int line = CellErrors.line(parted.java(), piece.offset());
            forget(java, value);
            value = null;
            List<SnippetEvent> outcome = evaluate(java, cell, piece, line);
            if (isRejected(outcome) && hoist(java, cell, parted.java(), pieces)) {
                outcome = evaluate(java, cell, piece, line);
            }
            if (java.control().gone() != null) {
                break;
            }
            if (java.control().stopped() || now.interrupted) {
                for (SnippetEvent event : outcome) {
                    forget(java, event.snippet());
                }
                return interrupted();
            }
            for (SnippetEvent event : outcome) {
                if (event.causeSnippet() != null) {
                    tellConsequence(cell, event, java);
                    continue;
                }
                if (event.status() == Snippet.Status.REJECTED) {
                    return CellErrors.compile(
                            cell,
                            parted.java(),
                            piece.offset(),
                            java.shell().diagnostics(event.snippet()).toList());
                }
                if (event.exception() != null) {
                    forget(java, event.snippet());
                    return java.errors().thrown(event.exception(), cell, line, java.shell());
                }
                tellRetyped(cell, event, outcome, java);
                declared.add(event.snippet());
                value = event.snippet();
            }
        }
        tellUnresolved(cell, java, declared);
        return show(cell, java, value);
    }

    private static CellResult interrupted() {
        String message = "the cell was interrupted; all variables are kept";
        return new CellResult.Failed("CellInterrupted", message, List.of(message));
    }

    private static boolean isErroneous(JavaSession java, Piece piece) {
        return java.analysis().sourceToSnippets(piece.source()).stream()
                .anyMatch(snippet -> snippet.kind() == Snippet.Kind.ERRONEOUS);
    }

    private static CellResult rejected(Cell cell, String text, JavaSession java, Piece piece) {
        int line = CellErrors.line(text, piece.offset());
        for (SnippetEvent event : evaluate(java, cell, piece, line)) {
            if (event.status() == Snippet.Status.REJECTED) {
                return CellErrors.compile(
                        cell,
                        text,
                        piece.offset(),
                        java.shell().diagnostics(event.snippet()).toList());
            }
        }
        return CellErrors.compile(cell, text, piece.offset(), List.of());
    }

    private static List<SnippetEvent> evaluate(JavaSession java, Cell cell, Piece piece, int line) {
        String source = piece.source();
        List<SnippetEvent> outcome = java.evaluate(source, cell.number(), line);
        int constructor = narrowConstructor(java, outcome);
        while (constructor >= 0 && constructor < source.length()) {
            source = source.substring(0, constructor) + "public " + source.substring(constructor);
            outcome = java.evaluate(source, cell.number(), line);
            int next = narrowConstructor(java, outcome);
            constructor = next > constructor ? next : -1;
        }
        return outcome;
    }

    /**
     * Where a record's constructor was rejected because JShell made the record itself public, or
     * below 0. The author wrote neither word, so the constructor may follow.
     */
    private static int narrowConstructor(JavaSession java, List<SnippetEvent> outcome) {
        for (SnippetEvent event : outcome) {
            if (event.causeSnippet() == null && event.status() == Snippet.Status.REJECTED) {
                for (Diag diagnostic : java.shell().diagnostics(event.snippet()).toList()) {
                    if (diagnostic.getCode().startsWith(CONSTRUCTOR_CODE)
                            && diagnostic.getMessage(Locale.ROOT).contains("was public")) {
                        return (int) diagnostic.getPosition();
                    }
                }
            }
        }
        return -1;
    }

    private static boolean isRejected(List<SnippetEvent> events) {
        return events.stream().anyMatch(e -> e.status() == Snippet.Status.REJECTED);
    }

    /**
     * Declares the classes and methods that stand further down in the cell, so that what was
     * rejected for want of them can be tried again.
     */
    private static boolean hoist(JavaSession java, Cell cell, String text, List<Piece> pieces) {
        List<Piece> later =
                pieces.stream()
                        .filter(
                                piece ->
                                        java.analysis().sourceToSnippets(piece.source()).stream()
                                                .allMatch(
                                                        s ->
                                                                s.kind() == Snippet.Kind.METHOD
                                                                        || s.kind()
                                                                                == Snippet.Kind
                                                                                        .TYPE_DECL))
                        .toList();
        for (Piece piece : later) {
            if (!isRejected(evaluate(java, cell, piece, CellErrors.line(text, piece.offset())))) {
                pieces.remove(piece);
            }
        }
        return !later.isEmpty();
    }

    /** Says what a declaration that has changed has done to those that use it. */
    private void tellConsequence(Cell cell, SnippetEvent event, JavaSession java) {
        if (event.previousStatus() == Snippet.Status.VALID
                && event.status() != Snippet.Status.VALID
                && event.status() != Snippet.Status.OVERWRITTEN
                && event.status() != Snippet.Status.DROPPED
                && event.snippet() instanceof DeclarationSnippet declaration
                && !(declaration instanceof VarSnippet)) {
            events.printed(
                    cell.run(),
                    true,
                    declaration.name()
                            + " no longer fits what it uses, which has been declared anew: run its"
                            + " cell again, or change it"
                            + CellErrors.reason(java.shell().diagnostics(event.snippet()))
                            + "\n");
            return;
        }
        if (event.snippet() instanceof VarSnippet variable
                && event.isSignatureChange()
                && event.previousStatus() == Snippet.Status.VALID) {
            events.printed(
                    cell.run(),
                    true,
                    variable.name()
                            + " has lost its value, because its type was declared anew: run the"
                            + " cell that sets it again\n");
        }
    }

    /**
     * Names the variables whose functions go on using a variable that now has another type: they
     * were compiled against the former one, which lives on for them.
     */
    private void tellRetyped(
            Cell cell, SnippetEvent event, List<SnippetEvent> outcome, JavaSession java) {
        if (!(event.snippet() instanceof VarSnippet changed)
                || !event.isSignatureChange()
                || event.previousStatus() != Snippet.Status.VALID) {
            return;
        }
        List<String> users =
                java.shell()
                        .variables()
                        .filter(v -> java.shell().status(v) == Snippet.Status.VALID)
                        .filter(v -> outcome.stream().noneMatch(e -> e.snippet().equals(v)))
                        .filter(v -> holdsFunctionOf(v.source(), changed.name()))
                        .map(VarSnippet::name)
                        .toList();
        if (!users.isEmpty()) {
            events.printed(
                    cell.run(),
                    true,
                    changed.name()
                            + " has another type now; "
                            + String.join(", ", users)
                            + " still uses the former "
                            + changed.name()
                            + " until its cell is run again\n");
        }
    }

    private static boolean holdsFunctionOf(String source, String name) {
        return (source.contains("->") || source.contains("::") || source.contains("new "))
                && Pattern.compile("\\b" + Pattern.quote(name) + "\\b").matcher(source).find();
    }

    private void tellUnresolved(Cell cell, JavaSession java, List<Snippet> declared) {
        for (Snippet snippet : declared) {
            Snippet.Status status = java.shell().status(snippet);
            if (snippet instanceof DeclarationSnippet declaration
                    && (status == Snippet.Status.RECOVERABLE_DEFINED
                            || status == Snippet.Status.RECOVERABLE_NOT_DEFINED)) {
                String missing =
                        String.join(
                                ", ", java.shell().unresolvedDependencies(declaration).toList());
                events.printed(
                        cell.run(),
                        true,
                        declaration.name()
                                + " can be used once this is declared: "
                                + missing
                                + "\n");
            }
        }
    }

    private static CellResult show(Cell cell, JavaSession java, @Nullable Snippet snippet)
            throws WorkerGoneException {
        if (snippet == null || !isExpression(snippet)) {
            return new CellResult.Done(Map.of());
        }
        Link.Reader answer =
                java.worker().ask(Link.Kind.RENDER, packet -> packet.number(cell.run()));
        Link.Outcome outcome = answer.outcome();
        CellResult result =
                outcome == Link.Outcome.DONE
                        ? new CellResult.Done(WorkerProcess.content(answer))
                        : interrupted();
        forget(java, snippet);
        return result;
    }

    private static boolean isExpression(Snippet snippet) {
        return snippet.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND
                || (snippet instanceof ExpressionSnippet
                        && snippet.subKind() != SubKind.ASSIGNMENT_SUBKIND);
    }

    /**
     * Drops the variable that JShell makes of every bare expression: it would slow every later cell
     * and keep the value alive.
     */
    private static void forget(JavaSession java, @Nullable Snippet snippet)
            throws WorkerGoneException {
        if (snippet instanceof VarSnippet variable
                && variable.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
            WorkerControl.Slot slot = java.slot(variable);
            java.worker()
                    .ask(
                            Link.Kind.FORGET,
                            packet -> packet.text(slot.className()).text(slot.fieldName()));
            java.shell().drop(variable);
        }
    }

    private CellResult.@Nullable Failed obey(Magic magic, Cell cell, JavaSession java)
            throws WorkerGoneException {
        try {
            if (magic.name().equals("living")) {
                handOver(cell, java);
                return null;
            }
            ClassPath.Outcome outcome = classPath.obey(magic);
            for (Path path : outcome.added()) {
                java.addToClassPath(path);
            }
            outcome.notes().forEach(note -> events.printed(cell.run(), true, note + "\n"));
            outcome.answers().forEach(line -> events.printed(cell.run(), false, line + "\n"));
            return null;
        } catch (Libraries.MissingException e) {
            String message = String.valueOf(e.getMessage());
            List<String> traceback = new ArrayList<>();
            traceback.add("cell " + cell.number() + ", line " + magic.line() + ":");
            message.lines().forEach(traceback::add);
            return new CellResult.Failed("MagicError", message, traceback);
        }
    }

    /** Lets whoever drives the kernel see what live values hold, whether a cell showed it or not. */
    private static void handOver(Cell cell, JavaSession java) throws WorkerGoneException {
        List<WorkerControl.Slot> slots = java.slots();
        java.worker()
                .ask(
                        Link.Kind.LIVING,
                        packet -> {
                            packet.number(cell.run()).number(slots.size());
                            for (WorkerControl.Slot slot : slots) {
                                packet.text(slot.className()).text(slot.fieldName());
                            }
                        });
    }

    /**
     * Gives the libraries that cells have named so far, with all that those need.
     *
     * @return versions by {@code group:artifact}, sorted
     */
    public Map<String, String> libraries() {
        return classPath.versions();
    }

    /**
     * Hands a cell what a front end says over a comm.
     *
     * @param run number of this run, above 0, never used twice
     * @param message what it says
     * @return whether a cell takes it; a cell that fails with it has told so
     */
    public boolean comm(int run, CommMessage message) {
        Running now = new Running(run);
        running = now;
        try {
            JavaSession java = session.join();
            now.session = java;
            Link.Reader answer =
                    java.worker()
                            .ask(
                                    Link.Kind.COMM,
                                    packet ->
                                            packet.number(run)
                                                    .text(message.type())
                                                    .text(message.id())
                                                    .text(message.target())
                                                    .text(message.json()));
            Link.Outcome outcome = answer.outcome();
            if (outcome == Link.Outcome.FAILED) {
                events.printed(
                        run,
                        true,
                        java.errors().failed(message.type(), WorkerControl.failure(answer)));
            }
            return outcome != Link.Outcome.REFUSED;
        } catch (WorkerGoneException | CompletionException e) {
            return false;
        } finally {
            running = null;
            now.ended.countDown();
        }
    }

    /**
     * Interrupts the cell that runs, if one does, and returns when it has really ended: by itself,
     * or after three seconds with its worker.
     *
     * @throws InterruptedException if the calling thread is interrupted
     */
    public void interrupt() throws InterruptedException {
        Running now = running;
        if (now == null) {
            return;
        }
        now.interrupted = true;
        long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MILLIS);
        do {
            JavaSession java = now.session;
            if (java != null) {
                java.worker().tell(Link.packet(Link.Kind.STOP).number(now.run));
            }
            if (now.ended.await(REMIND_MILLIS, TimeUnit.MILLISECONDS)) {
                return;
            }
        } while (System.nanoTime() < deadline);
        JavaSession java = now.session;
        if (java != null) {
            java.worker()
                    .kill(
                            "the cell did not stop when it was interrupted, so the worker, the"
                                    + " process that runs the cells, was ended");
        }
        now.ended.await();
    }

    /**
     * Gives the cell that waits for input a line.
     *
     * @param line the line, or null to refuse it
     */
    public void giveInput(@Nullable String line) {
        Running now = running;
        JavaSession java = now == null ? null : now.session;
        if (java != null) {
            java.worker()
                    .tell(
                            Link.packet(Link.Kind.INPUT)
                                    .flag(line != null)
                                    .text(line == null ? "" : line));
        }
    }

    /** The present compiler and its worker. */
    JavaSession session() {
        return session.join();
    }

    /**
     * Gives what answers questions about code without running it.
     *
     * @return the assistant of the present session
     */
    public Assistant assistant() {
        return new Assistant(session.join(), classPath.paths());
    }

    @Override
    public synchronized void close() throws IOException {
        closed = true;
        closeSession();
        Files.deleteIfExists(folder.resolve(WORKER_JAR));
        Files.deleteIfExists(folder);
    }
}
