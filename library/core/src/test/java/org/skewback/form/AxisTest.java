package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** What holds for every axis: it runs from springing to springing, and its functions agree. */
class AxisTest {

    private static final double SPAN = 120;

    @Provide
    Arbitrary<Axis> axes() {
        return Arbitraries.of(
                new Parabola(SPAN, 20),
                new Parabola(SPAN, 33, -14),
                new CircularArc(SPAN, 25),
                new CircularArc(SPAN, 0.12),
                Catenary.ofRise(SPAN, 50),
                Catenary.ofRise(SPAN, 12, 30),
                new WeightedCatenary(SPAN, 24, 3.5),
                new WeightedCatenary(SPAN, 24, 1),
                new WeightedCatenary(SPAN, 24, 1 + 1e-9),
                FunicularCurve.through(
                        VerticalLoad.linear(0, SPAN, 1e3, 4e3)
                                .and(VerticalLoad.onAxis(2e3, 0, SPAN)),
                        SPAN,
                        9,
                        50,
                        30),
                new FunicularPolygon(
                        List.of(
                                new FunicularPolygon.Vertex(0, 0),
                                new FunicularPolygon.Vertex(50, 21),
                                new FunicularPolygon.Vertex(SPAN, -7))));
    }

    @Property
    void theAxisRunsFromSpringingToSpringing(@ForAll("axes") Axis axis) {
        assertEquals(0, axis.y(0), 1e-12);
        assertEquals(axis.rightLevel(), axis.y(SPAN), 1e-11);
    }

    @Property
    void theOrdinateIsTheIntegralOfTheSlope(
            @ForAll("axes") Axis axis, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        double x = share * SPAN;
        double corner = axis instanceof FunicularPolygon ? Math.min(50, x) : x;
        double risen =
                Quadrature.integrate("y", axis::slope, 0, corner)
                        + (x > corner ? Quadrature.integrate("y", axis::slope, 50, x) : 0);
        assertEquals(axis.y(x), risen, 1e-10);
    }

    @Property
    void curvatureIsTheTurningOfTheAngleAlongTheArc(
            @ForAll("axes") Axis axis, @ForAll @DoubleRange(min = 0.02, max = 0.98) double share) {
        double x = share * SPAN;
        double step = 1e-3;
        if (Math.abs(x - 50) < 2 * step) {
            return;
        }
        double turned = axis.angle(x - step) - axis.angle(x + step);
        double curvature = turned / axis.arcLength(x - step, x + step);
        // Central differences: error of the order of step² and of rounding over step.
        assertEquals(curvature, axis.curvature(x).orElseThrow(), 1e-9);
    }

    @Property
    void lengthsAddUpAndAgreeWithQuadrature(
            @ForAll("axes") Axis axis, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double x = share * SPAN;
        assertNear(axis.arcLength(), axis.arcLength(0, x) + axis.arcLength(x, SPAN), 1e-12);
        assertEquals(-axis.arcLength(0, x), axis.arcLength(x, 0), 1e-11);
        double length =
                Stream.of(new double[] {0, 50}, new double[] {50, SPAN})
                        .mapToDouble(
                                part ->
                                        Quadrature.integrate(
                                                "length",
                                                at -> Math.hypot(1, axis.slope(at)),
                                                part[0],
                                                Math.nextDown(part[1])))
                        .sum();
        assertNear(length, axis.arcLength(), 1e-11);
        double moment =
                Stream.of(new double[] {0, 50}, new double[] {50, SPAN})
                        .mapToDouble(
                                part ->
                                        Quadrature.integrate(
                                                "moment",
                                                at -> at * Math.hypot(1, axis.slope(at)),
                                                part[0],
                                                Math.nextDown(part[1])))
                        .sum();
        assertNear(moment, axis.arcMoment(0, SPAN), 1e-11);
    }

    @Property
    void shapesScale(@ForAll @Scale(4) @DoubleRange(min = 1e-3, max = 1e3) double factor) {
        assertNear(
                factor * Catenary.ofRise(7, 2, 1).arcLength(),
                Catenary.ofRise(7 * factor, 2 * factor, factor).arcLength(),
                1e-12);
        assertNear(
                factor * new WeightedCatenary(7, 2, 3).arcLength(),
                new WeightedCatenary(7 * factor, 2 * factor, 3).arcLength(),
                1e-12);
        assertNear(
                factor * new CircularArc(7, 2).arcLength(),
                new CircularArc(7 * factor, 2 * factor).arcLength(),
                1e-12);
    }

    @Test
    void aSemicircleStandsUprightAtItsSpringings() {
        CircularArc semicircle = CircularArc.semicircle(5);
        assertEquals(Math.PI / 2, semicircle.angle(0));
        assertEquals(-Math.PI / 2, semicircle.angle(10));
        assertNear(5 * Math.PI, semicircle.arcLength(), 1e-15);
        assertNear(0.2, semicircle.curvature(0).orElseThrow(), 1e-15);
    }

    @Test
    void theCatenaryIsFullerThanTheParabolaAndTheCircleFullerThanBoth() {
        Deviation catenary = Deviation.between(Catenary.ofRise(1, 0.2), new Parabola(1, 0.2));
        Deviation circle = Deviation.between(new CircularArc(1, 0.2), new Parabola(1, 0.2));
        assertTrue(catenary.value() > 0);
        assertTrue(circle.value() > catenary.value());
        assertEquals(0, Deviation.between(new Parabola(1, 0.2), new Parabola(1, 0.2)).value());
    }

    @Test
    void aWeightedCatenaryOfRatioOneIsTheParabola() {
        for (double x = 0; x <= SPAN; x += 7.5) {
            assertEquals(
                    new Parabola(SPAN, 24).y(x), new WeightedCatenary(SPAN, 24, 1).y(x), 1e-13);
        }
    }

    @Test
    void badShapesAreRefusedByName() {
        assertEquals(
                "rise is 51.0 m; allowed is at most half the span of 100.0 m (a semicircle).",
                refusal(() -> new CircularArc(100, 51)));
        assertEquals(
                "radius is 49.0 m; allowed is a finite number of at least half the span, 50.0.",
                refusal(() -> CircularArc.ofRadius(100, 49)));
        assertEquals(
                "ratio of loads is 0.9; allowed is from 1 to 1000.",
                refusal(() -> new WeightedCatenary(100, 20, 0.9)));
        assertEquals(
                "level of the right springing is NaN m; allowed is a finite number.",
                refusal(() -> new Parabola(100, 20, Double.NaN)));
        assertEquals(
                "x of vertex 3 is 5.0 m; allowed is more than that of the one before, 5.0 m.",
                refusal(
                        () ->
                                new FunicularPolygon(
                                        List.of(
                                                new FunicularPolygon.Vertex(0, 0),
                                                new FunicularPolygon.Vertex(5, 2),
                                                new FunicularPolygon.Vertex(5, 3)))));
        assertEquals(
                "The spans of the two axes are 10.0 m and 11.0 m; they must be the same.",
                refusal(() -> Deviation.between(new Parabola(10, 1), new Parabola(11, 1))));
    }

    private static String refusal(Runnable action) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, action::run).getMessage());
    }
}
