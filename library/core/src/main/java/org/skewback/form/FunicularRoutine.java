package org.skewback.form;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * The funicular of point loads, a load uniform on plan and one uniform along the line, through a
 * given point, as a routine; see {@link FunicularCurve}.
 */
public final class FunicularRoutine
        implements Routine<FunicularRoutine.Input, FunicularRoutine.Output> {

    /** Makes the routine. */
    public FunicularRoutine() {}

    /**
     * What the funicular is sought for.
     *
     * @param positions positions of the point loads from the left springing
     * @param loads point loads, positive downward, one for each position
     * @param onPlan load per plan length all over the span; 0 kN/m for none
     * @param onAxis load per length of the funicular all along it; 0 kN/m for none
     * @param span level distance between the springings, greater than 0
     * @param rightLevel height of the right springing above the left one
     * @param risePosition position of the point that the funicular passes
     * @param rise height of that point above the left springing
     */
    public record Input(
            List<Quantity> positions,
            List<Quantity> loads,
            Quantity onPlan,
            Quantity onAxis,
            Quantity span,
            Quantity rightLevel,
            Quantity risePosition,
            Quantity rise) {

        /**
         * Copies the lists.
         *
         * @param positions positions of the point loads from the left springing
         * @param loads point loads, positive downward, one for each position
         * @param onPlan load per plan length all over the span
         * @param onAxis load per length of the funicular all along it
         * @param span level distance between the springings
         * @param rightLevel height of the right springing above the left one
         * @param risePosition position of the point that the funicular passes
         * @param rise height of that point above the left springing
         */
        public Input {
            positions = List.copyOf(positions);
            loads = List.copyOf(loads);
        }

        /**
         * Takes point loads alone, between springings at one level.
         *
         * @param positions positions of the point loads from the left springing
         * @param loads point loads, positive downward, one for each position
         * @param span level distance between the springings, greater than 0
         * @param risePosition position of the point that the funicular passes
         * @param rise height of that point above the springings
         * @return the input
         */
        public static Input ofPointLoads(
                List<Quantity> positions,
                List<Quantity> loads,
                Quantity span,
                Quantity risePosition,
                Quantity rise) {
            Quantity none = Quantity.of(0, "kN/m");
            return new Input(
                    positions, loads, none, none, span, Quantity.of(0, "m"), risePosition, rise);
        }
    }

    /**
     * The funicular.
     *
     * @param thrust horizontal component of the force along it
     * @param leftVertical vertical force at the left springing, positive upward
     * @param rightVertical vertical force at the right springing, positive upward
     * @param length length along the funicular
     * @param ordinates heights above the left springing at the positions of the point loads
     */
    public record Output(
            Quantity thrust,
            Quantity leftVertical,
            Quantity rightVertical,
            Quantity length,
            List<Quantity> ordinates) {}

    @Override
    public String name() {
        return "form.funicular";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        double span = Require.positive("span", input.span().in("m"), "m");
        VerticalLoad load =
                RoutineLoads.of(
                        input.positions(), input.loads(), input.onPlan(), input.onAxis(), span);
        FunicularCurve line =
                FunicularCurve.through(
                        load,
                        span,
                        input.rightLevel().in("m"),
                        input.risePosition().in("m"),
                        input.rise().in("m"));
        SpringingForces springings = line.springings();
        return new Output(
                Quantity.of(springings.thrust(), "N"),
                Quantity.of(springings.leftVertical(), "N"),
                Quantity.of(springings.rightVertical(), "N"),
                Quantity.of(line.arcLength(), "m"),
                input.positions().stream().map(x -> Quantity.of(line.y(x.in("m")), "m")).toList());
    }
}
