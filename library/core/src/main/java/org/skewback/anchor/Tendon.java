package org.skewback.anchor;

import org.skewback.quantity.Quantity;

/**
 * A tendon of strands or bars, alike and side by side.
 *
 * @param count number of strands or bars
 * @param area cross-section of one
 * @param strength characteristic tensile strength, f_pk
 * @param modulus modulus of elasticity, E
 */
public record Tendon(int count, Quantity area, Quantity strength, Quantity modulus) {

    /**
     * Makes a tendon.
     *
     * @param count number of strands or bars, at least 1
     * @param area cross-section of one, more than 0
     * @param strength characteristic tensile strength, f_pk, more than 0
     * @param modulus modulus of elasticity, E, more than 0
     * @throws IllegalArgumentException if a value is outside
     */
    public Tendon {
        Require.atLeast("number of strands", count, 1);
        Require.positive("cross-section of a strand", area, "mm²");
        Require.positive("tensile strength", strength, "MPa");
        Require.positive("modulus of elasticity", modulus, "GPa");
    }

    /**
     * Gives the cross-section of the tendon, {@code A = n A_1}.
     *
     * @return the cross-section
     */
    public Quantity totalArea() {
        return area.times(count);
    }

    /**
     * Gives the characteristic strength, {@code P_tk = n A_1 f_pk}.
     *
     * @return the force
     */
    public Quantity characteristicForce() {
        return totalArea().times(strength);
    }

    /**
     * Gives a part of the characteristic strength: the limits of design, lock-off and test.
     *
     * <p>FHWA GEC 4 and PTI: design at most 0.60, lock-off 0.70, test 0.80 (from memory). EN
     * 1537:1999, 9.8: lock-off at most 0.60.
     *
     * @param part part of the characteristic strength, more than 0, at most 1
     * @return the force
     * @throws IllegalArgumentException if the part is outside
     */
    public Quantity limit(Quantity part) {
        Require.positive("part of the characteristic strength", part, "");
        Require.within("part of the characteristic strength", part, 0, 1, "");
        return characteristicForce().times(part);
    }

    /**
     * Gives the greatest proof load by EN 1537: {@code min(0.80 P_tk, 0.95 P_t0.1k)}.
     *
     * <p>The limit of 0.95 P_t0.1k is read in a worked example to EN 1537; that of 0.80 P_tk is from
     * memory, and the same example does not apply it.
     *
     * @param yieldForce characteristic force at 0.1 % strain, P_t0.1k, more than 0
     * @return the force
     * @throws IllegalArgumentException if the force is not positive
     */
    public Quantity greatestProofLoad(Quantity yieldForce) {
        Require.positive("force at 0.1 % strain", yieldForce, "kN");
        return Quantity.min(characteristicForce().times(0.80), yieldForce.times(0.95));
    }

    /**
     * Gives the elongation between two forces, {@code Δ = (P_2 − P_1) L/(E A)}: what the jack must
     * draw out.
     *
     * @param from force at the beginning, P_1
     * @param to force at the end, P_2
     * @param length length that stretches, L, more than 0
     * @return the elongation
     * @throws IllegalArgumentException if the length is not positive
     */
    public Quantity elongation(Quantity from, Quantity to, Quantity length) {
        Require.positive("length that stretches", length, "m");
        return to.minus(from).times(length).over(modulus.times(totalArea()));
    }

    /**
     * Gives the force lost as the wedges draw in, {@code ΔP = δ E A/L}.
     *
     * @param drawIn draw-in of the wedges, δ, at least 0; about 6 mm
     * @param freeLength free length, L, more than 0
     * @return the force lost; large where the free length is short
     * @throws IllegalArgumentException if a value is outside
     */
    public Quantity lossByDrawIn(Quantity drawIn, Quantity freeLength) {
        Require.notNegative("draw-in of the wedges", drawIn, "mm");
        Require.positive("free length", freeLength, "m");
        return drawIn.times(modulus).times(totalArea()).over(freeLength);
    }

    /**
     * Gives the free length that an elastic elongation speaks of, {@code L_app = E A Δs/ΔP}.
     *
     * @param elongation elastic elongation, Δs, more than 0
     * @param forceRange difference of force that it belongs to, ΔP, more than 0
     * @return the apparent free length
     * @throws IllegalArgumentException if a value is not positive
     */
    public Quantity apparentFreeLength(Quantity elongation, Quantity forceRange) {
        Require.positive("elastic elongation", elongation, "mm");
        Require.positive("difference of force", forceRange, "kN");
        return modulus.times(totalArea()).times(elongation).over(forceRange);
    }

    /**
     * Gives the stress relaxation of strand of low relaxation (class 2), as a part of the stress at
     * the beginning, {@code 0.66 ρ_1000 e^(9.1 μ) (t/1000 h)^(0.75 (1 − μ)) 10⁻⁵}.
     *
     * <p>Source: EN 1992-1-1:2004, 3.3.2, expression (3.29) (from memory).
     *
     * @param ratio stress at the beginning over the characteristic strength, μ, from 0.4 to 0.8
     * @param loss1000 loss at 1000 h and 0.7 f_pk in per cent, ρ_1000; 2.5 for class 2
     * @param time time under stress, t, more than 0; 500 000 h for the end
     * @return the part lost
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity relaxation(Quantity ratio, Quantity loss1000, Quantity time) {
        Require.within("stress over characteristic strength", ratio, 0.4, 0.8, "");
        Require.positive("relaxation at 1000 h in per cent", loss1000, "");
        Require.positive("time under stress", time, "h");
        Quantity exponent = Quantity.of(1).minus(ratio).times(0.75);
        Quantity growth = time.over(Quantity.of(1000, "h")).ln().times(exponent).exp();
        return loss1000.times(0.66).times(ratio.times(9.1).exp()).times(growth).times(1e-5);
    }
}
