package org.skewback.study;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The correlation that two normal numbers need so that the values standing in their place have the
 * one wanted.
 *
 * <p>A. Nataf (1962) in the form of P.-L. Liu and A. Der Kiureghian, Multivariate distribution models
 * with prescribed marginals and covariances, Probabilistic Engineering Mechanics 1 (1986), 105–112:
 * ρ = ∫∫ (x₁ − m₁)/s₁ · (x₂ − m₂)/s₂ · φ₂(z₁, z₂, ρ_z) dz₁ dz₂. Normal and lognormal pairs have
 * closed forms there; for others the integral is taken by Gauss and Hermite.
 */
final class Nataf {

    private static final int POINTS = 40;
    private static final double NEARLY_ONE = 1 - 1e-9;
    private static final double PRECISE = 1e-12;
    private static final int MOST_STEPS = 200;

    private static final GaussIntegrator RULE = new GaussIntegratorFactory().hermite(POINTS);

    private Nataf() {}

    /**
     * Gives the correlation of the normal numbers.
     *
     * @throws IllegalArgumentException when no correlation of normal numbers gives the one wanted
     */
    static double ofNormals(Shape first, Shape second, double wanted, String what) {
        if (first instanceof Shape.Normal && second instanceof Shape.Normal) {
            return wanted;
        }
        if (first instanceof Shape.Lognormal a && second instanceof Shape.Lognormal b) {
            double inner = wanted * a.variation() * b.variation();
            return attained(
                    StrictMath.log1p(inner) / (a.logDeviation() * b.logDeviation()), wanted, what);
        }
        if (first instanceof Shape.Lognormal a && second instanceof Shape.Normal) {
            return attained(wanted * a.variation() / a.logDeviation(), wanted, what);
        }
        if (first instanceof Shape.Normal && second instanceof Shape.Lognormal) {
            return ofNormals(second, first, wanted, what);
        }
        return solved(first, second, wanted, what);
    }

    private static double attained(double normal, double wanted, String what) {
        if (!(Math.abs(normal) <= NEARLY_ONE)) {
            throw Require.refused(
                    what, wanted, "what these two distributions can have, which is nearer to 0");
        }
        return normal;
    }

    private static double solved(Shape first, Shape second, double wanted, String what) {
        if (wanted == 0) {
            return 0;
        }
        UnivariateFunction excess = normal -> correlation(first, second, normal) - wanted;
        double end = Math.copySign(NEARLY_ONE, wanted);
        double most = correlation(first, second, end);
        if (Math.abs(most) < Math.abs(wanted)) {
            throw Require.refused(
                    what, wanted, "what these two distributions can have, at most " + most);
        }
        return new BrentSolver(PRECISE, PRECISE)
                .solve(MOST_STEPS, excess, Math.min(0, end), Math.max(0, end));
    }

    /** The correlation of the values that stand in the place of correlated normal numbers. */
    static double correlation(Shape first, Shape second, double normal) {
        double across = Math.sqrt(1 - normal * normal);
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double z1 = Math.sqrt(2) * RULE.getPoint(i);
            double inner = 0;
            for (int j = 0; j < POINTS; j++) {
                double z2 = normal * z1 + across * Math.sqrt(2) * RULE.getPoint(j);
                inner += RULE.getWeight(j) * standard(second, z2);
            }
            sum += RULE.getWeight(i) * standard(first, z1) * inner;
        }
        return sum / Math.PI;
    }

    private static double standard(Shape shape, double z) {
        return (shape.ofNormal(z) - shape.mean()) / shape.deviation();
    }
}
