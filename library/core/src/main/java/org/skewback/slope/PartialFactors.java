package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * Partial factors on strength, loads and resistance, for those who design by them; those who design
 * by one global factor of safety leave them at 1.
 *
 * <p>The sets here are those recommended by EN 1997-1:2004 annex A (from memory); the national annex
 * says which approach and which values apply.
 *
 * @param onFriction divides the tangent of the friction angle, γ_φ′
 * @param onCohesion divides the cohesion, γ_c′
 * @param onPermanent multiplies unfavourable permanent loads, γ_G
 * @param onVariable multiplies unfavourable variable loads, γ_Q
 * @param onResistance divides the resistance, γ_R: the factor of safety to be reached
 */
public record PartialFactors(
        double onFriction,
        double onCohesion,
        double onPermanent,
        double onVariable,
        double onResistance) {

    /**
     * Makes a set.
     *
     * @param onFriction γ_φ′, at least 1
     * @param onCohesion γ_c′, at least 1
     * @param onPermanent γ_G, greater than 0
     * @param onVariable γ_Q, at least 0
     * @param onResistance γ_R, at least 1
     * @throws IllegalArgumentException if a factor is outside
     */
    public PartialFactors {
        Require.within("partial factor on friction", onFriction, 1, 5, "");
        Require.within("partial factor on cohesion", onCohesion, 1, 5, "");
        Require.positive("partial factor on permanent loads", onPermanent, "");
        Require.notNegative("partial factor on variable loads", onVariable, "");
        Require.within("partial factor on resistance", onResistance, 1, 5, "");
    }

    /**
     * Gives factors of 1, for design by a global factor of safety.
     *
     * @return the set
     */
    public static PartialFactors none() {
        return new PartialFactors(1, 1, 1, 1, 1);
    }

    /**
     * Gives design approach 1, combination 2, and approach 3 for slopes: A2 + M2 + R1.
     *
     * @return the set: strength over 1.25, variable loads by 1.3
     */
    public static PartialFactors onStrength() {
        return new PartialFactors(1.25, 1.25, 1, 1.3, 1);
    }

    /**
     * Gives design approach 2: A1 + M1 + R2.
     *
     * @return the set: permanent loads by 1.35, variable by 1.5, resistance over 1.1
     */
    public static PartialFactors onResistance2() {
        return new PartialFactors(1, 1, 1.35, 1.5, 1.1);
    }

    /**
     * Gives the design value of a friction angle, {@code φ_d = arctan(tan φ_k/γ_φ′)}.
     *
     * @param friction characteristic friction angle
     * @return design value
     */
    public Quantity friction(Quantity friction) {
        Require.friction(friction.in("rad"));
        return friction.tan().over(onFriction).atan();
    }

    /**
     * Gives the design value of a cohesion, {@code c_d = c_k/γ_c′}.
     *
     * @param cohesion characteristic cohesion
     * @return design value
     */
    public Quantity cohesion(Quantity cohesion) {
        return Require.notNegative("cohesion", cohesion, "kPa").over(onCohesion);
    }
}
