package org.skewback.slope;

/**
 * Weight, strength and pore pressure of a layer.
 *
 * @param name what it is called
 * @param unitWeight unit weight, γ, N/m³
 * @param saturatedUnitWeight unit weight below the water table, N/m³
 * @param cohesion cohesion, c, Pa
 * @param friction friction angle, φ, rad
 * @param poreRatio pore pressure over the weight above, r_u; 0 to take it from the water table
 */
public record Soil(
        String name,
        double unitWeight,
        double saturatedUnitWeight,
        double cohesion,
        double friction,
        double poreRatio) {

    /**
     * Makes a layer's properties.
     *
     * @param name what it is called
     * @param unitWeight unit weight, N/m³, greater than 0
     * @param saturatedUnitWeight unit weight below the water table, N/m³, greater than 0
     * @param cohesion cohesion, Pa, at least 0
     * @param friction friction angle, rad, from 0 to less than π/2
     * @param poreRatio r_u, from 0 to 1; where it is not 0, the water table does not count for this
     *     layer's pore pressure
     * @throws IllegalArgumentException if a value is outside
     */
    public Soil {
        Require.positive("unit weight of " + name, unitWeight, "N/m³");
        Require.positive("saturated unit weight of " + name, saturatedUnitWeight, "N/m³");
        Require.notNegative("cohesion of " + name, cohesion, "Pa");
        Require.friction(friction);
        Require.within("pore pressure ratio of " + name, poreRatio, 0, 1, "");
    }

    /**
     * Makes a layer of one weight above and below water.
     *
     * @param name what it is called
     * @param unitWeight unit weight, N/m³, greater than 0
     * @param cohesion cohesion, Pa, at least 0
     * @param friction friction angle, rad, from 0 to less than π/2
     * @return the layer's properties
     * @throws IllegalArgumentException if a value is outside
     */
    public static Soil of(String name, double unitWeight, double cohesion, double friction) {
        return new Soil(name, unitWeight, unitWeight, cohesion, friction, 0);
    }

    /**
     * Gives the same with another pore pressure ratio.
     *
     * @param ratio r_u, from 0 to 1
     * @return the layer's properties
     */
    public Soil withPoreRatio(double ratio) {
        return new Soil(name, unitWeight, saturatedUnitWeight, cohesion, friction, ratio);
    }

    /**
     * Gives the same with its strength divided by partial factors.
     *
     * @param factors the factors
     * @return the layer's properties with design strength
     */
    public Soil with(PartialFactors factors) {
        return new Soil(
                name,
                unitWeight,
                saturatedUnitWeight,
                cohesion / factors.onCohesion(),
                StrictMath.atan(StrictMath.tan(friction) / factors.onFriction()),
                poreRatio);
    }
}
