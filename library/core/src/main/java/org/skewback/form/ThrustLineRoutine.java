package org.skewback.form;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * The line of thrust of a three-hinged arch of a given kind of axis, with springings at one level,
 * as a routine; see {@link ThrustLine}.
 */
public final class ThrustLineRoutine
        implements Routine<ThrustLineRoutine.Input, ThrustLineRoutine.Output> {

    /** Makes the routine. */
    public ThrustLineRoutine() {}

    /**
     * The arch and its load.
     *
     * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular arc}
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     * @param hinge position of the third hinge from the left springing
     * @param positions positions of the point loads from the left springing
     * @param loads point loads, positive downward, one for each position
     * @param onPlan load per plan length all over the span; 0 kN/m for none
     * @param onAxis load per length of axis all along it; 0 kN/m for none
     */
    public record Input(
            String axis,
            Quantity span,
            Quantity rise,
            Quantity hinge,
            List<Quantity> positions,
            List<Quantity> loads,
            Quantity onPlan,
            Quantity onAxis) {

        /**
         * Copies the lists.
         *
         * @param axis kind of axis
         * @param span level distance between the springings
         * @param rise height of the crown above the springings
         * @param hinge position of the third hinge from the left springing
         * @param positions positions of the point loads from the left springing
         * @param loads point loads, positive downward, one for each position
         * @param onPlan load per plan length all over the span
         * @param onAxis load per length of axis all along it
         */
        public Input {
            positions = List.copyOf(positions);
            loads = List.copyOf(loads);
        }
    }

    /**
     * The line of thrust.
     *
     * @param thrust thrust
     * @param leftVertical vertical force at the left springing, positive upward
     * @param rightVertical vertical force at the right springing, positive upward
     * @param eccentricity largest vertical distance from the axis in magnitude, positive above it
     * @param eccentricityAt position of that distance from the left springing
     * @param moment bending moment there, sagging positive
     * @param normalEccentricity largest distance from the axis along its normal in magnitude
     * @param normalEccentricityAt position of that distance from the left springing
     */
    public record Output(
            Quantity thrust,
            Quantity leftVertical,
            Quantity rightVertical,
            Quantity eccentricity,
            Quantity eccentricityAt,
            Quantity moment,
            Quantity normalEccentricity,
            Quantity normalEccentricityAt) {}

    @Override
    public String name() {
        return "form.thrustline";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        double span = Require.positive("span", input.span().in("m"), "m");
        Axis axis = Axis.ofKind(input.axis(), span, input.rise().in("m"));
        VerticalLoad load =
                RoutineLoads.of(
                        input.positions(), input.loads(), input.onPlan(), input.onAxis(), span);
        ThrustLine line = ThrustLine.inThreeHinged(axis, load, input.hinge().in("m"));
        SpringingForces springings = line.springings();
        Deviation vertical = line.largestEccentricity();
        Deviation normal = line.largestNormalEccentricity();
        return new Output(
                Quantity.of(springings.thrust(), "N"),
                Quantity.of(springings.leftVertical(), "N"),
                Quantity.of(springings.rightVertical(), "N"),
                Quantity.of(vertical.value(), "m"),
                Quantity.of(vertical.x(), "m"),
                Quantity.of(line.thrust() * vertical.value(), "N·m"),
                Quantity.of(normal.value(), "m"),
                Quantity.of(normal.x(), "m"));
    }
}
