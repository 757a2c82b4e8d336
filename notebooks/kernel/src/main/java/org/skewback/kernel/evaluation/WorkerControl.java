package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.worker.Link;

/** What JShell calls to run code: everything goes to the worker. */
final class WorkerControl implements ExecutionControl {

    /** Where the value of a variable lives in the worker. */
    record Slot(String className, String fieldName) {}

    /** Hands this one control to the JShell being built. */
    record Provider(WorkerControl control) implements ExecutionControlProvider {
        @Override
        public String name() {
            return "skewback-worker";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
            return control;
        }
    }

    private final WorkerProcess worker;
    private final ClassNames names;
    private final Map<String, byte[]> rehearsed = new HashMap<>();
    // Null while nothing goes to the worker.
    private @Nullable CellClasses classes;
    private boolean detached;
    private int run;
    private boolean stopped;
    private @Nullable String gone;
    private @Nullable Slot asked;

    private WorkerControl(WorkerProcess worker, ClassNames names, @Nullable CellClasses classes) {
        this.worker = worker;
        this.names = names;
        this.classes = classes;
    }

    /** The control of the first JShell of a worker. */
    static WorkerControl first(WorkerProcess worker, CellClasses classes) {
        return new WorkerControl(worker, new ClassNames(0), classes);
    }

    /** A control that takes all for done and tells the worker nothing until it is connected. */
    static WorkerControl rehearsing(WorkerProcess worker, int generation) {
        return new WorkerControl(worker, new ClassNames(generation), null);
    }

    /** The bytecode that was last to be loaded under a name of JShell's while it rehearsed, or null. */
    byte @Nullable [] rehearsed(String name) {
        return rehearsed.get(name);
    }

    /**
     * Ends the rehearsal.
     *
     * @param held the classes that the worker has
     * @param known what it calls each class of JShell's
     * @param linesAbove how many more lines stand above its code there
     */
    void connect(CellClasses held, Map<String, String> known, Map<String, Integer> linesAbove) {
        known.forEach((name, given) -> names.take(name, given, linesAbove.getOrDefault(name, 0)));
        rehearsed.clear();
        classes = held;
    }

    /** Leaves the worker to another control. */
    void detach() {
        detached = true;
    }

    /** How the worker calls the classes. */
    ClassNames names() {
        return names;
    }

    /** Says under which run the next invocations go. */
    void begin(int number) {
        run = number;
        stopped = false;
    }

    /** Whether the cell was stopped on order since {@link #begin}. */
    boolean stopped() {
        return stopped;
    }

    /** Why the worker is gone, or null. */
    @Nullable String gone() {
        return gone;
    }

    /** The slot of the variable whose value JShell asked for last. */
    @Nullable Slot asked() {
        return asked;
    }

    @Override
    public void load(ClassBytecodes[] classes)
            throws ClassInstallException, EngineTerminationException {
        install(Link.Kind.LOAD, classes);
    }

    @Override
    public void redefine(ClassBytecodes[] classes)
            throws ClassInstallException, EngineTerminationException {
        install(Link.Kind.REDEFINE, classes);
    }

    private void install(Link.Kind kind, ClassBytecodes[] given)
            throws ClassInstallException, EngineTerminationException {
        CellClasses held = classes;
        if (held == null) {
            for (ClassBytecodes one : given) {
                rehearsed.put(one.name(), one.bytecodes());
            }
            return;
        }
        names.add(Stream.of(given).map(ClassBytecodes::name).toList(), held.used());
        Map<String, byte[]> named = new LinkedHashMap<>();
        for (ClassBytecodes one : given) {
            named.put(names.toWorker(one.name()), names.toWorker(one.bytecodes()));
        }
        Link.Reader answer =
                ask(
                        kind,
                        packet -> {
                            packet.number(named.size());
                            named.forEach(
                                    (name, bytecode) ->
                                            packet.text(name).bytes(Weaver.weave(bytecode)));
                        });
        if (answer.outcome() != Link.Outcome.DONE) {
            throw new ClassInstallException(answer.text(), new boolean[given.length]);
        }
        named.forEach(
                (name, bytecode) -> {
                    held.put(name, bytecode);
                    names.current(name);
                });
    }

