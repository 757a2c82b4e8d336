package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Laws of the funicular: equilibrium, mirror, scale, superposition, and its known shapes. */
class FunicularCurveTest {

    private static final double SPAN = 90;

    @Provide
    Arbitrary<VerticalLoad> planLoads() {
        return RandomLoads.onPlan(SPAN);
    }

    @Provide
    Arbitrary<VerticalLoad> loads() {
        return RandomLoads.withWeight(SPAN);
    }

    @Property(tries = 200)
    void theSpringingsHoldTheLoadInForceAndMoment(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double at,
            @ForAll @DoubleRange(min = 5, max = 60) double rise,
            @ForAll @DoubleRange(min = -30, max = 30) double level) {
        double x = at * SPAN;
        FunicularCurve line = FunicularCurve.through(load, SPAN, level, x, level * at + rise);
        SpringingForces forces = line.springings();
        double force = 0;
        double moment = 0;
        for (VerticalLoad part : load.parts()) {
            if (part instanceof PointLoad point) {
                force += point.force();
                moment += point.force() * point.position();
            } else if (part instanceof LineLoad plan) {
                double length = plan.to() - plan.from();
                force += (plan.atFrom() + plan.atTo()) / 2 * length;
                moment +=
                        plan.atFrom() * length / 2 * (plan.from() + length / 3)
                                + plan.atTo() * length / 2 * (plan.to() - length / 3);
            } else if (part instanceof AxisLoad along) {
                force += along.intensity() * line.arcLength();
                moment += along.intensity() * line.arcMoment(0, SPAN);
            }
        }
        assertNear(force, forces.leftVertical() + forces.rightVertical(), 1e-10);
        assertNear(moment, forces.rightVertical() * SPAN + forces.thrust() * level, 1e-9);
        assertEquals(level * at + rise, line.y(x), 1e-10);
        assertNear(forces.left(), line.force(0), 1e-12);
        assertNear(forces.right(), line.force(SPAN), 1e-12);
    }

    @Property(tries = 200)
    void inAnArchOfItsOwnFunicularTheLoadMakesNoMoment(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double hinge) {
        FunicularCurve axis = FunicularCurve.through(load, SPAN, 4, SPAN / 2, 25);
        ThrustLine line = ThrustLine.inThreeHinged(axis, load, hinge * SPAN);
        assertNear(axis.thrust(), line.thrust(), 1e-10);
        assertEquals(0, line.largestEccentricity().value(), 1e-9);
    }

    @Property(tries = 200)
    void theMirroredLoadDrawsTheMirroredLine(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        FunicularCurve line = FunicularCurve.through(load, SPAN, 0, SPAN / 3, 20);
        FunicularCurve mirrored =
                FunicularCurve.through(
                        RandomLoads.mirrored(load, SPAN), SPAN, 0, SPAN - SPAN / 3, 20);
        assertNear(line.thrust(), mirrored.thrust(), 1e-10);
        assertEquals(line.y(share * SPAN), mirrored.y(SPAN - share * SPAN), 1e-9);
        assertNear(line.springings().leftVertical(), mirrored.springings().rightVertical(), 1e-10);
    }

    @Property(tries = 200)
    void aMultipliedLoadKeepsTheLineAndMultipliesTheThrust(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
        FunicularCurve line = FunicularCurve.through(load, SPAN, 0, SPAN / 2, 20);
        FunicularCurve multiplied =
                FunicularCurve.through(load.times(factor), SPAN, 0, SPAN / 2, 20);
        assertNear(factor * line.thrust(), multiplied.thrust(), 1e-10);
        assertEquals(line.y(17), multiplied.y(17), 1e-9);
    }

    @Property(tries = 200)
    void momentsOfTheBeamSuperpose(
            @ForAll("planLoads") VerticalLoad one,
            @ForAll("planLoads") VerticalLoad other,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double x = share * SPAN;
        double together = SimpleBeam.under(one.and(other), SPAN).moment(x);
        double summed =
                SimpleBeam.under(one, SPAN).moment(x) + SimpleBeam.under(other, SPAN).moment(x);
        assertEquals(
                summed, together, 1e-12 * SimpleBeam.under(one.and(other), SPAN).total() * SPAN);
    }

