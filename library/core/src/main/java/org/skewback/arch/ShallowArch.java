package org.skewback.arch;

import org.skewback.quantity.Quantity;

/**
 * Snap-through of a shallow sinusoidal arch on hinges, under a load sinusoidal on plan, {@code w(x) = w₀
 * sin(πx/L)}.
 *
 * <p>With {@code m = 4 I/(A f²)} and the load as {@code u = w₀ L⁴/(π⁴ E I f)}, the arch passes its limit
 * point at {@code u = 1 + √(4 (1 − m)³/(27 m²))}, for m &lt; 1, and before that leaves for a shape with
 * one wave up and one down at {@code u = 1 + 3 √(1 − 4 m)}, for m &lt; 2/11. Source: S. P. Timoshenko and J.
 * M. Gere, <i>Theory of Elastic Stability</i>, 2nd ed. 1961, chapter 7 (from memory), derived anew. It holds
 * for rises small against the span.
 */
public final class ShallowArch {

    private ShallowArch() {}

    /**
     * Gives the parameter of shallowness, {@code m = 4 I/(A f²)}.
     *
     * @param secondMoment second moment of area, I, greater than 0
     * @param area area, A, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return m; at 1 and above the arch does not snap through
     * @throws IllegalArgumentException if an argument is not positive or has the wrong dimension
     */
    public static Quantity shallowness(Quantity secondMoment, Quantity area, Quantity rise) {
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("area", area, "m²");
        Require.positive("rise", rise, "m");
        return secondMoment.times(4).over(area.times(rise.squared()));
    }

    /**
     * Gives the load at which the arch snaps through symmetrically, {@code w₀ = u π⁴ E I f/L⁴}, {@code u = 1 +
     * √(4 (1 − m)³/(27 m²))}.
     *
     * @param modulus modulus of elasticity, E, greater than 0
     * @param secondMoment second moment of area, I, greater than 0
     * @param area area, A, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the load per plan length in midspan
     * @throws IllegalArgumentException if an argument is not positive, has the wrong dimension, or m is
     *     not less than 1
     */
    public static Quantity limitLoad(
            Quantity modulus, Quantity secondMoment, Quantity area, Quantity span, Quantity rise) {
        Quantity m = shallowness(secondMoment, area, rise);
        if (!(m.si() < 1)) {
            throw Require.refused(
                    "shallowness 4 I/(A f²)", m.si(), "", "less than 1: this arch does not snap");
        }
        Quantity u =
                Quantity.of(1).minus(m).cubed().times(4).over(m.squared().times(27)).root().plus(1);
        return u.times(unit(modulus, secondMoment, span, rise));
    }

    /**
     * Gives the load at which the arch leaves for the shape with one wave up and one down, {@code w₀ = u π⁴
     * E I f/L⁴}, {@code u = 1 + 3 √(1 − 4 m)}.
     *
     * @param modulus modulus of elasticity, E, greater than 0
     * @param secondMoment second moment of area, I, greater than 0
     * @param area area, A, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the load per plan length in midspan
     * @throws IllegalArgumentException if an argument is not positive, has the wrong dimension, or m is
     *     not less than 2/11, where {@link #limitLoad} comes first
     */
    public static Quantity bifurcationLoad(
            Quantity modulus, Quantity secondMoment, Quantity area, Quantity span, Quantity rise) {
        Quantity m = shallowness(secondMoment, area, rise);
        if (!(m.si() < 2.0 / 11)) {
            throw Require.refused(
                    "shallowness 4 I/(A f²)",
                    m.si(),
                    "",
                    "less than 2/11: this arch snaps through symmetrically before");
        }
        Quantity u = Quantity.of(1).minus(m.times(4)).root().times(3).plus(1);
        return u.times(unit(modulus, secondMoment, span, rise));
    }

    private static Quantity unit(
            Quantity modulus, Quantity secondMoment, Quantity span, Quantity rise) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("span", span, "m");
        return modulus.times(secondMoment)
                .times(rise)
                .over(span.power(4))
                .times(StrictMath.PI * StrictMath.PI * StrictMath.PI * StrictMath.PI);
    }
}
