package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;

/** The closed forms on quantities against the geometry and the funiculars in plain numbers. */
class ClosedFormTest {

    private static final Quantity LOAD = Quantity.of(148, "kN/m");
    private static final Quantity SPAN = Quantity.of(336, "m");

    @Property(tries = 200)
    void theParabola(
            @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 300) double rise,
            @ForAll @DoubleRange(min = 0, max = 336) double x) {
        Quantity f = Quantity.of(rise, "m");
        FunicularCurve line =
                FunicularCurve.through(VerticalLoad.uniform(148e3, 0, 336), 336, 0, 168, rise);
        Quantity thrust = Parabola.thrust(LOAD, SPAN, f);
        Quantity vertical = Parabola.springingVertical(LOAD, SPAN);
        assertNear(line.thrust(), thrust.si(), 1e-13);
        assertNear(line.springings().leftVertical(), vertical.si(), 1e-13);
        assertNear(line.springings().left(), Parabola.springingForce(thrust, vertical).si(), 1e-13);
        assertNear(line.springings().leftAngle(), Parabola.springingAngle(SPAN, f).si(), 1e-13);
        assertNear(new Parabola(336, rise).arcLength(), Parabola.arcLength(SPAN, f).si(), 1e-12);
        assertEquals(line.y(x), Parabola.ordinate(SPAN, f, Quantity.of(x, "m")).si(), 1e-13 * rise);
    }

    @Property(tries = 200)
    void theLeastVolumeOfARib(@ForAll @Scale(4) @DoubleRange(min = 1, max = 600) double rise) {
        Quantity f = Quantity.of(rise, "m");
        Quantity stress = Quantity.of(150, "MPa");
        Axis parabola = new Parabola(336, rise);
        double thrust = Parabola.thrust(LOAD, SPAN, f).si();
        // Volume = ∫ N/σ ds with N = H √(1 + y′²) and ds = √(1 + y′²) dx.
        double volume =
                Quadrature.integrate(
                        "volume",
                        x -> thrust / 150e6 * (1 + parabola.slope(x) * parabola.slope(x)),
                        0,
                        336);
        assertNear(volume, Parabola.ribVolume(LOAD, SPAN, f, stress).si(), 1e-12);
        Quantity best = Parabola.leastVolumeRise(SPAN);
        assertTrue(Parabola.ribVolume(LOAD, SPAN, best, stress).si() <= volume * (1 + 1e-14));
    }

    @Property(tries = 200)
    void theCatenary(@ForAll @Scale(4) @DoubleRange(min = 0.5, max = 300) double rise) {
        Catenary catenary = Catenary.ofRise(336, rise);
        Quantity a = Quantity.of(catenary.parameter(), "m");
        FunicularCurve line =
                FunicularCurve.through(VerticalLoad.onAxis(148e3, 0, 336), 336, 0, 168, rise);
        assertNear(line.thrust(), Catenary.thrust(LOAD, a).si(), 1e-9);
        assertNear(line.force(0), Catenary.axialForce(LOAD, a, Quantity.of(rise, "m")).si(), 1e-9);
        assertNear(catenary.arcLength(), Catenary.arcLength(a, SPAN).si(), 1e-13);
        assertNear(catenary.angle(0), Catenary.springingAngle(a, SPAN).si(), 1e-13);
        // cosh − 1 written out loses the digits that the flat arch has before the decimal point.
        assertNear(rise, Catenary.rise(a, SPAN).si(), 1e-11 / (rise / 336));
    }

    @Property(tries = 200)
    void theCircle(@ForAll @Scale(4) @DoubleRange(min = 0.5, max = 168) double rise) {
        CircularArc arc = new CircularArc(336, rise);
        Quantity f = Quantity.of(rise, "m");
        Quantity radius = CircularArc.radius(SPAN, f);
        Quantity angle = CircularArc.halfAngle(SPAN, f);
        assertNear(arc.radius(), radius.si(), 1e-14);
        assertNear(arc.angle(0), angle.si(), 1e-7);
        assertNear(arc.arcLength(), CircularArc.arcLength(radius, angle).si(), 1e-7);
        assertNear(rise, CircularArc.ofRadius(336, radius.si()).rise(), 1e-7);
    }

    @Property(tries = 200)
    void theWeightedCatenaryIsTheFunicularOfItsLoad(
            @ForAll @Scale(4) @DoubleRange(min = 1.01, max = 8) double ratio) {
        Quantity m = Quantity.of(ratio);
        Quantity k = WeightedCatenary.exponent(m);
        Quantity f = Quantity.of(40, "m");
        Quantity load = Quantity.of(100, "kN/m");
        WeightedCatenary axis = new WeightedCatenary(336, 40, ratio);
        double thrust = WeightedCatenary.thrust(load, m, k, SPAN, f).si();
        double vertical = WeightedCatenary.springingVertical(load, k, SPAN).si();
        assertNear(vertical / thrust, axis.slope(0), 1e-9);
        double intensity = 100e3 * StrictMath.cosh(k.si() * 0.5);
        double secant = Math.sqrt(1 + axis.slope(84) * axis.slope(84));
        // −H y″ is the load per plan length; at the quarter ξ = 1/2.
        assertNear(
                intensity,
                thrust * axis.curvature(84).orElseThrow() * secant * secant * secant,
                1e-9);
        assertNear(1 - axis.y(84) / 40, WeightedCatenary.quarterDrop(m).si(), 1e-13);
    }

    @Test
    void badInputIsRefusedByNameAndDimension() {
        assertEquals(
                "rise is -72.0 m; allowed is a finite number greater than 0.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Parabola.thrust(LOAD, SPAN, Quantity.of(-72, "m")))
                        .getMessage());
        assertThrows(
                DimensionException.class,
                () -> Parabola.thrust(Quantity.of(148, "kN"), SPAN, Quantity.of(72, "m")));
        assertThrows(
                DimensionException.class,
                () -> Parabola.thrust(LOAD, Quantity.of(336, "kN"), Quantity.of(72, "m")));
        assertThrows(ArithmeticException.class, () -> WeightedCatenary.exponent(Quantity.of(0.5)));
    }
}
