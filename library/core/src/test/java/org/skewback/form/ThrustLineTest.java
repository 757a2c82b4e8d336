package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The line of thrust of the three-hinged arch. */
class ThrustLineTest {

    private static final double SPAN = 80;

    @Provide
    Arbitrary<VerticalLoad> loads() {
        return RandomLoads.withWeight(SPAN);
    }

    @Property(tries = 200)
    void theLinePassesTheHinges(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double hinge,
            @ForAll @DoubleRange(min = -15, max = 15) double level) {
        Axis axis = Catenary.ofRise(SPAN, 22, level);
        ThrustLine line = ThrustLine.inThreeHinged(axis, load, hinge * SPAN);
        assertEquals(0, line.eccentricity(0), 1e-11);
        assertEquals(0, line.eccentricity(hinge * SPAN), 1e-11);
        assertEquals(0, line.eccentricity(SPAN), 1e-11);
    }

    @Property(tries = 200)
    void thePartLeftOfASectionIsInEquilibrium(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double share) {
        Axis axis = new Parabola(SPAN, 18, 5);
        ThrustLine line = ThrustLine.inThreeHinged(axis, load, SPAN / 2);
        double x = share * SPAN;
        SpringingForces springings = line.springings();
        double force = 0;
        double moment = 0;
        for (VerticalLoad part : load.parts()) {
            if (part instanceof PointLoad point && point.position() <= x) {
                force += point.force();
                moment += point.force() * (x - point.position());
            } else if (part instanceof LineLoad plan && plan.from() < x) {
                double to = Math.min(x, plan.to());
                double slope = (plan.atTo() - plan.atFrom()) / (plan.to() - plan.from());
                force +=
                        Quadrature.integrate(
                                "force",
                                at -> plan.atFrom() + slope * (at - plan.from()),
                                plan.from(),
                                to);
                moment +=
                        Quadrature.integrate(
                                "moment",
                                at -> (x - at) * (plan.atFrom() + slope * (at - plan.from())),
                                plan.from(),
                                to);
            } else if (part instanceof AxisLoad along) {
                force += along.intensity() * axis.arcLength(0, x);
                moment += along.intensity() * (x * axis.arcLength(0, x) - axis.arcMoment(0, x));
            }
        }
        double total = springings.leftVertical() + springings.rightVertical();
        assertEquals(springings.leftVertical() - force, line.vertical(x), 1e-9 * total);
        assertEquals(
                springings.leftVertical() * x - springings.thrust() * axis.y(x) - moment,
                line.moment(x),
                1e-9 * total * SPAN);
        // The two components rebuild the resultant.
        assertNear(
                Math.hypot(line.thrust(), line.vertical(x)),
                Math.hypot(line.normalForce(x), line.shearForce(x)),
                1e-12);
        assertNear(line.moment(x), line.normalEccentricity(x) * line.normalForce(x), 1e-12);
    }

    @Property(tries = 200)
    void theMirroredLoadOnTheMirroredArchGivesTheMirroredMoment(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double hinge) {
        ThrustLine line = ThrustLine.inThreeHinged(new CircularArc(SPAN, 30), load, hinge * SPAN);
        ThrustLine mirrored =
                ThrustLine.inThreeHinged(
                        new CircularArc(SPAN, 30),
                        RandomLoads.mirrored(load, SPAN),
                        SPAN - hinge * SPAN);
        assertNear(line.thrust(), mirrored.thrust(), 1e-10);
        assertEquals(line.eccentricity(23), mirrored.eccentricity(SPAN - 23), 1e-9);
        assertNear(
                Math.abs(line.largestEccentricity().value()) + 1,
                Math.abs(mirrored.largestEccentricity().value()) + 1,
                1e-9);
    }

    @Property(tries = 200)
    void noSampleIsBeyondTheLargestEccentricity(
            @ForAll("loads") VerticalLoad load,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        ThrustLine line = ThrustLine.inThreeHinged(new CircularArc(SPAN, 25), load, SPAN / 2);
        double largest = Math.abs(line.largestEccentricity().value());
        assertTrue(Math.abs(line.eccentricity(share * SPAN)) <= largest + 1e-12);
        double normal = Math.abs(line.largestNormalEccentricity().value());
        assertTrue(Math.abs(line.normalEccentricity(share * SPAN)) <= normal + 1e-12);
    }

    @Test
    void aPointLoadAtTheQuarterMakesThreeThirtySecondsOfItsSpanInMoment() {
        ThrustLine line =
                ThrustLine.inThreeHinged(new Parabola(400, 80), VerticalLoad.point(1e6, 100), 200);
        assertNear(625e3, line.thrust(), 1e-13);
        assertNear(1e6 * 400 * 0.09375, line.moment(100), 1e-12);
        assertEquals(100, line.largestEccentricity().x());
    }

    @Test
    void theMiddleThirdIsOneSixthOfTheDepthOnEitherSide() {
        Axis axis = new CircularArc(SPAN, 20);
        ThrustLine line =
                ThrustLine.inThreeHinged(axis, VerticalLoad.uniform(1e5, 0, SPAN), SPAN / 2);
        double needed = 6 * Math.abs(line.largestNormalEccentricity().value());
        assertTrue(line.middleThird(needed * 1.000001).inside());
        assertFalse(line.middleThird(needed * 0.999999).inside());
        assertNear(1, line.middleThird(needed).use(), 1e-12);
    }

    @Test
    void aKernOfUnequalSidesIsJudgedOnTheSideOfTheForce() {
        Axis axis = new CircularArc(SPAN, 20);
        ThrustLine line =
                ThrustLine.inThreeHinged(axis, VerticalLoad.uniform(1e5, 0, SPAN), SPAN / 2);
        // Under a load uniform on plan the line of thrust runs below a circle.
        assertTrue(line.largestNormalEccentricity().value() < 0);
        double below = -line.largestNormalEccentricity().value();
        assertTrue(line.kern(1e-6, below * 1.01).inside());
        assertFalse(line.kern(100, below * 0.99).inside());
    }

    @Test
    void badInputIsRefusedByName() {
        Axis axis = new Parabola(SPAN, 20);
        VerticalLoad load = VerticalLoad.point(1e3, 20);
        assertEquals(
                "position of the hinge is 80.0 m; allowed is strictly between 0 and 80.0.",
                refusal(() -> ThrustLine.inThreeHinged(axis, load, SPAN)));
        assertEquals(
                "position of the point load is 81.0 m; allowed is from 0.0 m to 80.0 m.",
                refusal(() -> ThrustLine.inThreeHinged(axis, VerticalLoad.point(1, 81), 40)));
        assertEquals(
                "depth of the section is 0.0 m; allowed is a finite number greater than 0.",
                refusal(() -> ThrustLine.inThreeHinged(axis, load, 40).middleThird(0)));
        assertThrows(
                LoadNotCarriedException.class,
                () -> ThrustLine.inThreeHinged(axis, load.times(-1), 40));
    }

    private static String refusal(Runnable action) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, action::run).getMessage());
    }
}
