package org.skewback.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.study.Refused.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Check;
import org.skewback.sheet.Sheet;
import org.skewback.sheet.Table;
import org.skewback.sheet.Verdict;

/** What-if, sensitivity and solving for a given: each against the formula worked out anew. */
class WhatIfTest {

    private final PlaneSlide slide = new PlaneSlide();
    private final Quantity factor = slide.factor().named("F", "", "factor of safety");

    private static Quantity q(double value, String unit) {
        return Quantity.of(value, unit);
    }

    @Test
    void aChangeGivesWhatTheFormulaGives() {
        Check check = new Check("factor of 1.2", factor, Quantity.of(1.2), null);
        WhatIf dry = WhatIf.of(List.of(factor), List.of(check)).change(slide.water, q(0, "m"));
        WhatIf.Outcome outcome = dry.results().get(0);
        // mpmath 1.4.1, dry block and 3 m of water: 1.54447658774272 and 1.24668177355.
        assertEquals(1.54447658774272, outcome.after().si(), 1e-12);
        assertEquals(1.54447658774272 - 1.24668177355, outcome.change().si(), 1e-10);
        WhatIf.Turn turn = dry.checks().get(0);
        assertFalse(turn.turned());
        assertEquals(1.2 / 1.54447658774272, turn.utilisationAfter().si(), 1e-12);
        WhatIf wet = dry.change(slide.water, q(4, "m"));
        assertEquals(1, wet.changes().size(), "the later change holds");
        assertEquals(Verdict.PASSED, wet.checks().get(0).before());
        assertEquals(Verdict.FAILED, wet.checks().get(0).after());
        assertEquals(1.24668177355, factor.si(), 1e-10);
    }

    @Test
    void aSheetIsLookedAtAndStaysAsItIs() {
        Sheet sheet = Sheet.numbered("12", "A beam");
        Quantity load = sheet.given("q", 10, "kN/m", "load", Source.assumption("an example"));
        Quantity span = sheet.given("L", 8, "m", "span", Source.assumption("an example"));
        Quantity moment =
                sheet.step("M", load.times(span.squared()).over(8), "kN·m", "moment at midspan");
        sheet.check("moment", moment).atMost(q(100, "kN·m"));
        sheet.check("temper", moment).between(q(-10, "kN·m"), q(90, "kN·m"));
        String before = sheet.record().entries().toString();
        WhatIf longer = WhatIf.of(sheet.record()).change(span, q(10, "m"));
        assertEquals(before, sheet.record().entries().toString());
        Table table = longer.table();
        assertEquals(
                List.of("L (changed)", "M", "moment", "temper"), table.columns().get(0).texts());
        assertEquals("8\u00A0m", table.columns().get(1).texts().get(0));
        assertEquals("125\u00A0kN·m", table.columns().get(2).texts().get(1));
        assertEquals("+45\u00A0kN·m", table.columns().get(3).texts().get(1));
        assertEquals("failed, utilisation 1.25", table.columns().get(2).texts().get(2));
        assertEquals("now failed", table.columns().get(3).texts().get(2));
    }

    @Test
    void whatCannotBeChangedIsNamed() {
        WhatIf study = WhatIf.of(List.of(factor), List.of());
        refused("value of c", () -> study.change(slide.cohesion, q(1, "kN")));
        refused("this study does not rest on t_φ", () -> study.change(slide.tangent, q(1, "")));
        refused("neither results nor checks", () -> WhatIf.of(List.of(), List.of()));
        Quantity air = PlaneSlide.given("T", 10, "°C");
        Quantity rise = air.minus(q(0, "°C"));
        WhatIf warmer = WhatIf.of(List.of(rise), List.of()).change(air, q(20, "°C"));
        assertEquals(20, warmer.results().get(0).after().in("K"), 1e-12);
        refused("allowed is a reading in °C", () -> warmer.change(air, q(20, "K")));
    }

