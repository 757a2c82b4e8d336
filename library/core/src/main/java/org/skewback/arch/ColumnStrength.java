package org.skewback.arch;

import org.skewback.quantity.Quantity;

/**
 * Strength of a compressed member or rib by the column curves, and with bending; EN 1993-1-1:2005, 6.3.1, 6.3.3
 * with annex B, and 5.3.2(11).
 */
public final class ColumnStrength {

    private ColumnStrength() {}

    /**
     * Gives the slenderness, {@code λ = √(N_Rk/N_cr)} (6.3.1.2).
     *
     * @param plastic N_Rk = A f_y, greater than 0
     * @param critical N_cr, greater than 0
     * @return λ
     * @throws IllegalArgumentException if a force is not greater than 0
     */
    public static Quantity slenderness(Quantity plastic, Quantity critical) {
        Require.positive("strength of the section", plastic, "N");
        Require.positive("critical force", critical, "N");
        return plastic.over(critical).root();
    }

    /**
     * Gives the critical force of a length, {@code N_cr = π² EI/(β l)²}.
     *
     * @param modulus E, greater than 0
     * @param secondMoment I, greater than 0
     * @param length buckling length β l, greater than 0
     * @return N_cr
     * @throws IllegalArgumentException if an argument is not greater than 0
     */
    public static Quantity critical(Quantity modulus, Quantity secondMoment, Quantity length) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("buckling length", length, "m");
        return modulus.times(secondMoment)
                .times(StrictMath.PI * StrictMath.PI)
                .over(length.squared());
    }

    /**
     * Gives the buckling length that belongs to a critical force, {@code π √(EI/N_cr)}.
     *
     * @param modulus E, greater than 0
     * @param secondMoment I, greater than 0
     * @param critical N_cr, greater than 0
     * @return the length of the pinned column that buckles at that force
     * @throws IllegalArgumentException if an argument is not greater than 0
     */
    public static Quantity bucklingLength(
            Quantity modulus, Quantity secondMoment, Quantity critical) {
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("critical force", critical, "N");
        return modulus.times(secondMoment).over(critical).root().times(StrictMath.PI);
    }

    /**
     * Gives the reduction factor, {@code χ = 1/(Φ + √(Φ² − λ²)) ≤ 1} with {@code Φ = (1 + α(λ − 0.2) + λ²)/2}
     * (6.49).
     *
     * @param slenderness λ, at least 0
     * @param imperfection α of the curve, at least 0
     * @return χ
     * @throws IllegalArgumentException if an argument is negative
     */
    public static Quantity reduction(Quantity slenderness, Quantity imperfection) {
        Require.within("slenderness", slenderness.in(""), 0, 100, "");
        Require.within("imperfection factor", imperfection.in(""), 0, 2, "");
        Quantity auxiliary =
                slenderness
                        .squared()
                        .plus(imperfection.times(slenderness.minus(0.2)))
                        .plus(1)
                        .over(2);
        Quantity root = auxiliary.squared().minus(slenderness.squared()).root();
        return Quantity.min(Quantity.of(1), Quantity.of(1).over(auxiliary.plus(root)));
    }

    /**
     * Gives the factor on a moment in a member of class 3, {@code k = C_m (1 + 0.6 λ n) ≤ C_m (1 + 0.6 n)} with
     * {@code n = N_Ed/(χ N_Rk/γ_M1)} (table B.1, members that do not twist, such as boxes).
     *
     * @param momentFactor C_m, 0.4 to 1
     * @param slenderness λ for bending in the same plane, at least 0
     * @param axialShare n, at least 0
     * @return k_yy or k_zz
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Quantity interaction(
            Quantity momentFactor, Quantity slenderness, Quantity axialShare) {
        Require.within("factor of the moment's shape", momentFactor.in(""), 0.4, 1, "");
        Require.within("slenderness", slenderness.in(""), 0, 100, "");
        Require.within("share of the axial force", axialShare.in(""), 0, 100, "");
        Quantity grown = Quantity.min(slenderness, Quantity.of(1)).times(axialShare).times(0.6);
        return momentFactor.times(grown.plus(1));
    }

    /**
     * Gives how far axial force and bending use a member of class 3 that does not twist, the larger of
     * {@code N/(χ_y N_Rd) + k_yy M_y/M_y,Rd + k_zz M_z/M_z,Rd} and {@code N/(χ_z N_Rd) + 0.8 k_yy M_y/M_y,Rd +
     * k_zz M_z/M_z,Rd} (6.61 and 6.62 with table B.1).
     *
     * @param axialY N_Ed/(χ_y N_Rk/γ_M1), at least 0
     * @param axialZ N_Ed/(χ_z N_Rk/γ_M1), at least 0
     * @param momentY k_yy M_y,Ed/(M_y,Rk/γ_M1), at least 0
     * @param momentZ k_zz M_z,Ed/(M_z,Rk/γ_M1), at least 0
     * @return the utilisation
     * @throws IllegalArgumentException if an argument is negative
     */
    public static Quantity utilisation(
            Quantity axialY, Quantity axialZ, Quantity momentY, Quantity momentZ) {
        for (Quantity share : new Quantity[] {axialY, axialZ, momentY, momentZ}) {
            Require.within("share of a force or moment", share.in(""), 0, 1e6, "");
        }
        return Quantity.max(
                axialY.plus(momentY).plus(momentZ), axialZ.plus(momentY.times(0.8)).plus(momentZ));
    }

    /**
     * Gives the design bow of a shape of buckling, {@code e₀ = α (λ − 0.2) M_Rk/N_Rk (1 − χ λ²/γ_M1)/(1 − χ λ²)}
     * (5.10), 0 up to a slenderness of 0.2.
     *
     * @param imperfection α of the curve, at least 0
     * @param slenderness λ, from α_ult,k/α_cr, at least 0
     * @param reduction χ of that slenderness, 0 to 1
     * @param moment M_Rk of the section that governs, greater than 0
     * @param axial N_Rk of that section, greater than 0
     * @param partialFactor γ_M1, at least 1
     * @return e₀,d
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Quantity bow(
            Quantity imperfection,
            Quantity slenderness,
            Quantity reduction,
            Quantity moment,
            Quantity axial,
            Quantity partialFactor) {
        Require.within("imperfection factor", imperfection.in(""), 0, 2, "");
        Require.within("slenderness", slenderness.in(""), 0, 100, "");
        Require.within("reduction factor", reduction.in(""), 0, 1, "");
        Require.positive("moment that the section carries", moment, "N·m");
        Require.positive("axial force that the section carries", axial, "N");
        Require.within("partial factor", partialFactor.in(""), 1, 3, "");
        Quantity square = reduction.times(slenderness.squared());
        Quantity one = Quantity.of(1);
        return Quantity.max(slenderness.minus(0.2), Quantity.of(0))
                .times(imperfection)
                .times(moment.over(axial))
                .times(one.minus(square.over(partialFactor)))
                .over(one.minus(square));
    }

    /**
     * Gives the amplitude of a shape of buckling as an imperfection, {@code η = e₀ N_cr/(E I |η″_cr|max)
     * η_cr,max} (5.9), where {@code N_cr} is the axial force at buckling where the shape bends most.
     *
     * @param bow e₀,d, at least 0
     * @param critical N_cr in the section that governs, greater than 0
     * @param modulus E, greater than 0
     * @param secondMoment I of that section, greater than 0
     * @param curvature largest curvature of the shape over its largest ordinate, 1/m², greater than 0
     * @return largest ordinate of the imperfection
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Quantity amplitude(
            Quantity bow,
            Quantity critical,
            Quantity modulus,
            Quantity secondMoment,
            Quantity curvature) {
        Require.within("bow", bow.in("m"), 0, 1e3, "m");
        Require.positive("critical force", critical, "N");
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("second moment of area", secondMoment, "m⁴");
        Require.positive("curvature of the shape", curvature, "1/m²");
        return bow.times(critical).over(modulus.times(secondMoment).times(curvature));
    }

    /**
     * Gives the bow of an arch in its plane where it buckles in two half-waves, {@code s/n_e} of half the axis in
     * EN 1993-2:2006, D.3.5 (from memory; hold it against the standard before use).
     *
     * @param halfAxis s, greater than 0
     * @param lengthOverBow n_e, see {@link BucklingCurve#lengthOverBow}, greater than 0
     * @return the largest ordinate
     * @throws IllegalArgumentException if an argument is not greater than 0
     */
    public static Quantity bowInPlane(Quantity halfAxis, Quantity lengthOverBow) {
        Require.positive("half the axis", halfAxis, "m");
        Require.positive("length over bow", lengthOverBow, "");
        return halfAxis.over(lengthOverBow);
    }

    /**
     * Gives the bow of an arch out of its plane, {@code l/n_e} up to a span of 20 m and {@code √(20 m · l)/n_e}
     * beyond (EN 1993-2:2006, D.3.5, from memory; hold it against the standard before use).
     *
     * @param span l, greater than 0
     * @param lengthOverBow n_e, greater than 0
     * @return the largest ordinate
     * @throws IllegalArgumentException if an argument is not greater than 0
     */
    public static Quantity bowAcross(Quantity span, Quantity lengthOverBow) {
        Require.positive("span", span, "m");
        Require.positive("length over bow", lengthOverBow, "");
        return Quantity.min(span, span.times(Quantity.of(20, "m")).root()).over(lengthOverBow);
    }
}
