package org.skewback.slope;

/**
 * Factors of safety of filled slices by each method.
 *
 * <p>With upright load W, level load H, cohesion force c l, uplift u l, friction t and what passive
 * anchors add P on each base, and {@code m = cos α + sin α t/F}: ordinary {@code F = Σ r (c l + (W
 * cos α − H sin α − u l) t + P)/M}; Bishop {@code F = Σ r A/m / M} with {@code A = (c l − u l t + P)
 * cos α + W t}, M the driving moment and r the lever of each base; Janbu {@code F = Σ A/(m cos
 * α)/Σ(H + W tan α)}. Spencer, and Morgenstern and Price, march the force between slices from the
 * upper end down and ask force and moment to vanish at the lower one; the march and the way to λ
 * follow D. Y. Zhu, C. F. Lee, Q. H. Qian and G. R. Chen, A concise algorithm for computing the
 * factor of safety using the Morgenstern–Price method, Canadian Geotechnical Journal 42 (2005) (from
 * memory, derived anew).
 */
final class SliceSolver {

    /** Least m for which a base is taken to be meant: R. V. Whitman and W. A. Bailey (1967). */
    private static final double LEAST_M = 0.2;

    private static final int ROUNDS = 100;

    private final Slices slices;
    private final double tolerance;
    private double[] share = new double[0];
    private double[] between = new double[0];
    private double lambda;
    private double leastM;

    /** Why there is no factor; kept so that a search need not throw. */
    enum Failure {
        NONE,
        NOTHING_DRIVES,
        STEEP_BASE,
        NOT_CONVERGED,
        WRONG_SIGN
    }

    private Failure failure = Failure.NONE;

    SliceSolver(Slices slices, double tolerance) {
        this.slices = slices;
        this.tolerance = tolerance;
    }

    Failure failure() {
        return failure;
    }

    double lambda() {
        return lambda;
    }

    double leastM() {
        return leastM;
    }

    /** Level forces between slices, at the boundaries, of the last solution. */
    double[] between() {
        return between;
    }

    /** Shape of the inclination at the boundaries of the last solution. */
    double[] shape() {
        return share;
    }

    private double fail(Failure why) {
        failure = why;
        return Double.NaN;
    }

    double ordinary(SlipCircle circle) {
        failure = Failure.NONE;
        double centre = slices.direction() * circle.x();
        double driving = slices.drivingMoment(centre, circle.y());
        if (!(driving > 0)) {
            return fail(Failure.NOTHING_DRIVES);
        }
        double resisting = 0;
        for (int i = 0; i < slices.count(); i++) {
            double normal =
                    slices.upright[i] * slices.cosine[i]
                            - slices.level[i] * slices.sine[i]
                            - slices.uplift[i];
            resisting +=
                    slices.lever(i, centre, circle.y())
                            * (slices.held[i] + normal * slices.tangent[i] + slices.passive[i]);
        }
        return resisting / driving;
    }

    double bishop(SlipCircle circle) {
        double start = ordinary(circle);
        if (Double.isNaN(start)) {
            return start;
        }
        double centre = slices.direction() * circle.x();
        double driving = slices.drivingMoment(centre, circle.y());
        int count = slices.count();
        double[] strength = room(count);
        for (int i = 0; i < count; i++) {
            strength[i] = slices.lever(i, centre, circle.y()) * frictional(i);
        }
        double factor = Math.max(start, 0.05);
        for (int round = 0; round < ROUNDS; round++) {
            double sum = 0;
            double slope = 0;
            for (int i = 0; i < count; i++) {
                double rise = slices.sine[i] * slices.tangent[i];
                // A/m as A F/(F cos α + sin α t), and its derivative by F.
                double inverse = 1 / (factor * slices.cosine[i] + rise);
                double part = strength[i] * inverse;
                sum += part;
                slope += part * inverse * rise;
            }
            double next = factor - (factor * driving - factor * sum) / (driving - slope);
            if (!(next > 0)) {
                next = factor / 2;
            }
            if (Math.abs(next - factor) <= tolerance * next) {
                return steep(next) ? fail(Failure.STEEP_BASE) : next;
            }
            factor = next;
        }
        return fail(Failure.NOT_CONVERGED);
    }

