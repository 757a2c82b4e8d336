package org.skewback.arch;

import java.util.List;
import org.skewback.form.Axis;
import org.skewback.form.RoutineLoads;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** An elastic arch between springings at one level, as a routine; see {@link ElasticArch}. */
public final class ElasticArchRoutine
        implements Routine<ElasticArchRoutine.Input, ElasticArchRoutine.Output> {

    /** Makes the routine. */
    public ElasticArchRoutine() {}

    /**
     * The arch, its load and what moves it.
     *
     * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular arc}
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     * @param hinges {@code fixed} or {@code two-hinged}
     * @param modulus modulus of elasticity, greater than 0
     * @param secondMoment second moment of area at the crown, greater than 0
     * @param growth {@code uniform}, or {@code growing} for {@code I = I_c sec θ}
     * @param area area of the rib, the same all along; 0 where its shortening is left out
     * @param positions positions of the point loads from the left springing
     * @param loads point loads, positive downward, one for each position
     * @param onPlan load per plan length all over the span; 0 kN/m for none
     * @param onAxis load per length of axis all along it; 0 kN/m for none
     * @param strain free strain of the rib, α ΔT; 0 for none
     * @param spread how far the springings move apart; 0 m for none
     */
    public record Input(
            String axis,
            Quantity span,
            Quantity rise,
            String hinges,
            Quantity modulus,
            Quantity secondMoment,
            String growth,
            Quantity area,
            List<Quantity> positions,
            List<Quantity> loads,
            Quantity onPlan,
            Quantity onAxis,
            Quantity strain,
            Quantity spread) {

        /**
         * Copies the lists.
         *
         * @param axis kind of axis
         * @param span level distance between the springings
         * @param rise height of the crown above the springings
         * @param hinges {@code fixed} or {@code two-hinged}
         * @param modulus modulus of elasticity
         * @param secondMoment second moment of area at the crown
         * @param growth {@code uniform} or {@code growing}
         * @param area area of the rib
         * @param positions positions of the point loads from the left springing
         * @param loads point loads, positive downward, one for each position
         * @param onPlan load per plan length all over the span
         * @param onAxis load per length of axis all along it
         * @param strain free strain of the rib
         * @param spread how far the springings move apart
         */
        public Input {
            positions = List.copyOf(positions);
            loads = List.copyOf(loads);
        }
    }

    /**
     * Forces and deflections.
     *
     * @param thrust thrust, inward positive
     * @param leftVertical vertical reaction of the left springing, upward positive
     * @param rightVertical vertical reaction of the right springing, upward positive
     * @param leftMoment moment at the left springing, sagging positive
     * @param rightMoment moment at the right springing, sagging positive
     * @param crownMoment moment at midspan, sagging positive
     * @param crownForce axial force at midspan, compression positive
     * @param crownDeflection vertical deflection at midspan, downward positive
     * @param momentsAtLoads moments under the point loads, in their order
     */
    public record Output(
            Quantity thrust,
            Quantity leftVertical,
            Quantity rightVertical,
            Quantity leftMoment,
            Quantity rightMoment,
            Quantity crownMoment,
            Quantity crownForce,
            Quantity crownDeflection,
            List<Quantity> momentsAtLoads) {

        /**
         * Copies the list.
         *
         * @param thrust thrust
         * @param leftVertical vertical reaction of the left springing
         * @param rightVertical vertical reaction of the right springing
         * @param leftMoment moment at the left springing
         * @param rightMoment moment at the right springing
         * @param crownMoment moment at midspan
         * @param crownForce axial force at midspan
         * @param crownDeflection vertical deflection at midspan
         * @param momentsAtLoads moments under the point loads
         */
        public Output {
            momentsAtLoads = List.copyOf(momentsAtLoads);
        }
    }

    @Override
    public String name() {
        return "arch.elastic";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Axis axis = Axis.ofKind(input.axis(), input.span().in("m"), input.rise().in("m"));
        double modulus = Require.positive("modulus of elasticity", input.modulus().in("Pa"), "Pa");
        double bending =
                modulus
                        * Require.positive(
                                "second moment of area", input.secondMoment().in("m⁴"), "m⁴");
        double area = input.area().in("m²");
        double axial =
                area == 0
                        ? Double.POSITIVE_INFINITY
                        : modulus * Require.positive("area", area, "m²");
        ElasticArch arch =
                new ElasticArch(
                        axis,
                        RibStiffness.ofGrowth(input.growth(), axis, bending, axial),
                        Springings.ofWords(input.hinges()));
        ArchForces forces =
                arch.under(
                        RoutineLoads.of(
                                input.positions(),
                                input.loads(),
                                input.onPlan(),
                                input.onAxis(),
                                axis.span()),
                        new SpringingMovement(
                                input.strain().in(""), input.spread().in("m"), 0, 0, 0));
        double crown = axis.span() / 2;
        return new Output(
                Quantity.of(forces.thrust(), "N"),
                Quantity.of(forces.leftVertical(), "N"),
                Quantity.of(forces.rightVertical(), "N"),
                Quantity.of(forces.leftMoment(), "N·m"),
                Quantity.of(forces.rightMoment(), "N·m"),
                Quantity.of(forces.moment(crown), "N·m"),
                Quantity.of(forces.axial(crown), "N"),
                Quantity.of(forces.deflection(crown), "m"),
                input.positions().stream()
                        .map(x -> Quantity.of(forces.moment(x.in("m")), "N·m"))
                        .toList());
    }
}
