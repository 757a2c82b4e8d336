package org.skewback.desk.jupyter;

import java.util.List;
import java.util.Map;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;

/** A running kernel that belongs to one notebook at a time. */
public interface KernelSession extends AutoCloseable {

    /**
     * Runs a cell and waits until it has ended and all its output is here.
     *
     * @param cell a cell of code
     * @return how it ended
     * @throws KernelTrouble when the cell did not end by itself: it ran over its time, gave too much
     *     output, or took the kernel with it; the session is then of no further use
     */
    CellRun run(Cell cell) throws KernelTrouble;

    /**
     * Gives what a cell has given so far. A later cell may still change it, where it updates a
     * display of this one or where a thread of this one goes on printing.
     *
     * @param cellId identifier of a cell that has run
     * @return its outputs in order; empty where it gave none
     */
    List<Output> outputs(String cellId);

    /**
     * Waits, after the last cell, for threads that cells have left running, so that what they print
     * stands under their cells. Our own kernel waits up to 5 s, as a Java program does without one;
     * daemons are not waited for. A thread that does not end by then is named under the last cell.
     *
     * @throws KernelTrouble when the kernel does not answer in time; the session is then of no
     *     further use
     */
    default void settle() throws KernelTrouble {}

    /**
     * Asks, after the last cell, for what live values have for programs, such as the blocks of a
     * sheet, whether a cell showed it or not.
     *
     * @return what they handed over; empty where there is nothing, or the kernel does not know this
     * @throws KernelTrouble when the kernel does not answer in time; the session is then of no
     *     further use
     */
    List<Output> living() throws KernelTrouble;

    /**
     * Turns to another notebook, as a kernel that has just started would: of what cells have done nothing is
     * left, here or there.
     *
     * @param environment environment variables for the cells, besides those that the kernel was launched
     *     with
     * @return whether it has; a kernel that cannot is of no further use
     * @throws KernelTrouble when the kernel does not answer in time; the session is then of no
     *     further use
     */
    default boolean beginAfresh(Map<String, String> environment) throws KernelTrouble {
        return false;
    }

    /**
     * Ends the kernel at once; the cell that runs ends with trouble. Unlike the others, this may be
     * called while a cell runs on another thread.
     */
    default void end() {}

    /** Ends the kernel and every process it started. */
    @Override
    void close();
}
