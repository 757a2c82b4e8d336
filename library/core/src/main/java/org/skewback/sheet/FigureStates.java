package org.skewback.sheet;

import java.util.List;

/**
 * The states of a figure of which one is shown at a time, each drawn beforehand: what a reader can
 * turn to without calculating anything.
 *
 * @param parameter what varies, in words
 * @param opening index of the state that is shown first; the figure itself is this one
 * @param printed indices of the states that paper shows, in order
 * @param states the states in order, at least two
 */
public record FigureStates(
        String parameter, int opening, List<Integer> printed, List<State> states) {

    /** The most states that a figure may have. */
    public static final int MOST = 40;

    /**
     * One state.
     *
     * @param value the parameter's value, in its unit
     * @param unit the unit; empty for a number
     * @param label value and unit as a reader sees them
     * @param description what is drawn, in words
     * @param svg the picture
     */
    public record State(double value, String unit, String label, String description, String svg) {}

    /**
     * Keeps copies, so that nobody can change them from outside.
     *
     * @param parameter what varies, in words
     * @param opening index of the state that is shown first; the figure itself is this one
     * @param printed indices of the states that paper shows, in order
     * @param states the states in order, at least two
     * @throws IllegalArgumentException if there are too few or too many states, none is printed, or
     *     an index is none of a state
     */
    public FigureStates {
        printed = List.copyOf(printed);
        states = List.copyOf(states);
        if (states.size() < 2 || states.size() > MOST) {
            throw new IllegalArgumentException(
                    "a figure has " + states.size() + " states; allowed: 2 to " + MOST);
        }
        if (printed.isEmpty()) {
            throw new IllegalArgumentException("a figure prints none of its states");
        }
        requireState(opening, states.size());
        for (int index : printed) {
            requireState(index, states.size());
        }
    }

    /**
     * Writes the states for a notebook, with a button for each of them and no script.
     *
     * @return HTML on one line, which may also stand as a paragraph of its own in Markdown
     */
    public String html() {
        return StatesMarkup.html(this);
    }

    private static void requireState(int index, int count) {
        if (index < 0 || index >= count) {
            throw new IllegalArgumentException(
                    "a figure has no state "
                            + index
                            + "; its "
                            + count
                            + " states are numbered from 0");
        }
    }
}
