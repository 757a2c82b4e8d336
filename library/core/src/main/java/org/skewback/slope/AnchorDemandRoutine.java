package org.skewback.slope;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The anchor force for a wanted factor of safety, as a routine; see {@link AnchorDemand}. */
public final class AnchorDemandRoutine
        implements Routine<AnchorDemandRoutine.Input, AnchorDemandRoutine.Output> {

    /** Makes the routine. */
    public AnchorDemandRoutine() {}

    /**
     * A section with anchors, the window to look in, and what is wanted; see {@link SectionInput}
     * for what the values stand for.
     *
     * @param ground ground line
     * @param layers layers, five values each
     * @param bottoms bottoms of the layers
     * @param bottomPoints number of points of each bottom
     * @param water water table
     * @param earthquake coefficients, level and upward
     * @param crack depth of the tension crack, and of the water in it
     * @param surcharges surcharges, three values each
     * @param forces forces, four values each
     * @param anchors anchors, six values each, whose forces are multiplied
     * @param passiveAnchors convention of the anchors
     * @param window least and greatest x of the left end and of the right end
     * @param method name of the method
     * @param slices number of slices, about
     * @param wanted wanted factor of safety
     */
    public record Input(
            List<Quantity> ground,
            List<Quantity> layers,
            List<Quantity> bottoms,
            List<Quantity> bottomPoints,
            List<Quantity> water,
            List<Quantity> earthquake,
            List<Quantity> crack,
            List<Quantity> surcharges,
            List<Quantity> forces,
            List<Quantity> anchors,
            boolean passiveAnchors,
            List<Quantity> window,
            String method,
            int slices,
            Quantity wanted) {

        /**
         * Makes the input from a section.
         *
         * @param section the section, with a window and at least one anchor
         * @param wanted wanted factor of safety, greater than 0
         * @return the input
         */
        public static Input of(SectionInput section, Quantity wanted) {
            return new Input(
                    section.ground(),
                    section.layers(),
                    section.bottoms(),
                    section.bottomPoints(),
                    section.water(),
                    section.earthquake(),
                    section.crack(),
                    section.surcharges(),
                    section.forces(),
                    section.anchors(),
                    section.passiveAnchors(),
                    section.where(),
                    section.method(),
                    section.slices(),
                    wanted);
        }

        private SectionInput section() {
            return new SectionInput(
                    ground,
                    layers,
                    bottoms,
                    bottomPoints,
                    water,
                    earthquake,
                    crack,
                    surcharges,
                    forces,
                    anchors,
                    passiveAnchors,
                    window,
                    method,
                    slices);
        }
    }

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
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        SectionInput section = input.section();
        double[] window = section.place(4);
        AnchorDemand found =
                AnchorDemand.of(
                        section.section(),
                        SearchWindow.of(window[0], window[1], window[2], window[3])
                                .sliced(section.slices()),
                        section.by(),
                        input.wanted().in(""),
                        stop);
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
