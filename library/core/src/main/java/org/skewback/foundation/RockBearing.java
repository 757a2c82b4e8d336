package org.skewback.foundation;

import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Ultimate bearing pressure of footings on rock, by several methods to be held against each other. */
public final class RockBearing {

    private static final InterpolationTable PECK =
            new InterpolationTable(
                    "q_RQD",
                    "allowable bearing pressure by RQD",
                    InterpolationTable.Axis.linear("", 0.10, 0.25, 0.50, 0.75, 0.90, 1.00),
                    InterpolationTable.Axis.linear(
                            "MPa",
                            10 * tonPerSquareFoot(),
                            30 * tonPerSquareFoot(),
                            65 * tonPerSquareFoot(),
                            120 * tonPerSquareFoot(),
                            200 * tonPerSquareFoot(),
                            300 * tonPerSquareFoot()),
                    Source.book(
                            "R. B. Peck, W. E. Hanson and T. H. Thornburn, Foundation Engineering,"
                                    + " 2nd ed. (1974)",
                            "table of allowable pressure by RQD (from memory)"));

    private RockBearing() {}

    /** 2000 lbf a square foot, in MPa. */
    private static double tonPerSquareFoot() {
        return 2000 * 0.45359237 * 9.80665 / (0.3048 * 0.3048) / 1e6;
    }

    /**
     * Gives {@code N_φ = tan²(45° + φ/2)}.
     *
     * @param friction friction angle of the rock mass, φ, from 0° to less than 90°
     * @return N_φ, a plain number
     * @throws IllegalArgumentException if the angle is outside
     */
    public static Quantity flow(Quantity friction) {
        Require.within("friction angle", friction, 0, 89.999, "°");
        return friction.over(2).plus(Quantity.of(45, "°")).tan().squared();
    }

