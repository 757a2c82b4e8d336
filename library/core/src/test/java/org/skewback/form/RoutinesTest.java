package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import java.util.List;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Routines;

/** The routines give what the classes behind them give, tied to what they were given. */
class RoutinesTest {

    private static final Quantity NONE = Quantity.of(0, "kN/m");

    private static Quantity m(double value) {
        return Quantity.of(value, "m");
    }

    private static Quantity kN(double value) {
        return Quantity.of(value, "kN");
    }

    @Test
    void theFunicularOfPointLoads() {
        FunicularRoutine.Output output =
                Routines.call(
                        new FunicularRoutine(),
                        FunicularRoutine.Input.ofPointLoads(
                                List.of(m(15), m(30), m(45)),
                                List.of(kN(300), kN(600), kN(450)),
                                m(60),
                                m(30),
                                m(12)));
        assertNear(1218.75, output.thrust().in("kN"), 1e-13);
        assertNear(637.5, output.leftVertical().in("kN"), 1e-13);
        assertNear(712.5, output.rightVertical().in("kN"), 1e-13);
        assertNear(102.0 / 13, output.ordinates().get(0).in("m"), 1e-13);
        assertNear(12, output.ordinates().get(1).in("m"), 1e-13);
        assertNear(114.0 / 13, output.ordinates().get(2).in("m"), 1e-13);
        assertTrue(!output.thrust().isLeaf());
    }

    @Test
    void theFunicularUnderWeightAlone() {
        FunicularRoutine.Output output =
                Routines.call(
                        new FunicularRoutine(),
                        new FunicularRoutine.Input(
                                List.of(),
                                List.of(),
                                NONE,
                                Quantity.of(60, "kN/m"),
                                m(336),
                                m(0),
                                m(168),
                                m(72)));
        Catenary catenary = Catenary.ofRise(336, 72);
        assertNear(60 * catenary.parameter(), output.thrust().in("kN"), 1e-10);
        assertNear(catenary.arcLength(), output.length().in("m"), 1e-10);
    }

    @Test
    void theCatenary() {
        CatenaryRoutine.Output output =
                Routines.call(new CatenaryRoutine(), new CatenaryRoutine.Input(m(336), m(72)));
        assertEquals(Catenary.ofRise(336, 72).parameter(), output.parameter().in("m"));
    }

    @Test
    void theLineOfThrustInACircle() {
        ThrustLineRoutine.Output output =
                Routines.call(
                        new ThrustLineRoutine(),
                        new ThrustLineRoutine.Input(
                                "circular arc",
                                m(336),
                                m(72),
                                m(168),
                                List.of(),
                                List.of(),
                                Quantity.of(148, "kN/m"),
                                NONE));
        double ratio = 72.0 / 336;
        // Closed form: the eccentricity of a segment under a load uniform on plan is −(f/L)³ L.
        assertNear(-ratio * ratio * ratio * 336, output.eccentricity().in("m"), 1e-11);
        assertNear(-148 * 72.0 * 72 / 8, output.moment().in("kN·m"), 1e-11);
        assertNear(148 * 336 / 2.0, output.leftVertical().in("kN"), 1e-13);
        assertTrue(
                Math.abs(output.normalEccentricity().si()) < Math.abs(output.eccentricity().si()));
    }

    @Test
    @SuppressWarnings("rawtypes") // a service is named by its class, which carries no arguments
    void theRoutinesAreFoundByName() {
        Set<String> names =
                ServiceLoader.load(Routine.class).stream()
                        .map(provider -> provider.get().name())
                        .collect(Collectors.toSet());
        assertTrue(names.containsAll(Set.of("form.catenary", "form.funicular", "form.thrustline")));
    }

    @Test
    void badInputIsRefusedByName() {
        assertEquals(
                "number of loads is 1; allowed is one for each of the 2 positions.",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        Routines.call(
                                                new FunicularRoutine(),
                                                FunicularRoutine.Input.ofPointLoads(
                                                        List.of(m(15), m(30)),
                                                        List.of(kN(300)),
                                                        m(60),
                                                        m(30),
                                                        m(12))))
                        .getMessage());
        assertEquals(
                "kind of axis is \"ellipse\"; allowed are parabola, catenary and circular arc.",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        Routines.call(
                                                new ThrustLineRoutine(),
                                                new ThrustLineRoutine.Input(
                                                        "ellipse", m(60), m(12), m(30), List.of(),
                                                        List.of(), NONE, NONE)))
                        .getMessage());
    }
}