    /** A reading is studied by kelvin; 1 % of it would be 1 % of a convention. */
    @Test
    void aReadingIsStudiedByKelvin() {
        Quantity air = PlaneSlide.given("T", 30, "°C");
        Quantity rise = air.minus(q(10, "°C")).named("ΔT", "K", "");
        Sensitivity.Effect effect = Sensitivity.of(rise, List.of(air)).effects().get(0);
        assertNull(effect.perPercent());
        assertEquals(1, effect.derivative().si());
        assertEquals(21, effect.higher().in("K"), 1e-12);
        assertTrue(Sensitivity.of(rise, List.of(air)).toString().contains("–"));
        Check check = new Check("not too warm", rise, null, q(25, "K"));
        SolveFor.Solution limit = SolveFor.utilisation(check, 1, air, q(0, "°C"), q(60, "°C"));
        assertEquals(35, limit.value().in("°C"), 1e-12);
        refused(
                "allowed is a reading in °C",
                () -> SolveFor.utilisation(check, 1, air, q(0, "K"), q(60, "K")));
        Uncertainty spread =
                Uncertainty.none().with(air, Distribution.normal(q(30, "°C"), q(5, "K")));
        DesignPoint point = Reliability.of(check, spread).designPoint();
        assertEquals(1, point.index().si(), 1e-9);
        assertEquals(35, point.values().get(0).in("°C"), 1e-9);
        refused(
                "allowed is a reading in °C",
                () -> Uncertainty.none().with(air, Distribution.normal(q(30, "K"), q(5, "K"))));
        refused("a reading in °C", () -> Distribution.uniform(q(10, "°C"), q(300, "K")));
    }

    /** Linear in cohesion: the derivative is A/(W sin ψ), the effect of a step the same both ways. */
    @Test
    void sensitivitiesAreThoseOfTheFormula() {
        Sensitivity study =
                Sensitivity.of(
                        factor,
                        List.of(slide.water, slide.cohesion, slide.friction, slide.weight),
                        slide.wet());
        Sensitivity.Effect cohesion =
                study.effects().stream()
                        .filter(e -> e.given().isSameNode(slide.cohesion))
                        .findFirst()
                        .orElseThrow();
        double perPascal = (slideWith(26e3) - slideWith(24e3)) / 2e3;
        assertEquals(perPascal, cohesion.derivative().in("1/Pa"), 1e-9 * perPascal);
        assertEquals("1/kPa", cohesion.derivative().unit().symbol());
        assertEquals(perPascal * 250, cohesion.perPercent().si(), 1e-12);
        assertEquals(perPascal * 5000, cohesion.perDeviation().si(), 1e-12);
        assertEquals(factor.si() + perPascal * 5000, cohesion.higher().si(), 1e-9);
        assertEquals(factor.si() - perPascal * 5000, cohesion.lower().si(), 1e-9);
        double last = Double.POSITIVE_INFINITY;
        for (Sensitivity.Effect effect : study.effects()) {
            double size =
                    Math.max(
                            Math.abs(effect.lower().si() - factor.si()),
                            Math.abs(effect.higher().si() - factor.si()));
            assertTrue(size <= last, "the largest first");
            last = size;
            assertEquals(effect.given().isSameNode(slide.weight), effect.perDeviation() == null);
        }
        Table table = study.table();
        assertEquals("Sensitivity of F", table.title());
        assertEquals(4, table.rows());
        assertEquals(6, table.columns().size());
        int weight = table.columns().get(0).texts().indexOf("γ");
        assertEquals("–", table.columns().get(5).texts().get(weight));
    }

    private double slideWith(double cohesion) {
        return WhatIf.of(List.of(factor), List.of())
                .change(slide.cohesion, q(cohesion, "Pa"))
                .results()
                .get(0)
                .after()
                .si();
    }

