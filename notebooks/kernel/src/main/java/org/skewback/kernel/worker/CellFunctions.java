package org.skewback.kernel.worker;

import org.jspecify.annotations.Nullable;

/** What every cell can call without an import. */
public final class CellFunctions {

    private static volatile @Nullable CellRunner runner;

    private CellFunctions() {}

    /** Connects the functions, which cells can only reach statically, to the running worker. */
    static void connect(CellRunner running) {
        runner = running;
    }

    /**
     * Shows a value under the cell at once.
     *
     * @param value the value, may be null
     */
    public static void display(@Nullable Object value) {
        CellRunner running = runner;
        if (running == null) {
            throw new IllegalStateException("display(…) works in the cells of a notebook only");
        }
        running.display(value);
    }
}
