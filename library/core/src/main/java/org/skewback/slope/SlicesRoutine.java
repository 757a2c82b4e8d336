package org.skewback.slope;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The factor of safety on a given slip circle, as a routine; see {@link SliceAnalysis}. */
public final class SlicesRoutine implements Routine<SectionInput, SlicesRoutine.Output> {

    /** Makes the routine. */
    public SlicesRoutine() {}

    /**
     * What is found.
     *
     * @param factor factor of safety
     * @param lambda scale of the inclination of the forces between slices; 0 for methods without
     * @param pulled number of slices whose base would be pulled
     */
    public record Output(Quantity factor, Quantity lambda, Quantity pulled) {}

    @Override
    public String name() {
        return "slope.slices";
    }

    @Override
    public int edition() {
        return 2;
    }

    @Override
    public Output run(SectionInput input, Stop stop) {
        SliceResult result =
                SliceAnalysis.of(input.section(), input.circle(), input.slices())
                        .factor(input.by());
        return new Output(
                Quantity.of(result.factor()),
                Quantity.of(result.lambda()),
                Quantity.of((double) result.pulled()));
    }
}
