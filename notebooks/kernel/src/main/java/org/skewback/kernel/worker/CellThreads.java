package org.skewback.kernel.worker;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Threads that cells have started and that still have something to do. As for a Java program, daemons
 * do not count; but a pool that works off what it was given does, and one that idles does not.
 */
final class CellThreads {

    private static final long PERIOD_MILLIS = 20;

    private final ThreadGroup group;
    private final List<Thread> own;

    /**
     * Takes note of the threads that are no cell's.
     *
     * @param cells the thread that runs the cells
     */
    CellThreads(Thread cells) {
        this.group = cells.getThreadGroup();
        this.own =
                Stream.concat(Stream.of(cells), Thread.getAllStackTraces().keySet().stream())
                        .toList();
    }

    /**
     * Waits until all have ended.
     *
     * @param most how long to wait at most, ms
     * @return those that have not
     * @throws InterruptedException if this thread is interrupted
     */
    List<Thread> await(long most) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(most);
        List<Thread> busy = busy();
        while (!busy.isEmpty() && System.nanoTime() < until) {
            busy.get(0).join(PERIOD_MILLIS);
            busy = busy();
        }
        return busy;
    }

    private List<Thread> busy() {
        return Thread.getAllStackTraces().entrySet().stream()
                .filter(entry -> isBusy(entry.getKey(), entry.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private boolean isBusy(Thread thread, StackTraceElement[] stack) {
        if (thread instanceof ForkJoinWorkerThread worker) {
            return !worker.getPool().isQuiescent();
        }
        ThreadGroup its = thread.getThreadGroup();
        return its != null
                && group.parentOf(its)
                && !thread.isDaemon()
                && !own.contains(thread)
                && !idles(thread, stack);
    }

    /** Whether a thread of a pool waits for work. One that waits for the time to do it is busy. */
    private static boolean idles(Thread thread, StackTraceElement[] stack) {
        boolean pool = false;
        boolean timetable = false;
        for (StackTraceElement frame : stack) {
            pool |=
                    frame.getClassName().equals("java.util.concurrent.ThreadPoolExecutor")
                            && frame.getMethodName().equals("getTask");
            timetable |=
                    frame.getClassName().endsWith("ScheduledThreadPoolExecutor$DelayedWorkQueue");
        }
        return pool && !(timetable && thread.getState() == Thread.State.TIMED_WAITING);
    }
}
