package org.skewback.arch;

import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.InterpolationTable.Axis;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Hand checks of an arch that buckles sideways, out of its plane. */
public final class LateralBuckling {

    private static final Source STANDARD =
            Source.standard("EN 1993-2:2006", "D.3.3, numbers from memory");

    private static final InterpolationTable UNIFORM =
            new InterpolationTable(
                    "β_1",
                    "length factor of a free-standing arch whose I_z is the same all along",
                    Axis.linear("", 0.05, 0.1, 0.2, 0.3, 0.4),
                    Axis.linear("", 0.50, 0.54, 0.65, 0.82, 1.07),
                    STANDARD);

    private static final InterpolationTable GROWING =
            new InterpolationTable(
                    "β_1",
                    "length factor of a free-standing arch whose I_z grows as 1/cos θ",
                    Axis.linear("", 0.05, 0.1, 0.2, 0.3, 0.4),
                    Axis.linear("", 0.50, 0.52, 0.59, 0.71, 0.86),
                    STANDARD);

    private LateralBuckling() {}

    /**
     * Gives the length factor β₁ of an arch with one second moment of area about the upright axis, read
     * between its rows from the table of EN 1993-2, D.3.3 (numbers from memory: hold them against the
     * standard before use).
     *
     * @param riseToSpan f/L, 0.05 to 0.4
     * @return β₁
     * @throws IllegalArgumentException outside the table
     */
    public static Quantity lengthFactorUniform(Quantity riseToSpan) {
        return riseToSpan.interpolated(UNIFORM);
    }

    /**
     * Gives the length factor β₁ of an arch whose second moment of area about the upright axis grows as
     * {@code 1/cos θ}; see {@link #lengthFactorUniform}.
     *
     * @param riseToSpan f/L, 0.05 to 0.4
     * @return β₁
     * @throws IllegalArgumentException outside the table
     */
    public static Quantity lengthFactorGrowing(Quantity riseToSpan) {
        return riseToSpan.interpolated(GROWING);
    }

    /**
     * Gives the factor β₂ for a deck on columns, {@code 1 + 0.45 q_St/q}, after EN 1993-2, D.3.3 (from
     * memory): columns that lean over with the rib push it on.
     *
     * @param byColumns load that reaches the rib by columns, q_St
     * @param all all load, q, greater than 0
     * @return β₂
     * @throws IllegalArgumentException if the loads are of two dimensions, or q_St is not between 0 and q
     */
    public static Quantity columnFactor(Quantity byColumns, Quantity all) {
        Quantity share = byColumns.over(all);
        Require.within("share of the load that columns bring", share.in(""), 0, 1, "");
        return share.times(0.45).plus(1);
    }

    /**
     * Gives the factor β₂ for a deck on hangers, {@code 1 − 0.35 q_H/q}, after EN 1993-2, D.3.3 (from
     * memory): hangers that lean over pull the rib back.
     *
     * @param byHangers load that reaches the rib by hangers, q_H
     * @param all all load, q, greater than 0
     * @return β₂
     * @throws IllegalArgumentException if the loads are of two dimensions, or q_H is not between 0 and q
     */
    public static Quantity hangerFactor(Quantity byHangers, Quantity all) {
        Quantity share = byHangers.over(all);
        Require.within("share of the load that hangers bring", share.in(""), 0, 1, "");
        return Quantity.of(1).minus(share.times(0.35));
    }

    /**
     * Gives the critical axial force, {@code N_cr = (π/(β₁ β₂ L))² E I_z}.
     *
     * @param modulus modulus of elasticity, E, greater than 0
     * @param secondMoment second moment of area about the upright axis at the crown, I_z, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @param lengthFactor β₁, greater than 0
     * @param loadFactor β₂, greater than 0; 1 without hangers or columns
     * @return the force at a springing
     * @throws IllegalArgumentException if an argument is not positive or has the wrong dimension
     */
    public static Quantity criticalForce(
            Quantity modulus,
            Quantity secondMoment,
            Quantity span,
            Quantity lengthFactor,
            Quantity loadFactor) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("span", span, "m");
        Require.positive("length factor", lengthFactor, "");
        Require.positive("load factor", loadFactor, "");
        Quantity length = lengthFactor.times(loadFactor).times(span);
        return modulus.times(secondMoment)
                .times(StrictMath.PI * StrictMath.PI)
                .over(length.squared());
    }

    /**
     * Gives the pressure at which a circular arch buckles sideways whose ends are held against twisting
     * and free to turn about the upright axis, under a load towards the centre that stays square to the
     * chord plane, {@code q = (E I_z/R³) (π² − θ²)²/(θ² (π² + θ² E I_z/(G J)))}.
     *
     * <p>Source: S. P. Timoshenko and J. M. Gere, <i>Theory of Elastic Stability</i>, 2nd ed. 1961, section
     * 7.8 (from memory).
     *
     * @param openingAngle opening angle of the arch, θ, greater than 0 and less than 180°
     * @param radius radius of the axis, R, greater than 0
     * @param bending bending stiffness about the upright axis, E I_z, greater than 0
     * @param torsion torsional stiffness, G J, greater than 0
     * @return the pressure per length of axis
     * @throws IllegalArgumentException if an argument is out of range or has the wrong dimension
     */
    public static Quantity circularPressure(
            Quantity openingAngle, Quantity radius, Quantity bending, Quantity torsion) {
        double angle = openingAngle.in("rad");
        if (!(angle > 0 && angle < StrictMath.PI)) {
            throw Require.refused("opening angle", angle, "rad", "between 0 and π, exclusive");
        }
        Require.positive("radius", radius, "m");
        Require.positive("bending stiffness", bending, "N·m²");
        Require.positive("torsional stiffness", torsion, "N·m²");
        double square = StrictMath.PI * StrictMath.PI;
        Quantity opening = openingAngle.squared();
        Quantity above = Quantity.of(square).minus(opening).squared();
        Quantity below = opening.times(opening.times(bending).over(torsion).plus(square));
        return bending.over(radius.cubed()).times(above).over(below);
    }
}
