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

    private static String given(double value, String unit, Source source) {
        return Numerals.withUnit(Quantity.given("x", value, unit, "a given", source));
    }

    /** Twelve digits are more than any source gives; a record keeps them all whatever is shown. */
    @Example
    void aGivenThatWasCalculatedElsewhereHasTheDigitsOfAResult() {
        Source sheet = Source.sheet("06", "H");
        assertEquals("37\u202F337\u00A0kN", given(37_336.861_204_123_124, "kN", sheet));
        assertEquals("160.3\u00A0kPa", given(160.314_489_719_022_33, "kPa", sheet));
        assertEquals("0.65", given(0.65, "", sheet));
        assertEquals("184.37251\u00A0m", given(184.372_51, "m", sheet));
        Source survey = Source.data("west-slope-survey.csv", "rows 3 and 4");
        assertEquals("21.738\u00A0m", given(21.738_000_000_000_056, "m", survey));
        assertEquals("6\u00A0m", given(5.999_999_999_999_987, "m", survey));
        Quantity bare = Quantity.of(160.314_489_719_022_33, "kPa");
        assertEquals("160.3\u00A0kPa", Numerals.withUnit(bare), "as a sheet shows it");
        assertEquals("160.31448971902233\u00A0kPa", bare.toString(), "to be read back");
    }
}
