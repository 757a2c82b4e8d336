package org.skewback.numeric;

import java.util.Arrays;

/**
 * Steps M ü + C u̇ + K u = f(t) on all unknowns with one factorization for all steps; see {@link
 * TimeScheme}. Unknowns without mass follow statically.
 *
 * <p>Holds the state of the motion; not for several threads at once.
 */
public final class DirectIntegration {

    private final SymmetricMatrix stiffness;
    private final SymmetricMatrix mass;
    private final SymmetricMatrix damping;
    private final TimeScheme scheme;
    private final double step;
    private final Factorization effective;
    private double[] displacement;
    private double[] velocity;
    private double[] acceleration;
    private double[] load;

    /**
     * Prepares a motion and finds the acceleration it starts with.
     *
     * @param stiffness K, symmetric
     * @param mass M, positive semidefinite, of the same order
     * @param damping C, of the same order
     * @param scheme the scheme
     * @param step time step h in s, above 0
     * @param displacement u at time 0
     * @param velocity u̇ at time 0
     * @param load f at time 0
     * @param monitor may stop the factorization
     * @throws IllegalArgumentException when orders differ, a value is out of range, or unknowns that
     *     have mass entries have a singular mass matrix
     * @throws SingularMatrixException when an unknown has neither stiffness nor mass
     */
    public DirectIntegration(
            SymmetricMatrix stiffness,
            SymmetricMatrix mass,
            SymmetricMatrix damping,
            TimeScheme scheme,
            double step,
            double[] displacement,
            double[] velocity,
            double[] load,
            Monitor monitor) {
        int order = stiffness.order();
        Require.length("mass matrix", mass.order(), order);
        Require.length("damping matrix", damping.order(), order);
        this.stiffness = stiffness;
        this.mass = mass;
        this.damping = damping;
        this.scheme = scheme;
        this.step = Require.positive("step", step);
        this.displacement = Require.vector("displacement", displacement, order).clone();
        this.velocity = Require.vector("velocity", velocity, order).clone();
        this.load = Require.vector("load", load, order).clone();
        acceleration = startingAcceleration();
        double h = step;
        double forward = 1 + scheme.alpha();
        SymmetricMatrix inertial =
                SymmetricMatrix.combine(
                        1 / (scheme.beta() * h * h),
                        mass,
                        forward * scheme.gamma() / (scheme.beta() * h),
                        damping);
        SymmetricMatrix sum = SymmetricMatrix.combine(1, inertial, forward, stiffness);
        effective =
                SymbolicFactorization.of(sum.pattern())
                        .factorize(sum, PivotLimits.usual(), monitor);
        if (effective.isSingular()) {
            throw new SingularMatrixException(
                    effective.smallPivots().stream().filter(SmallPivot::zero).toList());
        }
    }

    /** M⁻¹(f − C u̇ − K u) where there is mass, 0 elsewhere. */
    private double[] startingAcceleration() {
        int order = stiffness.order();
        double[] unbalanced = load.clone();
        Vectors.add(-1, damping.times(velocity), unbalanced);
        Vectors.add(-1, stiffness.times(displacement), unbalanced);
        boolean[] moving = new boolean[order];
        mass.forEach(
                (row, column, value) -> {
                    moving[row] |= value != 0;
                    moving[column] |= value != 0;
                });
        int[] kept = new int[order];
        int count = 0;
        for (int i = 0; i < order; i++) {
            if (moving[i]) {
                kept[count++] = i;
            }
        }
        kept = Arrays.copyOf(kept, count);
        double[] part = new double[count];
        for (int k = 0; k < count; k++) {
            part[k] = unbalanced[kept[k]];
        }
        Factorization inertia = Factorization.of(mass.submatrix(kept));
        if (inertia.isSingular() || inertia.inertia().negative() > 0) {
            throw new IllegalArgumentException(
                    "mass matrix of the unknowns that have mass is not positive definite: "
                            + inertia.inertia()
                            + "; allowed is a positive definite one.");
        }
        part = inertia.solve(part);
        double[] found = new double[order];
        for (int k = 0; k < count; k++) {
            found[kept[k]] = part[k];
        }
        return found;
    }

    /**
     * Goes one step on.
     *
     * @param nextLoad f at the end of the step, finite
     */
    public void advance(double[] nextLoad) {
        int order = stiffness.order();
        Require.vector("load", nextLoad, order);
        double h = step;
        double beta = scheme.beta();
        double gamma = scheme.gamma();
        double alpha = scheme.alpha();
        double[] predicted = new double[order];
        double[] predictedVelocity = new double[order];
        for (int i = 0; i < order; i++) {
            predicted[i] =
                    displacement[i] + h * velocity[i] + h * h * (0.5 - beta) * acceleration[i];
            predictedVelocity[i] = velocity[i] + h * (1 - gamma) * acceleration[i];
        }
        double[] right = mass.times(predicted);
        Vectors.scale(1 / (beta * h * h), right);
        double[] rate = predicted.clone();
        Vectors.scale(gamma / (beta * h), rate);
        Vectors.add(-1, predictedVelocity, rate);
        Vectors.add(1 + alpha, damping.times(rate), right);
        Vectors.add(1 + alpha, nextLoad, right);
        if (alpha != 0) {
            Vectors.add(-alpha, load, right);
            Vectors.add(alpha, damping.times(velocity), right);
            Vectors.add(alpha, stiffness.times(displacement), right);
        }
        double[] next = effective.solve(right);
        double[] nextAcceleration = new double[order];
        for (int i = 0; i < order; i++) {
            nextAcceleration[i] = (next[i] - predicted[i]) / (beta * h * h);
            predictedVelocity[i] += gamma * h * nextAcceleration[i];
        }
        displacement = next;
        velocity = predictedVelocity;
        acceleration = nextAcceleration;
        load = nextLoad.clone();
    }

    /**
     * Gives the displacement reached.
     *
     * @return u, a copy
     */
    public double[] displacement() {
        return displacement.clone();
    }

    /**
     * Gives the velocity reached.
     *
     * @return u̇, a copy
     */
    public double[] velocity() {
        return velocity.clone();
    }

    /**
     * Gives the acceleration reached; meaningless where there is no mass.
     *
     * @return ü, a copy
     */
    public double[] acceleration() {
        return acceleration.clone();
    }

    /**
     * Gives kinetic and strain energy, ½u̇ᵀM u̇ + ½uᵀK u.
     *
     * @return energy in J
     */
    public double energy() {
        return 0.5 * mass.form(velocity, velocity)
                + 0.5 * stiffness.form(displacement, displacement);
    }
}
