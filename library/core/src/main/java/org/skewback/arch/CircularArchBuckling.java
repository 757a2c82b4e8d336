package org.skewback.arch;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Buckling in its plane of a circular arch under uniform pressure that stays square to the axis, such as
 * water pressure, as a routine: {@code q = (k² − 1) E I/R³}.
 *
 * <p>With α half the opening angle, {@code k = π/α} for hinges at the springings and {@code k tan α cot kα
 * = 1} for fixed springings. Source: S. P. Timoshenko and J. M. Gere, <i>Theory of Elastic Stability</i>,
 * 2nd ed. 1961, chapter 7 (from memory). The load is not a dead load: do not use it for weight.
 */
public final class CircularArchBuckling
        implements Routine<CircularArchBuckling.Input, CircularArchBuckling.Output> {

    private static final double ACCURACY = 1e-14;
    private static final int MOST_STEPS = 200;

    /** Makes the routine. */
    public CircularArchBuckling() {}

    /**
     * The arch.
     *
     * @param hinges {@code fixed} or {@code two-hinged}
     * @param halfAngle half the opening angle, α, greater than 0 and less than 180°
     * @param radius radius of the axis, R, greater than 0
     * @param modulus modulus of elasticity, E, greater than 0
     * @param secondMoment second moment of area, I, the same all along, greater than 0
     */
    public record Input(
            String hinges,
            Quantity halfAngle,
            Quantity radius,
            Quantity modulus,
            Quantity secondMoment) {}

    /**
     * The buckling load.
     *
     * @param pressure pressure per length of axis at which the arch buckles
     * @param axialForce axial force then, q R
     * @param k the number k of the formula
     */
    public record Output(Quantity pressure, Quantity axialForce, Quantity k) {}

    @Override
    public String name() {
        return "arch.circularbuckling";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        double alpha = input.halfAngle().in("rad");
        if (!(alpha > 0 && alpha < StrictMath.PI)) {
            throw Require.refused(
                    "half the opening angle", alpha, "rad", "between 0 and π, exclusive");
        }
        double radius = Require.positive("radius", input.radius().in("m"), "m");
        double bending =
                Require.positive("modulus of elasticity", input.modulus().in("Pa"), "Pa")
                        * Require.positive(
                                "second moment of area", input.secondMoment().in("m⁴"), "m⁴");
        double k =
                switch (ArchHinges.ofWords(input.hinges())) {
                    case SPRINGINGS -> StrictMath.PI / alpha;
                    case NONE -> fixed(alpha);
                    default ->
                            throw new IllegalArgumentException(
                                    "kind of arch is \""
                                            + input.hinges()
                                            + "\"; allowed are fixed and two-hinged.");
                };
        double pressure = (k * k - 1) * bending / (radius * radius * radius);
        return new Output(
                Quantity.of(pressure, "N/m"), Quantity.of(pressure * radius, "N"), Quantity.of(k));
    }

    /** The root of k tan α cos kα = sin kα with kα between π and 2π, written without poles. */
    private static double fixed(double alpha) {
        double sine = StrictMath.sin(alpha);
        double cosine = StrictMath.cos(alpha);
        return new BrentSolver(ACCURACY, ACCURACY)
                .solve(
                        MOST_STEPS,
                        k ->
                                k * sine * StrictMath.cos(k * alpha)
                                        - cosine * StrictMath.sin(k * alpha),
                        StrictMath.PI / alpha,
                        2 * StrictMath.PI / alpha);
    }
}
