package org.skewback.quantity;

import java.util.List;
import java.util.Map;

/**
 * One call of a routine laid flat for a record.
 *
 * @param name published name of the routine
 * @param edition its edition
 * @param inputs positions of the quantities that went in
 * @param components what each component of the input record was, in order: a number, a truth value,
 *     text, or {@code #3} for the third of the inputs from zero, or a list of such
 */
public record FlatCall(
        String name, int edition, List<Integer> inputs, Map<String, Object> components) {

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param name published name of the routine
     * @param edition its edition
     * @param inputs positions of the quantities that went in
     * @param components what each component of the input record was, in order: a number, a truth
     *     value, text, or {@code #3} for the third of the inputs from zero, or a list of such
     */
    public FlatCall {
        inputs = List.copyOf(inputs);
    }
}
