package org.skewback.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * Where a tape calls a routine.
 *
 * @param call the call in the graph
 * @param live the routine, or null where it is not here in the edition of the call
 * @param results the outputs that the graph uses
 */
record CallSite(RoutineCall call, @Nullable LiveRoutine live, List<RoutineOutput> results) {

    /**
     * Runs the routine for one sample.
     *
     * @throws RuntimeException when it refuses the values
     */
    void run(double[] inputs, double[] outputs) {
        if (live == null) {
            throw new CannotTellException(
                    "cannot tell: routine "
                            + call.name()
                            + " of edition "
                            + call.edition()
                            + " is not here to be run again");
        }
        Record output = live.run(call, inputs);
        for (int k = 0; k < outputs.length; k++) {
            outputs[k] = LiveRoutine.result(output, results.get(k)).si();
        }
    }

    /** Runs the routine; where it refuses, gives NaN, whose origin is looked into at the end. */
    void runOrSpoil(double[] inputs, double[] outputs) {
        Arrays.fill(outputs, Double.NaN);
        for (double input : inputs) {
            if (!Double.isFinite(input)) {
                return;
            }
        }
        try {
            run(inputs, outputs);
        } catch (CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            // A sample that takes another branch must not suffer for a refusal in this one.
            Arrays.fill(outputs, Double.NaN);
        }
    }
}
