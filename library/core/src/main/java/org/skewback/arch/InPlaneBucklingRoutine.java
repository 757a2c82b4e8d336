package org.skewback.arch;

import org.skewback.form.Axis;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** Buckling of an arch in its plane as a routine; see {@link InPlaneBuckling} for the load. */
public final class InPlaneBucklingRoutine
        implements Routine<InPlaneBucklingRoutine.Input, InPlaneBucklingRoutine.Output> {

    /** Makes the routine. */
    public InPlaneBucklingRoutine() {}

    /**
     * The arch, springings at one level.
     *
     * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular arc}
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     * @param hinges {@code fixed}, {@code one-hinged}, {@code two-hinged} or {@code three-hinged}
     * @param modulus modulus of elasticity, greater than 0
     * @param secondMoment second moment of area at the crown, greater than 0
     * @param growth {@code uniform}, or {@code growing} for {@code I = I_c sec θ}
     */
    public record Input(
            String axis,
            Quantity span,
            Quantity rise,
            String hinges,
            Quantity modulus,
            Quantity secondMoment,
            String growth) {}

    /**
     * The lowest buckling load.
     *
     * @param thrust thrust at which the arch buckles
     * @param springingForce axial force at a springing then
     * @param lengthFactor β of {@code N = (π/(β s))² E I_c}, with that force and half the length s of the
     *     axis, the convention of EN 1993-2, annex D.3.2 (from memory)
     * @param quarterLengthFactor the same with the axial force in the quarter point
     */
    public record Output(
            Quantity thrust,
            Quantity springingForce,
            Quantity lengthFactor,
            Quantity quarterLengthFactor) {}

    @Override
    public String name() {
        return "arch.inplanebuckling";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Axis axis = Axis.ofKind(input.axis(), input.span().in("m"), input.rise().in("m"));
        double bending = input.modulus().in("Pa") * input.secondMoment().in("m⁴");
        Require.positive("bending stiffness", bending, "N·m²");
        RibStiffness stiffness =
                RibStiffness.ofGrowth(input.growth(), axis, bending, Double.POSITIVE_INFINITY);
        double thrust =
                new InPlaneBuckling(
                                axis,
                                stiffness.bending(),
                                ArchHinges.ofWords(input.hinges()),
                                axis.span() / 2)
                        .modes(1)
                        .get(0)
                        .thrust();
        double atSpringing = thrust * StrictMath.hypot(1, axis.slope(0));
        double atQuarter = thrust * StrictMath.hypot(1, axis.slope(axis.span() / 4));
        double half = axis.arcLength() / 2;
        return new Output(
                Quantity.of(thrust, "N"),
                Quantity.of(atSpringing, "N"),
                Quantity.of(lengthFactor(atSpringing, half, bending)),
                Quantity.of(lengthFactor(atQuarter, half, bending)));
    }

    private static double lengthFactor(double force, double half, double bending) {
        return StrictMath.PI / half * Math.sqrt(bending / force);
    }
}
