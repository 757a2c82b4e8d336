package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
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

    private record Built(String text, javax.measure.Unit<?> unit) {

        javax.measure.Unit<?> by(Built other, int power) {
            return unit.multiply(other.unit.pow(power));
        }

        @Override
        public String toString() {
            return text;
        }
    }

    /** Units built from the reference library's own parts, so that its parser has no say. */
    static Stream<Built> factorIsThatOfTheSameUnitBuiltInTheReferenceLibrary() {
        List<Built> lengths =
                List.of(
                        new Built("m", Units.METRE),
                        new Built("mm", MetricPrefix.MILLI(Units.METRE)),
                        new Built("cm", MetricPrefix.CENTI(Units.METRE)),
                        new Built("km", MetricPrefix.KILO(Units.METRE)));
        List<Built> others =
                List.of(
                        new Built("N", Units.NEWTON),
                        new Built("daN", MetricPrefix.DECA(Units.NEWTON)),
                        new Built("kN", MetricPrefix.KILO(Units.NEWTON)),
                        new Built("MN", MetricPrefix.MEGA(Units.NEWTON)),
                        new Built("GN", MetricPrefix.GIGA(Units.NEWTON)),
                        new Built("kg", Units.KILOGRAM),
                        new Built("g", Units.GRAM),
                        new Built("kJ", MetricPrefix.KILO(Units.JOULE)),
                        new Built("mrad", MetricPrefix.MILLI(Units.RADIAN)),
                        new Built("µrad", MetricPrefix.MICRO(Units.RADIAN)));
        List<Built> built = new ArrayList<>();
        for (Built other : others) {
            for (Built length : lengths) {
                String by = other.text + "/" + length.text;
                built.add(new Built(other.text + "·" + length.text, other.by(length, 1)));
                built.add(new Built(by, other.by(length, -1)));
                built.add(new Built(by + "²", other.by(length, -2)));
                built.add(new Built(by + "^3", other.by(length, -3)));
            }
        }
        built.add(new Built("hPa", MetricPrefix.HECTO(Units.PASCAL)));
        built.add(new Built("pm", MetricPrefix.PICO(Units.METRE)));
        built.add(new Built("nm", MetricPrefix.NANO(Units.METRE)));
        built.add(new Built("dm", MetricPrefix.DECI(Units.METRE)));
        built.add(new Built("TN", MetricPrefix.TERA(Units.NEWTON)));
        built.add(new Built("MPa·s", MetricPrefix.MEGA(Units.PASCAL).multiply(Units.SECOND)));
        built.add(new Built("1/min", Units.MINUTE.inverse()));
        built.add(new Built("km/h", Units.KILOMETRE_PER_HOUR));
        built.add(new Built("m³/h", Units.CUBIC_METRE.divide(Units.HOUR)));
        built.add(new Built("kWh", MetricPrefix.KILO(Units.WATT).multiply(Units.HOUR)));
        built.add(new Built("l/s", Units.LITRE.divide(Units.SECOND)));
        built.add(new Built("%", Units.PERCENT));
        built.add(new Built("1/K", Units.KELVIN.inverse()));
        built.add(new Built("L/min", Units.LITRE.divide(Units.MINUTE)));
        built.add(new Built("l/(min·m)", Units.LITRE.divide(Units.MINUTE).divide(Units.METRE)));
        built.add(new Built("mm/s", MetricPrefix.MILLI(Units.METRE).divide(Units.SECOND)));
        built.add(new Built("mm/h", MetricPrefix.MILLI(Units.METRE).divide(Units.HOUR)));
        built.add(new Built("mm/d", MetricPrefix.MILLI(Units.METRE).divide(Units.DAY)));
        built.add(new Built("rad/s", Units.RADIAN.divide(Units.SECOND)));
        built.add(new Built("°/m", Units.RADIAN.multiply(Math.PI).divide(180).divide(Units.METRE)));
        built.add(new Built("mm/m", MetricPrefix.MILLI(Units.METRE).divide(Units.METRE)));
        built.add(new Built("‰", Units.PERCENT.divide(10)));
        built.add(new Built("ha", Units.SQUARE_METRE.multiply(10_000)));
        built.add(new Built("bar", MetricPrefix.HECTO(Units.PASCAL).multiply(1000)));
        built.add(new Built("mbar", MetricPrefix.HECTO(Units.PASCAL)));
        built.add(new Built("t/m³", MetricPrefix.MEGA(Units.GRAM).divide(Units.CUBIC_METRE)));
        built.add(new Built("N/mm³", Units.NEWTON.divide(MetricPrefix.MILLI(Units.METRE).pow(3))));
        built.add(new Built("mPa·s", MetricPrefix.MILLI(Units.PASCAL).multiply(Units.SECOND)));
        built.add(new Built("W/(m·K)", Units.WATT.divide(Units.METRE).divide(Units.KELVIN)));
        built.add(
                new Built(
                        "kJ/(kg·K)",
                        MetricPrefix.KILO(Units.JOULE)
                                .divide(Units.KILOGRAM)
                                .divide(Units.KELVIN)));
        built.add(
                new Built(
                        "Lu",
                        Units.LITRE
                                .divide(Units.MINUTE)
                                .divide(Units.METRE)
                                .divide(MetricPrefix.MEGA(Units.PASCAL))));
        return built.stream();
    }

    @ParameterizedTest
    @MethodSource
    void factorIsThatOfTheSameUnitBuiltInTheReferenceLibrary(Built built) {
        Unit ours = Unit.of(built.text);
        assertEquals(1, ours.factor() / factor(built.unit), 1e-14);
        assertEquals(7.25, ours.fromSi(ours.toSi(7.25)), 4 * Math.ulp(7.25));
    }

    @Test
    void arcMinutesAndSecondsAreSixtiethsOfADegree() {
        assertEquals(Unit.of("°").factor(), 60 * Unit.of("′").factor(), 1e-17);
        assertEquals(Unit.of("′").factor(), 60 * Unit.of("″").factor(), 1e-18);
        assertEquals(1e-6, Unit.of("ppm").factor());
        assertEquals(Unit.of("ppm").factor(), Unit.of("µm/m").factor(), 1e-21);
    }

    @ParameterizedTest
    @CsvSource({
        "kn, did you mean kN?",
        "KN, did you mean kN?",
        "mpa, did you mean MPa or mPa?",
        "Kg/m, did you mean kg?",
        "hz, did you mean Hz?",
        "Nm, write a product with a dot: N·m",
        "kNm/m, write a product with a dot: kN·m",
        "Nmm, write a product with a dot: N·mm",
        "mm2, write exponents as ² or ^2",
        "kN-m, write a product with a dot: ·"
    })
    void aNearMissIsRefusedWithWhatMayHaveBeenMeant(String text, String hint) {
        Exception e = assertThrows(IllegalArgumentException.class, () -> Unit.of(text));
        assertEquals(true, e.getMessage().endsWith("; " + hint), e.getMessage());
    }

    @Test
    void whatIsNearToNothingGetsNoHint() {
        Exception e = assertThrows(IllegalArgumentException.class, () -> Unit.of("kip"));
        assertEquals("unit \"kip\": \"kip\" is not a known unit", e.getMessage());
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
