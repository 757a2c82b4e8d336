package org.skewback.action;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.skewback.quantity.Quantity;

class BridgeTemperatureTest {

    /** What a bridge can warm and what it can cool add up to all it can do, wherever it was set. */
    @Property(tries = 30)
    void warmingAndCoolingMakeTheWholeRange(
            @ForAll @DoubleRange(min = -10, max = 40) double initial) {
        Quantity set = Quantity.of(initial, "°C");
        Quantity warmest = BridgeTemperature.warmest(Quantity.of(41, "°C"), BridgeDeck.STEEL_BOX);
        Quantity coldest = BridgeTemperature.coldest(Quantity.of(-14, "°C"), BridgeDeck.STEEL_BOX);

        double both =
                BridgeTemperature.expansion(warmest, set).in("K")
                        + BridgeTemperature.contraction(set, coldest).in("K");

        assertEquals(57 + 17, both, 1e-9);
    }

    /** At the probability for which maps are drawn, the formula of the annex gives the map's value. */
    @Test
    void theMapsProbabilityGivesTheMapsTemperature() {
        Quantity once = Quantity.of(0.02);

        assertEquals(
                41, BridgeTemperature.hottestAir(Quantity.of(41, "°C"), once).in("°C"), 0.005 * 41);
        assertEquals(
                -14,
                BridgeTemperature.coldestAir(Quantity.of(-14, "°C"), once).in("°C"),
                0.005 * 14);
    }

    /** A rarer temperature is further out. */
    @Property(tries = 30)
    void rarerIsFurtherOut(@ForAll @IntRange(min = 2, max = 400) int thousandths) {
        Quantity rare = Quantity.of(thousandths / 1000.0);
        Quantity common = Quantity.of(1.2 * thousandths / 1000.0);

        assertTrue(
                BridgeTemperature.hottestAir(Quantity.of(35, "°C"), rare).in("°C")
                        > BridgeTemperature.hottestAir(Quantity.of(35, "°C"), common).in("°C"));
        assertTrue(
                BridgeTemperature.coldestAir(Quantity.of(-14, "°C"), rare).in("°C")
                        < BridgeTemperature.coldestAir(Quantity.of(-14, "°C"), common).in("°C"));
    }

    /** Between rows the table is straight, and its own rows are kept. */
    @Test
    void surfacingIsReadBetweenRows() {
        assertEquals(
                0.85,
                BridgeDeck.STEEL_BOX.surfacingFactor(Quantity.of(75, "mm"), true).in(""),
                1e-12);
        assertEquals(1.4, BridgeDeck.STEEL_BOX.surfacingFactor(DeckSurface.BALLAST, false).in(""));
    }

    @Test
    void badInputIsNamed() {
        assertRefused(
                () -> BridgeTemperature.expansion(Quantity.of(20, "°C"), Quantity.of(30, "°C")),
                "initial temperature is 30.0 °C");
        assertRefused(
                () -> BridgeTemperature.contraction(Quantity.of(-20, "°C"), Quantity.of(-10, "°C")),
                "coldest temperature of the bridge is -10.0 °C");
        assertRefused(
                () -> BridgeTemperature.bearingRange(Quantity.of(-1, "K"), true),
                "range of temperature is -1.0 K");
        assertRefused(
                () -> BridgeDeck.COMPOSITE.surfacingFactor(Quantity.of(20, "mm"), true),
                "thickness of the surfacing is 20.0 mm");
        assertRefused(
                () -> BridgeTemperature.hottestAir(Quantity.of(41, "°C"), Quantity.of(0.9)),
                "probability in a year is 0.9");
    }

    static void assertRefused(Executable call, String... parts) {
        String message =
                String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
        for (String part : parts) {
            assertTrue(message.contains(part), message);
        }
    }
}
