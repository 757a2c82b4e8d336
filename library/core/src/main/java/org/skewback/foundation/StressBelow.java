package org.skewback.foundation;

import org.skewback.quantity.Quantity;

/**
 * Upright stress in the ground below loads on its surface, pressing positive; a pull, such as an
 * anchor's, with the other sign.
 *
 * <p>Source: J. Boussinesq (1885) for an elastic half-space; H. M. Westergaard (1938) for one that
 * cannot move sideways, as thin-bedded ground, ν = 0; formulas as in H. G. Poulos and E. H. Davis
 * (1974).
 */
public final class StressBelow {

    private StressBelow() {}

    /**
     * Gives the stress below a point load, {@code 3 P z³/(2 π R⁵)}, {@code R² = r² + z²}.
     *
     * @param force load, P
     * @param depth depth, z, more than 0
     * @param off level distance, r, at least 0
     * @return the stress
     * @throws IllegalArgumentException if a length is outside
     */
    public static Quantity point(Quantity force, Quantity depth, Quantity off) {
        checkPlace(depth, off);
        Quantity slant = depth.squared().plus(off.squared()).power(5, 2);
        return force.times(depth.cubed()).times(3).over(slant.times(2 * Math.PI));
    }

    /**
     * Gives the stress below a point load by Westergaard, {@code P/(π z² (1 + 2 (r/z)²)^(3/2))}.
     *
     * @param force load, P
     * @param depth depth, z, more than 0
     * @param off level distance, r, at least 0
     * @return the stress
     * @throws IllegalArgumentException if a length is outside
     */
    public static Quantity pointByWestergaard(Quantity force, Quantity depth, Quantity off) {
        checkPlace(depth, off);
        Quantity spread = off.over(depth).squared().times(2).plus(1).power(3, 2);
        return force.over(depth.squared().times(spread).times(Math.PI));
    }

    /**
     * Gives the stress below a line load, {@code 2 p z³/(π R⁴)}.
     *
     * @param load load per length, p
     * @param depth depth, z, more than 0
     * @param off level distance, x, at least 0
     * @return the stress
     * @throws IllegalArgumentException if a length is outside
     */
    public static Quantity line(Quantity load, Quantity depth, Quantity off) {
        checkPlace(depth, off);
        Quantity slant = depth.squared().plus(off.squared()).squared();
        return load.times(depth.cubed()).times(2).over(slant.times(Math.PI));
    }

    /**
     * Gives the stress below the corner of an even rectangular load.
     *
     * <p>With {@code m = B/z}, {@code n = L/z}, {@code V = m² + n² + 1}: {@code q/(2 π) [arctan(m n/√V)
     * + m n (V + 1)/(√V (m² + 1)(n² + 1))]}.
     *
     * @param pressure pressure, q
     * @param width one side, B, more than 0
     * @param length other side, L, more than 0
     * @param depth depth, z, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a length is not positive
     */
    public static Quantity corner(
            Quantity pressure, Quantity width, Quantity length, Quantity depth) {
        checkSides(width, length, depth);
        Quantity m = width.over(depth);
        Quantity n = length.over(depth);
        Quantity v = m.squared().plus(n.squared()).plus(1);
        Quantity mn = m.times(n);
        Quantity second =
                mn.times(v.plus(1))
                        .over(v.root().times(m.squared().plus(1)).times(n.squared().plus(1)));
        return pressure.times(mn.over(v.root()).atan().plus(second)).over(2 * Math.PI);
    }

    /**
     * Gives the stress below the corner of an even rectangular load by Westergaard, {@code q/(2 π)
     * arccot √(½ (1/m² + 1/n²) + ¼ /(m² n²))}.
     *
     * @param pressure pressure, q
     * @param width one side, B, more than 0
     * @param length other side, L, more than 0
     * @param depth depth, z, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a length is not positive
     */
    public static Quantity cornerByWestergaard(
            Quantity pressure, Quantity width, Quantity length, Quantity depth) {
        checkSides(width, length, depth);
        Quantity m = depth.over(width).squared();
        Quantity n = depth.over(length).squared();
        Quantity root = m.plus(n).over(2).plus(m.times(n).over(4)).root();
        return pressure.times(Quantity.of(1).over(root).atan()).over(2 * Math.PI);
    }

    /**
     * Gives the stress below the middle of an even round load, {@code q [1 − (1 + (a/z)²)^(−3/2)]}.
     *
     * @param pressure pressure, q
     * @param radius radius, a, more than 0
     * @param depth depth, z, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a length is not positive
     */
    public static Quantity circle(Quantity pressure, Quantity radius, Quantity depth) {
        Require.positive("radius of the load", radius, "m");
        Require.positive("depth", depth, "m");
        Quantity spread = radius.over(depth).squared().plus(1).power(-3, 2);
        return pressure.times(Quantity.of(1).minus(spread));
    }

    /**
     * Gives the stress below the middle of an even strip, {@code q/π (α + sin α)}, α the angle under
     * which the strip is seen, {@code 2 arctan(B/(2 z))}.
     *
     * @param pressure pressure, q
     * @param width width, B, more than 0
     * @param depth depth, z, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a length is not positive
     */
    public static Quantity strip(Quantity pressure, Quantity width, Quantity depth) {
        Require.positive("width of the strip", width, "m");
        Require.positive("depth", depth, "m");
        Quantity angle = width.over(depth.times(2)).atan().times(2);
        return pressure.times(angle.plus(angle.sin())).over(Math.PI);
    }

    private static void checkPlace(Quantity depth, Quantity off) {
        Require.positive("depth", depth, "m");
        Require.notNegative("level distance", off, "m");
    }

    private static void checkSides(Quantity width, Quantity length, Quantity depth) {
        Require.positive("width of the load", width, "m");
        Require.positive("length of the load", length, "m");
        Require.positive("depth", depth, "m");
    }
}
