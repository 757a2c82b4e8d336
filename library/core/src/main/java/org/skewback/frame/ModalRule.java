package org.skewback.frame;

/** How the largest values of modes, which do not come at the same time, are combined. */
public enum ModalRule {
    /**
     * Complete quadratic combination √ΣΣ ρ_ij R_i R_j (A. Der Kiureghian, A response spectrum method for
     * random vibration analysis of MDF systems, Earthquake Engineering and Structural Dynamics 9 (1981)
     * 419–435; E. L. Wilson, A. Der Kiureghian and E. P. Bayo, same volume, 187–194).
     */
    COMPLETE_QUADRATIC,
    /** Square root of the sum of squares √Σ R_i², for modes whose frequencies lie well apart. */
    SUM_OF_SQUARES,
    /** Sum of sizes Σ|R_i|, the largest there can be. */
    SUM_OF_SIZES;

    /**
     * Gives the correlation of two modes in the complete quadratic combination: 8√(ζ_iζ_j)(ζ_i +
     * rζ_j)r^{3/2}/((1 − r²)² + 4ζ_iζ_j r(1 + r²) + 4(ζ_i² + ζ_j²)r²), r = ω_j/ω_i.
     *
     * @param first ω_i, rad/s, greater than 0
     * @param firstDamping ζ_i, greater than 0
     * @param second ω_j, rad/s, greater than 0
     * @param secondDamping ζ_j, greater than 0
     * @return ρ_ij, 0 to 1
     * @throws IllegalArgumentException if a number is not greater than 0
     */
    public static double correlation(
            double first, double firstDamping, double second, double secondDamping) {
        Require.positive("circular frequency", first, "rad/s");
        Require.positive("circular frequency", second, "rad/s");
        Require.positive("damping ratio", firstDamping, "");
        Require.positive("damping ratio", secondDamping, "");
        double r = second / first;
        double a = firstDamping;
        double b = secondDamping;
        double square = 1 - r * r;
        return 8
                * Math.sqrt(a * b)
                * (a + r * b)
                * r
                * Math.sqrt(r)
                / (square * square + 4 * a * b * r * (1 + r * r) + 4 * (a * a + b * b) * r * r);
    }
}
