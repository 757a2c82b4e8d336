package org.skewback.cable;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A level cable so flat that its shape is a parabola: sag below about an eighth of the span.
 *
 * @param span level distance of its ends, m
 * @param weightPerLength weight w, N/m
 * @param axialStiffness EA, N
 * @param horizontalForce H, N
 */
public record FlatCable(
        double span, double weightPerLength, double axialStiffness, double horizontalForce) {

    /**
     * Checks the numbers.
     *
     * @param span level distance of its ends, m
     * @param weightPerLength weight, N/m
     * @param axialStiffness EA, N
     * @param horizontalForce H, N
     * @throws IllegalArgumentException if a number is not greater than 0
     */
    public FlatCable {
        Require.positive("span of a cable", span, "m");
        Require.positive("weight of a cable", weightPerLength, "N/m");
        Require.positive("axial stiffness of a cable", axialStiffness, "N");
        Require.positive("horizontal force of a cable", horizontalForce, "N");
    }

    /**
     * Gives the sag, wL²/8H.
     *
     * @return m
     */
    public double sag() {
        return weightPerLength * span * span / (8 * horizontalForce);
    }

    /**
     * Gives the cable after its temperature and its load have changed, ends held: H²(H − H₀ + EAαΔT +
     * EAw₀²L²/24H₀²) = EAw²L²/24 (Irvine 1981, section 2.5, with the length of the cable taken as the
     * span).
     *
     * @param newWeight load w per length afterwards, N/m, greater than 0
     * @param freeStrain strain αΔT that the cable would have without force
     * @return the cable with its new force
     * @throws IllegalArgumentException if a number is out of range
     */
    public FlatCable changed(double newWeight, double freeStrain) {
        Require.positive("weight of a cable", newWeight, "N/m");
        Require.finite("free strain of a cable", freeStrain, "");
        double before = weightPerLength * span / horizontalForce;
        double shift = axialStiffness * (freeStrain + before * before / 24) - horizontalForce;
        double load = axialStiffness * newWeight * newWeight * span * span / 24;
        // The left side grows from 0 at H = max(0, −shift) on.
        double low = Math.max(0, -shift);
        double high = low + StrictMath.cbrt(load) + 1;
        while (high * high * (high + shift) < load) {
            high *= 2;
        }
        double force =
                new BrentSolver(1e-14, 1e-300, 1e-15)
                        .solve(500, h -> h * h * (h + shift) - load, low, high);
        return new FlatCable(span, newWeight, axialStiffness, force);
    }

    /**
     * Gives the number that tells a taut cable from an inextensible one: λ² = (wL/H)² EA L/(H L_e) with
     * L_e = L(1 + 8(f/L)²) (H. M. Irvine and T. K. Caughey, Proc. R. Soc. Lond. A 341 (1974) 299–315).
     *
     * @return λ²
     */
    public double irvineNumber() {
        double ratio = sag() / span;
        double load = weightPerLength * span / horizontalForce;
        return load * load * axialStiffness / (horizontalForce * (1 + 8 * ratio * ratio));
    }

    /**
     * Gives the lowest root of tan(ω/2) = ω/2 − (4/λ²)(ω/2)³: the dimensionless frequency ωL√(m/H) of the
     * first symmetric vibration in the plane (Irvine and Caughey 1974).
     *
     * @param irvineNumber λ², greater than 0; infinite for an inextensible cable
     * @return ω̄, between π and 2.8607π
     * @throws IllegalArgumentException if the number is not greater than 0
     */
    public static double firstSymmetricFrequency(double irvineNumber) {
        if (!(irvineNumber > 0)) {
            throw Require.refused("Irvine's number", irvineNumber, "", "greater than 0");
        }
        // Multiplied by the cosine, so that the function has no pole.
        return 2
                * new BrentSolver(1e-15, 1e-15, 1e-16)
                        .solve(
                                500,
                                x ->
                                        StrictMath.sin(x)
                                                - (x - 4 / irvineNumber * x * x * x)
                                                        * StrictMath.cos(x),
                                Math.PI / 2,
                                1.5 * Math.PI);
    }

    /**
     * Gives the modulus of a straight bar that is as stiff as a sagging stay: E/(1 + (γL_h)²E/12σ³) (H.-J.
     * Ernst, Der Bauingenieur 40 (1965) 52–55; EN 1993-1-11, 5.4.2).
     *
     * @param youngModulus E, Pa
     * @param weightPerVolume γ, N/m³, with all that hangs on the stay
     * @param levelLength horizontal length L_h of the stay, m
     * @param stress mean stress σ, Pa
     * @return tangent modulus, Pa
     * @throws IllegalArgumentException if a number is negative, or modulus or stress 0
     */
    public static double ernstModulus(
            double youngModulus, double weightPerVolume, double levelLength, double stress) {
        Require.positive("Young's modulus", youngModulus, "Pa");
        Require.notNegative("weight of a stay", weightPerVolume, "N/m³");
        Require.notNegative("horizontal length of a stay", levelLength, "m");
        Require.positive("stress of a stay", stress, "Pa");
        double weight = weightPerVolume * levelLength;
        return youngModulus
                / (1 + weight * weight * youngModulus / (12 * stress * stress * stress));
    }
}
