package org.skewback.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.skewback.quantity.Quantity;

class WindTest {

    private static final Quantity AIR = Quantity.of(1.25, "kg/m³");

    /** Force goes with the square of the wind. */
    @Property(tries = 30)
    void theForceGoesWithTheSquareOfTheWind(
            @ForAll @DoubleRange(min = 5, max = 40) double velocity) {
        assertEquals(peak(20, 50, 1) * velocity * velocity / 400, peak(velocity, 50, 1), 1e-6);
    }

    /** Higher up the wind is never weaker. */
    @Property(tries = 30)
    void theWindGrowsWithHeight(@ForAll @DoubleRange(min = 1, max = 199) double height) {
        assertTrue(peak(29, height + 1, 1) >= peak(29, height, 1));
    }

    /** Funnelling raises the peak, though less than its square, as turbulence is shared out. */
    @Test
    void orographyRaisesThePeak() {
        double level = peak(29, 80, 1);
        double funnelled = peak(29, 80, 1.2);

        assertTrue(funnelled > level);
        assertTrue(funnelled < 1.44 * level);
    }

    @Test
    void badInputIsNamed() {
        assertRefused(() -> peak(29, 225, 1), "height above ground is 225.0 m", "at most 200 m");
        assertRefused(() -> peak(-1, 50, 1), "basic wind velocity is -1");
        assertRefused(() -> peak(29, 50, 0), "orography factor is 0");
        assertRefused(
                () -> DeckWind.acrossCoefficient(Quantity.of(0, "m"), Quantity.of(1, "m")),
                "width of the deck is 0.0 m");
    }

    private static double peak(double velocity, double height, double orography) {
        Quantity roughness = Terrain.OPEN.roughnessLength();
        Quantity least = Terrain.OPEN.leastHeight();
        Quantity z = Quantity.of(height, "m");
        Quantity factor = Quantity.of(orography);
        Quantity mean =
                WindProfile.meanVelocity(Quantity.of(velocity, "m/s"), z, roughness, least, factor);
        return WindProfile.peakPressure(
                        mean, WindProfile.turbulenceIntensity(z, roughness, least, factor), AIR)
                .in("Pa");
    }

    private static void assertRefused(Executable call, String... parts) {
        String message =
                String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
        for (String part : parts) {
            assertTrue(message.contains(part), message);
        }
    }
}
