package org.skewback.checks;

import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Quantity;

/**
 * A check and what the library gave.
 *
 * @param row the check
 * @param computed value computed in the unit of the row; empty if the routine failed
 * @param failure why the routine failed, or null
 */
record Outcome(Row row, OptionalDouble computed, @Nullable Throwable failure) {

    static Outcome of(Row row, Subject subject) {
        try {
            Checked routine = subject.routines().get(row.routine());
            if (routine == null) {
                throw new IllegalArgumentException(
                        "routine " + row.routine() + " is not one of topic " + row.topic() + ".");
            }
            Inputs inputs = new Inputs(row.inputs());
            Map<String, Quantity> results = routine.run(inputs);
            inputs.requireAllTaken();
            Quantity result = results.get(row.quantity());
            if (result == null) {
                throw new IllegalArgumentException(
                        "quantity " + row.quantity() + " is not among " + results.keySet() + ".");
            }
            return new Outcome(row, OptionalDouble.of(result.in(row.unit())), null);
        } catch (RuntimeException e) {
            return new Outcome(row, OptionalDouble.empty(), e);
        }
    }

    /** Computed less expected, over the size of the expected value unless that is 0. */
    OptionalDouble deviation() {
        if (computed.isEmpty()) {
            return OptionalDouble.empty();
        }
        double expected = row.expectedValue();
        double difference = computed.getAsDouble() - expected;
        return OptionalDouble.of(expected == 0 ? difference : difference / Math.abs(expected));
    }

    boolean agrees() {
        return deviation().isPresent() && Math.abs(deviation().getAsDouble()) <= row.tolerance();
    }

    String verdict() {
        return agrees() ? "agrees" : "disagrees";
    }
}
