package org.skewback.arch;

import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

/**
 * Closed forms of the two-hinged parabolic arch, springings at one level, with a second moment of area
 * that grows as {@code I = I_c sec θ} from the crown.
 *
 * <p>Only bending is elastic in the point and half-span loads; warming and spread come with bending
 * alone or with the shortening of the rib, as each method says. The thrust follows from {@code H = −∫M₀
 * y dx/∫y² dx} with {@code ∫y² dx = 8 f² L/15}. Source: S. Timoshenko and D. H. Young, <i>Theory of
 * Structures</i>, chapter on arches (from memory); every formula is held against an integration apart
 * from the library.
 */
public final class TwoHingedArch {

    private TwoHingedArch() {}

    /**
     * Gives the thrust under a point load, {@code H = (5/8) (P L/f) (k − 2 k³ + k⁴)}, {@code k = a/L}.
     *
     * @param load point load, P
     * @param position its distance from the left springing, a, 0 to span
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the thrust
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity pointThrust(
            Quantity load, Quantity position, Quantity span, Quantity rise) {
        Require.dimension("point load", load, "N");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Require.onSpan("position of the load", position, span);
        Quantity k = position.over(span);
        Quantity shape = k.minus(k.cubed().times(2)).plus(k.power(4));
        return load.times(span).over(rise).times(5).over(8).times(shape);
    }

    /**
     * Gives the bending moment under a point load, {@code M = M₀ − H y}, with the moment M₀ of the
     * simple beam and the parabola's ordinate y.
     *
     * @param load point load, P
     * @param position its distance from the left springing, a, 0 to span
     * @param x where the moment is wanted, distance from the left springing, 0 to span
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the moment, sagging positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity pointMoment(
            Quantity load, Quantity position, Quantity x, Quantity span, Quantity rise) {
        Quantity thrust = pointThrust(load, position, span, rise);
        Require.onSpan("x", x, span);
        return PinnedMoments.under(load, position, x, span, rise, thrust);
    }

    /**
     * Gives the thrust under a load uniform on plan over one half of the span, {@code H = w L²/(16 f)}.
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the thrust
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity halfSpanThrust(Quantity load, Quantity span, Quantity rise) {
        Require.dimension("load per plan length", load, "N/m");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return Parabola.thrust(load, span, rise).over(2);
    }

    /**
     * Gives the bending moment in the quarter point of the loaded half, under a load uniform on plan
     * over that half, {@code M = w L²/64}; that of the other quarter point is its negative.
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @return the moment, sagging positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity halfSpanQuarterMoment(Quantity load, Quantity span) {
        Require.dimension("load per plan length", load, "N/m");
        Require.positive("span", span, "m");
        return load.times(span.squared()).over(64);
    }

    /**
     * Gives the thrust that warming makes, bending alone, {@code H = 15 E I_c α ΔT/(8 f²)}; the moment
     * at the crown is {@code −H f}.
     *
     * @param modulus modulus of elasticity of the rib, E, greater than 0
     * @param secondMoment second moment of area at the crown, I_c, greater than 0
     * @param expansion coefficient of thermal expansion, α, 1/K, greater than 0
     * @param warming rise of temperature, ΔT, K
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the thrust, positive for warming
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity warmingThrust(
            Quantity modulus,
            Quantity secondMoment,
            Quantity expansion,
            Quantity warming,
            Quantity rise) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("coefficient of thermal expansion", expansion, "1/K");
        Require.dimension("warming", warming, "K");
        Require.positive("rise", rise, "m");
        return modulus.times(secondMoment)
                .times(expansion)
                .times(warming)
                .times(15)
                .over(rise.squared().times(8));
    }

    /**
     * Gives the thrust that a spread of the springings makes, bending alone, {@code H = −15 E I_c δ/(8 f²
     * L)}.
     *
     * @param modulus modulus of elasticity of the rib, E, greater than 0
     * @param secondMoment second moment of area at the crown, I_c, greater than 0
     * @param spread how far the springings moved apart, δ
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the thrust, negative where the springings move apart
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity spreadThrust(
            Quantity modulus,
            Quantity secondMoment,
            Quantity spread,
            Quantity span,
            Quantity rise) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.dimension("spread of the springings", spread, "m");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return modulus.times(secondMoment)
                .times(spread)
                .times(15)
                .over(rise.squared().times(span).times(8))
                .negated();
    }

    /**
     * Gives the share that the textbooks' formula gives to the shortening of the rib, {@code μ = 15
     * I_c/(8 A f²)}: the thrust under a load uniform on plan falls to {@code H₀/(1 + μ)}.
     *
     * <p>It puts the span where the length of the axis belongs; {@link #shortenedThrust} does not.
     *
     * @param secondMoment second moment of area at the crown, I_c, greater than 0
     * @param area area of the rib, the same all along, A, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the share, without unit
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity shorteningShare(Quantity secondMoment, Quantity area, Quantity rise) {
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("area", area, "m²");
        Require.positive("rise", rise, "m");
        return secondMoment.times(15).over(area.times(rise.squared()).times(8));
    }

    /**
     * Gives the thrust under a load uniform on plan with the shortening of a rib of one area, {@code H =
     * H₀ (1 − (S/A)/(8 f² L/(15 I_c) + C/A))}, with the length S of the axis and {@code C = ∫cos θ dx = L
     * arsinh(4 f/L)/(4 f/L)}.
     *
     * @param load load per plan length, w
     * @param secondMoment second moment of area at the crown, I_c, greater than 0
     * @param area area of the rib, the same all along, A, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the thrust
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity shortenedThrust(
            Quantity load, Quantity secondMoment, Quantity area, Quantity span, Quantity rise) {
        Require.dimension("load per plan length", load, "N/m");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("area", area, "m²");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Quantity bending = rise.squared().times(span).times(8).over(secondMoment.times(15));
        return RibShortening.thrust(load, bending, area, span, rise);
    }

    /**
     * Gives the thrust that warming makes, with the shortening of a rib of one area, {@code H = E α ΔT L/(8
     * f² L/(15 I_c) + C/A)}, {@code C = L arsinh(4 f/L)/(4 f/L)}.
     *
     * @param modulus modulus of elasticity of the rib, E, greater than 0
     * @param secondMoment second moment of area at the crown, I_c, greater than 0
     * @param area area of the rib, the same all along, A, greater than 0
     * @param expansion coefficient of thermal expansion, α, 1/K, greater than 0
     * @param warming rise of temperature, ΔT, K
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the thrust, positive for warming
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity warmingThrustWithShortening(
            Quantity modulus,
            Quantity secondMoment,
            Quantity area,
            Quantity expansion,
            Quantity warming,
            Quantity span,
            Quantity rise) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("area", area, "m²");
        Require.positive("coefficient of thermal expansion", expansion, "1/K");
        Require.dimension("warming", warming, "K");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Quantity bending = rise.squared().times(span).times(8).over(secondMoment.times(15));
        return RibShortening.warming(modulus, expansion, warming, bending, area, span, rise);
    }
}
