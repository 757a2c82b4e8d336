package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The limit load of an arch without tension. */
class LimitLoadTest {

    private static final double SPAN = 20;

    @Property(tries = 15)
    void theLimitLoadGrowsWithTheDepth(
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double at,
            @ForAll @DoubleRange(min = 0.3, max = 1.2) double depth) {
        VerticalLoad weight = VerticalLoad.onAxis(20e3, 0, SPAN);
        VerticalLoad force = VerticalLoad.point(1e3, at * SPAN);
        Axis axis = new CircularArc(SPAN, 5);
        double thin = LimitLoad.of(axis, depth, weight, force).factor();
        double thick = LimitLoad.of(axis, 1.1 * depth, weight, force).factor();
        assertTrue(thick > thin * 1.05, thin + " and " + thick);
    }

    @Property(tries = 10)
    void theFactorFollowsTheSteadyLoadAndNotTheUnit(
            @ForAll @DoubleRange(min = 0.1, max = 10) double steady,
            @ForAll @DoubleRange(min = 0.1, max = 10) double pattern) {
        VerticalLoad weight = VerticalLoad.uniform(20e3, 0, SPAN);
        VerticalLoad force = VerticalLoad.point(1e3, 5);
        Axis axis = new Parabola(SPAN, 5);
        double factor = LimitLoad.of(axis, 0.6, weight, force).factor();
        double scaled =
                LimitLoad.of(axis, 0.6, weight.times(steady), force.times(pattern)).factor();
        assertNear(factor * steady / pattern, scaled, 1e-8);
    }

    @Property(tries = 15)
    void theWorkOfTheMechanismGivesTheSameFactor(
            @ForAll @DoubleRange(min = 0.15, max = 0.45) double at,
            @ForAll @DoubleRange(min = 0.4, max = 1.2) double depth) {
        // The kinematic theorem, an argument apart from the programme: the four hinges named make
        // a mechanism, and the loads do no work in it.
        Axis axis = new Parabola(SPAN, 5);
        VerticalLoad weight = VerticalLoad.uniform(20e3, 0, SPAN);
        PointLoad force = new PointLoad(at * SPAN, 1e3);
        LimitLoad limit = LimitLoad.of(axis, depth, weight, force);
        assertEquals(4, limit.hinges().size());
        for (int i = 1; i < 4; i++) {
            assertTrue(limit.hinges().get(i).face() != limit.hinges().get(i - 1).face());
        }
        assertNear(Mechanism.of(axis, depth, limit).factor(20e3, force), limit.factor(), 1e-5);
    }

    @Test
    void aForceAtTheCrownOfASymmetricArchOpensFiveHinges() {
        LimitLoad limit =
                LimitLoad.of(
                        new Parabola(SPAN, 5),
                        0.6,
                        VerticalLoad.uniform(20e3, 0, SPAN),
                        VerticalLoad.point(1e3, SPAN / 2));
        assertEquals(5, limit.hinges().size());
        for (int i = 0; i < 5; i++) {
            assertEquals(SPAN, limit.hinges().get(i).x() + limit.hinges().get(4 - i).x(), 1e-9);
        }
    }

    /**
     * Three stiff pieces between four hinges, moving as the first turns by 1.
     *
     * @param section positions of the four hinge sections
     * @param centre position of the centre about which each piece turns
     * @param turn rotation of each piece
     */
    private record Mechanism(List<Double> section, List<Double> centre, List<Double> turn) {

        static Mechanism of(Axis axis, double depth, LimitLoad limit) {
            List<Double> section = limit.hinges().stream().map(LimitLoad.Hinge::x).toList();
            double[] x = new double[4];
            double[] y = new double[4];
            for (int i = 0; i < 4; i++) {
                LimitLoad.Hinge hinge = limit.hinges().get(i);
                double side = hinge.face() == LimitLoad.Face.EXTRADOS ? depth / 2 : -depth / 2;
                x[i] = hinge.x() - side * StrictMath.sin(axis.angle(hinge.x()));
                y[i] = axis.y(hinge.x()) + side * StrictMath.cos(axis.angle(hinge.x()));
            }
            // The middle piece turns about the point where the lines of the outer two meet.
            double left = (y[1] - y[0]) / (x[1] - x[0]);
            double right = (y[3] - y[2]) / (x[3] - x[2]);
            double meet = (y[3] - y[0] + left * x[0] - right * x[3]) / (left - right);
            double middle = (x[1] - x[0]) / (x[1] - meet);
            double last = middle * (x[2] - meet) / (x[2] - x[3]);
            return new Mechanism(section, List.of(x[0], meet, x[3]), List.of(1.0, middle, last));
        }

        /** Factor of the force whose work cancels that of a load uniform on plan. */
        double factor(double uniform, PointLoad force) {
            double steady = 0;
            double pattern = 0;
            for (int i = 0; i < 3; i++) {
                double from = section.get(i);
                double to = section.get(i + 1);
                steady += uniform * turn.get(i) * (to - from) * ((to + from) / 2 - centre.get(i));
                // A force at a hinge section belongs to the piece on its left.
                if (force.position() > from && force.position() <= to) {
                    pattern += force.force() * turn.get(i) * (force.position() - centre.get(i));
                }
            }
            return -steady / pattern;
        }
    }

    @Test
    void theProgrammeFindsTheLeastThicknessOfTheSemicircle() {
        // With the weight on the middle of the ring, as all loads here act on the axis.
        double least = MasonrySemicircle.weightOnMiddle().thickness();
        Axis ring = CircularArc.semicircle(1);
        VerticalLoad weight = VerticalLoad.onAxis(1, 0, 2);
        VerticalLoad force = VerticalLoad.point(1, 1);
        assertTrue(LimitLoad.of(ring, least + 2e-6, weight, force).factor() >= 0);
        LoadNotCarriedException fallen =
                assertThrows(
                        LoadNotCarriedException.class,
                        () -> LimitLoad.of(ring, least - 2e-6, weight, force));
        assertEquals(
                "The arch does not stand under its steady load: no line of thrust lies within its"
                        + " depth.",
                fallen.getMessage());
    }

    @Test
    void aPatternThatTheAxisFitsHasNoLimit() {
        LoadNotCarriedException unlimited =
                assertThrows(
                        LoadNotCarriedException.class,
                        () ->
                                LimitLoad.of(
                                        new Parabola(SPAN, 5),
                                        0.5,
                                        VerticalLoad.uniform(2e3, 0, SPAN),
                                        VerticalLoad.uniform(1e3, 0, SPAN)));
        assertEquals(
                "The load pattern has no limit: a line of thrust lies within the depth even under"
                        + " 1000.0 times the steady load.",
                unlimited.getMessage());
    }

    @Test
    void badInputIsRefusedByName() {
        Axis axis = new Parabola(SPAN, 5);
        VerticalLoad load = VerticalLoad.uniform(2e3, 0, SPAN);
        IllegalArgumentException refused =
                assertThrows(
                        IllegalArgumentException.class, () -> LimitLoad.of(axis, -0.5, load, load));
        assertEquals(
                "depth of the section is -0.5 m; allowed is a finite number greater than 0.",
                refused.getMessage());
        refused =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> LimitLoad.of(axis, 0.5, load, load.times(-1)));
        assertEquals(
                "sum of the load pattern is -40000.0 N; allowed is a finite number greater than 0.",
                refused.getMessage());
    }
}
