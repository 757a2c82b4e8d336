package org.skewback.form;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The catenary of given span and rise between springings at one level, as a routine. */
public final class CatenaryRoutine
        implements Routine<CatenaryRoutine.Input, CatenaryRoutine.Output> {

    /** Makes the routine. */
    public CatenaryRoutine() {}

    /**
     * What the catenary is sought for.
     *
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     */
    public record Input(Quantity span, Quantity rise) {}

    /**
     * The catenary.
     *
     * @param parameter parameter of the catenary, a length: radius of curvature at the crown
     */
    public record Output(Quantity parameter) {}

    @Override
    public String name() {
        return "form.catenary";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Catenary catenary = Catenary.ofRise(input.span().in("m"), input.rise().in("m"));
        return new Output(Quantity.of(catenary.parameter(), "m"));
    }
}