    private double[] scratch = new double[0];

    private double[] room(int count) {
        if (scratch.length < count) {
            scratch = new double[2 * count];
        }
        return scratch;
    }

    private double frictional(int i) {
        return (slices.held[i] - slices.uplift[i] * slices.tangent[i] + slices.passive[i])
                        * slices.cosine[i]
                + slices.upright[i] * slices.tangent[i];
    }

    private boolean steep(double factor) {
        leastM = Double.POSITIVE_INFINITY;
        for (int i = 0; i < slices.count(); i++) {
            leastM =
                    Math.min(
                            leastM, slices.cosine[i] + slices.sine[i] * slices.tangent[i] / factor);
        }
        return leastM < LEAST_M;
    }

    double janbu() {
        failure = Failure.NONE;
        int count = slices.count();
        double driving = 0;
        for (int i = 0; i < count; i++) {
            driving += slices.level[i] + slices.upright[i] * slices.sine[i] / slices.cosine[i];
        }
        if (!(driving > 0)) {
            return fail(Failure.NOTHING_DRIVES);
        }
        double factor = 1;
        for (int round = 0; round < ROUNDS; round++) {
            double sum = 0;
            for (int i = 0; i < count; i++) {
                double m = slices.cosine[i] + slices.sine[i] * slices.tangent[i] / factor;
                sum += frictional(i) / (Math.max(m, 1e-3) * slices.cosine[i]);
            }
            double next = sum / driving;
            if (!(next > 0)) {
                return fail(Failure.NOT_CONVERGED);
            }
            if (Math.abs(next - factor) <= tolerance * next) {
                return steep(next) ? fail(Failure.STEEP_BASE) : next;
            }
            factor = next;
        }
        return fail(Failure.NOT_CONVERGED);
    }

    /** Janbu's correction, {@code f₀ = 1 + b₁ (d/L − 1.4 (d/L)²)}. */
    double correction() {
        boolean friction = false;
        boolean cohesion = false;
        for (int i = 0; i < slices.count(); i++) {
            friction |= slices.tangent[i] > 0;
            cohesion |= slices.held[i] > 0;
        }
        double b = friction ? (cohesion ? 0.50 : 0.31) : 0.69;
        double depth = slices.deepest() / slices.chord();
        return 1 + b * (depth - 1.4 * depth * depth);
    }

    /** Spencer, or Morgenstern and Price with a half sine. */
    double rigorous(boolean halfSine) {
        failure = Failure.NONE;
        int count = slices.count();
        prepare(halfSine);
        double factor = startFactor();
        if (Double.isNaN(factor)) {
            return factor;
        }
        double at = 0;
        double atBefore = Double.NaN;
        double gapBefore = Double.NaN;
        double lastFactor = Double.NaN;
        for (int round = 0; round < ROUNDS; round++) {
            factor = force(at, factor);
            if (Double.isNaN(factor)) {
                return factor;
            }
            double gap = momentLambda(count) - at;
            if (!Double.isFinite(gap)) {
                return fail(Failure.NOT_CONVERGED);
            }
            if (Math.abs(gap) <= 100 * tolerance
                    && Math.abs(factor - lastFactor) <= 10 * tolerance * factor) {
                lambda = at;
                return steepBetween(factor, at) ? fail(Failure.STEEP_BASE) : factor;
            }
            lastFactor = factor;
            double slope = Double.isNaN(gapBefore) ? -1 : (gap - gapBefore) / (at - atBefore);
            // A secant step where the gap falls with λ as it should, else plain substitution.
            double step = slope < -0.2 && slope > -20 ? -gap / slope : gap;
            gapBefore = gap;
            atBefore = at;
            at += Math.max(-0.5, Math.min(0.5, step));
        }
        return fail(Failure.NOT_CONVERGED);
    }

