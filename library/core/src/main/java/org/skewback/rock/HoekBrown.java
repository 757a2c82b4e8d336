package org.skewback.rock;

import org.skewback.quantity.Quantity;

/**
 * Strength and stiffness of a jointed rock mass by the Hoek–Brown criterion, {@code σ′_1 = σ′_3 +
 * σ_ci (m_b σ′_3/σ_ci + s)^a}.
 *
 * <p>{@code m_b = m_i exp((GSI − 100)/(28 − 14 D))}, {@code s = exp((GSI − 100)/(9 − 3 D))}, {@code
 * a = ½ + (exp(−GSI/15) − exp(−20/3))/6}. The rock mass is taken to be alike in all directions: a
 * slope whose joints lead the slide is not covered.
 *
 * <p>Source: E. Hoek, C. Carranza-Torres and B. Corkum, Hoek–Brown failure criterion, 2002 edition,
 * NARMS-TAC (2002); E. Hoek and E. T. Brown, The Hoek–Brown failure criterion and GSI, 2018 edition,
 * Journal of Rock Mechanics and Geotechnical Engineering 11 (2019), which keeps these formulas (from
 * memory).
 *
 * @param intactStrength uniaxial compressive strength of intact rock, σ_ci
 * @param strengthIndex geological strength index GSI
 * @param intactConstant constant of the intact rock, m_i
 * @param disturbance disturbance factor D, 0 undisturbed to 1 heavily blasted and unloaded
 * @param constant m_b
 * @param cohesive s
 * @param exponent a
 */
