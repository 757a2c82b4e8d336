package org.skewback.study;

import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** Mean, spread and reliability index of a check from the first derivatives at the means, as a routine; see {@link Reliability#firstOrderSecondMoment}. */
public final class FirstOrderSecondMomentRoutine
        implements Routine<UncertainCheck, FirstOrderSecondMoment> {

    /** Makes the routine. */
    public FirstOrderSecondMomentRoutine() {}

    @Override
    public String name() {
        return "study.moments";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public FirstOrderSecondMoment run(UncertainCheck input, Stop stop) {
        return input.study().plainMoments();
    }

    @Override
    public void verify(UncertainCheck input) {
        input.verify();
    }
}