    @Property(tries = 200)
    void aGivenThrustComesBackFromThePointItPasses(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 2e6, max = 1e8) double thrust) {
        FunicularCurve byThrust = FunicularCurve.ofThrust(load, SPAN, -6, thrust);
        FunicularCurve byPoint = FunicularCurve.through(load, SPAN, -6, 40, byThrust.y(40));
        assertNear(thrust, byPoint.thrust(), 1e-8);
    }

    @Property(tries = 200)
    void theFunicularOfAUniformLoadIsTheParabola(
            @ForAll @DoubleRange(min = 0.01, max = 3) double ratio,
            @ForAll @DoubleRange(min = -1, max = 1) double inclination,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Parabola parabola = new Parabola(SPAN, ratio * SPAN, inclination * SPAN);
        FunicularCurve line =
                FunicularCurve.through(
                        VerticalLoad.uniform(5e4, 0, SPAN),
                        SPAN,
                        inclination * SPAN,
                        SPAN / 2,
                        parabola.y(SPAN / 2));
        assertEquals(parabola.y(share * SPAN), line.y(share * SPAN), 1e-12 * SPAN * (1 + ratio));
        assertNear(5e4 * SPAN / (8 * ratio), line.thrust(), 1e-12);
        assertNear(
                parabola.curvature(share * SPAN).orElseThrow(),
                line.curvature(share * SPAN).orElseThrow(),
                1e-9);
    }

    @Property(tries = 200)
    void theFunicularOfALoadAlongTheAxisIsTheCatenary(
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1.5) double ratio,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double inclination,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Catenary catenary = Catenary.ofRise(SPAN, ratio * SPAN, inclination * SPAN);
        FunicularCurve line =
                FunicularCurve.through(
                        VerticalLoad.onAxis(7e3, 0, SPAN),
                        SPAN,
                        inclination * SPAN,
                        SPAN / 2,
                        catenary.y(SPAN / 2));
        assertNear(7e3 * catenary.parameter(), line.thrust(), 1e-9);
        assertEquals(catenary.y(share * SPAN), line.y(share * SPAN), 1e-9 * SPAN * (1 + ratio));
        assertNear(catenary.arcLength(), line.arcLength(), 1e-9);
        assertNear(
                catenary.curvature(share * SPAN).orElseThrow(),
                line.curvature(share * SPAN).orElseThrow(),
                1e-7);
    }

    /**
     * Expected values by mpmath 1.3 with 20 digits, from the integrals of dx = H dp/(g + w √(1 +
     * p²)) over the slope p.
     */
    @Test
    void aLoadPartlyOnPlanAndPartlyAlongTheAxisAgreesWithItsIntegrals() {
        VerticalLoad load =
                VerticalLoad.uniform(88e3, 0, 336).and(VerticalLoad.onAxis(60e3, 0, 336));
        FunicularCurve line = FunicularCurve.through(load, 336, 0, 168, 72);
        assertNear(29_676_869.190_631_393, line.thrust(), 1e-11);
        assertNear(0.8759867242773978, line.slope(0), 1e-11);
        assertNear(373.7514476370007, line.arcLength(), 1e-11);
    }

    @Test
    void aTallFunicularSettlesToo() {
        VerticalLoad load = VerticalLoad.uniform(5, 0, 100).and(VerticalLoad.onAxis(10, 0, 100));
        FunicularCurve line = FunicularCurve.through(load, 100, 0, 50, 150);
        assertNear(215.00261312383876, line.thrust(), 1e-9);
        assertNear(8.837563587077378, line.slope(0), 1e-9);
    }

    @Test
    void halfOfAnAxisLoadedByWeightLeavesTheOtherHalfStraight() {
        FunicularCurve line =
                FunicularCurve.through(VerticalLoad.onAxis(1e4, 0, 45), SPAN, 0, 45, 20);
        assertEquals(0, line.curvature(70).orElseThrow());
        assertEquals(line.y(67.5), (line.y(45) + line.y(90)) / 2, 1e-12);
        assertNear(line.thrust() * 20, line.springings().rightVertical() * 45, 1e-12);
    }

    @Test
    void pointLoadsDrawAPolygon() {
        VerticalLoad load =
                VerticalLoad.together(
                        List.of(
                                new PointLoad(15, 300e3),
                                new PointLoad(30, 600e3),
                                new PointLoad(45, 450e3)));
        FunicularCurve line = FunicularCurve.through(load, 60, 0, 30, 12);
        FunicularPolygon polygon = FunicularPolygon.of(line);
        assertEquals(5, polygon.vertices().size());
        for (double x = 0; x <= 60; x += 2.5) {
            assertEquals(line.y(x), polygon.y(x), 1e-12);
            assertEquals(line.slope(x), polygon.slope(x), 1e-12);
        }
        assertNear(line.arcLength(), polygon.arcLength(), 1e-13);
        assertTrue(line.curvature(30).isEmpty());
        assertEquals(0, line.curvature(31).orElseThrow());
    }

    @Test
    void whatCannotBeCarriedIsRefused() {
        VerticalLoad load = VerticalLoad.uniform(1e3, 0, 10);
        LoadNotCarriedException sagging =
                assertThrows(
                        LoadNotCarriedException.class,
                        () -> FunicularCurve.through(load, 10, 0, 5, -2));
        assertEquals(
                "No thrust carries the load through the point at x = 5.0 m, -2.0 m above the chord:"
                        + " the moment of the simply supported beam there is 12500.0 N·m, and the"
                        + " two must have the same sign.",
                sagging.getMessage());
        assertThrows(
                LoadNotCarriedException.class,
                () -> FunicularCurve.through(VerticalLoad.together(List.of()), 10, 0, 5, 2));
    }

    @Test
    void badInputIsRefusedByName() {
        VerticalLoad load = VerticalLoad.uniform(1e3, 0, 10);
        assertEquals(
                "end of the loaded range is 10.0 m; allowed is from 0.0 m to 9.0 m.",
                refusal(() -> FunicularCurve.through(load, 9, 0, 5, 2)));
        assertEquals(
                "position of the given point is 10.0 m; allowed is strictly between 0 and 10.0.",
                refusal(() -> FunicularCurve.through(load, 10, 0, 10, 2)));
        assertEquals(
                "thrust is -5.0 N; allowed is a finite number greater than 0.",
                refusal(() -> FunicularCurve.ofThrust(load, 10, 0, -5)));
        assertEquals(
                "point load is NaN N; allowed is a finite number.",
                refusal(() -> VerticalLoad.point(Double.NaN, 3)));
        assertEquals(
                "end of the loaded range is 2.0 m; allowed is more than its begin, 3.0 m.",
                refusal(() -> VerticalLoad.uniform(5, 3, 2)));
        assertEquals(
                "The load has a part per length of axis; name the axis it lies on.",
                refusal(() -> SimpleBeam.under(VerticalLoad.onAxis(5, 0, 2), 2)));
        assertEquals(
                "The funicular is no polygon: part of its load is spread over a length.",
                refusal(() -> FunicularPolygon.of(FunicularCurve.through(load, 10, 0, 5, 2))));
    }

    private static String refusal(Runnable action) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, action::run).getMessage());
    }
}