    /**
     * Gives the ultimate pressure of a strip on rock, {@code q = c N_c + ½ γ B N_γ + γ D N_q} with
     * {@code N_c = 2 √N_φ (N_φ + 1)}, {@code N_γ = √N_φ (N_φ² − 1)}, {@code N_q = N_φ²}.
     *
     * <p>Source: US Army Corps of Engineers, EM 1110-1-2908, Rock foundations (1994), ch. 6 (formulas
     * from memory).
     *
     * @param cohesion cohesion of the rock mass, c, at least 0
     * @param friction friction angle of the rock mass, φ, from 0° to less than 90°
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @param width width of the footing, B, effective width under an eccentric load, more than 0
     * @param depth depth of the base below the rock surface, D, at least 0
     * @return the ultimate pressure
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity strip(
            Quantity cohesion,
            Quantity friction,
            Quantity unitWeight,
            Quantity width,
            Quantity depth) {
        Require.notNegative("cohesion", cohesion, "kPa");
        Require.positive("unit weight of the rock", unitWeight, "kN/m³");
        Require.positive("width of the footing", width, "m");
        Require.notNegative("depth of the base", depth, "m");
        Quantity flow = flow(friction);
        Quantity root = flow.root();
        return cohesion.times(root.times(2).times(flow.plus(1)))
                .plus(unitWeight.times(width).times(root.times(flow.squared().minus(1))).over(2))
                .plus(unitWeight.times(depth).times(flow.squared()));
    }

    /**
     * Gives the ultimate pressure of jointed rock by its Hoek–Brown constants, {@code q = q_u [s^a +
     * (m s^a + s)^a]}; with a = ½, {@code √s + √(m √s + s)}.
     *
     * <p>The rock beside the footing fails in compression and confines the rock below it. Source: F.
     * H. Kulhawy and J. P. Carter (1992); D. C. Wyllie, Foundations on Rock (1999) (from memory).
     *
     * @param intact uniaxial compressive strength of intact rock, q_u, more than 0
     * @param constant Hoek–Brown constant of the rock mass, m, more than 0
     * @param cohesive Hoek–Brown constant of the rock mass, s, more than 0, at most 1
     * @param exponent Hoek–Brown exponent, a, from 0.5 to 0.6
     * @return the ultimate pressure
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity jointed(
            Quantity intact, Quantity constant, Quantity cohesive, Quantity exponent) {
        checkMass(intact, constant, cohesive, exponent);
        Quantity first = power(cohesive, exponent);
        return intact.times(first.plus(power(constant.times(first).plus(cohesive), exponent)));
    }

    /**
     * Gives the ultimate pressure of jointed rock under a load beside the footing, {@code A = σ_v +
     * q_u (m σ_v/q_u + s)^a}, {@code q = A + q_u (m A/q_u + s)^a}.
     *
     * <p>Source: AASHTO LRFD Bridge Design Specifications, 10.8.3.5.4c (from memory).
     *
     * @param intact uniaxial compressive strength of intact rock, q_u, more than 0
     * @param constant Hoek–Brown constant of the rock mass, m, more than 0
     * @param cohesive Hoek–Brown constant of the rock mass, s, more than 0, at most 1
     * @param exponent Hoek–Brown exponent, a, from 0.5 to 0.6
     * @param beside upright effective stress at the base beside the footing, σ_v, at least 0
     * @return the ultimate pressure
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity jointedBelowGround(
            Quantity intact,
            Quantity constant,
            Quantity cohesive,
            Quantity exponent,
            Quantity beside) {
        checkMass(intact, constant, cohesive, exponent);
        Require.notNegative("upright stress beside the footing", beside, "kPa");
        Quantity first = raised(intact, constant, cohesive, exponent, beside);
        return raised(intact, constant, cohesive, exponent, first);
    }

    private static Quantity raised(
            Quantity intact,
            Quantity constant,
            Quantity cohesive,
            Quantity exponent,
            Quantity least) {
        Quantity inside = constant.times(least.over(intact)).plus(cohesive);
        return least.plus(intact.times(power(inside, exponent)));
    }

    private static void checkMass(
            Quantity intact, Quantity constant, Quantity cohesive, Quantity exponent) {
        Require.positive("strength of intact rock", intact, "MPa");
        Require.positive("Hoek–Brown constant m", constant, "");
        Require.positive("Hoek–Brown constant s", cohesive, "");
        Require.within("Hoek–Brown constant s", cohesive, 0, 1, "");
        Require.within("Hoek–Brown exponent", exponent, 0.5, 0.6, "");
    }

    private static Quantity power(Quantity base, Quantity exponent) {
        return base.ln().times(exponent).exp();
    }

    /**
     * Gives the allowable pressure by the rock quality designation, straight between 10, 25, 50, 75,
     * 90 and 100 %: 10, 30, 65, 120, 200 and 300 tons a square foot.
     *
     * <p>It limits settlement to about half an inch, and must not pass the rock's own strength.
     * Source: Peck, Hanson and Thornburn (1974) (from memory).
     *
     * @param designation rock quality designation, from 10 % to 100 %
     * @return the allowable pressure
     * @throws IllegalArgumentException if the designation is outside
     */
    public static Quantity allowableByQuality(Quantity designation) {
        return PECK.at(designation);
    }

