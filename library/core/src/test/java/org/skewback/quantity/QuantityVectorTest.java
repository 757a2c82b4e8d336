package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.sheet.Column;

class QuantityVectorTest {

    private static final Source DRAWING = Source.drawing("OG-201", "B");

    private final Quantity span = Quantity.given("L", 336, "m", "span", DRAWING);
    private final Quantity rise = Quantity.given("f", 72, "m", "rise", DRAWING);

    private static Quantity metres(double value) {
        return Quantity.of(value, "m");
    }

    private QuantityVector axis(QuantityVector x) {
        return x.map(at -> rise.times(4).times(at).times(span.minus(at)).over(span.squared()));
    }

    @Test
    void aRangeIsEvenAndEndsAtTheVeryQuantitiesGiven() {
        QuantityVector x = QuantityVector.range(metres(0), span, 5);
        assertArrayEquals(new double[] {0, 84, 168, 252, 336}, x.in("m"));
        assertSame(span, x.last());
        assertEquals("1 · L / 4 = 1 · 336\u00A0m / 4 = 84\u00A0m", x.get(1).worked().text());
        assertEquals(
                "a + 1 · (L − a) / 2 = 36\u00A0m + 1 · (336\u00A0m − 36\u00A0m) / 2 = 186\u00A0m",
                QuantityVector.range(metres(36).named("a", "m", "start"), span, 3)
                        .get(1)
                        .worked()
                        .text());
    }

    @Test
    void aRangeInStepsTakesBothEndsAndMayFall() {
        assertArrayEquals(
                new double[] {0, 24, 48, 72},
                QuantityVector.range(metres(0), rise, metres(24)).in("m"));
        assertArrayEquals(
                new double[] {1, 0.5, 0},
                QuantityVector.range(metres(1), metres(0), metres(-0.5)).in("m"));
        assertEquals(11, QuantityVector.range(metres(0), metres(1), metres(0.1)).size());
    }

    @Property(tries = 300)
    void neighboursOfARangeAreAsFarApartAsItsEndsAllow(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double from,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double to,
            @ForAll @IntRange(min = 2, max = 200) int count) {
        QuantityVector x = QuantityVector.range(metres(from), metres(to), count);
        assertEquals(count, x.size());
        // Each element is rounded in a product, a quotient and a sum.
        double rounding = 8 * Math.ulp(Math.max(Math.abs(from), Math.abs(to)));
        for (int i = 1; i < count; i++) {
            assertEquals((to - from) / (count - 1), x.get(i).si() - x.get(i - 1).si(), rounding);
        }
    }

    @Test
    void aRangeThatIsNoneSaysWhy() {
        refused(
                DimensionException.class,
                "cannot go from 0\u00A0kN (a force)",
                () -> QuantityVector.range(Quantity.of(0, "kN"), span, 3));
        refused(
                IllegalArgumentException.class,
                "a range from 0\u00A0m to L = 336\u00A0m has 1 elements; allowed are 2 to 1000000",
                () -> QuantityVector.range(metres(0), span, 1));
        refused(
                IllegalArgumentException.class,
                "a range from 0\u00A0m to L = 336\u00A0m is 33.6 steps of 10\u00A0m; allowed are"
                        + " whole steps, 1 to 999999",
                () -> QuantityVector.range(metres(0), span, metres(10)));
        for (double step : new double[] {0, -24, 1e-9, 1000}) {
            refused(
                    IllegalArgumentException.class,
                    "allowed are whole steps",
                    () -> QuantityVector.range(metres(0), span, metres(step)));
        }
        refused(
                DimensionException.class,
                "in steps of 1\u00A0s (a time)",
                () -> QuantityVector.range(metres(0), span, Quantity.of(1, "s")));
    }

    @Test
    void readingsInDegreesHaveRangesToo() {
        QuantityVector air = QuantityVector.range(Quantity.of(-10, "°C"), Quantity.of(40, "°C"), 6);
        assertArrayEquals(new double[] {-10, 0, 10, 20, 30, 40}, air.in("°C"), 1e-12);
    }

