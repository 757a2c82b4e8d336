package org.skewback.rock;

import org.skewback.quantity.Quantity;

/**
 * What sprayed concrete carries of a block that falls between bolts, by each way it can fail.
 *
 * <p>Adhesion on a narrow band along the block's edges comes first; where it is lost or not to be
 * relied on (dirty, schistose or wet rock), the shell must carry by punching at the bolts and
 * bending between them, and both cases are to be shown. Source: S. D. Barrett and D. R. McCreath,
 * Shotcrete support design in blocky ground, Tunnelling and Underground Space Technology 10 (1995)
 * (from memory).
 */
public final class Shotcrete {

    private Shotcrete() {}

    /**
     * Gives the weight of a pyramid on a square base that may fall between bolts, {@code W = γ s²
     * h/3} with {@code h = s/(2 tan(ω/2))}, ω the apex angle between opposite sides.
     *
     * @param spacing side of the base, the spacing of the bolts, s, more than 0
     * @param apex apex angle between opposite sides, ω, more than 0°, less than 180°
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @return the weight
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity blockWeight(Quantity spacing, Quantity apex, Quantity unitWeight) {
        Require.positive("spacing of the bolts", spacing, "m");
        Require.within("apex angle", apex, 1e-3, 179.999, "°");
        Require.positive("unit weight of the rock", unitWeight, "kN/m³");
        Quantity height = spacing.over(apex.over(2).tan().times(2));
        return unitWeight.times(spacing.squared()).times(height).over(3);
    }

    /**
     * Gives what adhesion carries along the edges of a square block, {@code C = σ_a 4 s a}.
     *
     * @param adhesion adhesion to the rock, σ_a, at least 0
     * @param spacing side of the block, s, more than 0
     * @param band width of the band that works, a, more than 0; about 30 mm
     * @return the force
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity adhesion(Quantity adhesion, Quantity spacing, Quantity band) {
        Require.notNegative("adhesion", adhesion, "MPa");
        Require.positive("spacing of the bolts", spacing, "m");
        Require.positive("width of the band", band, "mm");
        return adhesion.times(spacing).times(4).times(band);
    }

    /**
     * Gives what direct shear carries along the edges of a square block, {@code C = 4 s t τ}.
     *
     * @param strength shear strength of the shotcrete, τ, at least 0
     * @param spacing side of the block, s, more than 0
     * @param thickness thickness, t, more than 0
     * @return the force
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity directShear(Quantity strength, Quantity spacing, Quantity thickness) {
        Require.notNegative("shear strength of the shotcrete", strength, "MPa");
        Require.positive("spacing of the bolts", spacing, "m");
        Require.positive("thickness of the shotcrete", thickness, "mm");
        return spacing.times(4).times(thickness).times(strength);
    }

    /**
     * Gives what punching carries around a square bolt plate, {@code C = 4 (c + t) t τ}.
     *
     * @param strength shear strength of the shotcrete, τ, at least 0
     * @param plate side of the plate, c, more than 0
     * @param thickness thickness, t, more than 0
     * @return the force
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity punching(Quantity strength, Quantity plate, Quantity thickness) {
        Require.notNegative("shear strength of the shotcrete", strength, "MPa");
        Require.positive("side of the bolt plate", plate, "mm");
        Require.positive("thickness of the shotcrete", thickness, "mm");
        return plate.plus(thickness).times(4).times(thickness).times(strength);
    }

    /**
     * Gives the moment that a strip carries, {@code m = σ t²/6} per width.
     *
     * @param strength flexural strength, σ, at least 0
     * @param thickness thickness, t, more than 0
     * @return moment per width, in N·m/m
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity bending(Quantity strength, Quantity thickness) {
        Require.notNegative("flexural strength of the shotcrete", strength, "MPa");
        Require.positive("thickness of the shotcrete", thickness, "mm");
        return strength.times(thickness.squared()).over(6);
    }

    /**
     * Gives the moment per width between bolts under a block's weight spread over the square, adhesion
     * lost: {@code m = W/16}.
     *
     * <p>A shell on bolts is a slab on points: across the middle and along each line of bolts the
     * whole load turns, {@code w s²/8 = m + m} with {@code w = W/s²}, both moments yielding alike.
     *
     * @param weight weight of the block, W, at least 0
     * @return moment per width
     * @throws IllegalArgumentException if the weight is negative
     */
    public static Quantity bendingMoment(Quantity weight) {
        Require.notNegative("weight of the block", weight, "kN");
        return weight.over(16);
    }

    /**
     * Gives the thickness at which bending just carries, adhesion lost: {@code t = √(6 m/σ)}.
     *
     * @param moment moment per width, m, more than 0
     * @param strength flexural strength, σ, more than 0
     * @return the thickness
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity thickness(Quantity moment, Quantity strength) {
        Require.positive("moment per width", moment, "kN");
        Require.positive("flexural strength of the shotcrete", strength, "MPa");
        return moment.times(6).over(strength).root();
    }
}
