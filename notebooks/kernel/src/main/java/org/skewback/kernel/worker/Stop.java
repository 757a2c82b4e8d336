package org.skewback.kernel.worker;

/**
 * What the bytecode of cells calls in each method and each turn of a loop, and instead of leaving the VM.
 *
 * <p>The state is static because woven bytecode has nothing else to call.
 */
public final class Stop {

    /** Thrown out of a cell that was told to stop. */
    static final class CellStopped extends Error {
        private static final long serialVersionUID = 1L;

        CellStopped() {
            super("the cell was interrupted", null, false, false);
        }
    }

    /** Thrown instead of leaving the VM. */
    static final class ExitRefused extends Error {
        private static final long serialVersionUID = 1L;

        ExitRefused(int status) {
            super(
                    "the cell called for the program to exit with status "
                            + status
                            + "; a notebook keeps running, and all variables are kept");
        }
    }

    private static volatile int stopped = Run.NONE;

    private Stop() {}

    /** Throws if the run that this thread belongs to was told to stop. */
    public static void check() {
        if (stopped != Run.NONE && stopped == Run.ofThisThread()) {
            throw new CellStopped();
        }
    }

    /**
     * Takes the place of {@link System#exit}.
     *
     * @param status exit status asked for
     */
    // Only woven bytecode calls it, in place of a call that does not return either.
    @SuppressWarnings("DoNotCallSuggester")
    public static void exit(int status) {
        throw new ExitRefused(status);
    }

    /**
     * Takes the place of {@link Runtime#exit} and {@link Runtime#halt}.
     *
     * @param runtime the runtime asked to exit
     * @param status exit status asked for
     */
    @SuppressWarnings("DoNotCallSuggester")
    public static void exit(Runtime runtime, int status) {
        exit(status);
    }

    /**
     * Tells a run to stop. The order stands until it is cleared, for all threads that belong to the
     * run.
     */
    static void stop(int run) {
        stopped = run;
    }

    /** Whether a run was told to stop. */
    static boolean isTold(int run) {
        return stopped == run;
    }

    /** Takes the order back. */
    static void clear() {
        stopped = Run.NONE;
    }
}