    @Test
    void elementsAreWorkedOneByOne() {
        QuantityVector x = QuantityVector.of("m", 1, 2, 4);
        QuantityVector y = QuantityVector.of("m", 10, 20, 40);
        assertArrayEquals(new double[] {11, 22, 44}, x.plus(y).in("m"));
        assertArrayEquals(new double[] {9, 18, 36}, y.minus(x).in("m"));
        assertArrayEquals(new double[] {10, 40, 160}, x.times(y).in("m²"));
        assertArrayEquals(new double[] {10, 10, 10}, y.over(x).in(""));
        assertArrayEquals(new double[] {2, 3, 5}, x.plus(metres(1)).in("m"));
        assertArrayEquals(new double[] {0, 1, 3}, x.minus(metres(1)).in("m"));
        assertArrayEquals(new double[] {2, 4, 8}, x.times(2).in("m"));
        assertArrayEquals(new double[] {3, 6, 12}, x.times(Quantity.of(3, "kN")).in("kN·m"));
        assertArrayEquals(new double[] {0.5, 1, 2}, x.over(2).in("m"));
        assertArrayEquals(new double[] {0.5, 1, 2}, x.over(metres(2)).in(""));
        assertArrayEquals(new double[] {-1, -2, -4}, x.negated().in("m"));
        assertEquals(7, x.sum().in("m"));
        assertEquals(1, x.min().in("m"));
        assertEquals(40, y.max().in("m"));
        assertEquals(metres(2), x.get(1));
        assertEquals(metres(1), x.first());
        assertEquals(List.of(metres(1), metres(2), metres(4)), x);
    }

    @Test
    void whatGoesWrongNamesTheElementItsSymbolAndTheDimensions() {
        QuantityVector x =
                QuantityVector.of("m", 1, 0, 4).named("x", "m", "columns from the springing");
        refused(
                ArithmeticException.class,
                "element 2, x_2 = 0\u00A0m: division by zero: 1\u00A0m and x_2 = 0\u00A0m",
                () -> x.map(at -> metres(1).over(at)));
        refused(
                DimensionException.class,
                "element 1, x_1 = 1\u00A0m: cannot add x_1 = 1\u00A0m (a length) and 3\u00A0kN"
                        + " (a force)",
                () -> x.plus(Quantity.of(3, "kN")));
        refused(
                IllegalArgumentException.class,
                "a vector of 3 quantities, x_1 = 1\u00A0m the first, meets one of 2, 1\u00A0m the"
                        + " first; allowed: as many in both",
                () -> x.plus(QuantityVector.of("m", 1, 2)));
        refused(
                DimensionException.class,
                "element 2 of a vector is 3\u00A0kN, a force",
                () -> QuantityVector.of(span, Quantity.of(3, "kN")));
        refused(
                IllegalArgumentException.class,
                "a vector of no quantities has no dimension",
                QuantityVector::of);
        refused(
                IllegalArgumentException.class,
                "element 2: value of m is NaN",
                () -> QuantityVector.of("m", 1, Double.NaN));
        refused(
                IndexOutOfBoundsException.class,
                "index 3 of a vector of 3 quantities, x_1 = 1\u00A0m the first; allowed are 0 to 2",
                () -> x.get(3));
        refused(
                DimensionException.class,
                "column \"load\", row 1: cannot convert x_1 = 1\u00A0m, a length, to kN",
                () -> Column.of("load", "kN", x));
    }

    private static <E extends RuntimeException> void refused(
            Class<E> kind, String message, Runnable work) {
        E e = assertThrows(kind, work::run);
        assertTrue(String.valueOf(e.getMessage()).contains(message), e.getMessage());
    }

    @Test
    void formulasEndAtTheNamesOfElements() {
        QuantityVector loads = QuantityVector.of("kN", 3, 4).named("P", "kN", "loads");
        assertEquals("P_1 + P_2 = 3\u00A0kN + 4\u00A0kN = 7\u00A0kN", loads.sum().worked().text());
        assertEquals(
                List.of("N_Ed,1", "N_Ed,2"),
                loads.named("N_Ed", "MN", "forces").stream().map(Quantity::symbol).toList());
        assertEquals("(3, 4)\u00A0kN", loads.toString());
        assertEquals(
                "(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, …, 20)\u00A0m",
                QuantityVector.range(metres(1), metres(20), 20).toString());
    }

    /** A parabola over the span: y = 4 f x (L − x) / L², so the crown rises with f alone. */
    @Test
    void aTapeMovesEveryElementWithItsGivens() {
        QuantityVector x = QuantityVector.range(metres(0), span, 5);
        QuantityVector y = axis(x);
        assertArrayEquals(new double[] {0, 54, 72, 54, 0}, y.in("m"), 1e-12);
        Tape tape = Tape.of(List.of(x.get(1), y.get(1), y.max(), y.sum()), List.of(span, rise));
        double[] out = tape.evaluate(new double[] {400, 100});
        assertEquals(100, out[0], 1e-12);
        assertEquals(75, out[1], 1e-12);
        assertEquals(100, out[2], 1e-12);
        assertEquals(250, out[3], 1e-12);
    }
}
