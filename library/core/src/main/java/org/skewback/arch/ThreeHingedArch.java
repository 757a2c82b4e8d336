package org.skewback.arch;

import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

/**
 * Closed forms of the three-hinged parabolic arch, with hinges at both springings and at the crown,
 * springings at one level; statics alone, whatever the stiffness.
 *
 * <p>Source: statics of the three-hinged arch, as in any text; I. A. Karnovsky, <i>Theory of Arched
 * Structures</i> (Springer 2012), chapter 2 (from memory).
 */
public final class ThreeHingedArch {

    private ThreeHingedArch() {}

    /**
     * Gives the thrust under a point load, {@code H = P min(a, L − a)/(2 f)}.
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
        return load.times(Quantity.min(position, span.minus(position))).over(rise.times(2));
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
}
