package org.skewback.numeric;

/**
 * Parameters of the family of N. M. Newmark (A method of computation for structural dynamics, Journal
 * of the Engineering Mechanics Division, ASCE 85 (1959), 67–94) with the numerical damping of H. M.
 * Hilber, T. J. R. Hughes and R. L. Taylor (Improved numerical dissipation for time integration
 * algorithms in structural dynamics, Earthquake Engineering and Structural Dynamics 5 (1977),
 * 283–292):
 *
 * <p>u₁ = u₀ + h u̇₀ + h²((½ − β)ü₀ + β ü₁), u̇₁ = u̇₀ + h((1 − γ)ü₀ + γ ü₁), M ü₁ + (1 + α)(C u̇₁ + K u₁) −
 * α(C u̇₀ + K u₀) = (1 + α)f₁ − α f₀.
 *
 * @param alpha α, −1/3 to 0; 0 for Newmark's method without damping of its own
 * @param beta β, above 0
 * @param gamma γ, ½ or more
 */
public record TimeScheme(double alpha, double beta, double gamma) {

    /**
     * Checks the parameters.
     *
     * @param alpha α
     * @param beta β
     * @param gamma γ
     * @throws IllegalArgumentException when α, β or γ is outside its range
     */
    public TimeScheme {
        if (!(alpha >= -1.0 / 3 && alpha <= 0)) {
            throw new IllegalArgumentException("α is " + alpha + "; allowed is −1/3 to 0.");
        }
        Require.positive("β", beta);
        if (!(gamma >= 0.5) || Double.isInfinite(gamma)) {
            throw new IllegalArgumentException("γ is " + gamma + "; allowed is ½ or more.");
        }
    }

    /**
     * Gives Newmark's method of constant average acceleration: β = ¼, γ = ½; stable for any step, no
     * numerical damping, second order.
     *
     * @return the scheme
     */
    public static TimeScheme averageAcceleration() {
        return new TimeScheme(0, 0.25, 0.5);
    }

    /**
     * Gives Newmark's method of linear acceleration: β = 1/6, γ = ½; stable for steps up to 0.551 of
     * the shortest period.
     *
     * @return the scheme
     */
    public static TimeScheme linearAcceleration() {
        return new TimeScheme(0, 1.0 / 6, 0.5);
    }

    /**
     * Gives the method of Hilber, Hughes and Taylor: β = (1 − α)²/4, γ = ½ − α; stable for any step,
     * second order, damping the modes that the step does not resolve.
     *
     * @param alpha α, −1/3 to 0; −0.05 to −0.1 is common practice, no source
     * @return the scheme
     */
    public static TimeScheme hilberHughesTaylor(double alpha) {
        return new TimeScheme(alpha, (1 - alpha) * (1 - alpha) / 4, 0.5 - alpha);
    }
}