public record HoekBrown(
        Quantity intactStrength,
        Quantity strengthIndex,
        Quantity intactConstant,
        Quantity disturbance,
        Quantity constant,
        Quantity cohesive,
        Quantity exponent) {

    /**
     * Derives the constants of a rock mass.
     *
     * @param intactStrength uniaxial compressive strength of intact rock, σ_ci, more than 0
     * @param strengthIndex geological strength index GSI, from 5 to 100
     * @param intactConstant constant of the intact rock, m_i, from 1 to 50
     * @param disturbance disturbance factor D, from 0 to 1
     * @return the rock mass
     * @throws IllegalArgumentException if a value is outside
     */
    public static HoekBrown of(
            Quantity intactStrength,
            Quantity strengthIndex,
            Quantity intactConstant,
            Quantity disturbance) {
        Require.positive("strength of intact rock", intactStrength, "MPa");
        Require.within("geological strength index", strengthIndex, 5, 100, "");
        Require.within("constant of intact rock", intactConstant, 1, 50, "");
        Require.within("disturbance factor", disturbance, 0, 1, "");
        Quantity below = strengthIndex.minus(100);
        Quantity constant =
                intactConstant.times(
                        below.over(Quantity.of(28).minus(disturbance.times(14))).exp());
        Quantity cohesive = below.over(Quantity.of(9).minus(disturbance.times(3))).exp();
        Quantity exponent =
                strengthIndex
                        .over(15)
                        .negated()
                        .exp()
                        .minus(Quantity.of(-20).over(3).exp())
                        .over(6)
                        .plus(0.5);
        return new HoekBrown(
                intactStrength,
                strengthIndex,
                intactConstant,
                disturbance,
                constant,
                cohesive,
                exponent);
    }

    /** A plain number to the power of another. */
    private static Quantity power(Quantity base, Quantity exponent) {
        return base.ln().times(exponent).exp();
    }

    /**
     * Gives the greatest principal stress that the rock mass carries at a least one.
     *
     * @param least least effective principal stress, σ′_3, at least the tensile strength
     * @return σ′_1
     * @throws IllegalArgumentException if the stress is a greater pull than the rock mass carries
     */
    public Quantity greatestStress(Quantity least) {
        Quantity inside = constant.times(least.over(intactStrength)).plus(cohesive);
        Require.positive("m_b σ′_3/σ_ci + s", inside, "");
        return least.plus(intactStrength.times(power(inside, exponent)));
    }

    /**
     * Gives the uniaxial compressive strength of the rock mass, {@code σ_c = σ_ci s^a}.
     *
     * @return the strength, where failure begins at a free face
     */
    public Quantity compressiveStrength() {
        return intactStrength.times(power(cohesive, exponent));
    }

    /**
     * Gives the tensile strength of the rock mass, {@code σ_t = −s σ_ci/m_b}.
     *
     * @return the strength, negative
     */
    public Quantity tensileStrength() {
        return cohesive.times(intactStrength).over(constant).negated();
    }

    /**
     * Gives the global strength of the rock mass, {@code σ_cm = σ_ci [m_b + 4 s − a (m_b − 8 s)]
     * (m_b/4 + s)^(a−1)/[2 (1 + a)(2 + a)]}.
     *
     * @return the strength
     */
    public Quantity globalStrength() {
        Quantity bracket =
                constant.plus(cohesive.times(4))
                        .minus(exponent.times(constant.minus(cohesive.times(8))));
        return intactStrength
                .times(bracket)
                .times(power(constant.over(4).plus(cohesive), exponent.minus(1)))
                .over(exponent.plus(1).times(exponent.plus(2)).times(2));
    }

    /**
     * Gives the upper end of the stress range for a tunnel, {@code σ′_3max = 0.47 σ_cm (σ_cm/(γ
     * H))^−0.94}.
     *
     * @param unitWeight unit weight, γ, more than 0
     * @param depth depth of the tunnel, H, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a value is not positive
     */
    public Quantity tunnelStress(Quantity unitWeight, Quantity depth) {
        return range(globalStrength(), unitWeight, depth, 0.47, -0.94);
    }

    /**
     * Gives the upper end of the stress range for a slope, {@code σ′_3max = 0.72 σ_cm (σ_cm/(γ
     * H))^−0.91}.
     *
     * @param unitWeight unit weight, γ, more than 0
     * @param height height of the slope, H, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a value is not positive
     */
    public Quantity slopeStress(Quantity unitWeight, Quantity height) {
        return range(globalStrength(), unitWeight, height, 0.72, -0.91);
    }

    /**
     * Gives the upper end of the stress range for a slope from a global strength that has a name of its
     * own, so that a sheet prints the two one after the other.
     *
     * @param globalStrength {@link #globalStrength}, σ_cm, more than 0
     * @param unitWeight unit weight, γ, more than 0
     * @param height height of the slope, H, more than 0
     * @return the stress
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity slopeStress(
            Quantity globalStrength, Quantity unitWeight, Quantity height) {
        Require.positive("global strength", globalStrength, "MPa");
        return range(globalStrength, unitWeight, height, 0.72, -0.91);
    }

    private static Quantity range(
            Quantity global, Quantity unitWeight, Quantity height, double factor, double power) {
        Require.positive("unit weight", unitWeight, "kN/m³");
        Require.positive("height of rock", height, "m");
        Quantity ratio = global.over(unitWeight.times(height));
        return global.times(factor).times(power(ratio, Quantity.of(power)));
    }

    /**
     * Gives the upper end of the stress range where neither form fits, {@code σ′_3max = σ_ci/4}.
     *
     * @return the stress
     */
    public Quantity generalStress() {
        return intactStrength.over(4);
    }

    /**
     * Gives the Mohr–Coulomb strength that encloses the same area over a range of stress.
     *
     * <p>With {@code σ_3n = σ′_3max/σ_ci} and {@code q = 6 a m_b (s + m_b σ_3n)^(a−1)}: {@code φ′ =
     * arcsin(q/(2 (1 + a)(2 + a) + q))}, {@code c′ = σ_ci [(1 + 2a) s + (1 − a) m_b σ_3n] (s + m_b
     * σ_3n)^(a−1)/((1 + a)(2 + a) √(1 + q/((1 + a)(2 + a))))}.
     *
     * @param upperStress greatest confining stress of the range, σ′_3max, more than 0
     * @return c′ and φ′, which hold in that range only
     * @throws IllegalArgumentException if the stress is not positive
     */
    public MohrCoulomb equivalent(Quantity upperStress) {
        Quantity confinement = confinement(upperStress);
        return equivalent(upperStress, confinement, steepness(confinement));
    }

    /**
     * Gives the confinement at the end of a range of stress, {@code p = m_b σ′_3max/σ_ci}, the first part
     * of {@link #equivalent(Quantity)}.
     *
     * @param upperStress greatest confining stress of the range, σ′_3max, more than 0
     * @return p
     * @throws IllegalArgumentException if the stress is not positive
     */
    public Quantity confinement(Quantity upperStress) {
        Require.positive("greatest confining stress", upperStress, "MPa");
        return constant.times(upperStress.over(intactStrength));
    }

    /**
     * Gives how steep the curve is at the end of a range of stress, {@code t = (s + p)^(a−1)}, the second
     * part of {@link #equivalent(Quantity)}.
     *
     * @param confinement {@link #confinement}, p, more than 0
     * @return t
     * @throws IllegalArgumentException if p is not positive
     */
    public Quantity steepness(Quantity confinement) {
        Require.positive("confinement", confinement, "");
        return power(cohesive.plus(confinement), exponent.minus(1));
    }

    /**
     * Gives the Mohr–Coulomb strength of {@link #equivalent(Quantity)} from its two parts, so that a sheet
     * prints one after the other: {@code q = 6 a m_b t}, {@code φ′ = arcsin(q/(2 (1 + a)(2 + a) + q))},
     * {@code c′ = σ_ci [(1 + 2a) s + (1 − a) p] t/((1 + a)(2 + a) √(1 + q/((1 + a)(2 + a))))}.
     *
     * @param upperStress greatest confining stress of the range, σ′_3max, more than 0
     * @param confined {@link #confinement} of that stress, p, more than 0
     * @param steep {@link #steepness} of that, t, more than 0
     * @return c′ and φ′, which hold in that range only
     * @throws IllegalArgumentException if a value is not positive
     */
    public MohrCoulomb equivalent(Quantity upperStress, Quantity confined, Quantity steep) {
        Require.positive("greatest confining stress", upperStress, "MPa");
        Require.positive("confinement", confined, "");
        Require.positive("steepness", steep, "");
        Quantity q = exponent.times(6).times(constant).times(steep);
        Quantity product = exponent.plus(1).times(exponent.plus(2));
        Quantity friction = q.over(product.times(2).plus(q)).asin();
        Quantity cohesion =
                intactStrength
                        .times(
                                exponent.times(2)
                                        .plus(1)
                                        .times(cohesive)
                                        .plus(Quantity.of(1).minus(exponent).times(confined)))
                        .times(steep)
                        .over(product.times(q.over(product).plus(1).root()));
        return new MohrCoulomb(cohesion, friction, upperStress);
    }

    /**
     * Gives the deformation modulus of 2002, {@code E = (1 − D/2) √(σ_ci/100 MPa) 10^((GSI −
     * 10)/40)} GPa, the root left out above 100 MPa.
     *
     * @return the modulus
     */
    public Quantity modulus2002() {
        Quantity stiff = strengthIndex.minus(10).over(40).times(Quantity.of(10).ln()).exp();
        Quantity modulus =
                Quantity.of(1, "GPa").times(Quantity.of(1).minus(disturbance.over(2))).times(stiff);
        Quantity hundred = Quantity.of(100, "MPa");
        return Quantity.choose(
                intactStrength.atMost(hundred),
                () -> modulus.times(intactStrength.over(hundred).root()),
                () -> modulus);
    }

    /**
     * Gives the deformation modulus without a modulus of intact rock, {@code E = 100 GPa (1 −
     * D/2)/(1 + exp((75 + 25 D − GSI)/11))}.
     *
     * <p>Source: E. Hoek and M. S. Diederichs, Empirical estimation of rock mass modulus,
     * International Journal of Rock Mechanics and Mining Sciences 43 (2006) (from memory).
     *
     * @return the modulus
     */
    public Quantity modulus() {
        return Quantity.of(100, "GPa").times(undamaged(75, 25));
    }

    /**
     * Gives the deformation modulus from that of intact rock, {@code E = E_i (0.02 + (1 − D/2)/(1 +
     * exp((60 + 15 D − GSI)/11)))}.
     *
     * <p>Source: as for {@link #modulus()}.
     *
     * @param intactModulus modulus of intact rock, E_i, more than 0
     * @return the modulus
     * @throws IllegalArgumentException if the modulus is not positive
     */
    public Quantity modulus(Quantity intactModulus) {
        Require.positive("modulus of intact rock", intactModulus, "GPa");
        return intactModulus.times(undamaged(60, 15).plus(0.02));
    }

    private Quantity undamaged(double middle, double damage) {
        Quantity one = Quantity.of(1);
        Quantity fall = disturbance.times(damage).plus(middle).minus(strengthIndex).over(11);
        return one.minus(disturbance.over(2)).over(one.plus(fall.exp()));
    }
}
