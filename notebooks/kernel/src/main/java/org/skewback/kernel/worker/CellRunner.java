package org.skewback.kernel.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.instrument.Instrumentation;
import java.lang.instrument.UnmodifiableClassException;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import jdk.jshell.spi.SPIResolutionException;
import org.jspecify.annotations.Nullable;

/** Serves the front's requests one after the other on the thread that runs the cells. */
final class CellRunner {

    private static final String CELL_AWARE = "org.skewback.display.CellAware";
    private static final String CHANGING = "org.skewback.display.Changing";
    private static final int MOST_FRAMES = 64;
    private static final int MOST_CAUSES = 8;

    private final Link link;
    private final CellOutput output;
    private final Displays displays;
    private final CellInput input;
    private final Comms comms;
    private final Instrumentation instrumentation;
    private final CellLoader loader = new CellLoader();
    private final Renderer renderer = new Renderer(loader);
    private final BlockingQueue<Link.Reader> requests = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::serve, "skewback-cells");
    private final CellThreads threads = new CellThreads(thread);
    private @Nullable Object last;

    // Guarded by this: an order to stop must not hit the thread outside the run it is meant for.
    private int running = Run.NONE;

    CellRunner(
            Link link,
            CellOutput output,
            Displays displays,
            CellInput input,
            Instrumentation instrumentation) {
        this.link = link;
        this.output = output;
        this.displays = displays;
        this.input = input;
        this.comms = new Comms(link, output);
        this.instrumentation = instrumentation;
        thread.setContextClassLoader(loader);
        CellFunctions.connect(this);
    }

    void start() {
        Thread.setDefaultUncaughtExceptionHandler((failed, thrown) -> failed(failed, thrown));
        thread.start();
    }

    /** Tells of a thread that a cell had started and that has ended with an exception. */
    private void failed(Thread failed, Throwable thrown) {
        if (thrown instanceof Stop.CellStopped) {
            return;
        }
        Link.Writer packet =
                Link.packet(Link.Kind.THREAD_FAILED)
                        .number(Run.ofThisThread())
                        .text(failed.getName());
        failure(thrown, packet);
        output.flush();
        try {
            link.send(packet);
        } catch (IOException e) {
            WorkerMain.leave();
        }
    }

    void request(Link.Reader packet) {
        requests.add(packet);
    }

    /** Tells a run to stop, with all that it has started, if none has come after it. */
    synchronized void stop(int run) {
        if (run == Run.current()) {
            Stop.stop(run);
        }
        if (running == run) {
            thread.interrupt();
        }
    }

    /** Shows a value, under a name where that is not empty, in place of what it showed before. */
    void display(@Nullable Object value, String name, boolean again) {
        try {
            Map<String, String> content = renderer.render(value);
            if (again) {
                displays.showAgain(name, content);
            } else {
                output.flush();
                displays.show(watched(value, name), content);
            }
        } catch (InterruptedException e) {
            throw new Stop.CellStopped();
        } catch (IOException e) {
            WorkerMain.leave();
        }
    }

    /**
     * Has a value that changes by itself shown again whenever it does; gives the name under which,
     * or the name given where it never changes.
     */
    private String watched(@Nullable Object value, String name) {
        Method method =
                value == null
                        ? null
                        : Renderer.method(
                                value.getClass(), CHANGING, "whenChanged", Runnable.class);
        if (method == null) {
            return name;
        }
        String shown = name.isEmpty() ? UUID.randomUUID().toString() : name;
        Runnable again = () -> display(value, shown, true);
        try {
            method.invoke(value, again);
            return shown;
        } catch (ReflectiveOperationException e) {
            System.err.println("what is shown here will not change: " + e);
            return name;
        }
    }

    void clearOutput(boolean wait) {
        output.flush();
        try {
            link.send(Link.packet(Link.Kind.CLEAR).number(Run.ofThisThread()).flag(wait));
        } catch (IOException e) {
            WorkerMain.leave();
        }
    }

    String ask(String prompt, boolean secret) {
        try {
            return input.ask(prompt, secret);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void serve() {
        while (true) {
            try {
                answer(requests.take());
            } catch (InterruptedException e) {
                // An order to stop that came when its run had just ended: the next request is
                // served.
            } catch (IOException e) {
                WorkerMain.leave();
            }
        }
    }

    private void answer(Link.Reader request) throws IOException {
        Link.Writer answer = Link.packet(Link.Kind.ANSWER).number(request.number());
        switch (request.kind()) {
            case CELL_STARTS -> cellStarts(request, answer);
            case LIVING -> living(request, answer);
            case SETTLE -> settle(request, answer);
            case LOAD -> load(request, answer);
            case REDEFINE -> redefine(request, answer);
            case INVOKE -> invoke(request, answer);
            case RENDER -> render(request, answer);
            case FORGET -> forget(request, answer);
            case CLASS_PATH -> classPath(request, answer);
            case COMM -> comm(request, answer);
            default -> answer.outcome(Link.Outcome.REFUSED).text("unknown request");
        }
        output.flush();
        link.send(answer);
    }

    private synchronized void begin(int run) {
        running = run;
    }

    /** Ends a run, or a part of it, and says whether it was told to stop. */
    private synchronized boolean end() {
        boolean stopped = Stop.isTold(running);
        running = Run.NONE;
        Thread.interrupted();
        return stopped;
    }

    private void cellStarts(Link.Reader request, Link.Writer answer) {
        int run = request.number();
        String cell = request.text();
        int count = request.number();
        // What a cell that was stopped has left running had until now to stop too.
        Stop.clear();
        Run.starts(run);
        begin(run);
        try {
            for (int i = 0; i < count; i++) {
                tell(request.text(), request.text(), cell);
            }
        } finally {
            end();
        }
        done(answer);
    }

    private void tell(String className, String fieldName, String cell) {
        try {
            Object value = field(className, fieldName).get(null);
            if (value == null) {
                return;
            }
            Method method =
                    Renderer.method(value.getClass(), CELL_AWARE, "cellStarts", String.class);
            if (method != null) {
                method.invoke(value, cell);
            }
        } catch (InvocationTargetException e) {
            System.err.println(fieldName + " failed as the cell started: " + e.getCause());
        } catch (ReflectiveOperationException | LinkageError e) {
            // A variable whose class could not be loaded holds no value to tell.
            return;
        }
    }

    /** Shows what the live values that hear of cells have for programs, and nothing for readers. */
    private void living(Link.Reader request, Link.Writer answer) throws IOException {
        int run = request.number();
        int count = request.number();
        begin(run);
        try {
            for (int i = 0; i < count; i++) {
                handOver(request.text(), request.text(), run);
            }
            done(answer);
        } catch (InterruptedException e) {
            answer.outcome(Link.Outcome.STOPPED);
        } finally {
            end();
        }
    }

    private void handOver(String className, String fieldName, int run)
            throws IOException, InterruptedException {
        Object value;
        try {
            value = field(className, fieldName).get(null);
        } catch (ReflectiveOperationException | LinkageError e) {
            // A variable whose class could not be loaded holds no value to hand over.
            return;
        }
        if (value == null
                || Renderer.method(value.getClass(), CELL_AWARE, "cellStarts", String.class)
                        == null) {
            return;
        }
        Map<String, String> content = new LinkedHashMap<>(renderer.render(value));
        content.keySet().removeIf(type -> !type.endsWith("+json"));
        if (!content.isEmpty()) {
            Link.Writer packet = Link.packet(Link.Kind.DISPLAY).number(run).text("").flag(false);
            link.send(Displays.content(packet, content));
        }
    }

    /** Waits for what cells have left running, so that nothing it prints is lost. */
    private void settle(Link.Reader request, Link.Writer answer) {
        int run = request.number();
        int most = request.number();
        begin(run);
        try {
            for (Thread left : threads.await(most)) {
                System.err.println(
                        "the thread "
                                + left.getName()
                                + " was still running "
                                + most / 1000
                                + " s after the last cell had ended; what it prints later is not"
                                + " shown");
            }
            done(answer);
        } catch (InterruptedException e) {
            answer.outcome(Link.Outcome.STOPPED);
        } finally {
            end();
            output.flushAll();
        }
    }

    private Field field(String className, String name) throws ReflectiveOperationException {
        Field field = loader.loadClass(className).getDeclaredField(name);
        field.setAccessible(true);
        return field;
    }

    private void load(Link.Reader request, Link.Writer answer) {
        Map<String, byte[]> classes = classes(request);
        classes.forEach(loader::declare);
        try {
            for (String name : classes.keySet()) {
                loader.loadClass(name);
            }
            done(answer);
        } catch (ClassNotFoundException | LinkageError e) {
            refused(answer, e);
        }
    }

    private void redefine(Link.Reader request, Link.Writer answer) {
        try {
            loader.redefine(instrumentation, classes(request));
            done(answer);
        } catch (ClassNotFoundException
                | UnmodifiableClassException
                | UnsupportedOperationException
                | LinkageError e) {
            refused(answer, e);
        }
    }

    private static Map<String, byte[]> classes(Link.Reader request) {
        Map<String, byte[]> classes = new LinkedHashMap<>();
        int count = request.number();
        for (int i = 0; i < count; i++) {
            classes.put(request.text(), request.bytes());
        }
        return classes;
    }

    private void invoke(Link.Reader request, Link.Writer answer) {
        int run = request.number();
        String className = request.text();
        String methodName = request.text();
        last = null;
        Throwable thrown = null;
        boolean stopped;
        begin(run);
        try {
            Method method = loader.loadClass(className).getDeclaredMethod(methodName);
            method.setAccessible(true);
            last = method.invoke(null);
        } catch (InvocationTargetException e) {
            thrown = e.getCause();
        } catch (ReflectiveOperationException | RuntimeException | Error e) {
            thrown = e;
        } finally {
            stopped = end();
        }
        if (thrown instanceof ExceptionInInitializerError && thrown.getCause() != null) {
            thrown = thrown.getCause();
        }
        if (thrown == null) {
            done(answer);
        } else if (stopped) {
            answer.outcome(Link.Outcome.STOPPED);
        } else if (thrown instanceof SPIResolutionException unresolved) {
            answer.outcome(Link.Outcome.UNRESOLVED).number(unresolved.id());
            frames(unresolved, answer);
        } else {
            answer.outcome(Link.Outcome.FAILED);
            failure(thrown, answer);
        }
    }

    private void comm(Link.Reader request, Link.Writer answer) {
        int run = request.number();
        Stop.clear();
        Run.starts(run);
        begin(run);
        boolean taken = false;
        Throwable thrown = null;
        boolean stopped;
        try {
            taken = comms.received(request.text(), request.text(), request.text(), request.text());
        } catch (RuntimeException | Error e) {
            thrown = e;
        } finally {
            stopped = end();
        }
        if (thrown == null) {
            answer.outcome(taken ? Link.Outcome.DONE : Link.Outcome.REFUSED).text("nobody listens");
        } else if (stopped) {
            answer.outcome(Link.Outcome.STOPPED);
        } else {
            answer.outcome(Link.Outcome.FAILED);
            failure(thrown, answer);
        }
    }

    Comms comms() {
        return comms;
    }

    private static void failure(Throwable thrown, Link.Writer answer) {
        List<Throwable> chain = new ArrayList<>();
        for (Throwable t = thrown;
                t != null && chain.size() < MOST_CAUSES && !chain.contains(t);
                t = t.getCause()) {
            chain.add(t);
        }
        answer.number(chain.size());
        for (Throwable t : chain) {
            answer.text(t.getClass().getName());
            String message;
            try {
                message = String.valueOf(t.getMessage());
                answer.flag(t.getMessage() != null);
            } catch (RuntimeException e) {
                message = "(its message failed with " + e.getClass().getName() + ")";
                answer.flag(true);
            }
            answer.text(message);
            frames(t, answer);
        }
    }

    private static void frames(Throwable thrown, Link.Writer answer) {
        StackTraceElement[] stack = thrown.getStackTrace();
        int end = 0;
        // Below the cell's own entry there is only reflection and this class.
        while (end < stack.length
                && !stack[end].getClassName().equals(CellRunner.class.getName())) {
            end++;
        }
        int count = Math.min(end, MOST_FRAMES);
        answer.number(count);
        for (int i = 0; i < count; i++) {
            StackTraceElement frame = stack[i];
            answer.text(frame.getClassName())
                    .text(frame.getMethodName())
                    .text(String.valueOf(frame.getFileName()))
                    .number(frame.getLineNumber());
        }
    }

    private void render(Link.Reader request, Link.Writer answer) {
        begin(request.number());
        try {
            Map<String, String> content = renderer.render(last);
            answer.outcome(Link.Outcome.DONE);
            Displays.content(answer, content);
        } catch (InterruptedException e) {
            answer.outcome(Link.Outcome.STOPPED);
        } finally {
            last = null;
            end();
        }
    }

    private void forget(Link.Reader request, Link.Writer answer) {
        try {
            Field field = field(request.text(), request.text());
            if (!field.getType().isPrimitive() && !Modifier.isFinal(field.getModifiers())) {
                field.set(null, null);
            }
            done(answer);
        } catch (ReflectiveOperationException | LinkageError e) {
            refused(answer, e);
        }
    }

    private void classPath(Link.Reader request, Link.Writer answer) {
        try {
            loader.addPath(request.text());
            done(answer);
        } catch (IOException e) {
            refused(answer, e);
        }
    }

    private static void done(Link.Writer answer) {
        answer.outcome(Link.Outcome.DONE);
    }

    private static void refused(Link.Writer answer, Throwable reason) {
        answer.outcome(Link.Outcome.REFUSED).text(reason.toString());
    }
}
