package org.skewback.frame;

/**
 * Damping C = a₀M + a₁K with a given ratio at two frequencies (R. W. Clough and J. Penzien, Dynamics of
 * Structures, 2nd edition, 1993, section 12-5); less between them, more outside.
 *
 * @param ratio damping ratio ζ at both frequencies, 0 or more
 * @param first first circular frequency, rad/s, greater than 0
 * @param second second circular frequency, rad/s, greater than 0
 */
public record RayleighDamping(double ratio, double first, double second) {

    /**
     * Checks the numbers.
     *
     * @param ratio damping ratio ζ, 0 or more
     * @param first first circular frequency, rad/s, greater than 0
     * @param second second circular frequency, rad/s, greater than 0
     * @throws IllegalArgumentException if a number is out of range
     */
    public RayleighDamping {
        Require.notNegative("damping ratio", ratio, "");
        Require.positive("circular frequency", first, "rad/s");
        Require.positive("circular frequency", second, "rad/s");
    }

    /**
     * Gives the factor of the mass, a₀ = 2ζω₁ω₂/(ω₁ + ω₂).
     *
     * @return a₀, 1/s
     */
    public double ofMass() {
        return 2 * ratio * first * second / (first + second);
    }

    /**
     * Gives the factor of the stiffness, a₁ = 2ζ/(ω₁ + ω₂).
     *
     * @return a₁, s
     */
    public double ofStiffness() {
        return 2 * ratio / (first + second);
    }

    /**
     * Gives the damping ratio at any frequency, (a₀/ω + a₁ω)/2.
     *
     * @param circularFrequency ω, rad/s, greater than 0
     * @return ζ
     * @throws IllegalArgumentException if the frequency is not greater than 0
     */
    public double at(double circularFrequency) {
        Require.positive("circular frequency", circularFrequency, "rad/s");
        return (ofMass() / circularFrequency + ofStiffness() * circularFrequency) / 2;
    }
}
