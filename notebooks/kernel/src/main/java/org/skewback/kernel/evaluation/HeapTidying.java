package org.skewback.kernel.evaluation;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Collects the garbage of the compiler before the heap has grown for it. The serial collector takes more
 * memory for as long as it may (-Xmx) rather than look what of the old generation is still in use, and
 * nobody but the compiler lives in this process.
 */
final class HeapTidying {

    /** How much more than after the last collection may be in use; the young generation has 10 MB. */
    private static final long MOST_GARBAGE_BYTES = 24L << 20;

    /** The same while there are two compilers, which are the most that this process ever holds. */
    private static final long MOST_BESIDE_TWO_BYTES = 13L << 20;

    /** What is in use before any cell has run, above all the index for completion. */
    private static final long BASE_BYTES = 40L << 20;

    /** The reply to a cell goes out first. */
    private static final long PAUSE_MILLIS = 100;

    private final Semaphore cells = new Semaphore(0);
    private volatile boolean compilerChanges;
    private volatile boolean twoCompilers;

    /** Starts the thread that collects. */
    void start() {
        Thread thread = new Thread(this::tidy, "skewback-tidying");
        thread.setDaemon(true);
        thread.start();
    }

    /** Says that a cell has ended. */
    void cellEnded() {
        cells.release();
    }

    /** Says that a second compiler is about to be made, or that one of two was left: it collects after the cell. */
    void compilerChanges() {
        compilerChanges = true;
    }

    /** Says whether a second compiler is being made. */
    void twoCompilers(boolean two) {
        twoCompilers = two;
    }

    private void tidy() {
        long clean = BASE_BYTES;
        try {
            while (true) {
                cells.acquire();
                TimeUnit.MILLISECONDS.sleep(PAUSE_MILLIS);
                cells.drainPermits();
                long most = twoCompilers ? MOST_BESIDE_TWO_BYTES : MOST_GARBAGE_BYTES;
                if (compilerChanges || used() > clean + most) {
                    compilerChanges = false;
                    System.gc();
                    clean = used();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
