package org.skewback.study;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** Mean, spread and reliability index of a check from the first derivatives at the means, as a routine; see {@link Reliability#firstOrderSecondMoment}. */
public final class FirstOrderSecondMomentRoutine
        implements Routine<UncertainCheck, FirstOrderSecondMomentRoutine.Output> {

    /** Makes the routine. */
    public FirstOrderSecondMomentRoutine() {}

    /**
     * What was found.
     *
     * @param mean the demand with every given at its mean
     * @param standardDeviation standard deviation of the demand
     * @param index reliability index
     * @param probability probability of failure if the margin were normal
     * @param shares share of each given in the variance of the margin
     */
    public record Output(
            Quantity mean,
            Quantity standardDeviation,
            Quantity index,
            Quantity probability,
            List<Quantity> shares) {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param mean the demand with every given at its mean
         * @param standardDeviation standard deviation of the demand
         * @param index reliability index
         * @param probability probability of failure if the margin were normal
         * @param shares share of each given in the variance of the margin
         */
        public Output {
            shares = List.copyOf(shares);
        }
    }

    @Override
    public String name() {
        return "study.moments";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(UncertainCheck input, Stop stop) {
        return input.study().plainMoments().figures();
    }

    @Override
    public void verify(UncertainCheck input) {
        input.verify();
    }
}
