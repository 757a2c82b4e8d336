package org.skewback.action;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/**
 * Temperature of a bridge and its ranges; EN 1991-1-5:2003, section 6 and annex A (from memory unless a
 * reference check says otherwise).
 */
public final class BridgeTemperature {

    private static final Quantity FREEZING = Quantity.of(0, "°C");

    private BridgeTemperature() {}

    /**
     * Gives the warmest temperature of the bridge as a whole, {@code T_e,max = T_max + ΔT_e,max} (6.1.3.1).
     *
     * @param hottestAir T_max, shade air temperature exceeded in a year with a probability of 0.02, °C
     * @param deck kind of deck
     * @return T_e,max
     */
    public static Quantity warmest(Quantity hottestAir, BridgeDeck deck) {
        requireReading("hottest shade air temperature", hottestAir);
        return hottestAir.plus(deck.aboveHottestAir());
    }

    /**
     * Gives the coldest temperature of the bridge as a whole, {@code T_e,min = T_min + ΔT_e,min} (6.1.3.1).
     *
     * @param coldestAir T_min, shade air temperature fallen below in a year with a probability of 0.02, °C
     * @param deck kind of deck
     * @return T_e,min
     */
    public static Quantity coldest(Quantity coldestAir, BridgeDeck deck) {
        requireReading("coldest shade air temperature", coldestAir);
        return coldestAir.plus(deck.aboveColdestAir());
    }

    /**
     * Gives by how much the bridge warms from the temperature at which it was set, {@code ΔT_N,exp = T_e,max −
     * T₀} (6.2).
     *
     * @param warmest T_e,max, °C
     * @param initial T₀ when the structure was completed, °C, at most T_e,max
     * @return ΔT_N,exp
     * @throws IllegalArgumentException if the initial temperature is above the warmest
     */
    public static Quantity expansion(Quantity warmest, Quantity initial) {
        requireReading("warmest temperature of the bridge", warmest);
        Require.within("initial temperature", initial.in("°C"), -273.15, warmest.in("°C"), "°C");
        return warmest.minus(initial);
    }

    /**
     * Gives by how much the bridge cools from the temperature at which it was set, {@code ΔT_N,con = T₀ −
     * T_e,min} (6.1).
     *
     * @param initial T₀ when the structure was completed, °C, at least T_e,min
     * @param coldest T_e,min, °C
     * @return ΔT_N,con
     * @throws IllegalArgumentException if the initial temperature is below the coldest
     */
    public static Quantity contraction(Quantity initial, Quantity coldest) {
        requireReading("initial temperature", initial);
        Require.within(
                "coldest temperature of the bridge",
                coldest.in("°C"),
                -273.15,
                initial.in("°C"),
                "°C");
        return initial.minus(coldest);
    }

    /**
     * Gives the range for which bearings and expansion joints are made, {@code ΔT_N + S}, with S = 10 K where
     * the temperature at which they are set is laid down, else 20 K (note 2 to 6.1.3.3(3), recommended).
     *
     * @param range ΔT_N,exp or ΔT_N,con, at least 0 K
     * @param settingLaidDown whether the temperature of setting is laid down
     * @return the range for bearings and joints
     * @throws IllegalArgumentException if the range is negative or no temperature difference
     */
    public static Quantity bearingRange(Quantity range, boolean settingLaidDown) {
        Require.notNegative("range of temperature", range, "K");
        return range.plus(
                Quantity.given(
                        "S_T",
                        settingLaidDown ? 10 : 20,
                        "K",
                        "allowance for bearings and joints",
                        Source.standard("EN 1991-1-5:2003", "6.1.3.3, recommended, from memory")));
    }

