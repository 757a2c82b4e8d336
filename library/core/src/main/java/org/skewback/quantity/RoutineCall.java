package org.skewback.quantity;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One call of a routine, shared by all its outputs.
 *
 * @param name published name of the routine
 * @param edition its edition
 * @param inputs the quantities that went in, in the order of the record's components
 * @param components what each component of the input record was: for a quantity its position in
 *     {@code inputs}, for a list the positions, else the plain value; in order
 * @param live the routine itself, or null in a graph that was read from a record
 */
record RoutineCall(
        String name,
        int edition,
        List<Quantity> inputs,
        Map<String, Object> components,
        @Nullable LiveRoutine live) {

    RoutineCall {
        inputs = List.copyOf(inputs);
    }
}
