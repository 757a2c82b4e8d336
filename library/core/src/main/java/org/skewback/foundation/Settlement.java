package org.skewback.foundation;

import org.skewback.quantity.Quantity;

/**
 * Settlement of footings on an elastic half-space, the rock mass taken as one.
 *
 * <p>Source: S. P. Timoshenko and J. N. Goodier, Theory of Elasticity, §§ 138–140; H. G. Poulos and
 * E. H. Davis, Elastic Solutions for Soil and Rock Mechanics (1974).
 */
public final class Settlement {

    private Settlement() {}

    /**
     * Gives the settlement of a stiff round footing, {@code P (1 − ν²)/(2 a E)}.
     *
     * @param force load, P, at least 0
     * @param radius radius, a, more than 0
     * @param modulus deformation modulus, E, more than 0
     * @param poisson Poisson's ratio, ν, from 0 to 0.5
     * @return the settlement
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity stiffCircle(
            Quantity force, Quantity radius, Quantity modulus, Quantity poisson) {
        Require.notNegative("load", force, "kN");
        Require.positive("radius of the footing", radius, "m");
        return force.times(plane(modulus, poisson)).over(radius.times(2).times(modulus));
    }

    /**
     * Gives the settlement in the middle of an even round load, {@code q B (1 − ν²)/E}, B the
     * diameter.
     *
     * @param pressure pressure, q, at least 0
     * @param diameter diameter, B, more than 0
     * @param modulus deformation modulus, E, more than 0
     * @param poisson Poisson's ratio, ν, from 0 to 0.5
     * @return the settlement
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity middleOfCircle(
            Quantity pressure, Quantity diameter, Quantity modulus, Quantity poisson) {
        return even(pressure, diameter, modulus, poisson);
    }

    /**
     * Gives the settlement at the edge of an even round load, {@code 2/π} of that in the middle.
     *
     * @param pressure pressure, q, at least 0
     * @param diameter diameter, B, more than 0
     * @param modulus deformation modulus, E, more than 0
     * @param poisson Poisson's ratio, ν, from 0 to 0.5
     * @return the settlement
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity edgeOfCircle(
            Quantity pressure, Quantity diameter, Quantity modulus, Quantity poisson) {
        return even(pressure, diameter, modulus, poisson).times(2 / Math.PI);
    }

    /**
     * Gives the settlement at the corner of an even rectangular load, {@code q B (1 − ν²) I/E} with
     * {@code I = [m ln((1 + √(1 + m²))/m) + ln(m + √(1 + m²))]/π}, {@code m = L/B}; in the middle it
     * is twice that.
     *
     * @param pressure pressure, q, at least 0
     * @param width shorter side, B, more than 0
     * @param length longer side, L, more than 0
     * @param modulus deformation modulus, E, more than 0
     * @param poisson Poisson's ratio, ν, from 0 to 0.5
     * @return the settlement
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity cornerOfRectangle(
            Quantity pressure,
            Quantity width,
            Quantity length,
            Quantity modulus,
            Quantity poisson) {
        return even(pressure, width, modulus, poisson).times(cornerShape(width, length));
    }

    /**
     * Gives the shape factor I of {@link #cornerOfRectangle}.
     *
     * @param width one side, B, more than 0
     * @param length the other side, L, more than 0
     * @return I, a plain number
     * @throws IllegalArgumentException if a side is not positive
     */
    public static Quantity cornerShape(Quantity width, Quantity length) {
        Require.positive("width of the footing", width, "m");
        Require.positive("length of the footing", length, "m");
        Quantity m = length.over(width);
        Quantity root = m.squared().plus(1).root();
        return m.times(root.plus(1).over(m).ln()).plus(m.plus(root).ln()).over(Math.PI);
    }

    private static Quantity even(
            Quantity pressure, Quantity width, Quantity modulus, Quantity poisson) {
        Require.notNegative("pressure", pressure, "kPa");
        Require.positive("width of the footing", width, "m");
        return pressure.times(width).times(plane(modulus, poisson)).over(modulus);
    }

    private static Quantity plane(Quantity modulus, Quantity poisson) {
        Require.positive("deformation modulus", modulus, "MPa");
        Require.within("Poisson's ratio", poisson, 0, 0.5, "");
        return Quantity.of(1).minus(poisson.squared());
    }
}
