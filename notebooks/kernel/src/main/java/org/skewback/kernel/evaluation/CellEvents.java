package org.skewback.kernel.evaluation;

import java.util.Map;

/** What cells do while they run, told on a thread that must not be held up. */
public interface CellEvents {

    /**
     * Tells that a cell has printed.
     *
     * @param run number of the run that printed
     * @param error whether it printed to standard error
     * @param text what it printed
     */
    void printed(int run, boolean error, String text);

    /**
     * Tells that a cell shows a value.
     *
     * @param run number of the run that shows it
     * @param content content by MIME type
     */
    void shows(int run, Map<String, String> content);

    /**
     * Tells that a cell waits for a line of input, to be given by {@link Evaluator#giveInput}.
     *
     * @param run number of the run that waits
     * @param prompt what to ask; may be empty
     */
    void wantsInput(int run, String prompt);
}
