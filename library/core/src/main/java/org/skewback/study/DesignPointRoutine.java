package org.skewback.study;

import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The most likely way for a check to fail, as a routine; see {@link Reliability#designPoint}. */
public final class DesignPointRoutine implements Routine<UncertainCheck, DesignPoint> {

    /** Makes the routine. */
    public DesignPointRoutine() {}

    @Override
    public String name() {
        return "study.designpoint";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public DesignPoint run(UncertainCheck input, Stop stop) {
        return input.study().plainDesignPoint();
    }

    @Override
    public void verify(UncertainCheck input) {
        input.verify();
    }
}
