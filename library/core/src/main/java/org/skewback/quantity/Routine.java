package org.skewback.quantity;

/**
 * A calculation that iterates or marches in plain SI numbers and enters the graph as one node.
 *
 * <p>Its input and output are records whose components are {@link Quantity}, lists of {@code
 * Quantity}, {@code double}, {@code int}, {@code boolean} or {@code String}; the output's are {@code
 * Quantity} or lists of {@code Quantity}. {@link Routines#call} runs it and gives the output with
 * every quantity tied to the inputs. A routine has a published name, so that whoever reads a record
 * years later can call it again; its edition rises whenever its results change.
 *
 * @param <I> the input record
 * @param <O> the output record
 */
public interface Routine<I extends Record, O extends Record> {

    /**
     * Gives the published name.
     *
     * @return package and verb, such as {@code form.funicular}; never changes
     */
    String name();

    /**
     * Gives the edition.
     *
     * @return a number from 1 that rises whenever the same input gives another output
     */
    int edition();

    /**
     * Does the calculation.
     *
     * @param input what it works on
     * @param stop asked now and then in long loops
     * @return the results
     * @throws IllegalArgumentException when the input cannot be worked on
     * @throws ArithmeticException when an iteration does not converge
     */
    O run(I input, Stop stop);

    /**
     * Checks what must hold among the quantities of an input as it is recorded, where some of them
     * follow from others. It is asked when a record is worked out again; not while one input after
     * the other is moved to find how the result changes.
     *
     * @param input what it worked on
     * @throws IllegalArgumentException when the parts of the input contradict each other
     */
    default void verify(I input) {}
}
