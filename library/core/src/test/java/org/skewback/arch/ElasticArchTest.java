package org.skewback.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.skewback.arch.Refused.assertRefused;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.form.Axis;
import org.skewback.form.Catenary;
import org.skewback.form.CircularArc;
import org.skewback.form.Parabola;
import org.skewback.form.VerticalLoad;

class ElasticArchTest {

    private static final double E = 210e9;

    /** Maxwell and Betti: what a load at a does at b, the same load at b does at a. */
    @Property(tries = 40)
    void deflectionsAreReciprocal(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double a,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double b,
            @ForAll @DoubleRange(min = 0.08, max = 0.5) double rise,
            @ForAll boolean fixed) {
        ElasticArch arch = arch(new Parabola(100, 100 * rise), fixed);
        double there = arch.under(VerticalLoad.point(1e6, 100 * a)).deflection(100 * b);
        double back = arch.under(VerticalLoad.point(1e6, 100 * b)).deflection(100 * a);

        double size = arch.under(VerticalLoad.point(1e6, 100 * a)).deflection(100 * a);
        assertEquals(back, there, 1e-9 * Math.abs(size) + 1e-12);
    }

    /** Reactions hold the load, and turn about the left springing with it. */
    @Property(tries = 40)
    void reactionsAreInEquilibrium(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double a,
            @ForAll @DoubleRange(min = -20, max = 20) double level,
            @ForAll boolean fixed) {
        ElasticArch arch = arch(new Parabola(100, 20, level), fixed);
        ArchForces forces = arch.under(VerticalLoad.point(1e6, 100 * a));

        assertEquals(1e6, forces.leftVertical() + forces.rightVertical(), 1e-6);
        double turning =
                -forces.leftMoment()
                        + forces.rightMoment()
                        + 100 * forces.rightVertical()
                        + level * forces.thrust()
                        - 1e6 * 100 * a;
        assertEquals(0, turning, 1e-3);
    }

    /** An arch and its load in a mirror have mirrored forces. */
    @Property(tries = 30)
    void mirroredLoadsHaveMirroredForces(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double a,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double x,
            @ForAll boolean fixed) {
        ElasticArch arch = arch(Catenary.ofRise(100, 25), fixed);
        ArchForces forces = arch.under(VerticalLoad.point(1e6, 100 * a));
        ArchForces mirrored = arch.under(VerticalLoad.point(1e6, 100 * (1 - a)));

        assertEquals(mirrored.thrust(), forces.thrust(), 1e-4);
        assertEquals(mirrored.rightMoment(), forces.leftMoment(), 1e-2);
        assertEquals(mirrored.moment(100 * (1 - x)), forces.moment(100 * x), 1e-2);
    }

    /** Forces of two loads add. */
    @Property(tries = 30)
    void loadsAdd(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double a,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double b,
            @ForAll boolean fixed) {
        ElasticArch arch = arch(new CircularArc(100, 30), fixed);
        VerticalLoad first = VerticalLoad.point(1e6, 100 * a);
        VerticalLoad second = VerticalLoad.uniform(2e4, 0, 100 * b);

        assertEquals(
                arch.under(first).thrust() + arch.under(second).thrust(),
                arch.under(first.and(second)).thrust(),
                1e-4);
    }

    /** A rib that follows the line of thrust and does not shorten has no moments. */
    @Test
    void anInextensibleParabolaUnderALoadOnPlanIsFreeOfMoments() {
        Parabola axis = new Parabola(336, 72);
        for (Springings springings : Springings.values()) {
            ArchForces forces =
                    new ElasticArch(
                                    axis,
                                    RibStiffness.uniform(20 * E, Double.POSITIVE_INFINITY),
                                    springings)
                            .under(VerticalLoad.uniform(148e3, 0, 336));

            assertEquals(148e3 * 336 * 336 / (8 * 72), forces.thrust(), 1e-4);
            assertEquals(0, forces.moment(84), 1e-2);
            assertEquals(0, forces.leftMoment(), 1e-2);
            assertEquals(0, forces.deflection(168), 1e-12);
        }
    }

    /** The influence line of the thrust encloses the thrust of a load all over. */
    @Test
    void theInfluenceLineEnclosesTheThrustOfAUniformLoad() {
        ElasticArch arch = arch(new Parabola(100, 20), true);
        double sum = 0;
        int parts = 400;
        List<Double> positions =
                IntStream.range(0, parts).mapToObj(i -> (i + 0.5) * 100 / parts).toList();
        for (ArchForces ordinate : arch.influence(positions)) {
            sum += ordinate.thrust() * 100 / parts;
        }

        assertEquals(arch.under(VerticalLoad.uniform(1, 0, 100)).thrust(), sum, 1e-3);
    }

    /** Turning a springing does the work that the moment there would do on a load (Müller-Breslau). */
    @Property(tries = 20)
    void aTurnedSpringingDrawsTheInfluenceLineOfItsMoment(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double a) {
        ElasticArch arch = arch(new Parabola(100, 20), true);
        VerticalLoad none = VerticalLoad.together(List.of());
        double lowered =
                arch.under(none, new SpringingMovement(0, 0, 0, 1e-3, 0)).deflection(100 * a);
        double moment = arch.under(VerticalLoad.point(1, 100 * a)).leftMoment();

        // Betti: the load sinks by v while the springing, which holds −M_A counter-clockwise, turns
        // by φ.
        assertEquals(moment * 1e-3, lowered, 1e-12);
    }

    @Test
    void badInputIsNamed() {
        Parabola axis = new Parabola(100, 20);

        assertRefused(() -> RibStiffness.uniform(-1, 1), "bending stiffness is -1.0 N·m²");
        assertRefused(() -> RibStiffness.uniform(1, Double.NaN), "axial stiffness is NaN N");
        assertRefused(
                () ->
                        new ElasticArch(
                                axis,
                                new RibStiffness(x -> x < 50 ? 1 : -1, x -> 1),
                                Springings.FIXED),
                "bending stiffness at x = ");
        assertRefused(
                () ->
                        arch(axis, false)
                                .under(
                                        VerticalLoad.point(1, 50),
                                        new SpringingMovement(0, 0, 0, 0.1, 0)),
                "rotation of a springing is 0.1 rad");
        assertRefused(() -> arch(axis, false).under(VerticalLoad.point(1, 101)), "101");
        assertRefused(
                () -> SpringingMovement.spread(Double.NaN), "spread of the springings is NaN m");
    }

    private static ElasticArch arch(Axis axis, boolean fixed) {
        return new ElasticArch(
                axis,
                RibStiffness.growing(axis, 2 * E, 0.5 * E),
                fixed ? Springings.FIXED : Springings.PINNED);
    }
}
