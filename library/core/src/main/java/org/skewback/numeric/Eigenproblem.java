package org.skewback.numeric;

import java.util.Arrays;

/**
 * Eigenvalues of large sparse symmetric pencils by shift-invert Lanczos iteration, each answer checked
 * by a Sturm count so that no eigenvalue, repeated or not, is missed (T. Ericsson and A. Ruhe, The
 * spectral transformation Lanczos method for the numerical solution of large sparse generalized
 * symmetric eigenvalue problems, Mathematics of Computation 35 (1980), 1251–1268; R. G. Grimes, J. G.
 * Lewis and H. D. Simon, A shifted block Lanczos algorithm for solving sparse symmetric generalized
 * eigenproblems, SIAM Journal on Matrix Analysis and Applications 15 (1994), 228–272, section 4.5).
 */
public final class Eigenproblem {

    /** Residual of the operator iterated; the error of an eigenvalue is about its square. */
    private static final double TOLERANCE = 1e-10;

    /** Relative step above the last eigenvalue to where the count is taken. */
    private static final double STEP = 1e-6;

    private static final double WIDEST_STEP = 1e-4;

    private static final int MOST_LOOKS = 40;

    /** Residual above which the operator is applied to the vectors once more. */
    private static final double POOR = 1e-8;

    private static final int MOST_PURGES = 3;

    /** Backward error above which a vector known without solving is solved for; a solution has 1e-15. */
    private static final double INEXACT = 1e-13;

    /** Frequencies of one structure differ by much; a load factor this far off means nothing. */
    private static final double NO_MASS = 1e-13;

    private static final double NO_BUCKLING = 1e-9;

    private Eigenproblem() {}

    /**
     * Finds the lowest eigenvalues of K x = λ M x, such as the squares of circular frequencies.
     *
     * @param stiffness K, positive semidefinite; where it is singular (a structure free to move) the
     *     zero eigenvalues are found too
     * @param mass M, positive semidefinite, on the same unknowns; unknowns without mass are allowed
     *     and give no eigenvalue
     * @param count how many eigenvalues are wanted, 1 or more
     * @param monitor may stop the work
     * @return the pairs, vectors scaled to xᵀM x = 1; fewer where there are fewer
     * @throws IllegalArgumentException when the orders differ or K is not positive semidefinite
     * @throws NotConvergedException when the iteration does not converge or the Sturm count contradicts
     *     what was found
     * @throws SingularMatrixException when an unknown has neither stiffness nor mass
     */
    public static Eigenpairs vibration(
            SymmetricMatrix stiffness, SymmetricMatrix mass, int count, Monitor monitor) {
        Require.length("mass matrix", mass.order(), stiffness.order());
        Require.atLeast("count", count, 1);
        Pencil pencil = new Pencil(stiffness, mass, monitor);
        double shift = 0;
        Factorization shifted = pencil.at(0);
        if (shifted.isSingular()) {
            shift = -1e-9 * largestRatio(stiffness, mass);
            shifted = pencil.at(shift);
        }
        if (shifted.inertia().negative() > 0) {
            throw new IllegalArgumentException(
                    "stiffness matrix has "
                            + shifted.inertia().negative()
                            + " negative eigenvalues; allowed are none.");
        }
        SelfAdjoint operator = new SelfAdjoint(shifted, mass);
        return find(operator, mass, count, monitor, pencil, shift, NO_MASS);
    }

    /**
     * Finds the lowest positive eigenvalues of (K + λ K_g) x = 0: the factors by which the load behind
     * K_g can grow until the structure buckles.
     *
     * @param stiffness K, positive definite: with the geometric stiffness of loads that do not grow
     * @param geometric K_g, geometric stiffness of the load that grows (compression makes it negative),
     *     definite or not
     * @param count how many factors are wanted, 1 or more
     * @param monitor may stop the work
     * @return the pairs, vectors scaled to xᵀK x = 1; fewer where there are fewer, none where the load
     *     only stiffens
     * @throws IllegalArgumentException when the orders differ or K is not positive definite
     * @throws NotConvergedException when the iteration does not converge or the Sturm count contradicts
     *     what was found
     * @throws SingularMatrixException when K is singular
     */
    public static Eigenpairs buckling(
            SymmetricMatrix stiffness, SymmetricMatrix geometric, int count, Monitor monitor) {
        Require.length("geometric stiffness matrix", geometric.order(), stiffness.order());
        Require.atLeast("count", count, 1);
        SymmetricMatrix softening = geometric.scaled(-1);
        Pencil pencil = new Pencil(stiffness, softening, monitor);
        Factorization inverse = pencil.at(0);
        if (inverse.inertia().negative() > 0) {
            throw new IllegalArgumentException(
                    "stiffness matrix has "
                            + inverse.inertia().negative()
                            + " negative eigenvalues; allowed are none.");
        }
        SelfAdjoint operator = new SelfAdjoint(inverse, softening);
        return find(operator, stiffness, count, monitor, pencil, 0, NO_BUCKLING);
    }

