package org.skewback.slope;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * The anchor force for a wanted factor of safety, as a routine; see {@link AnchorDemand}. The input
 * has a window, at least one anchor, and the wanted factor.
 */
public final class AnchorDemandRoutine
        implements Routine<SectionInput, AnchorDemandRoutine.Output> {

    /** Makes the routine. */
    public AnchorDemandRoutine() {}

    /**
     * What is found.
     *
     * @param multiplier factor on the force of every anchor; 0 where none is needed
     * @param factor least factor of safety with these forces
     * @param x position of the centre of the worst circle then
     * @param y height of its centre
     * @param radius its radius
     * @param bondsBehind number of anchors whose whole bond lies behind it
     */
    public record Output(
            Quantity multiplier,
            Quantity factor,
            Quantity x,
            Quantity y,
            Quantity radius,
            Quantity bondsBehind) {}

    @Override
    public String name() {
        return "slope.anchorDemand";
    }

    @Override
    public int edition() {
        return 2;
    }

    @Override
    public Output run(SectionInput input, Stop stop) {
        AnchorDemand found =
                AnchorDemand.of(
                        input.section(), input.window(), input.by(), input.wantedFactor(), stop);
        CriticalCircle critical = found.critical();
        return new Output(
                Quantity.of(found.multiplier()),
                Quantity.of(critical.factor()),
                Quantity.of(critical.circle().x(), "m"),
                Quantity.of(critical.circle().y(), "m"),
                Quantity.of(critical.circle().radius(), "m"),
                Quantity.of(
                        (double)
                                found.reaches().stream()
                                        .filter(AnchorDemand.Reach::bondBehind)
                                        .count()));
    }
}
