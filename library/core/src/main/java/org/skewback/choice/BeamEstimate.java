package org.skewback.choice;

import org.skewback.quantity.Quantity;

/**
 * Steel and stiffness of girders and concrete of tall piers, for a comparison.
 *
 * <p>Source of the formulas: statics of beams; each method gives its derivation.
 */
public final class BeamEstimate {

    private BeamEstimate() {}

    /**
     * Gives the area of both flanges of girders that carry their own weight too, {@code A = b (w + κ γ
     * A_w)/(1 − b κ γ)} with {@code b = 2 s²/(m h σ)}: the moment {@code (w + κ γ (A + A_w)) s²/m} over the
     * depth is the force of a flange, and A solved for.
     *
     * @param load load per length without the girders, w, greater than 0
     * @param span span of the girders, s, greater than 0
     * @param depth depth of the girders, between the flanges' centres, h, greater than 0
     * @param divisor m in the largest moment {@code w s²/m}, greater than 0; 8 for a single span
     * @param stress stress counted on, σ, greater than 0
     * @param webs area of all webs, A_w, at least 0
     * @param weight weight of steel per volume, γ, greater than 0
     * @param makeUp all steel over flanges and webs as worked out, κ, at least 1
     * @return the area of both flanges together, of all girders
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension, or
     *     the girders could not even carry themselves, {@code b κ γ ≥ 1}
     */
    public static Quantity flangeArea(
            Quantity load,
            Quantity span,
            Quantity depth,
            Quantity divisor,
            Quantity stress,
            Quantity webs,
            Quantity weight,
            Quantity makeUp) {
        Require.positive("load", load, "N/m");
        Require.positive("span", span, "m");
        Require.positive("depth of the girders", depth, "m");
        Require.positive("divisor of the moment", divisor, "");
        Require.positive("stress", stress, "Pa");
        Require.notNegative("area of the webs", webs, "m²");
        Require.positive("weight of steel", weight, "N/m³");
        Require.positive("make-up of the girders", makeUp, "");
        if (makeUp.si() < 1) {
            throw Require.refused("make-up of the girders", makeUp, "at least 1");
        }
        Quantity perLoad = span.squared().times(2).over(divisor.times(depth).times(stress));
        Quantity own = makeUp.times(weight);
        Quantity share = perLoad.times(own);
        if (share.si() >= 1) {
            throw Require.refused("share of the girders' own weight", share, "less than 1");
        }
        return perLoad.times(load.plus(own.times(webs))).over(Quantity.of(1).minus(share));
    }

    /**
     * Gives the deflection of a span that is held at one end and free to turn at the other, {@code δ = w
     * s⁴ (39 + 55 √33)/(65 536 E I)}, about {@code w s⁴/(184.6 E I)}: an end span whose neighbour is not
     * loaded lies between this and a single span.
     *
     * @param load load per length, w, at least 0
     * @param span span, s, greater than 0
     * @param modulus modulus of elasticity, E, greater than 0
     * @param secondMoment second moment of area, I, greater than 0
     * @return the largest deflection, at {@code (15 − √33)/16} of the span from the free end
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension
     */
    public static Quantity endSpanDeflection(
            Quantity load, Quantity span, Quantity modulus, Quantity secondMoment) {
        Require.notNegative("load", load, "N/m");
        Require.positive("span", span, "m");
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Quantity number = Quantity.of(33).root().times(55).plus(39).over(65_536);
        return load.times(span.power(4)).times(number).over(modulus.times(secondMoment));
    }

    /**
     * Gives the concrete of a square hollow pier whose four faces lean, {@code V = 4 t h (b + h/m − t)}:
     * the width grows by 2/m for each metre down, and the mean width is {@code b + h/m}.
     *
     * @param height height of the pier, h, greater than 0
     * @param topWidth width at the top, b, greater than twice the wall
     * @param batter m in a batter of 1 to m on each face, greater than 0
     * @param wall thickness of the walls, the same all along, t, greater than 0
     * @return the volume of the walls
     * @throws IllegalArgumentException if an argument is out of its range or of the wrong dimension
     */
    public static Quantity hollowPier(
            Quantity height, Quantity topWidth, Quantity batter, Quantity wall) {
        Require.positive("height of the pier", height, "m");
        Require.positive("width at the top", topWidth, "m");
        Require.positive("batter", batter, "");
        Require.positive("thickness of the walls", wall, "m");
        if (topWidth.si() <= 2 * wall.si()) {
            throw Require.refused(
                    "width at the top", topWidth, "more than twice the wall of " + wall);
        }
        return wall.times(height).times(4).times(topWidth.plus(height.over(batter)).minus(wall));
    }
}