    /**
     * Counts the eigenvalues of K x = λ M x below a value by the inertia of K − λM (J. J. Sylvester's
     * law; B. N. Parlett, The symmetric eigenvalue problem, 1980, section 3-3).
     *
     * @param stiffness K, positive semidefinite
     * @param mass M, positive semidefinite, of the same order
     * @param value λ, finite
     * @param monitor may stop the work
     * @return number of eigenvalues below the value
     * @throws SingularMatrixException when the value is an eigenvalue to rounding
     */
    public static int countBelow(
            SymmetricMatrix stiffness, SymmetricMatrix mass, double value, Monitor monitor) {
        Require.length("mass matrix", mass.order(), stiffness.order());
        Factorization shifted = new Pencil(stiffness, mass, monitor).at(value);
        if (shifted.isSingular()) {
            throw new SingularMatrixException(
                    shifted.smallPivots().stream().filter(SmallPivot::zero).toList());
        }
        return shifted.inertia().negative();
    }

    private static double largestRatio(SymmetricMatrix stiffness, SymmetricMatrix mass) {
        double[] k = stiffness.diagonal();
        double[] m = mass.diagonal();
        double largest = 0;
        for (int i = 0; i < k.length; i++) {
            if (m[i] > 0) {
                largest = Math.max(largest, k[i] / m[i]);
            }
        }
        return largest == 0 ? 1 : largest;
    }

    /** K − λM for any λ, on one symbolic factorization. */
    private static final class Pencil {

        private final SymmetricMatrix stiffness;
        private final SymmetricMatrix mass;
        private final Monitor monitor;
        private final SymbolicFactorization symbolic;

        Pencil(SymmetricMatrix stiffness, SymmetricMatrix mass, Monitor monitor) {
            this.stiffness = stiffness;
            this.mass = mass;
            this.monitor = monitor;
            symbolic = SymbolicFactorization.of(stiffness.pattern().union(mass.pattern()));
        }

        Factorization at(double shift) {
            return symbolic.factorize(
                    SymmetricMatrix.combine(1, stiffness, -shift, mass),
                    PivotLimits.usual(),
                    monitor);
        }

        /** Eigenvalues below a value, which is raised a little where it is one itself. */
        int countBelow(double[] value, double step) {
            for (int attempt = 0; attempt < 8; attempt++) {
                Factorization shifted = at(value[0]);
                if (!shifted.isSingular()) {
                    return shifted.inertia().negative();
                }
                value[0] += step;
            }
            throw new NotConvergedException(
                    "no value near " + value[0] + " where the Sturm count is regular");
        }
    }

    private static Eigenpairs find(
            SelfAdjoint operator,
            SymmetricMatrix inner,
            int count,
            Monitor monitor,
            Pencil pencil,
            double origin,
            double nothing) {
        int wanted = Math.min(count, inner.order());
        ThickRestartLanczos lanczos =
                new ThickRestartLanczos(operator, inner, wanted, TOLERANCE, nothing, monitor);
        int sought = wanted;
        for (int look = 0; ; look++) {
            int converged = lanczos.converge(sought);
            if (lanczos.largest() == 0) {
                return new Eigenpairs(new double[0], new double[0][], new double[0], 0, 0);
            }
            // Where nothing more is there, the count must show so far beyond the last.
            boolean all = converged < sought;
            double last =
                    all
                            ? 1 / (Math.max(NO_BUCKLING, nothing) * lanczos.largest())
                            : 1 / lanczos.ritzValue(sought - 1);
            double step = STEP;
            double[] checked = {origin + last * (1 + step)};
            int below = pencil.countBelow(checked, last * step);
            int found = lanczos.countBelow(checked[0], origin, converged);
            // An ill-conditioned matrix blurs an eigenvalue by more than the step; the count is as
            // good a proof farther away, as long as both sides count to the same place.
            while (found > below && step < WIDEST_STEP) {
                step *= 10;
                checked[0] = origin + last * (1 + step);
                below = pencil.countBelow(checked, last * step);
                found = lanczos.countBelow(checked[0], origin, converged);
            }
            if (found == below) {
                int returned = Math.min(found, wanted);
                double above =
                        returned == 0
                                ? checked[0]
                                : origin + (1 + step) / lanczos.ritzValue(returned - 1);
                return pairs(
                        operator,
                        inner,
                        lanczos,
                        returned,
                        origin,
                        above,
                        lanczos.countBelow(above, origin, converged));
            }
            if (found > below || look == MOST_LOOKS) {
                throw new NotConvergedException(
                        String.format(
                                "eigenvalues below %s: the iteration found %d, the Sturm count says"
                                        + " %d.",
                                checked[0], found, below));
            }
            sought = Math.max(wanted, below);
            lanczos.lookAgain(converged);
        }
    }

