package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class NumeralsTest {

    @Property
    void exactReadsBackAsTheSameDouble(@ForAll double value) {
        assertEquals(value + 0.0, Double.parseDouble(Numerals.exact(value)));
    }

    @Property
    void exactIsNeverLongerThanTheShortestThatReadsBack(@ForAll double value) {
        String digits = Numerals.exact(value).replaceAll("e.*", "").replaceAll("[-.]", "");
        assertEquals(true, digits.replaceAll("^0+|0+$", "").length() <= 17);
    }

    /** The double nearest to 2·10²³ prints long in Java 17's own Double.toString. */
    @Example
    void exactIsShortest() {
        assertEquals("2e23", Numerals.exact(Double.parseDouble("2e23")));
        assertEquals("0.1", Numerals.exact(0.1));
        assertEquals("1e-7", Numerals.exact(1e-7));
        assertEquals("29008000", Numerals.exact(29_008_000));
    }

    @Example
    void resultsHaveFourDigitsAndNeverLessThanTheWhole() {
        assertEquals("29\u202F008", Numerals.result(29_008.4));
        assertEquals("1\u202F234\u202F568", Numerals.result(1_234_567.8));
        assertEquals("41.14", Numerals.result(41.1416));
        assertEquals("999.9", Numerals.result(999.94));
        assertEquals("−0.5", Numerals.result(-0.5));
        assertEquals("1.234\u00A0×\u00A010⁻⁵", Numerals.result(1.2341e-5));
        assertEquals("7.50", Numerals.fixed(7.5, 2));
    }
}
