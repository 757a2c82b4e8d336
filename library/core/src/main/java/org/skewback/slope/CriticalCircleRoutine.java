package org.skewback.slope;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The slip circle of least factor of safety, as a routine; see {@link CriticalCircle}. */
public final class CriticalCircleRoutine
        implements Routine<SectionInput, CriticalCircleRoutine.Output> {

    /** Makes the routine. */
    public CriticalCircleRoutine() {}

    /**
     * The circle.
     *
     * @param factor least factor of safety
     * @param x position of the centre
     * @param y height of the centre
     * @param radius radius
     * @param left x of the left end
     * @param right x of the right end
     */
    public record Output(
            Quantity factor,
            Quantity x,
            Quantity y,
            Quantity radius,
            Quantity left,
            Quantity right) {}

    @Override
    public String name() {
        return "slope.criticalCircle";
    }

    @Override
    public int edition() {
        return 2;
    }

    @Override
    public Output run(SectionInput input, Stop stop) {
        CriticalCircle found =
                CriticalCircle.search(input.section(), input.window(), input.by(), 1, stop);
        return new Output(
                Quantity.of(found.factor()),
                Quantity.of(found.circle().x(), "m"),
                Quantity.of(found.circle().y(), "m"),
                Quantity.of(found.circle().radius(), "m"),
                Quantity.of(found.left(), "m"),
                Quantity.of(found.right(), "m"));
    }
}
