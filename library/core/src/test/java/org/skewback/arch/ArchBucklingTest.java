package org.skewback.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.arch.Refused.assertRefused;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.form.CircularArc;
import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

class ArchBucklingTest {

    /** The thrust grows as stiffness over the square of the size. */
    @Property(tries = 15)
    void theThrustScales(
            @ForAll @DoubleRange(min = 10, max = 1000) double span,
            @ForAll @DoubleRange(min = 1e9, max = 1e13) double bending) {
        double unit = lowest(1, 0.2, 1, ArchHinges.SPRINGINGS);

        assertEquals(
                unit * bending / (span * span),
                lowest(span, 0.2 * span, bending, ArchHinges.SPRINGINGS),
                1e-8 * unit * bending);
    }

    /** A hinge more never helps. */
    @Property(tries = 15)
    void aHingeNeverRaisesTheThrust(@ForAll @DoubleRange(min = 0.05, max = 0.8) double rise) {
        double fixed = lowest(1, rise, 1, ArchHinges.NONE);
        double one = lowest(1, rise, 1, ArchHinges.CROWN);
        double two = lowest(1, rise, 1, ArchHinges.SPRINGINGS);
        double three = lowest(1, rise, 1, ArchHinges.ALL);
        double slack = 1 + 1e-8;

        assertTrue(one <= fixed * slack);
        assertTrue(two <= fixed * slack);
        assertTrue(three <= Math.min(one, two) * slack);
    }

    @Test
    void theLowestShapeOfATwoHingedArchRisesOnOneSideAndSinksOnTheOther() {
        ArchBucklingMode mode =
                new InPlaneBuckling(new Parabola(336, 72), x -> 1e12, ArchHinges.SPRINGINGS, 168)
                        .modes(1)
                        .get(0);

        assertEquals(0, mode.lift().applyAsDouble(168), 1e-9);
        assertEquals(-mode.lift().applyAsDouble(252), mode.lift().applyAsDouble(84), 1e-9);
        assertEquals(0, mode.lift().applyAsDouble(336), 1e-9);
        assertTrue(
                Math.abs(mode.lift().applyAsDouble(84)) >= 0.9
                        && Math.abs(mode.lift().applyAsDouble(84)) <= 1.0);
    }

    @Test
    void severalShapesComeInTheOrderOfTheirThrust() {
        List<ArchBucklingMode> modes =
                new InPlaneBuckling(new Parabola(1, 0.2), x -> 1, ArchHinges.NONE, 0.5).modes(4);

        assertEquals(
                modes.stream().map(ArchBucklingMode::thrust).sorted().toList(),
                modes.stream().map(ArchBucklingMode::thrust).toList());
    }

    @Test
    void badInputIsNamed() {
        Parabola axis = new Parabola(1, 0.2);

        assertRefused(
                () -> new InPlaneBuckling(axis, x -> 1, ArchHinges.ALL, 1.5),
                "position of the crown is 1.5 m");
        assertRefused(
                () -> new InPlaneBuckling(new CircularArc(2, 1), x -> 1, ArchHinges.ALL, 1),
                "slope of the axis at the left springing");
        assertRefused(
                () -> new InPlaneBuckling(axis, x -> -1, ArchHinges.ALL, 0.5).modes(1),
                "bending stiffness at x = ");
        assertRefused(
                () -> new InPlaneBuckling(axis, x -> 1, ArchHinges.ALL, 0.5).modes(0),
                "number of buckling shapes is 0.0");
        assertRefused(() -> ArchHinges.ofWords("four-hinged"), "four-hinged");
        Quantity one = Quantity.of(1, "m");
        assertRefused(
                () ->
                        ShallowArch.limitLoad(
                                Quantity.of(1, "Pa"),
                                Quantity.of(1, "m⁴"),
                                Quantity.of(1, "m²"),
                                one,
                                one),
                "shallowness 4 I/(A f²) is 4.0");
    }

    private static double lowest(double span, double rise, double bending, ArchHinges hinges) {
        return new InPlaneBuckling(new Parabola(span, rise), x -> bending, hinges, span / 2)
                .modes(1)
                .get(0)
                .thrust();
    }
}
