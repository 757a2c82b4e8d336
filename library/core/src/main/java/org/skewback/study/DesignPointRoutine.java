package org.skewback.study;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The most likely way for a check to fail, as a routine; see {@link Reliability#designPoint}. */
public final class DesignPointRoutine
        implements Routine<UncertainCheck, DesignPointRoutine.Output> {

    /** Makes the routine. */
    public DesignPointRoutine() {}

    /**
     * What was found.
     *
     * @param index reliability index
     * @param probability probability of failure
     * @param values the givens at the design point
     * @param influences direction to the design point by each given
     */
    public record Output(
            Quantity index,
            Quantity probability,
            List<Quantity> values,
            List<Quantity> influences) {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param index reliability index
         * @param probability probability of failure
         * @param values the givens at the design point
         * @param influences direction to the design point by each given
         */
        public Output {
            values = List.copyOf(values);
            influences = List.copyOf(influences);
        }
    }

    @Override
    public String name() {
        return "study.designpoint";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(UncertainCheck input, Stop stop) {
        return input.study().plainDesignPoint().figures();
    }

    @Override
    public void verify(UncertainCheck input) {
        input.verify();
    }
}
