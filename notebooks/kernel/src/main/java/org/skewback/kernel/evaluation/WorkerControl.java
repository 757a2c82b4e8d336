package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
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
    private int run;
    private boolean stopped;
    private @Nullable String gone;
    private @Nullable Slot asked;

    WorkerControl(WorkerProcess worker) {
        this.worker = worker;
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

    private void install(Link.Kind kind, ClassBytecodes[] classes)
            throws ClassInstallException, EngineTerminationException {
        Link.Reader answer =
                ask(
                        kind,
                        packet -> {
                            packet.number(classes.length);
                            for (ClassBytecodes c : classes) {
                                packet.text(c.name()).bytes(Weaver.weave(c.bytecodes()));
                            }
                        });
        if (answer.outcome() != Link.Outcome.DONE) {
            throw new ClassInstallException(answer.text(), new boolean[classes.length]);
        }
    }

    @Override
    public String invoke(String className, String methodName)
            throws RunException, EngineTerminationException, InternalException {
        Link.Reader answer =
                ask(
                        Link.Kind.INVOKE,
                        packet -> packet.number(run).text(className).text(methodName));
        switch (answer.outcome()) {
            case DONE -> {
                // JShell's own text of a value is never shown; the worker renders the value itself.
                return "";
            }
            case FAILED -> throw failure(answer);
            case STOPPED -> {
                stopped = true;
                throw new StoppedException();
            }
            case UNRESOLVED -> throw new ResolutionException(answer.number(), frames(answer));
            case REFUSED -> throw new InternalException(answer.text());
        }
        throw new InternalException("no outcome");
    }

    /** Reads the chain of exceptions of a packet. */
    static UserException failure(Link.Reader answer) {
        int count = answer.number();
        List<UserException> chain = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String type = answer.text();
            boolean hasMessage = answer.flag();
            String message = answer.text();
            chain.add(new UserException(hasMessage ? message : null, type, frames(answer)));
            if (i > 0) {
                chain.get(i - 1).initCause(chain.get(i));
            }
        }
        return chain.get(0);
    }

    private static StackTraceElement[] frames(Link.Reader answer) {
        StackTraceElement[] frames = new StackTraceElement[answer.number()];
        for (int i = 0; i < frames.length; i++) {
            frames[i] =
                    new StackTraceElement(
                            answer.text(), answer.text(), answer.text(), answer.number());
        }
        return frames;
    }

    /** Never asks the worker: the kernel only wants to know where the value lives. */
    @Override
    public String varValue(String className, String varName) {
        asked = new Slot(className, varName);
        return "";
    }

    @Override
    public void addToClasspath(String path) throws EngineTerminationException, InternalException {
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
        worker.close();
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
