package org.skewback.choice;

import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

/**
 * Steel and stiffness of a parabolic rib of two chords, for a comparison.
 *
 * <p>Source of the formulas: statics of the parabolic arch and of a section of two chords; each
 * method gives its derivation.
 */
public final class RibEstimate {

    private RibEstimate() {}

    /**
     * Gives the volume of chord steel that a moment asks for all along, {@code V = 2 M S/(d σ)}: each of
     * two chords at the distance d takes the force M/d, of either sign.
     *
     * @param moment moment for which the chords are made all along, M, at least 0
     * @param length length of the axis, S, greater than 0
     * @param depth distance of the chords, centre to centre, d, greater than 0
     * @param stress stress counted on, σ, greater than 0
     * @return the volume
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension
     */
    public static Quantity chordVolume(
            Quantity moment, Quantity length, Quantity depth, Quantity stress) {
        Require.notNegative("moment", moment, "N·m");
        Require.positive("length of the axis", length, "m");
        Require.positive("distance of the chords", depth, "m");
        Require.positive("stress", stress, "Pa");
        return moment.times(length).times(2).over(depth.times(stress));
    }

    /**
     * Gives the volume of chord steel of a rib that carries its own weight too, {@code V = (c w + V_M)/(1
     * − c κ γ/L)} with {@code c = L³ (1 + 16 f²/(3 L²))/(8 f σ)}, the volume for the thrust of one unit of
     * load: {@code V = c (w + κ γ V/L) + V_M} solved for V.
     *
     * @param load load per plan length without the rib, w, greater than 0
     * @param momentVolume volume that moments ask for, V_M, at least 0; see {@link #chordVolume}
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param stress stress counted on, σ, greater than 0
     * @param weight weight of steel per volume, γ, greater than 0
     * @param makeUp all steel of the ribs over that of the chords as worked out, κ, at least 1: splices,
     *     stiffeners, diaphragms, bracing
     * @return the volume of the chords, without what {@code makeUp} adds
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension, or
     *     the rib could not even carry itself at this stress, {@code c κ γ ≥ L}
     */
    public static Quantity volume(
            Quantity load,
            Quantity momentVolume,
            Quantity span,
            Quantity rise,
            Quantity stress,
            Quantity weight,
            Quantity makeUp) {
        Require.positive("load", load, "N/m");
        Require.notNegative("volume for moments", momentVolume, "m³");
        Quantity share = ownWeightShare(span, rise, stress, weight, makeUp);
        if (share.si() >= 1) {
            throw Require.refused("share of the rib's own weight", share, "less than 1");
        }
        return Parabola.ribVolume(load, span, rise, stress)
                .plus(momentVolume)
                .over(Quantity.of(1).minus(share));
    }

    /**
     * Gives the part of a rib's steel that its own weight asks for, {@code c κ γ/L = κ γ L² (1 + 16
     * f²/(3 L²))/(8 f σ)}; at 1 the rib carries nothing but itself.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param stress stress counted on, σ, greater than 0
     * @param weight weight of steel per volume, γ, greater than 0
     * @param makeUp all steel of the ribs over that of the chords as worked out, κ, at least 1
     * @return the part, without unit
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension
     */
    public static Quantity ownWeightShare(
            Quantity span, Quantity rise, Quantity stress, Quantity weight, Quantity makeUp) {
        Require.positive("span", span, "m");
        Require.positive("weight of steel", weight, "N/m³");
        Require.positive("make-up of the rib", makeUp, "");
        if (makeUp.si() < 1) {
            throw Require.refused("make-up of the rib", makeUp, "at least 1");
        }
        Require.positive("rise", rise, "m");
        Require.positive("stress", stress, "Pa");
        Quantity steepness = rise.over(span).squared().times(16).over(3).plus(1);
        return makeUp.times(weight)
                .times(span.squared())
                .over(rise.times(stress).times(8))
                .times(steepness);
    }

    /**
     * Gives the deflection at the quarter points under a load on half the span, {@code δ = 5 q L⁴/(12 288
     * E I_c)}, down on the loaded side and up on the other.
     *
     * <p>The load is q/2 all over, which makes no moment, and q/2 down on one half and up on the other,
     * under which each half bends as a beam of span L/2: {@code 5 (q/2)(L/2)⁴/(384 E I_c)}. It holds for a
     * parabolic two- or three-hinged rib with I = I_c/cos θ that keeps its length.
     *
     * @param load load per plan length on half the span, q, at least 0
     * @param span level distance between the springings, L, greater than 0
     * @param modulus modulus of elasticity, E, greater than 0
     * @param secondMoment second moment of area at the crown, I_c, greater than 0
     * @return the deflection
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension
     */
    public static Quantity quarterDeflection(
            Quantity load, Quantity span, Quantity modulus, Quantity secondMoment) {
        Require.notNegative("load", load, "N/m");
        Require.positive("span", span, "m");
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        return load.times(span.power(4)).times(5).over(modulus.times(secondMoment).times(12_288));
    }

    /**
     * Gives the second moment of area of two chords, {@code I = A d²/4}.
     *
     * @param area area of both chords together, A, greater than 0
     * @param depth distance of the chords, centre to centre, d, greater than 0
     * @return the second moment of area, that of each chord about itself left out
     * @throws IllegalArgumentException if an argument is not positive or of the wrong dimension
     */
    public static Quantity twoChords(Quantity area, Quantity depth) {
        Require.positive("area of the chords", area, "m²");
        Require.positive("distance of the chords", depth, "m");
        return area.times(depth.squared()).over(4);
    }
}
