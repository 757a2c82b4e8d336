package org.skewback.kernel.evaluation;

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
     * @param shown what it shows
     */
    void shows(int run, Shown shown);

    /**
     * Tells that what a cell has shown and printed so far is to be cleared.
     *
     * @param run number of the run
     * @param wait whether to clear only when something new is there to show
     */
    void clears(int run, boolean wait);

    /**
     * Tells what a cell says over a comm.
     *
     * @param run number of the run that says it
     * @param message what it says
     */
    void says(int run, CommMessage message);

    /**
     * Tells that a cell waits for a line of input, to be given by {@link Evaluator#giveInput}.
     *
     * @param run number of the run that waits
     * @param prompt what to ask; may be empty
     * @param secret whether what is typed must not be seen
     */
    void wantsInput(int run, String prompt, boolean secret);
}
