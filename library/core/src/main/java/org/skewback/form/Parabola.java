package org.skewback.form;

import java.util.OptionalDouble;
import org.skewback.quantity.Quantity;

/**
 * A parabola with upright axis through both springings, {@code y = h x/L + 4 f x (L − x)/L²}: the
 * funicular of a load uniform on plan.
 *
 * @param span level distance between the springings, L, m, greater than 0
 * @param rise height of the axis above the middle of the chord, f, m, greater than 0
 * @param rightLevel height of the right springing above the left one, h, m
 */
public record Parabola(double span, double rise, double rightLevel) implements Axis {

    /**
     * Makes a parabola between springings at different levels.
     *
     * @param span level distance between the springings, L, m, greater than 0
     * @param rise height of the axis above the middle of the chord, f, m, greater than 0
     * @param rightLevel height of the right springing above the left one, h, m
     * @throws IllegalArgumentException if a value is not finite, or span or rise is not positive
     */
    public Parabola {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Require.finite("level of the right springing", rightLevel, "m");
    }

    /**
     * Makes a parabola between springings at one level.
     *
     * @param span level distance between the springings, m, greater than 0
     * @param rise height of the crown above the springings, m, greater than 0
     * @throws IllegalArgumentException if a value is not finite and positive
     */
    public Parabola(double span, double rise) {
        this(span, rise, 0);
    }

    @Override
    public double y(double x) {
        double at = Require.within("x", x, 0, span, "m");
        return chord(at) + 4 * rise * (at / span) * ((span - at) / span);
    }

    @Override
    public double slope(double x) {
        double at = Require.within("x", x, 0, span, "m");
        return rightLevel / span + 4 * (rise / span) * ((span - 2 * at) / span);
    }

    @Override
    public OptionalDouble curvature(double x) {
        double secant = Math.sqrt(1 + slope(x) * slope(x));
        return OptionalDouble.of(8 * rise / (span * span) / (secant * secant * secant));
    }

    /**
     * Gives the thrust under a load uniform on plan, {@code H = w L²/(8 f)}.
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the axis above the middle of the chord, f, greater than 0
     * @return the horizontal component of the force at each springing
     * @throws IllegalArgumentException if span or rise is not positive, or an argument has the wrong
     *     dimension
     */
    public static Quantity thrust(Quantity load, Quantity span, Quantity rise) {
        Require.dimension(load, "N/m");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return load.times(span.squared()).over(rise.times(8));
    }

    /**
     * Gives the vertical force at a springing, with both at one level, under a load uniform on plan,
     * {@code V = w L/2}.
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @return the vertical component of the force at each springing
     * @throws IllegalArgumentException if the span is not positive, or an argument has the wrong
     *     dimension
     */
    public static Quantity springingVertical(Quantity load, Quantity span) {
        Require.dimension(load, "N/m");
        Require.positive("span", span, "m");
        return load.times(span).over(2);
    }

    /**
     * Gives the force at a springing, {@code R = √(H² + V²)}.
     *
     * @param thrust horizontal component, H
     * @param vertical vertical component, V
     * @return the force
     * @throws IllegalArgumentException if an argument is not a force
     */
    public static Quantity springingForce(Quantity thrust, Quantity vertical) {
        Require.dimension(thrust, "N");
        return thrust.squared().plus(vertical.squared()).root();
    }

    /**
     * Gives the inclination of the axis at a springing, with both at one level, {@code arctan(4
     * f/L)}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the angle to the level
     * @throws IllegalArgumentException if span or rise is not positive or not a length
     */
    public static Quantity springingAngle(Quantity span, Quantity rise) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return rise.times(4).over(span).atan();
    }

    /**
     * Gives the ordinate of the axis, with the springings at one level, {@code y = 4 f x (L −
     * x)/L²}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param x distance from the left springing
     * @return the height above the springings
     * @throws IllegalArgumentException if span or rise is not positive, or an argument is not a
     *     length
     */
    public static Quantity ordinate(Quantity span, Quantity rise, Quantity x) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return rise.times(4).times(x).times(span.minus(x)).over(span.squared());
    }

    /**
     * Gives the length of the axis, with the springings at one level, {@code S = ½√(L² + 16 f²) +
     * L²/(8 f) arsinh(4 f/L)}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the length
     * @throws IllegalArgumentException if span or rise is not positive or not a length
     */
    public static Quantity arcLength(Quantity span, Quantity rise) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Quantity straight = span.squared().plus(rise.squared().times(16)).root().over(2);
        Quantity curved =
                span.squared().over(rise.times(8)).times(rise.times(4).over(span).asinh());
        return straight.plus(curved);
    }

    /**
     * Gives the volume of a parabolic rib stressed alike throughout by a load uniform on plan,
     * without weight of its own, {@code w L³/(8 f σ) · (1 + 16 f²/(3 L²))}.
     *
     * <p>The formula is the integral of N/σ along the axis; the least of it is named in the
     * literature on optimal arches (G. I. N. Rozvany, W. Prager; from memory).
     *
     * @param load load per plan length, w
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @param stress stress in the rib, σ, greater than 0
     * @return the volume
     * @throws IllegalArgumentException if span, rise or stress is not positive, or an argument has
     *     the wrong dimension
     */
    public static Quantity ribVolume(Quantity load, Quantity span, Quantity rise, Quantity stress) {
        Require.dimension(load, "N/m");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Require.positive("stress", stress, "Pa");
        Quantity steepness = rise.over(span).squared().times(16).over(3).plus(1);
        return load.times(span.cubed()).over(rise.times(8).times(stress)).times(steepness);
    }

    /**
     * Gives the rise at which {@link #ribVolume} is least, {@code f = √3/4 · L}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @return the rise
     * @throws IllegalArgumentException if the span is not positive or not a length
     */
    public static Quantity leastVolumeRise(Quantity span) {
        Require.positive("span", span, "m");
        return Quantity.of(3).root().over(4).times(span);
    }
}
