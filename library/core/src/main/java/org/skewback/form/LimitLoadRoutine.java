package org.skewback.form;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * The largest weight at one point that an arch without tension bears beside its own weight, as a
 * routine; see {@link LimitLoad}, with its assumptions.
 */
public final class LimitLoadRoutine
        implements Routine<LimitLoadRoutine.Input, LimitLoadRoutine.Output> {

    /** Makes the routine. */
    public LimitLoadRoutine() {}

    /**
     * The arch and where the weight stands.
     *
     * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular arc}
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     * @param depth depth of the arch square to its axis, greater than 0
     * @param onAxis own weight per length of axis, greater than 0
     * @param position place of the weight from the left springing, strictly within the span
     */
    public record Input(
            String axis,
            Quantity span,
            Quantity rise,
            Quantity depth,
            Quantity onAxis,
            Quantity position) {}

    /**
     * The largest weight, and where the arch then opens.
     *
     * @param load largest weight
     * @param thrust thrust at that weight
     * @param hinges places of the sections that open, from left to right
     */
    public record Output(Quantity load, Quantity thrust, List<Quantity> hinges) {

        /**
         * Keeps a copy, so that nobody can change it from outside.
         *
         * @param load largest weight
         * @param thrust thrust at that weight
         * @param hinges places of the sections that open, from left to right
         */
        public Output {
            hinges = List.copyOf(hinges);
        }
    }

    @Override
    public String name() {
        return "form.limitload";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        double span = Require.positive("span", input.span().in("m"), "m");
        Axis axis = Axis.ofKind(input.axis(), span, input.rise().in("m"));
        double weight = Require.positive("weight of the arch", input.onAxis().in("N/m"), "N/m");
        double place =
                Require.within("place of the weight", input.position().in("m"), 0, span, "m");
        LimitLoad found =
                LimitLoad.of(
                        axis,
                        input.depth().in("m"),
                        new AxisLoad(0, span, weight),
                        new PointLoad(place, 1));
        return new Output(
                Quantity.of(found.factor(), "N"),
                Quantity.of(found.thrust(), "N"),
                found.hinges().stream().map(hinge -> Quantity.of(hinge.x(), "m")).toList());
    }
}
