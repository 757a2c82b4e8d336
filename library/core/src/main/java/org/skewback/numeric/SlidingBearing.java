package org.skewback.numeric;

/**
 * A bearing that slides in two directions under a constant vertical load N: friction t of size μN at
 * most, the same in all directions, reached over a small elastic movement, and, where the sliding
 * surface is spherical, a pull N/R back to the centre. The force on the structure is t − (N/R)d.
 *
 * <p>Friction follows the perfectly plastic law ṫ = −k₀(ḋ − slip), slip along t. While it slides on a
 * straight path the angle ψ between t and the direction against the movement obeys tan(ψ₁/2) = tan(ψ₀/2)
 * exp(−k₀ℓ/μN) for a path ℓ, the closed form of R. D. Krieg and D. B. Krieg (Accuracies of numerical
 * solution methods for the elastic-perfectly plastic model, Journal of Pressure Vessel Technology 99
 * (1977), 510–515); the exponential is replaced by 1/(1 + x/2 + x²/8)², right to second order. Where
 * within the step sliding begins is found exactly.
 *
 * @param friction largest friction μN in N, above 0
 * @param stickStiffness elastic stiffness k₀ before sliding in N/m, above 0
 * @param restoringStiffness N/R in N/m; 0 for a plane surface
 */
public record SlidingBearing(double friction, double stickStiffness, double restoringStiffness)
        implements LocalElement {

    /**
     * Checks the values.
     *
     * @param friction largest friction μN
     * @param stickStiffness elastic stiffness before sliding
     * @param restoringStiffness N/R
     * @throws IllegalArgumentException when a value is out of its range
     */
    public SlidingBearing {
        Require.positive("friction", friction);
        Require.positive("stick stiffness", stickStiffness);
        Require.notNegative("restoring stiffness", restoringStiffness);
    }

    @Override
    public int directions() {
        return 2;
    }

    @Override
    public int stateSize() {
        return 2;
    }

    @Override
    public void follow(
            double[] state,
            int stateAt,
            double[] from,
            double[] to,
            int at,
            double[] next,
            double[] mean) {
        double tx = state[stateAt];
        double ty = state[stateAt + 1];
        double dx = to[at] - from[at];
        double dy = to[at + 1] - from[at + 1];
        double pullX = restoringStiffness * (from[at] + to[at]) / 2;
        double pullY = restoringStiffness * (from[at + 1] + to[at + 1]) / 2;
        double endX = tx - stickStiffness * dx;
        double endY = ty - stickStiffness * dy;
        double limit = friction * friction;
        if (endX * endX + endY * endY <= limit) {
            next[stateAt] = endX;
            next[stateAt + 1] = endY;
            mean[at] = (tx + endX) / 2 - pullX;
            mean[at + 1] = (ty + endY) / 2 - pullY;
            return;
        }
        double path = Math.sqrt(dx * dx + dy * dy);
        double along = tx * dx + ty * dy;
        // Share of the step before sliding: |t − s k₀ d| = μN.
        double square = path * path * stickStiffness;
        double rest = Math.max(0, limit - tx * tx - ty * ty);
        double root = Math.sqrt(along * along + path * path * rest);
        double share = Math.min(1, Math.max(0, (along + root) / square));
        double yieldX = tx - share * stickStiffness * dx;
        double yieldY = ty - share * stickStiffness * dy;
        double x = stickStiffness * path * (1 - share) / friction;
        double per = -1 / path;
        double ex = dx * per;
        double ey = dy * per;
        // Here |t| = μN, and t points out of the circle: the cosine is not negative.
        double cosine = yieldX * ex + yieldY * ey;
        double sine = ex * yieldY - ey * yieldX;
        double grown = 1 + x * (0.5 + x / 8);
        double half = sine / ((friction + cosine) * (grown * grown));
        double scale = friction / (1 + half * half);
        double cosine1 = scale * (1 - half * half);
        double sine1 = scale * 2 * half;
        double slideX = cosine1 * ex - sine1 * ey;
        double slideY = cosine1 * ey + sine1 * ex;
        next[stateAt] = slideX;
        next[stateAt + 1] = slideY;
        double weight = 1 / (2 + x);
        mean[at] =
                share * (tx + yieldX) / 2
                        + (1 - share) * (weight * yieldX + (1 - weight) * slideX)
                        - pullX;
        mean[at + 1] =
                share * (ty + yieldY) / 2
                        + (1 - share) * (weight * yieldY + (1 - weight) * slideY)
                        - pullY;
    }

    @Override
    public void force(double[] state, int stateAt, double[] displacement, int at, double[] force) {
        force[at] = state[stateAt] - restoringStiffness * displacement[at];
        force[at + 1] = state[stateAt + 1] - restoringStiffness * displacement[at + 1];
    }

    @Override
    public double stored(double[] state, int stateAt, double[] displacement, int at) {
        double tx = state[stateAt];
        double ty = state[stateAt + 1];
        double x = displacement[at];
        double y = displacement[at + 1];
        return (tx * tx + ty * ty) / (2 * stickStiffness)
                + restoringStiffness * (x * x + y * y) / 2;
    }
}
