package org.skewback.numeric;

/**
 * A small nonlinear element at a few displacements of an otherwise linear structure: a sliding
 * bearing, a gap.
 *
 * <p>An element holds no state of its own; the motion keeps it. All arrays are shared by the elements
 * of a motion: an element touches only its own part.
 */
public interface LocalElement {

    /**
     * Gives the number of displacements the element follows.
     *
     * @return 1, 2 or 3
     */
    int directions();

    /**
     * Gives the number of values the element wants remembered from step to step, 0 at the start.
     *
     * @return values of state
     */
    int stateSize();

    /**
     * Follows a straight movement over one step.
     *
     * @param state state at the start of the step, from index {@code stateAt}; not changed
     * @param stateAt first index of this element's state
     * @param from displacements at the start in m, from index {@code at}
     * @param to displacements at the end in m, from index {@code at}
     * @param at first index of this element's displacements and forces
     * @param next takes the state at the end of the step
     * @param mean takes the mean force over the movement, in N, as it acts on the structure: its product
     *     with the movement is the work done on the structure
     */
    void follow(
            double[] state,
            int stateAt,
            double[] from,
            double[] to,
            int at,
            double[] next,
            double[] mean);

    /**
     * Gives the force at an instant.
     *
     * @param state state, from index {@code stateAt}
     * @param stateAt first index of this element's state
     * @param displacement displacements in m, from index {@code at}
     * @param at first index of this element's displacements and forces
     * @param force takes the force in N as it acts on the structure
     */
    void force(double[] state, int stateAt, double[] displacement, int at, double[] force);

    /**
     * Gives the energy that the element would give back.
     *
     * @param state state, from index {@code stateAt}
     * @param stateAt first index of this element's state
     * @param displacement displacements in m, from index {@code at}
     * @param at first index of this element's displacements
     * @return energy in J
     */
    double stored(double[] state, int stateAt, double[] displacement, int at);
}
