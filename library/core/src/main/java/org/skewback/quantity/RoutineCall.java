package org.skewback.quantity;

import java.util.List;
import java.util.Map;

/**
 * One call of a routine, shared by all its outputs.
 *
 * @param name published name of the routine
 * @param edition its edition
 * @param inputs the quantities that went in, in the order of the record's components
 * @param components what each component of the input record was: for a quantity its position in
 *     {@code inputs}, for a list the positions, else the plain value; in order
 */
record RoutineCall(
        String name, int edition, List<Quantity> inputs, Map<String, Object> components) {

    RoutineCall {
        inputs = List.copyOf(inputs);
    }
}