    @Override
    public String invoke(String className, String methodName)
            throws RunException, EngineTerminationException, InternalException {
        if (classes == null) {
            return "";
        }
        Link.Reader answer =
                ask(
                        Link.Kind.INVOKE,
                        packet ->
                                packet.number(run)
                                        .text(names.toWorker(className))
                                        .text(methodName));
        switch (answer.outcome()) {
            case DONE -> {
                // JShell's own text of a value is never shown; the worker renders the value itself.
                return "";
            }
            case FAILED -> throw failure(answer, names::toShell);
            case STOPPED -> {
                stopped = true;
                throw new StoppedException();
            }
            case UNRESOLVED -> throw unresolved(answer);
            case REFUSED -> throw new InternalException(answer.text());
        }
        throw new InternalException("no outcome");
    }

    /** The number in a declaration that is not complete means something to its own JShell only. */
    private RunException unresolved(Link.Reader answer) {
        int number = answer.number();
        StackTraceElement[] raw = frames(answer, UnaryOperator.identity());
        StackTraceElement[] told =
                Stream.of(raw).map(names::toShell).toArray(StackTraceElement[]::new);
        return raw.length > 0 && names.isKnown(raw[0].getClassName())
                ? new ResolutionException(number, told)
                : new UserException(
                        "a former state of a declaration, which was not complete, is still in use",
                        IllegalStateException.class.getName(),
                        told);
    }

    /** Reads the chain of exceptions of a packet, with classes as the worker calls them. */
    static UserException failure(Link.Reader answer) {
        return failure(answer, UnaryOperator.identity());
    }

    private static UserException failure(
            Link.Reader answer, UnaryOperator<StackTraceElement> told) {
        int count = answer.number();
        List<UserException> chain = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String type = answer.text();
            boolean hasMessage = answer.flag();
            String message = answer.text();
            chain.add(new UserException(hasMessage ? message : null, type, frames(answer, told)));
            if (i > 0) {
                chain.get(i - 1).initCause(chain.get(i));
            }
        }
        return chain.get(0);
    }

    private static StackTraceElement[] frames(
            Link.Reader answer, UnaryOperator<StackTraceElement> told) {
        StackTraceElement[] frames = new StackTraceElement[answer.number()];
        for (int i = 0; i < frames.length; i++) {
            frames[i] =
                    told.apply(
                            new StackTraceElement(
                                    answer.text(), answer.text(), answer.text(), answer.number()));
        }
        return frames;
    }

    /** Never asks the worker: the kernel only wants to know where the value lives. */
    @Override
    public String varValue(String className, String varName) {
        asked = new Slot(names.toWorker(className), varName);
        return "";
    }

    @Override
    public void addToClasspath(String path) throws EngineTerminationException, InternalException {
        if (classes == null) {
            return;
        }
        Link.Reader answer = ask(Link.Kind.CLASS_PATH, packet -> packet.text(path));
        if (answer.outcome() != Link.Outcome.DONE) {
            throw new InternalException(answer.text());
        }
    }

    @Override
    public void stop() {
        worker.tell(Link.packet(Link.Kind.STOP).number(run));
    }

    @Override
    public Object extensionCommand(String command, Object argument) throws NotImplementedException {
        throw new NotImplementedException(command);
    }

    @Override
    public void close() {
        if (!detached) {
            worker.close();
        }
    }

    private Link.Reader ask(Link.Kind kind, Consumer<Link.Writer> fill)
            throws EngineTerminationException {
        try {
            return worker.ask(kind, fill);
        } catch (WorkerGoneException e) {
            gone = e.getMessage();
            throw new EngineTerminationException(String.valueOf(e.getMessage()));
        }
    }
}
