package org.skewback.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.arch.Refused.assertRefused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;

class ColumnStrengthTest {

    /**
     * The bow of 5.3.2(11) is the one whose second-order bending uses up, at the strength that the curve gives,
     * what the axial force leaves: the two clauses say the same.
     */
    @Property(tries = 50)
    void theBowIsThatOfTheCurve(
            @ForAll @DoubleRange(min = 0.3, max = 2.5) double slenderness,
            @ForAll BucklingCurve curve) {
        Quantity one = Quantity.of(1);
        Quantity lambda = Quantity.of(slenderness);
        Quantity chi = ColumnStrength.reduction(lambda, curve.imperfectionFactor());
        double axial = 1000e3;
        double moment = 80e3;
        double bow =
                ColumnStrength.bow(
                                curve.imperfectionFactor(),
                                lambda,
                                chi,
                                Quantity.of(moment, "N·m"),
                                Quantity.of(axial, "N"),
                                one)
                        .in("m");
        double n = chi.si() * axial;
        double critical = axial / (slenderness * slenderness);

        assertEquals(1, n / axial + n * bow / (1 - n / critical) / moment, 1e-9);
    }

    /** A more slender member is weaker, and a curve further down is, too. */
    @Property(tries = 50)
    void slenderIsWeaker(@ForAll @DoubleRange(min = 0.3, max = 3) double slenderness) {
        double before = 1;
        for (BucklingCurve curve : BucklingCurve.values()) {
            double now = chi(slenderness, curve);
            assertTrue(now < before);
            assertTrue(now > chi(slenderness + 0.1, curve));
            assertTrue(now < 1 / (slenderness * slenderness));
            before = now;
        }
    }

    /** A stocky member is not reduced, and length and critical force belong together. */
    @Test
    void stockyMembersAreNotReduced() {
        assertEquals(1, chi(0.1, BucklingCurve.D));
        assertEquals(1, chi(0.2, BucklingCurve.B));
        Quantity modulus = Quantity.of(210, "GPa");
        Quantity second = Quantity.of(0.04, "m⁴");
        Quantity force = ColumnStrength.critical(modulus, second, Quantity.of(11, "m"));

        assertEquals(11, ColumnStrength.bucklingLength(modulus, second, force).in("m"), 1e-12);
    }

    @Test
    void badInputIsNamed() {
        assertRefused(
                () -> ColumnStrength.slenderness(Quantity.of(-1, "kN"), Quantity.of(1, "kN")),
                "strength of the section is -1000.0 N");
        assertRefused(
                () -> ColumnStrength.reduction(Quantity.of(-1), Quantity.of(0.3)),
                "slenderness is -1.0");
        assertRefused(
                () ->
                        ColumnStrength.interaction(
                                Quantity.of(0.2), Quantity.of(1), Quantity.of(0.3)),
                "factor of the moment's shape is 0.2");
        assertRefused(
                () -> ColumnStrength.bowAcross(Quantity.of(0, "m"), Quantity.of(300)),
                "span is 0.0 m");
    }

    private static double chi(double slenderness, BucklingCurve curve) {
        return ColumnStrength.reduction(Quantity.of(slenderness), curve.imperfectionFactor()).si();
    }
}
