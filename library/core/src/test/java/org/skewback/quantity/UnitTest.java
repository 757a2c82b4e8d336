package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.unit.Units;

/** Units: known ones against Indriya, the reference implementation of JSR 385; others refused. */
class UnitTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kN", "MN", "N", "GPa", "MPa", "kPa", "mm", "cm", "km", "µm", "kg", "g", "mg", "s",
                "ms", "min", "h", "Hz", "kHz", "K", "mK", "J", "kJ", "W", "kW", "m/s", "m/s²",
                "N/mm²", "kN/m", "kN·m", "kN/m³", "kg/m³", "m²", "kN·m²", "MPa·m"
            })
    void factorIsThatOfTheReferenceLibrary(String text) {
        assertEquals(
                1,
                Unit.of(text).factor() / factor(SimpleUnitFormat.getInstance().parse(text)),
                1e-14);
    }

    @SuppressWarnings({
        "unchecked",
        "rawtypes"
    }) // the library's type parameter is unknown in a text
    private static double factor(javax.measure.Unit unit) {
        return unit.getConverterTo(unit.getSystemUnit()).convert(1.0);
    }

    /**
     * A prefix belongs to its unit before the exponent does: cm³ is (cm)³ (SI Brochure, 9th ed.,
     * §3). The reference library's parser reads c(m³) there, so the units are built, not parsed.
     */
    @Test
    void anExponentRaisesThePrefixToo() {
        javax.measure.Unit<?> cubicCentimetre = MetricPrefix.CENTI(Units.METRE).pow(3);
        assertEquals(1, Unit.of("cm³").factor() / factor(cubicCentimetre), 1e-14);
        javax.measure.Unit<?> millimetreToTheFourth = MetricPrefix.MILLI(Units.METRE).pow(4);
        assertEquals(1, Unit.of("mm⁴").factor() / factor(millimetreToTheFourth), 1e-14);
    }

    /** SI Brochure, 9th ed. (2019), table 8 and §5.4.7; ISO 80000-3 for the gon. */
    @ParameterizedTest
    @CsvSource({
        "t, 1000", "kN/m/m, 1000", "kN/(m·s), 1000", "N*mm^2, 1e-6", "m^(1/2), 1", "‰, 1e-3",
        "%, 1e-2", "bar, 1e5", "l, 1e-3", "ha, 1e4", "d, 86400", "°, 0.017453292519943295",
        "gon, 0.015707963267948967", "t/m, 1000", "kN m, 1000"
    })
    void unitsOfTheTradeAreKnown(String text, double factor) {
        assertEquals(factor, Unit.of(text).factor(), 1e-15 * factor);
    }

    @ParameterizedTest
    @ValueSource(strings = {"kip", "ft", "kN//m", "kN·", "(m", "m)", "m^", "m^(1/0)", "№", "m²3x"})
    void anythingElseIsRefusedByName(String text) {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Unit.of(text));
        assertEquals(true, e.getMessage().contains("\"" + text + "\""), e.getMessage());
    }

    @Test
    void readingIsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Quantity q = Quantity.of(12.5, "kN/m²");
            assertEquals(12_500, q.si());
            assertEquals("12.5\u00A0kN/m²", q.toString());
        } finally {
            Locale.setDefault(before);
        }
    }
}
