package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class QuantityTest {

    private static final Quantity SPAN =
            Quantity.given("L", 336, "m", "span", Source.drawing("OG-201", "B"));
    private static final Quantity LOAD =
            Quantity.given("g", 148, "kN/m", "load", Source.assumption("an example"));

    @Property
    void conversionThereAndBackKeepsTheNumber(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        for (String unit : List.of("mm", "kN/m", "MPa", "°", "‰", "t")) {
            assertEquals(value, Quantity.of(value, unit).in(unit), 2 * Math.ulp(value), unit);
        }
    }

    @Property
    void scalingEveryUnitScalesTheResultByItsDimension(
            @ForAll @DoubleRange(min = 0.1, max = 10) double load,
            @ForAll @DoubleRange(min = 0.1, max = 10) double span) {
        // Dimension homogeneity: the same lengths in millimetres and forces in newtons.
        Quantity a = Quantity.of(load, "kN/m").times(Quantity.of(span, "m").squared());
        Quantity b = Quantity.of(load, "N/mm").times(Quantity.of(span * 1000, "mm").squared());
        assertEquals(1, a.si() / b.si(), 1e-14);
        assertEquals(a.dimension(), b.dimension());
    }

    @Property
    void sumsAndProductsCommute(
            @ForAll @DoubleRange(min = -1e3, max = 1e3) double x,
            @ForAll @DoubleRange(min = -1e3, max = 1e3) double y) {
        Quantity a = Quantity.of(x, "kN");
        Quantity b = Quantity.of(y, "N");
        assertEquals(a.plus(b), b.plus(a));
        assertEquals(a.times(b), b.times(a));
    }

    @Example
    void aForceIsNoLengthAndTheMessageSaysBoth() {
        DimensionException e =
                assertThrows(DimensionException.class, () -> SPAN.plus(Quantity.of(3, "kN")));
        assertEquals(
                "cannot add L = 336\u00A0m (a length) and 3\u00A0kN (a force)", e.getMessage());
        e = assertThrows(DimensionException.class, () -> SPAN.in("kN"));
        assertEquals(
                "cannot convert L = 336\u00A0m, a length, to kN, the unit of a force",
                e.getMessage());
        e = assertThrows(DimensionException.class, LOAD::sin);
        assertTrue(e.getMessage().contains("a force per length"), e.getMessage());
        e = assertThrows(DimensionException.class, () -> LOAD.named("H", "kN", "thrust"));
        assertTrue(e.getMessage().startsWith("cannot state H in kN"), e.getMessage());
    }

    @Example
    void whatIsNotFiniteIsRefused() {
        Exception e =
                assertThrows(IllegalArgumentException.class, () -> Quantity.of(Double.NaN, "kN"));
        assertEquals("value of kN is NaN; allowed are finite numbers", e.getMessage());
        e = assertThrows(ArithmeticException.class, () -> SPAN.over(Quantity.of(0, "m")));
        assertEquals("division by zero: L = 336\u00A0m and 0\u00A0m", e.getMessage());
        assertThrows(ArithmeticException.class, () -> SPAN.negated().root());
        assertThrows(ArithmeticException.class, () -> Quantity.of(-1).ln());
        assertThrows(ArithmeticException.class, () -> Quantity.of(0.5).acosh());
        assertThrows(ArithmeticException.class, () -> Quantity.of(1e200).squared());
    }

    @Example
    void aTemperatureReadingGivesADifferenceAndNothingElse() {
        Quantity highest = Quantity.of(41, "°C");
        Quantity set = Quantity.of(12, "°C");
        Quantity difference = highest.minus(set);
        assertEquals(29, difference.in("K"), 1e-12);
        assertEquals("29\u00A0K", difference.toString());
        assertEquals("41\u00A0°C", set.plus(difference).toString());
        assertThrows(DimensionException.class, () -> highest.times(2));
        assertThrows(DimensionException.class, () -> highest.plus(set));
        assertThrows(DimensionException.class, () -> difference.minus(set));
    }

    @Example
    void aGuardRemembersWhichWayItWent() {
        Quantity zero = Quantity.of(0, "kN");
        Quantity n = Quantity.of(5, "kN");
        Quantity chosen = Quantity.choose(n.moreThan(zero), () -> n, () -> zero);
        assertEquals(5, chosen.in("kN"));
        assertEquals(3, chosen.operands().size());
    }

    @Example
    void aHundredThousandTermsNeitherOverflowNorPrint() {
        Quantity total = Quantity.of(0, "m");
        for (int i = 0; i < 100_000; i++) {
            total = total.plus(Quantity.of(1, "m"));
        }
        assertEquals(100_000, total.in("m"));
        assertEquals(200_001, Graph.ordered(List.of(total)).size());
        assertTrue(total.worked().text().startsWith("a formula of more than"));
        List<Quantity> restored = FlatGraph.lay(List.of(total)).graph().restore();
        assertEquals(total, restored.get(restored.size() - 1));
    }

    @Example
    void sharedOperandsAreKeptOnce() {
        Quantity doubled = SPAN;
        for (int i = 0; i < 60; i++) {
            doubled = doubled.plus(doubled);
        }
        assertEquals(61, Graph.ordered(List.of(doubled)).size());
        assertTrue(doubled.worked().text().startsWith("a formula of more than"));
    }

    @Property(tries = 300)
    void aGraphLaidFlatAndRestoredIsTheSame(@ForAll long seed) {
        Quantity quantity = new RandomGraph(seed).grow(20);
        FlatGraph.Positions laid = FlatGraph.lay(List.of(quantity));
        Quantity restored = laid.graph().restore().get(laid.of(quantity));
        assertEquals(quantity, restored);
        assertEquals(quantity.worked().text(), restored.worked().text());
        assertEquals(laid.graph(), FlatGraph.lay(List.of(restored)).graph());
    }

    record Input(Quantity span, List<Quantity> loads, double factor) {}

    record Output(Quantity total, List<Quantity> scaled) {}

    static final class Scaling implements Routine<Input, Output> {
        @Override
        public String name() {
            return "test.scaling";
        }

        @Override
        public int edition() {
            return 3;
        }

        @Override
        public Output run(Input input, Stop stop) {
            stop.check();
            return new Output(
                    Quantity.sum(input.loads()).times(input.span()),
                    input.loads().stream().map(q -> q.times(input.factor())).toList());
        }
    }

    @Example
    void aRoutinesResultIsTiedToItsInputs() {
        List<Quantity> loads =
                List.of(
                        Quantity.given("P_1", 1, "kN", "", Source.data("loads.csv", "row 1")),
                        Quantity.given("P_2", 2, "kN", "", Source.data("loads.csv", "row 2")));
        Output output = Routines.call(new Scaling(), new Input(SPAN, loads, 2));
        assertEquals(List.of(SPAN, loads.get(0), loads.get(1)), output.total().operands());
        assertEquals(4, output.scaled().get(1).in("kN"));
        assertEquals(
                "Q = scaled 2 by routine test.scaling of (L, P_1, P_2)\n  = 4\u00A0kN",
                output.scaled()
                        .get(1)
                        .named("Q", "kN", "")
                        .worked()
                        .text()
                        .replace("2) =", "2)\n  ="));
        assertEquals(
                "\\text{total by routine test.scaling of}\\ \\left(L,\\, P_{1},\\, P_{2}\\right)"
                        + " = 1\\,008\\ \\mathrm{kN{\\cdot}m}",
                output.total().worked().latex());
        FlatGraph flat = FlatGraph.lay(output.scaled()).graph();
        assertEquals(1, flat.calls().size());
        assertEquals(3, flat.calls().get(0).edition());
        assertEquals(flat, FlatGraph.lay(flat.restore()).graph());
    }

    @Example
    void symbolsAreNamesAndNothingElse() {
        for (String bad : List.of("", "1a", "a b", "a_b_c", "<b>", "a$", "x".repeat(41))) {
            assertThrows(IllegalArgumentException.class, () -> SPAN.named(bad, "m", ""), bad);
        }
        for (String good : List.of("N_Ed", "σ", "f_y,k", "M′", "GSI", "P_1")) {
            assertEquals(good, SPAN.named(good, "m", "").symbol());
        }
    }

    @Example
    void equalityIsExact() {
        assertEquals(Quantity.of(1, "kN"), Quantity.of(1000, "N"));
        assertFalse(Quantity.of(1, "kN").equals(Quantity.of(1000, "m")));
    }
}
