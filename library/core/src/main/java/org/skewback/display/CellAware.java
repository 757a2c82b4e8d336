package org.skewback.display;

/**
 * A live value that wants to know which notebook cell is about to run.
 *
 * <p>Before a cell runs, the kernel tells every live variable whose class has an interface of this
 * name. As with {@link Displayable}, only {@code java.*} types appear, and a kernel that does not
 * know the interface simply never calls it.
 */
public interface CellAware {

    /**
     * Says that a cell is about to run.
     *
     * @param cell identifier of the cell, the same whenever that cell runs again; never empty
     */
    void cellStarts(String cell);
}
