package org.skewback.kernel;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Ends a process when the program that started it has ended, so that none is left behind.
 *
 * <p>For a kernel, Jupyter names that program in the environment variable {@value #VARIABLE}: on POSIX systems by
 * its process number, on Windows by a handle, which Java cannot use; there the process that started
 * this one is watched.
 */
public final class ParentWatch {

    static final String VARIABLE = "JPY_PARENT_PID";
    private static final long PERIOD_MILLIS = 1000;

    private ParentWatch() {}

    /**
     * Finds the process to watch.
     *
     * @param environment environment variables
     * @param system name of the operating system, as {@code os.name} gives it
     * @param parent the process that started this one
     * @return the process; empty where nobody asks to be watched
     */
    static Optional<ProcessHandle> watched(
            Map<String, String> environment, String system, Optional<ProcessHandle> parent) {
        String named = environment.getOrDefault(VARIABLE, "").strip();
        if (named.isEmpty()) {
            return Optional.empty();
        }
        if (system.toLowerCase(Locale.ROOT).startsWith("windows")) {
            return parent;
        }
        try {
            // A process that is gone already leaves only its number; the one that started this
            // kernel says whether that is so.
            return ProcessHandle.of(Long.parseLong(named)).or(() -> parent);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Calls back once the program that started this kernel has ended. */
    static void start(Runnable ended) {
        Optional<ProcessHandle> parent = ProcessHandle.current().parent();
        watched(System.getenv(), System.getProperty("os.name"), parent)
                .ifPresent(process -> start(process, parent.equals(Optional.of(process)), ended));
    }

    /**
     * Calls back, on a thread of its own that keeps nothing alive, once a process has ended.
     *
     * @param process the process to watch
     * @param isParent whether that started this one
     * @param ended what to do then
     */
    public static void start(ProcessHandle process, boolean isParent, Runnable ended) {
        Thread thread = new Thread(() -> watch(process, isParent, ended), "skewback-parent");
        thread.setDaemon(true);
        thread.start();
    }

    private static void watch(ProcessHandle process, boolean isParent, Runnable ended) {
        try {
            // A process that has ended counts as alive until somebody asks how, but its children
            // are given to another parent at once.
            while (process.isAlive()
                    && (!isParent
                            || ProcessHandle.current().parent().equals(Optional.of(process)))) {
                Thread.sleep(PERIOD_MILLIS);
            }
            ended.run();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
