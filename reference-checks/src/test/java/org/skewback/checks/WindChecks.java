package org.skewback.checks;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.wind.DeckWind;
import org.skewback.wind.Terrain;
import org.skewback.wind.WindProfile;

/** Checks of {@code org.skewback.wind}. */
public final class WindChecks implements Subject {

    private static final Quantity AIR = Quantity.of(1.25, "kg/m³");
    private static final Quantity LEVEL = Quantity.of(1);

    /** Makes the subject. */
    public WindChecks() {}

    @Override
    public String topic() {
        return "wind";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("WindProfile", WindChecks::profile);
        routines.put("DeckWind", WindChecks::deck);
        return routines;
    }

    private static Map<String, Quantity> profile(Inputs in) {
        Terrain terrain = terrain(in);
        Quantity height = in.quantity("height");
        Quantity basic = in.quantity("basic velocity");
        return Map.of(
                "mean velocity",
                WindProfile.meanVelocity(
                        basic, height, terrain.roughnessLength(), terrain.leastHeight(), LEVEL),
                "turbulence intensity",
                WindProfile.turbulenceIntensity(
                        height, terrain.roughnessLength(), terrain.leastHeight(), LEVEL),
                "exposure factor",
                peak(terrain, height, basic).over(WindProfile.basicPressure(basic, AIR)));
    }

    private static Map<String, Quantity> deck(Inputs in) {
        Quantity basic = in.quantity("basic velocity");
        Quantity width = in.quantity("width");
        Quantity depth = in.quantity("depth");
        Quantity peak = peak(terrain(in), in.quantity("height"), basic);
        Quantity coefficient = DeckWind.acrossCoefficient(width, depth);
        return Map.of(
                "wind factor",
                peak.over(WindProfile.basicPressure(basic, AIR)).times(coefficient),
                "coefficient across",
                coefficient,
                "force across",
                DeckWind.across(peak, coefficient, depth),
                "force upward",
                DeckWind.upward(peak, width),
                "depth with a train",
                DeckWind.depthWithTrain(depth),
                "velocity with a train",
                DeckWind.velocityWithTrain(basic));
    }

    private static Quantity peak(Terrain terrain, Quantity height, Quantity basic) {
        Quantity mean =
                WindProfile.meanVelocity(
                        basic, height, terrain.roughnessLength(), terrain.leastHeight(), LEVEL);
        Quantity intensity =
                WindProfile.turbulenceIntensity(
                        height, terrain.roughnessLength(), terrain.leastHeight(), LEVEL);
        return WindProfile.peakPressure(mean, intensity, AIR);
    }

    private static Terrain terrain(Inputs in) {
        String category = in.text("terrain");
        return Arrays.stream(Terrain.values())
                .filter(terrain -> terrain.category().equals(category))
                .findFirst()
                .orElseThrow();
    }
}