    /**
     * Gives the temperature difference over the depth of a deck, {@code ΔT_M = k_sur ΔT_M,50} (approach 1,
     * 6.1.4.1).
     *
     * @param deck kind of deck
     * @param surfacingFactor k_sur, see {@link BridgeDeck#surfacingFactor(Quantity, boolean)}, at least 0
     * @param topWarmer whether the top is warmer, else the bottom
     * @return ΔT_M,heat or ΔT_M,cool, as a magnitude
     * @throws IllegalArgumentException if the factor is negative
     */
    public static Quantity difference(
            BridgeDeck deck, Quantity surfacingFactor, boolean topWarmer) {
        Require.notNegative("factor for the surfacing", surfacingFactor, "");
        return (topWarmer ? deck.heating() : deck.cooling()).times(surfacingFactor);
    }

    /**
     * Gives the effect of both components where the difference over the depth leads, {@code E(ΔT_M) + ω_N
     * E(ΔT_N)} (6.3).
     *
     * @param ofDifference effect of ΔT_M
     * @param ofUniform effect of ΔT_N, of the same dimension
     * @param reduction ω_N, 0 to 1; 0.35 is recommended (from memory)
     * @return the effect of both
     * @throws IllegalArgumentException if ω_N is out of range
     */
    public static Quantity differenceLeading(
            Quantity ofDifference, Quantity ofUniform, Quantity reduction) {
        Require.within("ω_N", reduction.in(""), 0, 1, "");
        return ofDifference.plus(ofUniform.times(reduction));
    }

    /**
     * Gives the effect of both components where the uniform one leads, {@code ω_M E(ΔT_M) + E(ΔT_N)} (6.4).
     *
     * @param ofDifference effect of ΔT_M
     * @param ofUniform effect of ΔT_N, of the same dimension
     * @param reduction ω_M, 0 to 1; 0.75 is recommended (from memory)
     * @return the effect of both
     * @throws IllegalArgumentException if ω_M is out of range
     */
    public static Quantity uniformLeading(
            Quantity ofDifference, Quantity ofUniform, Quantity reduction) {
        Require.within("ω_M", reduction.in(""), 0, 1, "");
        return ofDifference.times(reduction).plus(ofUniform);
    }

    /**
     * Gives the hottest air for another probability, {@code T_max,p = T_max (k₁ − k₂ ln(−ln(1 − p)))} with k₁ =
     * 0.781 and k₂ = 0.056 (A.1), temperatures in °C.
     *
     * @param hottestAir T_max, °C, exceeded in a year with a probability of 0.02
     * @param probability p of being exceeded in a year, 0.001 to 0.5
     * @return T_max,p
     * @throws IllegalArgumentException if the probability is out of range
     */
    public static Quantity hottestAir(Quantity hottestAir, Quantity probability) {
        return scaled(hottestAir, gumbel(probability).times(-0.056).plus(0.781));
    }

    /**
     * Gives the coldest air for another probability, {@code T_min,p = T_min (k₃ + k₄ ln(−ln(1 − p)))} with k₃ =
     * 0.393 and k₄ = −0.156 (A.2), temperatures in °C.
     *
     * @param coldestAir T_min, °C, fallen below in a year with a probability of 0.02
     * @param probability p of being fallen below in a year, 0.001 to 0.5
     * @return T_min,p
     * @throws IllegalArgumentException if the probability is out of range
     */
    public static Quantity coldestAir(Quantity coldestAir, Quantity probability) {
        return scaled(coldestAir, gumbel(probability).times(-0.156).plus(0.393));
    }

    private static Quantity scaled(Quantity reading, Quantity factor) {
        requireReading("shade air temperature", reading);
        return FREEZING.plus(reading.minus(FREEZING).times(factor));
    }

    /** {@code ln(−ln(1 − p))}. */
    private static Quantity gumbel(Quantity probability) {
        Require.within("probability in a year", probability.in(""), 0.001, 0.5, "");
        return Quantity.of(1).minus(probability).ln().negated().ln();
    }

    private static void requireReading(String quantity, Quantity value) {
        Require.within(quantity, value.in("°C"), -273.15, 100, "°C");
    }
}
