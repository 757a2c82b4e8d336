package org.skewback.wind;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Mean wind, turbulence and peak pressure over height; EN 1991-1-4:2005, section 4 (from memory). */
public final class WindProfile {

    private WindProfile() {}

    /**
     * Gives the terrain factor, {@code k_r = 0.19 (z₀/0.05 m)^0.07} (4.5), as {@code 0.19 exp(0.07 ln(z₀/0.05
     * m))}.
     *
     * @param roughnessLength z₀, greater than 0
     * @return k_r
     * @throws IllegalArgumentException if z₀ is not a positive length
     */
    public static Quantity terrainFactor(Quantity roughnessLength) {
        Require.positive("roughness length", roughnessLength, "m");
        Quantity reference =
                Quantity.given(
                        "z_0,II",
                        0.05,
                        "m",
                        "roughness length of terrain II",
                        Source.standard("EN 1991-1-4:2005", "4.3.2, from memory"));
        return roughnessLength.over(reference).ln().times(0.07).exp().times(0.19);
    }

    /**
     * Gives the roughness factor, {@code c_r = k_r ln(max(z, z_min)/z₀)} (4.4).
     *
     * @param height z above ground, greater than 0, at most 200 m
     * @param roughnessLength z₀, greater than 0
     * @param leastHeight z_min, greater than z₀
     * @return c_r
     * @throws IllegalArgumentException if an argument is out of range or not a length
     */
    public static Quantity roughnessFactor(
            Quantity height, Quantity roughnessLength, Quantity leastHeight) {
        return terrainFactor(roughnessLength)
                .times(slenderness(height, roughnessLength, leastHeight));
    }

    /**
     * Gives the mean wind velocity, {@code v_m = c_r c₀ v_b} (4.3).
     *
     * @param basicVelocity v_b, greater than 0
     * @param height z above ground, greater than 0, at most 200 m
     * @param roughnessLength z₀, greater than 0
     * @param leastHeight z_min, greater than z₀
     * @param orography c₀, greater than 0; 1 on level ground
     * @return v_m
     * @throws IllegalArgumentException if an argument is out of range or has the wrong dimension
     */
    public static Quantity meanVelocity(
            Quantity basicVelocity,
            Quantity height,
            Quantity roughnessLength,
            Quantity leastHeight,
            Quantity orography) {
        Require.positive("basic wind velocity", basicVelocity, "m/s");
        Require.positive("orography factor", orography, "");
        return roughnessFactor(height, roughnessLength, leastHeight)
                .times(orography)
                .times(basicVelocity);
    }

    /**
     * Gives the turbulence intensity, {@code I_v = 1/(c₀ ln(max(z, z_min)/z₀))} (4.7), with k_I = 1.
     *
     * @param height z above ground, greater than 0, at most 200 m
     * @param roughnessLength z₀, greater than 0
     * @param leastHeight z_min, greater than z₀
     * @param orography c₀, greater than 0; 1 on level ground
     * @return I_v
     * @throws IllegalArgumentException if an argument is out of range or has the wrong dimension
     */
    public static Quantity turbulenceIntensity(
            Quantity height, Quantity roughnessLength, Quantity leastHeight, Quantity orography) {
        Require.positive("orography factor", orography, "");
        return Quantity.of(1)
                .over(orography.times(slenderness(height, roughnessLength, leastHeight)));
    }

    /**
     * Gives the basic velocity pressure, {@code q_b = ρ v_b²/2} (4.10).
     *
     * @param basicVelocity v_b, greater than 0
     * @param density ρ of air, greater than 0; 1.25 kg/m³ is recommended
     * @return q_b
     * @throws IllegalArgumentException if an argument is not positive or has the wrong dimension
     */
    public static Quantity basicPressure(Quantity basicVelocity, Quantity density) {
        Require.positive("wind velocity", basicVelocity, "m/s");
        Require.positive("density of air", density, "kg/m³");
        return density.times(basicVelocity.squared()).over(2);
    }

    /**
     * Gives the peak velocity pressure, {@code q_p = (1 + 7 I_v) ρ v_m²/2} (4.8).
     *
     * @param meanVelocity v_m, greater than 0
     * @param turbulenceIntensity I_v, greater than 0
     * @param density ρ of air, greater than 0
     * @return q_p
     * @throws IllegalArgumentException if an argument is not positive or has the wrong dimension
     */
    public static Quantity peakPressure(
            Quantity meanVelocity, Quantity turbulenceIntensity, Quantity density) {
        Require.positive("turbulence intensity", turbulenceIntensity, "");
        return turbulenceIntensity.times(7).plus(1).times(basicPressure(meanVelocity, density));
    }

    private static Quantity slenderness(
            Quantity height, Quantity roughnessLength, Quantity leastHeight) {
        Require.positive("roughness length", roughnessLength, "m");
        double metres = Require.positive("height above ground", height.in("m"), "m");
        if (metres > 200) {
            throw Require.refused(
                    "height above ground",
                    metres,
                    "m",
                    "at most 200 m, the range of EN 1991-1-4; higher up a study of the site's wind"
                            + " is needed");
        }
        if (!(leastHeight.in("m") > roughnessLength.in("m"))) {
            throw Require.refused(
                    "least height",
                    leastHeight.in("m"),
                    "m",
                    "more than the roughness length of " + roughnessLength.in("m") + " m");
        }
        return Quantity.max(height, leastHeight).over(roughnessLength).ln();
    }
}
