package org.skewback.kernel.worker;

import java.util.concurrent.ForkJoinWorkerThread;

/**
 * Which run of a cell a thread belongs to. A thread started by a cell belongs to that run for good,
 * so that what it prints later is shown under its own cell.
 */
final class Run {

    static final int NONE = 0;

    private static final InheritableThreadLocal<Integer> OF_THREAD = new InheritableThreadLocal<>();
    private static volatile int current = NONE;

    private Run() {}

    /** Marks this thread as the one that runs a cell from now on. */
    static void starts(int run) {
        OF_THREAD.set(run);
        current = run;
    }

    /** Puts this thread, started by the worker itself, under a run. */
    static void adopt(int run) {
        OF_THREAD.set(run);
    }

    /** The run that runs now, or ran last. */
    static int current() {
        return current;
    }

    /** The run that this thread belongs to; pooled threads serve whichever run is on. */
    static int ofThisThread() {
        Integer own =
                Thread.currentThread() instanceof ForkJoinWorkerThread ? null : OF_THREAD.get();
        return own == null ? current : own;
    }
}