    /**
     * Gives {@code N_q = tan²(45° + φ/2) e^((π − 2 β) tan φ)} of a strip at the edge of a slope,
     * weightless rock.
     *
     * <p>Source: L. Prandtl (1920), H. Reissner (1924), the fan cut short by the slope; for β = 0 it
     * is the level ground's.
     *
     * @param friction friction angle, φ, more than 0°, less than 90°
     * @param slope inclination of the slope, β, from 0° to 90°
     * @return N_q, a plain number
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Quantity surchargeFactor(Quantity friction, Quantity slope) {
        Require.within("friction angle", friction, 1e-6, 89.999, "°");
        Require.within("inclination of the slope", slope, 0, 90, "°");
        Quantity fan = Quantity.of(Math.PI).minus(slope.times(2));
        return flow(friction).times(fan.times(friction.tan()).exp());
    }

    /**
     * Gives {@code N_c = (N_q − 1) cot φ} of a strip at the edge of a slope; for φ = 0 {@code 2 + π −
     * 2 β}.
     *
     * @param friction friction angle, φ, from 0° to less than 90°
     * @param slope inclination of the slope, β, from 0° to 90°
     * @return N_c, a plain number
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Quantity cohesionFactor(Quantity friction, Quantity slope) {
        Require.within("friction angle", friction, 0, 89.999, "°");
        Require.within("inclination of the slope", slope, 0, 90, "°");
        return Quantity.choose(
                friction.moreThan(Quantity.of(1e-6, "°")),
                () -> surchargeFactor(friction, slope).minus(1).over(friction.tan()),
                () -> Quantity.of(2 + Math.PI).minus(slope.times(2)));
    }

    /**
     * Gives Vesić's factor on the terms of surcharge and weight near a slope, {@code g = (1 − tan
     * β)²}.
     *
     * <p>Source: A. S. Vesić, Bearing capacity of shallow foundations (1975) (from memory).
     *
     * @param slope inclination of the ground, β, from 0° to less than 45°
     * @return g, a plain number
     * @throws IllegalArgumentException if the angle is outside
     */
    public static Quantity groundFactor(Quantity slope) {
        Require.within("inclination of the ground", slope, 0, 44.999, "°");
        return Quantity.of(1).minus(slope.tan()).squared();
    }

    /**
     * Gives Vesić's factor on the term of surcharge for an inclined load, {@code i_q = (1 − H/(V + A
     * c cot φ))^m} with {@code m = (2 + B/L)/(1 + B/L)}, H along B.
     *
     * <p>Source: A. S. Vesić (1975) (from memory). The factor on the term of weight is the same to
     * the power of m + 1; that on cohesion is {@code i_q − (1 − i_q)/(N_c tan φ)}.
     *
     * @param along force along the base, H, at least 0
     * @param normal force square to the base, V, more than 0
     * @param area effective area, A, more than 0
     * @param cohesion cohesion, c, at least 0
     * @param friction friction angle, φ, more than 0°, less than 90°
     * @param ratio width over length, B/L, from 0 to 1
     * @return i_q, a plain number
     * @throws IllegalArgumentException if a value is outside, or the base slides first
     */
    public static Quantity inclinationFactor(
            Quantity along,
            Quantity normal,
            Quantity area,
            Quantity cohesion,
            Quantity friction,
            Quantity ratio) {
        Require.notNegative("force along the base", along, "kN");
        Require.positive("force square to the base", normal, "kN");
        Require.positive("effective area", area, "m²");
        Require.notNegative("cohesion", cohesion, "kPa");
        Require.within("friction angle", friction, 1e-6, 89.999, "°");
        Require.within("width over length", ratio, 0, 1, "");
        Quantity rest =
                Quantity.of(1)
                        .minus(along.over(normal.plus(area.times(cohesion).over(friction.tan()))));
        Require.positive("1 − H/(V + A c cot φ)", rest, "");
        Quantity m = ratio.plus(2).over(ratio.plus(1));
        return power(rest, m);
    }

    /**
     * Gives Vesić's factor on the term of cohesion for an inclined load, {@code i_c = i_q − (1 −
     * i_q)/(N_c tan φ)}.
     *
     * @param inclination i_q, from 0 to 1
     * @param cohesionFactor N_c, more than 0
     * @param friction friction angle, φ, more than 0°, less than 90°
     * @return i_c, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity cohesionInclination(
            Quantity inclination, Quantity cohesionFactor, Quantity friction) {
        Require.within("inclination factor", inclination, 0, 1, "");
        Require.positive("bearing factor N_c", cohesionFactor, "");
        Require.within("friction angle", friction, 1e-6, 89.999, "°");
        return inclination.minus(
                Quantity.of(1).minus(inclination).over(cohesionFactor.times(friction.tan())));
    }
}