    @Test
    void unitsOfDerivativesAreQuotients() {
        Quantity load = PlaneSlide.given("g", 20, "kN/m");
        Quantity span = PlaneSlide.given("L", 30, "m");
        Sensitivity study =
                Sensitivity.of(
                        load.times(span.squared()).over(8).named("M", "kN·m", ""),
                        List.of(load, span));
        assertEquals(
                List.of("(kN·m)/m", "(kN·m)/(kN/m)"),
                study.effects().stream().map(e -> e.derivative().unit().symbol()).toList());
        assertEquals(150, study.effects().get(0).derivative().in("kN"), 1e-9);
        assertEquals(112.5, study.effects().get(1).derivative().in("m²"), 1e-9);
        assertNull(study.effects().get(0).perDeviation());
        assertEquals(4, study.table().columns().size());
        refused("has no givens", () -> Sensitivity.of(factor, List.of()));
        refused("does not rest on g", () -> Sensitivity.of(factor, List.of(load)));
    }

    @Test
    void aValueFoundReachesTheUtilisation() {
        Check check = new Check("factor of 1.2", factor, Quantity.of(1.2), null);
        for (double wanted : List.of(0.8, 0.9, 1.0, 1.05)) {
            SolveFor.Solution found =
                    SolveFor.utilisation(check, wanted, slide.water, q(0, "m"), q(4.3, "m"));
            WhatIf there = WhatIf.of(List.of(), List.of(check)).change(slide.water, found.value());
            assertEquals(wanted, there.checks().get(0).utilisationAfter().si(), 1e-12);
            assertEquals(wanted, found.utilisation().si(), 1e-12);
            assertTrue(found.steps() < 12, "Newton's method is fast: " + found.steps());
        }
    }

    /** A beam has its closed form: L = √(8 M/q). */
    @Test
    void theSpanOfABeamComesOut() {
        Quantity load = PlaneSlide.given("q", 10, "kN/m");
        Quantity span = PlaneSlide.given("L", 8, "m");
        Check check = new Check("moment", load.times(span.squared()).over(8), null, q(100, "kN·m"));
        SolveFor.Solution found = SolveFor.utilisation(check, 0.9, span, q(0, "m"), q(50, "m"));
        assertEquals(Math.sqrt(8 * 90 / 10.0), found.value().in("m"), 4e-15);
        assertEquals("L = 8.485\u00A0m", found.toString());
        Check within = new Check("range", span, q(4, "m"), q(12, "m"));
        assertEquals(
                11,
                SolveFor.utilisation(within, 0.75, span, q(9, "m"), q(20, "m")).value().si(),
                1e-12);
        assertEquals(
                4,
                SolveFor.utilisation(
                                new Check("end", span, null, q(4, "m")),
                                1,
                                span,
                                q(1, "m"),
                                q(4, "m"))
                        .value()
                        .si());
    }

    @Test
    void aBracketWithoutThePointIsNamed() {
        Check check = new Check("factor of 1.2", factor, Quantity.of(1.2), null);
        refused(
                "between z_w = 0\u00A0m (utilisation 0.7770) and z_w = 1\u00A0m (utilisation"
                        + " 0.8197)",
                () -> SolveFor.utilisation(check, 1, slide.water, q(0, "m"), q(1, "m")));
        refused(
                "greatest value of z_w is 0\u00A0m",
                () -> SolveFor.utilisation(check, 1, slide.water, q(1, "m"), q(0, "m")));
        refused(
                "utilisation wanted is 0.0",
                () -> SolveFor.utilisation(check, 0, slide.water, q(0, "m"), q(1, "m")));
        refused(
                "does not rest on t_φ",
                () -> SolveFor.utilisation(check, 1, slide.tangent, q(0, ""), q(1, "")));
        refused(
                "least value of z_w",
                () -> SolveFor.utilisation(check, 1, slide.water, q(0, "kN"), q(1, "m")));
    }

    @Test
    void aJumpPastTheUtilisationIsNoSolution() {
        Quantity x = PlaneSlide.given("x", 3, "m");
        Quantity jump =
                Quantity.choose(x.atMost(q(2, "m")), () -> Quantity.of(1), () -> Quantity.of(3));
        Check check = new Check("step", jump.plus(x.per("m").times(1e-3)), null, Quantity.of(2));
        assertThrows(
                NotConvergedException.class,
                () -> SolveFor.utilisation(check, 1, x, q(0, "m"), q(4, "m")));
    }
}
