package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * Coefficients of the weight that stand for an earthquake on a slope, by code or practice.
 *
 * <p>Editions differ: that of 2024 of EN 1998-5 changes the factor on slopes. The code that applies
 * at the place decides, and names its edition on the sheet.
 */
public final class SeismicCoefficient {

    private static final double FOOT = 0.3048;

    private SeismicCoefficient() {}

    /**
     * Gives the level coefficient by EN 1998-5:2004, 4.1.3.3, {@code k_h = ½ α S S_T}.
     *
     * <p>Source: EN 1998-5:2004, 4.1.3.3(5) and annex A (from memory; the halving read in a paper).
     *
     * @param ground design ground acceleration on rock over gravity, α, from 0 to 2
     * @param soil soil factor, S, from 1 to 2
     * @param topography amplification by topography, S_T, from 1 to 2: at least 1.2 at isolated
     *     cliffs, at least 1.4 on narrow ridges steeper than 30°; 1 below 15°
     * @return k_h, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity level(Quantity ground, Quantity soil, Quantity topography) {
        Require.within("ground acceleration over gravity", ground, 0, 2, "");
        Require.within("soil factor", soil, 1, 2, "");
        Require.within("amplification by topography", topography, 1, 2, "");
        return ground.times(soil).times(topography).times(0.5);
    }

    /**
     * Gives the upright coefficient by EN 1998-5:2004, 4.1.3.3, {@code k_v = ½ k_h} where the
     * vertical ground acceleration is more than 0.6 of the level one, else {@code 0.33 k_h}; both
     * signs are to be tried.
     *
     * <p>Source: EN 1998-5:2004, 4.1.3.3(5) (from memory).
     *
     * @param level k_h, from 0 to 2
     * @param ratio vertical over level ground acceleration, from 0 to 2
     * @return k_v, a plain number, without sign
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity upright(Quantity level, Quantity ratio) {
        Require.within("level earthquake coefficient", level, 0, 2, "");
        Require.within("vertical over level ground acceleration", ratio, 0, 2, "");
        return Quantity.choose(
                ratio.moreThan(Quantity.of(0.6)), () -> level.times(0.5), () -> level.times(0.33));
    }

    /**
     * Gives half the peak acceleration, {@code k = ½ PGA/g}: with a factor of at least 1.0 and
     * strengths less 20 %, displacements stay below about 1 m.
     *
     * <p>Source: M. E. Hynes-Griffin and A. G. Franklin, Rationalizing the seismic coefficient
     * method, US Army Corps of Engineers (1984) (from memory).
     *
     * @param peak peak ground acceleration over gravity, from 0 to 2
     * @return k, a plain number
     * @throws IllegalArgumentException if the acceleration is outside
     */
    public static Quantity halfOfPeak(Quantity peak) {
        Require.within("peak ground acceleration over gravity", peak, 0, 2, "");
        return peak.times(0.5);
    }

    /**
     * Gives how much less a high slope is shaken as a whole, {@code α = 1 + 0.01 H (0.5 β − 1)}, H in
     * feet, {@code β = F_v S_1/k_max}.
     *
     * <p>Source: NCHRP Report 611, Seismic analysis and design of retaining walls, buried structures,
     * slopes and embankments (2008) (from memory). For rock slopes 1.2 times as much.
     *
     * @param height height of the slope, H, more than 0, at most 100 ft
     * @param longPeriod spectral acceleration at 1 s over gravity with the site's factor, F_v S_1,
     *     more than 0
     * @param peak k_max, more than 0
     * @return α, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity heightFactor(Quantity height, Quantity longPeriod, Quantity peak) {
        Require.positive("height of the slope", height, "m");
        Require.within("height of the slope", height, 0, 100 * FOOT, "m");
        Require.positive("spectral acceleration at 1 s over gravity", longPeriod, "");
        Require.positive("peak coefficient", peak, "");
        Quantity ratio = longPeriod.over(peak);
        return height.over(Quantity.of(FOOT, "m"))
                .times(0.01)
                .times(ratio.times(0.5).minus(1))
                .plus(1);
    }
}
