package org.skewback.arch;

import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

/**
 * Closed forms of the fixed parabolic arch, springings at one level, with a second moment of area that
 * grows as {@code I = I_c sec θ} from the crown.
 *
 * <p>Only bending is elastic in the point and half-span loads; warming and spread come with bending
 * alone or with the shortening of the rib, as each method says. Warming and spread push in the elastic
 * centre, two thirds of the rise above the springings. Source: I. A. Karnovsky, <i>Theory of Arched
 * Structures</i> (Springer 2012), appendix table A.19 (crown and half-span loads); the rest from memory,
 * held against an integration apart from the library.
 */
public final class FixedArch {

    private FixedArch() {}

    /**
     * Gives the thrust under a point load, {@code H = (15/4) (P L/f) k² (1 − k)²}, {@code k = a/L}.
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
        Quantity shape = k.squared().times(Quantity.of(1).minus(k).squared());
        return load.times(span).over(rise).times(15).over(4).times(shape);
    }

    /**
     * Gives the vertical reaction of the left springing under a point load, {@code V = P (1 − k)² (1 + 2
     * k)}, {@code k = a/L}; that of the right springing is the rest of the load.
     *
     * @param load point load, P
     * @param position its distance from the left springing, a, 0 to span
     * @param span level distance between the springings, L, greater than 0
     * @return the reaction, upward positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity pointLeftVertical(Quantity load, Quantity position, Quantity span) {
        Require.dimension("point load", load, "N");
        Require.positive("span", span, "m");
        Require.onSpan("position of the load", position, span);
        Quantity k = position.over(span);
        return load.times(Quantity.of(1).minus(k).squared()).times(k.times(2).plus(1));
    }

    /**
     * Gives the moment at the left springing under a point load, {@code M = P L k (1 − k)² (5 k/2 − 1)},
     * {@code k = a/L}.
     *
     * @param load point load, P
     * @param position its distance from the left springing, a, 0 to span
     * @param span level distance between the springings, L, greater than 0
     * @return the moment, sagging positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity pointLeftMoment(Quantity load, Quantity position, Quantity span) {
        Require.dimension("point load", load, "N");
        Require.positive("span", span, "m");
        Require.onSpan("position of the load", position, span);
        Quantity k = position.over(span);
        return load.times(span)
                .times(k)
                .times(Quantity.of(1).minus(k).squared())
                .times(k.times(5).over(2).minus(1));
    }

    /**
     * Gives the moment at the right springing under a point load: that of the left one for a load at
     * {@code L − a}.
     *
     * @param load point load, P
     * @param position its distance from the left springing, a, 0 to span
     * @param span level distance between the springings, L, greater than 0
     * @return the moment, sagging positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity pointRightMoment(Quantity load, Quantity position, Quantity span) {
        Require.dimension("point load", load, "N");
        Require.positive("span", span, "m");
        Require.onSpan("position of the load", position, span);
        return pointLeftMoment(load, span.minus(position), span);
    }

    /**
     * Gives the bending moment under a point load, {@code M = M_A + V_A x − H y − P max(x − a, 0)}, with
     * the parabola's ordinate y.
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
        Quantity before =
                pointLeftMoment(load, position, span)
                        .plus(pointLeftVertical(load, position, span).times(x))
                        .minus(thrust.times(Parabola.ordinate(span, rise, x)));
        return before.minus(load.times(Quantity.max(x.minus(position), Quantity.of(0, "m"))));
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
     * Gives the vertical reaction on the side of the load, under a load uniform on plan over one half of
     * the span, {@code 13 w L/32}; the other springing holds {@code 3 w L/32}.
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @return the reaction, upward positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity halfSpanLoadedVertical(Quantity load, Quantity span) {
        Require.dimension("load per plan length", load, "N/m");
        Require.positive("span", span, "m");
        return load.times(span).times(13).over(32);
    }

    /**
     * Gives the moment at the springing on the side of the load, under a load uniform on plan over one
     * half of the span, {@code −w L²/64}; that of the other springing is its negative.
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @return the moment, sagging positive
     * @throws IllegalArgumentException if a length or stiffness is not positive, a position lies off the
     *     span, or an argument has the wrong dimension
     */
    public static Quantity halfSpanLoadedMoment(Quantity load, Quantity span) {
        Require.dimension("load per plan length", load, "N/m");
        Require.positive("span", span, "m");
        return load.times(span.squared()).over(64).negated();
    }

    /**
     * Gives the thrust that warming makes, bending alone, {@code H = 45 E I_c α ΔT/(4 f²)}, in the elastic
     * centre: the moments are {@code 2 H f/3} at the springings and {@code −H f/3} at the crown.
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
                .times(45)
                .over(rise.squared().times(4));
    }

    /**
     * Gives the thrust that a spread of the springings without rotation makes, bending alone, {@code H =
     * −45 E I_c δ/(4 f² L)}, in the elastic centre.
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
                .times(45)
                .over(rise.squared().times(span).times(4))
                .negated();
    }

    /**
     * Gives the share that the textbooks' formula gives to the shortening of the rib, {@code μ = 45
     * I_c/(4 A f²)}: the thrust under a load uniform on plan falls to {@code H₀/(1 + μ)}.
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
        return secondMoment.times(45).over(area.times(rise.squared()).times(4));
    }

    /**
     * Gives the thrust under a load uniform on plan with the shortening of a rib of one area, {@code H =
     * H₀ (1 − (S/A)/(4 f² L/(45 I_c) + C/A))}, with the length S of the axis and {@code C = ∫cos θ dx = L
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
        Quantity bending = rise.squared().times(span).times(4).over(secondMoment.times(45));
        return RibShortening.thrust(load, bending, area, span, rise);
    }

    /**
     * Gives the thrust that warming makes, with the shortening of a rib of one area, {@code H = E α ΔT L/(4
     * f² L/(45 I_c) + C/A)}, {@code C = L arsinh(4 f/L)/(4 f/L)}, in the elastic centre.
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
        Quantity bending = rise.squared().times(span).times(4).over(secondMoment.times(45));
        return RibShortening.warming(modulus, expansion, warming, bending, area, span, rise);
    }
}
