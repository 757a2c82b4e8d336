package org.skewback.foundation;

import org.skewback.quantity.Quantity;

/**
 * A rectangular footing with an eccentric load, in closed form for one direction at a time.
 *
 * @param width side in the direction of the eccentricity, B
 * @param length other side, L
 */
public record Footing(Quantity width, Quantity length) {

    /**
     * Makes a footing.
     *
     * @param width side in the direction of the eccentricity, B, more than 0
     * @param length other side, L, more than 0
     * @throws IllegalArgumentException if a side is not positive
     */
    public Footing {
        Require.positive("width of the footing", width, "m");
        Require.positive("length of the footing", length, "m");
    }

    /**
     * Gives the eccentricity, {@code e = |M|/N}.
     *
     * @param normal force square to the base, N, more than 0
     * @param moment moment about the middle of the base, M
     * @return the eccentricity
     * @throws IllegalArgumentException if the force does not press
     */
    public static Quantity eccentricity(Quantity normal, Quantity moment) {
        Require.positive("force square to the base", normal, "kN");
        return moment.abs().over(normal);
    }

    /**
     * Gives the edge of the kern in the direction of the width, {@code B/6}.
     *
     * @return the distance from the middle
     */
    public Quantity kern() {
        return width.over(6);
    }

    /**
     * Gives the radius of the kern of a round footing, {@code R/4}.
     *
     * @param radius radius of the footing, R, more than 0
     * @return the radius of the kern
     * @throws IllegalArgumentException if the radius is not positive
     */
    public static Quantity kernOfCircle(Quantity radius) {
        Require.positive("radius of the footing", radius, "m");
        return radius.over(4);
    }

    /**
     * Gives the greatest pressure below the footing.
     *
     * <p>Within the kern {@code N/(B L) (1 + 6 e/B)}; beyond it, where the base gapes, {@code 2 N/(3
     * L (B/2 − e))}.
     *
     * @param normal force square to the base, N, more than 0
     * @param moment moment about the middle, M; {@code e} less than B/2
     * @return the pressure at the edge pressed most
     * @throws IllegalArgumentException if the force does not press or passes outside the base
     */
    public Quantity greatestPressure(Quantity normal, Quantity moment) {
        Quantity e = onBase(normal, moment);
        return Quantity.choose(
                e.atMost(kern()),
                () -> normal.over(width.times(length)).times(e.times(6).over(width).plus(1)),
                () -> normal.times(2).over(length.times(width.over(2).minus(e)).times(3)));
    }

    /**
     * Gives the least pressure below the footing, {@code N/(B L) (1 − 6 e/B)}, or 0 where the base
     * gapes.
     *
     * @param normal force square to the base, N, more than 0
     * @param moment moment about the middle, M; {@code e} less than B/2
     * @return the pressure at the edge pressed least
     * @throws IllegalArgumentException if the force does not press or passes outside the base
     */
    public Quantity leastPressure(Quantity normal, Quantity moment) {
        Quantity e = onBase(normal, moment);
        Quantity linear =
                normal.over(width.times(length))
                        .times(Quantity.of(1).minus(e.times(6).over(width)));
        return Quantity.max(linear, Quantity.of(0, "kPa"));
    }

    /**
     * Gives the width in contact, {@code min(B, 3 (B/2 − e))}.
     *
     * @param normal force square to the base, N, more than 0
     * @param moment moment about the middle, M; {@code e} less than B/2
     * @return the width that presses
     * @throws IllegalArgumentException if the force does not press or passes outside the base
     */
    public Quantity contact(Quantity normal, Quantity moment) {
        Quantity e = onBase(normal, moment);
        return Quantity.min(width, width.over(2).minus(e).times(3));
    }

    /**
     * Gives the effective width on which the pressure is taken as even, {@code B′ = B − 2 e}.
     *
     * <p>Source: G. G. Meyerhof, The bearing capacity of foundations under eccentric and inclined
     * loads (1953) (from memory).
     *
     * @param normal force square to the base, N, more than 0
     * @param moment moment about the middle, M; {@code e} less than B/2
     * @return the effective width
     * @throws IllegalArgumentException if the force does not press or passes outside the base
     */
    public Quantity effectiveWidth(Quantity normal, Quantity moment) {
        return width.minus(onBase(normal, moment).times(2));
    }

    /**
     * Gives the even pressure on the effective width, {@code N/(B′ L)}.
     *
     * @param normal force square to the base, N, more than 0
     * @param moment moment about the middle, M; {@code e} less than B/2
     * @return the pressure
     * @throws IllegalArgumentException if the force does not press or passes outside the base
     */
    public Quantity effectivePressure(Quantity normal, Quantity moment) {
        return normal.over(effectiveWidth(normal, moment).times(length));
    }

    private Quantity onBase(Quantity normal, Quantity moment) {
        Quantity e = eccentricity(normal, moment);
        double half = width.in("m") / 2;
        if (!(e.in("m") < half)) {
            throw Require.refused(
                    "eccentricity of the load",
                    e.in("m"),
                    "m",
                    "less than half the width, " + half + " m, else the footing tips");
        }
        return e;
    }

    /**
     * Gives the factor of safety against sliding, {@code F = (N tan φ + c A + P)/H}.
     *
     * @param normal force square to the base, N, at least 0
     * @param friction friction angle on the base, φ, from 0° to less than 90°
     * @param cohesion cohesion on the base, c, at least 0
     * @param area area that presses, A, at least 0
     * @param passive passive resistance counted on, P, at least 0
     * @param along force along the base, H, more than 0
     * @return F, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity sliding(
            Quantity normal,
            Quantity friction,
            Quantity cohesion,
            Quantity area,
            Quantity passive,
            Quantity along) {
        Require.notNegative("force square to the base", normal, "kN");
        Require.within("friction angle", friction, 0, 89.999, "°");
        Require.notNegative("cohesion", cohesion, "kPa");
        Require.notNegative("area that presses", area, "m²");
        Require.notNegative("passive resistance", passive, "kN");
        Require.positive("force along the base", along, "kN");
        return normal.times(friction.tan()).plus(cohesion.times(area)).plus(passive).over(along);
    }

    /**
     * Gives the factor of safety against overturning, resisting over overturning moment about the
     * edge.
     *
     * @param resisting resisting moment, more than 0
     * @param overturning overturning moment, more than 0
     * @return F, a plain number
     * @throws IllegalArgumentException if a moment is not positive
     */
    public static Quantity overturning(Quantity resisting, Quantity overturning) {
        Require.positive("resisting moment", resisting, "kN·m");
        Require.positive("overturning moment", overturning, "kN·m");
        return resisting.over(overturning);
    }
}