    private void prepare(boolean halfSine) {
        int count = slices.count();
        if (share.length != count + 1) {
            share = new double[count + 1];
            between = new double[count + 1];
        }
        double start = slices.place[0];
        double total = slices.place[count] - start;
        for (int i = 0; i <= count; i++) {
            share[i] = halfSine ? StrictMath.sin(Math.PI * ((slices.place[i] - start) / total)) : 1;
        }
    }

    private double startFactor() {
        double driving = 0;
        double resisting = 0;
        for (int i = 0; i < slices.count(); i++) {
            driving += driving(i);
            resisting += resisting(i);
        }
        if (!(driving > 0)) {
            return fail(Failure.NOTHING_DRIVES);
        }
        return Math.max(resisting / driving, 0.1);
    }

    private double driving(int i) {
        return slices.upright[i] * slices.sine[i] + slices.level[i] * slices.cosine[i];
    }

    private double resisting(int i) {
        return slices.held[i]
                + slices.passive[i]
                + (slices.upright[i] * slices.cosine[i]
                                - slices.level[i] * slices.sine[i]
                                - slices.uplift[i])
                        * slices.tangent[i];
    }

    /** The factor at which the level force vanishes at the lower end, for a given λ. */
    private double force(double at, double start) {
        int count = slices.count();
        double factor = start;
        for (int round = 0; round < ROUNDS; round++) {
            double numerator = 0;
            double denominator = 0;
            double before = 1;
            for (int i = 0; i < count; i++) {
                double sine = slices.sine[i];
                double cosine = slices.cosine[i];
                double t = slices.tangent[i];
                double plain = sine * t + cosine * factor;
                double turned = at * (sine * factor - cosine * t);
                double ratio = (plain + turned * share[i]) / before;
                double after = plain + turned * share[i + 1];
                if (!(after > 0)) {
                    return fail(Failure.WRONG_SIGN);
                }
                numerator = numerator * ratio + resisting(i);
                denominator = denominator * ratio + driving(i);
                before = after;
            }
            double next = numerator / denominator;
            if (!(next > 0)) {
                return fail(Failure.WRONG_SIGN);
            }
            if (Math.abs(next - factor) <= tolerance * next) {
                march(at, next);
                return next;
            }
            factor = next;
        }
        return fail(Failure.NOT_CONVERGED);
    }

    private void march(double at, double factor) {
        between[0] = 0;
        for (int i = 0; i < slices.count(); i++) {
            double sine = slices.sine[i];
            double cosine = slices.cosine[i];
            double t = slices.tangent[i];
            double plain = sine * t + cosine * factor;
            double turned = at * (sine * factor - cosine * t);
            between[i + 1] =
                    (between[i] * (plain + turned * share[i]) + factor * driving(i) - resisting(i))
                            / (plain + turned * share[i + 1]);
        }
    }

    /** The λ at which the moments of the forces found vanish. */
    private double momentLambda(int count) {
        double numerator = 0;
        double denominator = 0;
        for (int i = 0; i < count; i++) {
            double b = slices.width[i];
            numerator +=
                    b * (slices.sine[i] / slices.cosine[i]) * (between[i] + between[i + 1])
                            + 2 * slices.moment[i];
            denominator += b * (share[i] * between[i] + share[i + 1] * between[i + 1]);
        }
        return numerator / denominator;
    }

    private boolean steepBetween(double factor, double at) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < slices.count(); i++) {
            double sine = slices.sine[i];
            double cosine = slices.cosine[i];
            double t = slices.tangent[i];
            double upright = cosine + sine * t / factor;
            double level = sine - cosine * t / factor;
            least = Math.min(least, upright + at * share[i] * level);
            least = Math.min(least, upright + at * share[i + 1] * level);
        }
        leastM = least;
        return least <= 0;
    }
}
