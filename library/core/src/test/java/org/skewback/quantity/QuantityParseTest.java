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
import net.jqwik.api.constraints.IntRange;

/** What is printed can be read back, to the digits printed, in another unit and in every spelling. */
class QuantityParseTest {

    private static final List<String> UNITS =
            List.of("", "kN", "N/mm²", "kN·m/m", "°", "‰", "%", "1/K", "t", "°C", "m^(1/2)");

    @Property
    void exactIsReadBackToTheLastBit(@ForAll double value) {
        assertEquals(value + 0.0, Numerals.parse(Numerals.exact(value)) + 0.0);
        if (Math.abs(value) < 1e300) {
            for (String unit : List.of("kN", "1/m")) {
                assertEquals(
                        Quantity.of(value, unit),
                        Quantity.parse(Numerals.exact(value) + " " + unit));
            }
        }
    }

    @Property
    void whatItsAuthorWroteIsReadBackAsWritten(
            @ForAll @DoubleRange(min = -1e12, max = 1e12) double value) {
        for (String unit : UNITS) {
            Quantity quantity = Quantity.of(value, unit);
            Quantity read = Quantity.parse(quantity.toString());
            assertEquals(quantity.dimension(), read.dimension());
            assertEquals(unit, read.unit().symbol());
            // A reading loses the digits that 273.15 pushes out, and a step at most in converting.
            double offset = unit.equals("°C") ? 2 * Math.ulp(300.0) : 0;
            assertEquals(value, read.in(unit), 4 * Math.ulp(value) + offset, quantity.toString());
        }
    }

    /** Four digits leave out less than half a unit of the fourth. */
    @Property(tries = 500)
    void aResultIsReadBackToTheDigitsPrinted(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 20) int size) {
        Quantity result = new RandomGraph(seed).grow(size);
        Quantity read = Quantity.parse(Numerals.withUnit(result));
        assertEquals(result.dimension(), read.dimension());
        assertEquals(result.unit().symbol(), read.unit().symbol());
        assertEquals(1, read.si() / result.si(), 0.5001e-3, result.toString());
    }

    @Property
    void significantDigitsAreReadBackAndPrintTheSameAgain(
            @ForAll @DoubleRange(min = -1e15, max = 1e15) double value,
            @ForAll @IntRange(min = 1, max = 15) int digits) {
        String printed = Numerals.significant(value, digits);
        double read = Numerals.parse(printed);
        double half = 0.5 * StrictMath.pow(10, 1 - digits) * Math.abs(value);
        assertEquals(value, read, half + Math.ulp(value), printed);
        assertEquals(printed, Numerals.significant(read, digits));
    }

    @Example
    void significantDigitsAreThoseStated() {
        assertEquals("29\u202F000", Numerals.significant(29_008, 3));
        assertEquals("29\u202F008.0", Numerals.significant(29_008, 6));
        assertEquals("0.500", Numerals.significant(0.5, 3));
        assertEquals("10", Numerals.significant(9.99, 2));
        assertEquals("−1.20\u00A0×\u00A010⁻⁵", Numerals.significant(-1.2e-5, 3));
        assertEquals("2.0\u00A0×\u00A010²³", Numerals.significant(Double.parseDouble("2e23"), 2));
        assertEquals("0", Numerals.significant(0, 5));
        for (int digits : new int[] {0, -1, 18}) {
            Exception e =
                    assertThrows(
                            IllegalArgumentException.class, () -> Numerals.significant(1, digits));
            assertEquals(
                    "significant digits are " + digits + "; allowed are 1 to 17", e.getMessage());
        }
    }

    @Example
    void everySpellingOfOneNumberIsRead() {
        for (String text :
                List.of(
                        "29 008 kN",
                        "29\u202F008\u00A0kN",
                        "29\u00A0008\u202FkN",
                        "29008 kN",
                        "29008.0 kN",
                        "2.9008e4 kN",
                        "2.9008 × 10⁴ kN",
                        "2.9008×10^4 kN",
                        "2 900 800e-2 kN")) {
            assertEquals(29_008, Quantity.parse(text).in("kN"), 1e-11, text);
        }
        assertEquals(-1.2e-5, Quantity.parse("−1.2 × 10⁻⁵ 1/K").si());
        assertEquals(-1.2e-5, Quantity.parse("-1.2e−5 1/K").si());
        assertEquals(38.66, Quantity.parse("38.66°").in("°"), 1e-14);
        assertEquals(0.125, Quantity.parse("12.5%").si());
        assertEquals(Quantity.of(3), Quantity.parse("3"));
    }

    @Example
    void whatIsNoQuantityIsRefused() {
        for (String bad :
                List.of(
                        "",
                        "kN",
                        "29,008 kN",
                        "1 2345 kN",
                        "12 34 kN",
                        "1234 567 kN",
                        "1\u202F234 567 kN",
                        "148kN",
                        "1.234 567 kN",
                        ".5 m",
                        "5. m",
                        "+5 m",
                        "5  m",
                        " 5 m",
                        "5 m ",
                        "5 1",
                        "--5 m",
                        "5e m",
                        "1e999 m",
                        "0x10 m",
                        "NaN",
                        "∞ m",
                        "H = 3 kN",
                        "٣ m",
                        "5 furlong",
                        "9".repeat(400))) {
            assertThrows(IllegalArgumentException.class, () -> Quantity.parse(bad), bad);
        }
        Exception e =
                assertThrows(IllegalArgumentException.class, () -> Quantity.parse("29,008 kN"));
        assertTrue(e.getMessage().contains("write a point before decimals"), e.getMessage());
    }

    @Example
    void anotherUnitKeepsSymbolSourceAndOrigin() {
        Quantity span = Quantity.given("L", 12_345.678, "m", "span", Source.drawing("OG-201", "B"));
        Quantity shown = span.inUnit("km");
        assertEquals("L = 12.345678\u00A0km", shown.toString());
        assertEquals("L = 12.35\u00A0km", shown.toString(4));
        assertEquals(span.source(), shown.source());
        assertTrue(shown.operands().get(0).isSameNode(span));
        Quantity thrust = Quantity.of(29_008_400).times(Quantity.of(1, "N"));
        Quantity mega = thrust.inUnit("MN");
        assertEquals("29.01\u00A0MN", mega.toString());
        assertEquals("29.0084\u00A0MN", mega.toString(6));
        assertEquals(thrust.operands(), mega.operands());
        Quantity named = thrust.named("H", "kN", "thrust").inUnit("MN");
        assertEquals(
                "H = 29 008 kN = 29.01 MN",
                named.worked().text().replace('\u202F', ' ').replace('\u00A0', ' '));
        assertThrows(DimensionException.class, () -> span.inUnit("kN"));
        Exception e =
                assertThrows(DimensionException.class, () -> Quantity.of(41, "°C").inUnit("K"));
        assertTrue(e.getMessage().endsWith("a reading is no difference"), e.getMessage());
        assertThrows(DimensionException.class, () -> Quantity.of(29, "K").inUnit("°C"));
        assertFalse(shown.isLeaf());
        FlatGraph.Positions laid = FlatGraph.lay(List.of(shown));
        assertEquals(shown.toString(), laid.graph().restore().get(laid.of(shown)).toString());
    }
}