    /** Scales the vectors and measures their residuals. */
    private static Eigenpairs pairs(
            SelfAdjoint operator,
            SymmetricMatrix inner,
            ThickRestartLanczos lanczos,
            int count,
            double origin,
            double checkedTo,
            int below) {
        double[] values = new double[count];
        double[] residuals = new double[count];
        double[][] vectors = lanczos.vectors(count);
        if (operator.right() == inner) {
            double[][] known = lanczos.images(vectors);
            vectors = purified(operator, inner, vectors, known, values, residuals);
            for (int more = 0; more < MOST_PURGES && Vectors.largest(residuals) > POOR; more++) {
                double[][] solved = operator.apply(vectors);
                vectors = purified(operator, inner, vectors, solved, values, residuals);
            }
        } else {
            double[][] images = images(operator, inner, vectors, values, residuals);
            for (int more = 0; more < MOST_PURGES && Vectors.largest(residuals) > POOR; more++) {
                vectors = images;
                images = images(operator, inner, vectors, values, residuals);
            }
        }
        for (int k = 0; k < count; k++) {
            values[k] = origin + 1 / values[k];
            turnUp(vectors[k]);
        }
        sort(values, vectors, residuals);
        return new Eigenpairs(values, vectors, residuals, checkedTo, below);
    }

    /**
     * Gives y = A x made orthonormal, which sets unknowns without mass right. As (K − σM) y = M x, the
     * quotient yᵀ(K − σM) y is yᵀM x, and the residual of y needs no further solution: ‖(K − σM) y − μM
     * y‖ / μ in the norm of M⁻¹ is ‖x/μ − y‖ in that of M.
     *
     * @param images y of each x; one that does not solve its equations as a solution would is solved for
     */
    private static double[][] purified(
            SelfAdjoint operator,
            SymmetricMatrix mass,
            double[][] vectors,
            double[][] images,
            double[] quotients,
            double[] residuals) {
        double[] scales = operator.scales();
        for (int k = 0; k < vectors.length; k++) {
            if (operator.backwardError(vectors[k], images[k], scales) > INEXACT) {
                images[k] = operator.apply(vectors[k]);
            }
        }
        orthonormalize(mass, images, vectors);
        for (int k = 0; k < vectors.length; k++) {
            double[] rest = vectors[k];
            quotients[k] = 1 / mass.form(images[k], rest);
            Vectors.scale(quotients[k], rest);
            Vectors.add(-1, images[k], rest);
            residuals[k] = Math.sqrt(Math.max(0, mass.form(rest, rest)));
        }
        return images;
    }

    /**
     * Makes vectors orthonormal and does the same to their companions. The operator strengthens what a
     * vector holds of those before it: it is taken away again.
     */
    private static void orthonormalize(
            SymmetricMatrix inner, double[][] vectors, double[][] companions) {
        for (int k = 0; k < vectors.length; k++) {
            double[] x = vectors[k];
            double before = inner.form(x, x);
            double square = takeAway(inner, k, vectors, companions);
            // Where that was much of it, rounding left some ("twice is enough").
            if (square < before / 2) {
                square = takeAway(inner, k, vectors, companions);
            }
            double factor = 1 / Math.sqrt(square);
            Vectors.scale(factor, x);
            Vectors.scale(factor, companions[k]);
        }
    }

    /** Takes from a vector its parts along those before it, and gives the square of what is left. */
    private static double takeAway(
            SymmetricMatrix inner, int k, double[][] vectors, double[][] companions) {
        double[] product = inner.times(vectors[k]);
        for (int j = 0; j < k; j++) {
            double share = Vectors.dot(vectors[j], product);
            Vectors.add(-share, vectors[j], vectors[k]);
            Vectors.add(-share, companions[j], companions[k]);
        }
        return inner.form(vectors[k], vectors[k]);
    }

    /** Makes vectors x orthonormal; gives A x, the quotients xᵀB A x and the residuals. */
    private static double[][] images(
            SelfAdjoint operator,
            SymmetricMatrix inner,
            double[][] vectors,
            double[] quotients,
            double[] residuals) {
        orthonormalize(inner, vectors, new double[vectors.length][0]);
        double[][] images = operator.apply(vectors);
        for (int k = 0; k < vectors.length; k++) {
            double theta = inner.form(vectors[k], images[k]);
            double[] rest = images[k].clone();
            Vectors.add(-theta, vectors[k], rest);
            quotients[k] = theta;
            residuals[k] = Math.sqrt(Math.max(0, inner.form(rest, rest))) / Math.abs(theta);
        }
        return images;
    }

    private static void turnUp(double[] x) {
        int peak = 0;
        for (int i = 1; i < x.length; i++) {
            peak = Math.abs(x[i]) > Math.abs(x[peak]) * (1 + 1e-6) ? i : peak;
        }
        if (x[peak] < 0) {
            Vectors.scale(-1, x);
        }
    }

    private static void sort(double[] values, double[][] vectors, double[] residuals) {
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        double[] oldValues = values.clone();
        double[][] oldVectors = vectors.clone();
        double[] oldResiduals = residuals.clone();
        for (int k = 0; k < order.length; k++) {
            values[k] = oldValues[order[k]];
            vectors[k] = oldVectors[order[k]];
            residuals[k] = oldResiduals[order[k]];
        }
    }
}
