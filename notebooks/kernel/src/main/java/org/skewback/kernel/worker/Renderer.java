package org.skewback.kernel.worker;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** Turns a value into content by MIME type, within bounds of time and size. */
final class Renderer {

    static final String DISPLAYABLE = "org.skewback.display.Displayable";
    static final int MOST_CHARACTERS = 8 << 20;
    static final int MOST_TEXT = 1 << 20;
    private static final long MOST_MILLIS = 10_000;
    private static final long LONGEST_MILLIS = 60_000;
    private static final long PERIOD_MILLIS = 100;
    private static final String PLAIN = "text/plain";

    private final ClassLoader loader;

    Renderer(ClassLoader loader) {
        this.loader = loader;
    }

    /**
     * Renders a value; never throws for what the value does.
     *
     * @throws InterruptedException if the cell was told to stop
     */
    Map<String, String> render(@Nullable Object value) throws InterruptedException {
        if (value == null || value instanceof String || value instanceof Number) {
            return Map.of(PLAIN, PlainText.of(value, MOST_TEXT));
        }
        AtomicReference<@Nullable Map<String, String>> result = new AtomicReference<>();
        int run = Run.ofThisThread();
        Thread thread =
                new Thread(
                        () -> {
                            Run.adopt(run);
                            result.set(withoutBound(value));
                        },
                        "skewback-render");
        thread.setDaemon(true);
        thread.setContextClassLoader(loader);
        thread.start();
        try {
            join(thread);
        } catch (InterruptedException e) {
            thread.interrupt();
            throw e;
        }
        Map<String, String> content = result.get();
        if (content == null) {
            thread.interrupt();
            return Map.of(
                    PLAIN,
                    identity(value) + " (showing it took longer than 10 s and was given up)");
        }
        return content;
    }

    /**
     * Waits for a value. On a busy machine 10 s may pass before it has had them; how busy the machine
     * is must not decide over what a notebook shows. One that waits for something gets no more.
     */
    private static void join(Thread thread) throws InterruptedException {
        thread.join(MOST_MILLIS);
        for (long waited = MOST_MILLIS;
                waited < LONGEST_MILLIS && thread.getState() == Thread.State.RUNNABLE;
                waited += PERIOD_MILLIS) {
            long worked = ManagementFactory.getThreadMXBean().getThreadCpuTime(thread.getId());
            if (worked < 0 || worked >= TimeUnit.MILLISECONDS.toNanos(MOST_MILLIS)) {
                return;
            }
            thread.join(PERIOD_MILLIS);
        }
    }

    private static Map<String, String> withoutBound(Object value) {
        Map<String, String> content = new LinkedHashMap<>();
        String plain = null;
        try {
            content.putAll(rich(value));
        } catch (InvocationTargetException e) {
            plain = noteOf(e.getCause());
        } catch (ReflectiveOperationException
                | IOException
                | RuntimeException
                | OutOfMemoryError
                | StackOverflowError
                | LinkageError e) {
            plain = noteOf(e);
        }
        int characters = 0;
        for (Map.Entry<String, String> entry : content.entrySet()) {
            characters += entry.getValue().length();
        }
        if (characters > MOST_CHARACTERS) {
            plain = "\n(shown as text only: its " + characters + " characters are too many)";
        }
        if (plain != null) {
            content.clear();
        }
        String note = plain == null ? "" : plain;
        content.computeIfAbsent(PLAIN, type -> text(value) + note);
        return content;
    }

    private static Map<String, String> rich(Object value)
            throws ReflectiveOperationException, IOException {
        if (value instanceof CellContent given) {
            return given.bundle();
        }
        Map<String, String> content = new LinkedHashMap<>();
        Method method = method(value.getClass(), DISPLAYABLE, "display");
        if (method != null) {
            if (method.invoke(value) instanceof Map<?, ?> map) {
                map.forEach((type, text) -> content.put(type.toString(), text.toString()));
            }
            return content;
        }
        String table = TabularValues.of(value);
        if (table != null) {
            content.put("text/html", table);
            return content;
        }
        String picture = Pictures.of(value);
        if (picture != null) {
            content.put("image/png", picture);
            content.put(PLAIN, Pictures.words(value));
        }
        return content;
    }

    /** Whether a class or one above it has a name, whichever loader knows it. */
    static boolean is(Class<?> type, String name) {
        for (Class<?> c = type; c != null; c = c.getSuperclass()) {
            if (c.getName().equals(name)) {
                return true;
            }
        }
        return false;
    }

    private static String noteOf(@Nullable Throwable e) {
        return "\n(shown as text only: its display failed with " + e + ")";
    }

    private static String text(Object value) {
        try {
            return PlainText.of(value, MOST_TEXT);
        } catch (RuntimeException | StackOverflowError | LinkageError e) {
            return identity(value) + " (its toString failed with " + e.getClass().getName() + ")";
        }
    }

    private static String identity(Object value) {
        return PlainText.name(value.getClass());
    }

    /** Finds a method by the name of the interface that declares it, whichever loader knows it. */
    static @Nullable Method method(
            Class<?> type, String interfaceName, String name, Class<?>... parameters) {
        for (Class<?> c = type; c != null; c = c.getSuperclass()) {
            for (Class<?> i : c.getInterfaces()) {
                if (!i.getName().equals(interfaceName)) {
                    Method inherited = method(i, interfaceName, name, parameters);
                    if (inherited != null) {
                        return inherited;
                    }
                    continue;
                }
                try {
                    Method method = i.getMethod(name, parameters);
                    method.setAccessible(true);
                    return method;
                } catch (NoSuchMethodException | RuntimeException e) {
                    return null;
                }
            }
        }
        return null;
    }
}
