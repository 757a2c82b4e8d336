package org.skewback.numeric;

import java.util.Arrays;
import java.util.List;

/**
 * The factorization P A Pᵀ = L D Lᵀ of a symmetric matrix, definite or not, without pivoting for
 * stability: L unit lower triangular, D diagonal.
 *
 * <p>A zero pivot leaves its unknown out (as if it were held) so that the elimination goes on and
 * finds the other rows where rank is missing; solving is then refused. Immutable, so several threads
 * may solve at once.
 */
public final class Factorization {

    private static final int MOST_REFINEMENTS = 10;

    private final SymbolicFactorization symbolic;
    private final SymmetricMatrix matrix;
    private final double[] diagonal;
    private final Substitution substitution;
    private final List<SmallPivot> smallPivots;
    private final Inertia inertia;

    Factorization(
            SymbolicFactorization symbolic,
            SymmetricMatrix matrix,
            PivotLimits limits,
            Monitor monitor) {
        this.symbolic = symbolic;
        this.matrix = matrix;
        Elimination elimination =
                new Elimination(
                        symbolic.supernodes(), matrix, limits, symbolic.operations(), monitor);
        diagonal = elimination.diagonal;
        substitution = new Substitution(symbolic.supernodes(), elimination.lower);
        smallPivots = List.copyOf(elimination.smallPivots);
        inertia = elimination.inertia();
    }

    /**
     * Analyses and factorizes a matrix with the usual ordering and limits.
     *
     * @param matrix symmetric matrix
     * @return its factorization
     */
    public static Factorization of(SymmetricMatrix matrix) {
        return SymbolicFactorization.of(matrix.pattern()).factorize(matrix);
    }

    /**
     * Gives the number of unknowns.
     *
     * @return n
     */
    public int order() {
        return diagonal.length;
    }

    /**
     * Gives the matrix factorized.
     *
     * @return A
     */
    public SymmetricMatrix matrix() {
        return matrix;
    }

    /**
     * Gives the analysis used, for further matrices on the same pattern.
     *
     * @return the symbolic factorization
     */
    public SymbolicFactorization symbolic() {
        return symbolic;
    }

    /**
     * Counts the negative, zero and positive eigenvalues of A.
     *
     * @return the inertia
     */
    public Inertia inertia() {
        return inertia;
    }

    /**
     * Gives the pivots that came out small or zero.
     *
     * @return them in the order of elimination
     */
    public List<SmallPivot> smallPivots() {
        return smallPivots;
    }

    /**
     * Tells whether a pivot counts as zero.
     *
     * @return whether A counts as singular
     */
    public boolean isSingular() {
        return inertia.zero() > 0;
    }

    /**
     * Gives a movement that a small pivot leaves nearly free: z with zᵣ = 1 in the row of the pivot, 0
     * in unknowns eliminated later, and A z = 0 in those eliminated before. For a semidefinite matrix
     * and a zero pivot A z = 0 throughout: a mechanism.
     *
     * @param pivot one of {@link #smallPivots()}
     * @return z, n values
     * @throws IllegalArgumentException when the pivot is not one of this factorization's
     */
    public double[] freeMovement(SmallPivot pivot) {
        if (!smallPivots.contains(pivot)) {
            throw new IllegalArgumentException(
                    "pivot of row "
                            + pivot.row()
                            + " is not a small one; allowed are those of smallPivots().");
        }
        int[] sequence = symbolic.sequence();
        double[] z = new double[order()];
        for (int k = 0; k < z.length; k++) {
            z[k] = sequence[k] == pivot.row() ? 1 : 0;
        }
        substitution.backward(z);
        return unpermuted(z);
    }

    /**
     * Solves A x = b.
     *
     * @param b right-hand side, n finite values
     * @return x
     * @throws SingularMatrixException when a pivot counts as zero
     */
    public double[] solve(double[] b) {
        requireRegular();
        Require.vector("right-hand side", b, order());
        return solved(b);
    }

    /**
     * Solves A x = b for many right-hand sides.
     *
     * @param loads right-hand sides b, each of n finite values
     * @return x for each
     * @throws SingularMatrixException when a pivot counts as zero
     */
    public double[][] solve(double[][] loads) {
        return solve(loads, Monitor.quiet());
    }

    /**
     * Solves A x = b for many right-hand sides.
     *
     * @param loads right-hand sides b, each of n finite values
     * @param monitor may stop the work
     * @return x for each
     * @throws SingularMatrixException when a pivot counts as zero
     * @throws java.util.concurrent.CancellationException when the monitor stops the work
     */
    public double[][] solve(double[][] loads, Monitor monitor) {
        requireRegular();
        for (double[] load : loads) {
            Require.vector("right-hand side", load, order());
        }
        double[][] solutions = new double[loads.length][];
        int most = Substitution.MOST_TOGETHER;
        double[] x = new double[0];
        for (int begin = 0; begin < loads.length; begin += most) {
            monitor.at("solution", (double) begin / loads.length);
            int count = Math.min(most, loads.length - begin);
            if (count == 1) {
                solutions[begin] = solved(loads[begin]);
                continue;
            }
            // The inner loops work in eights.
            int together = (count + 7) / 8 * 8;
            int size = Math.multiplyExact(order(), together);
            x = x.length == size ? x : new double[size];
            solveTogether(loads, solutions, begin, count, x, together);
        }
        return solutions;
    }

    private void solveTogether(
            double[][] loads,
            double[][] solutions,
            int begin,
            int count,
            double[] x,
            int together) {
        int[] sequence = symbolic.sequence();
        for (int c = 0; c < together; c++) {
            for (int k = 0; k < sequence.length; k++) {
                x[k * together + c] = c < count ? loads[begin + c][sequence[k]] : 0;
            }
        }
        substitution.forwardTogether(x, together);
        for (int k = 0; k < sequence.length; k++) {
            for (int c = 0; c < together; c++) {
                x[k * together + c] /= diagonal[k];
            }
        }
        substitution.backwardTogether(x, together);
        for (int c = 0; c < count; c++) {
            double[] solution = new double[sequence.length];
            for (int k = 0; k < sequence.length; k++) {
                solution[sequence[k]] = x[k * together + c];
            }
            solutions[begin + c] = solution;
        }
    }

    private void requireRegular() {
        if (isSingular()) {
            throw new SingularMatrixException(
                    smallPivots.stream().filter(SmallPivot::zero).toList());
        }
    }

    private double[] solved(double[] b) {
        int[] sequence = symbolic.sequence();
        double[] x = new double[b.length];
        for (int k = 0; k < x.length; k++) {
            x[k] = b[sequence[k]];
        }
        substitution.forward(x);
        for (int k = 0; k < x.length; k++) {
            x[k] /= diagonal[k];
        }
        substitution.backward(x);
        return unpermuted(x);
    }

    private double[] unpermuted(double[] x) {
        int[] sequence = symbolic.sequence();
        double[] result = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            result[sequence[k]] = x[k];
        }
        return result;
    }

    /**
     * Solves A x = b and improves x by its residual until the backward error is at rounding or a step
     * no longer halves it (M. Arioli, J. W. Demmel and I. S. Duff, Solving sparse linear systems with
     * sparse backward error, SIAM Journal on Matrix Analysis and Applications 10 (1989), 165–190).
     *
     * @param b right-hand side, n finite values
     * @return x with its residual and backward error
     * @throws SingularMatrixException when a pivot counts as zero
     */
    public RefinedSolution solveRefined(double[] b) {
        double[] x = solve(b);
        double[] residual = new double[b.length];
        double error = backwardError(x, b, residual);
        int steps = 0;
        while (error > 2 * Math.ulp(1.0) && steps < MOST_REFINEMENTS) {
            double[] better = solved(residual);
            Vectors.add(1, x, better);
            double[] betterResidual = new double[b.length];
            double betterError = backwardError(better, b, betterResidual);
            // Written so that a backward error that is not a number ends it.
            if (!(betterError < error)) {
                break;
            }
            boolean halved = betterError <= error / 2;
            x = better;
            residual = betterResidual;
            error = betterError;
            steps++;
            if (!halved) {
                break;
            }
        }
        return new RefinedSolution(x, Vectors.largest(residual), error, steps);
    }

    /** Oettli and Prager's backward error; the residual b − A x is written. */
    private double backwardError(double[] x, double[] b, double[] residual) {
        matrix.times(x, residual);
        double[] sizes = matrix.timesSizes(x);
        double error = 0;
        for (int i = 0; i < b.length; i++) {
            residual[i] = b[i] - residual[i];
            double size = sizes[i] + Math.abs(b[i]);
            if (residual[i] != 0) {
                error = Math.max(error, Math.abs(residual[i]) / size);
            }
        }
        return error;
    }

    /**
     * Estimates the condition number ‖A‖₁‖A⁻¹‖₁ from below, mostly within a factor of three, by a few
     * solutions (W. W. Hager, Condition estimates, SIAM Journal on Scientific and Statistical
     * Computing 5 (1984), 311–316; N. J. Higham, FORTRAN codes for estimating the one-norm of a real
     * or complex matrix, ACM Transactions on Mathematical Software 14 (1988), 381–396, algorithm
     * 4.1).
     *
     * @return the estimate; infinite when a pivot counts as zero
     */
    public double conditionEstimate() {
        if (isSingular()) {
            return Double.POSITIVE_INFINITY;
        }
        return order() == 0 ? 1 : matrix.norm() * inverseNorm();
    }

    private double inverseNorm() {
        int order = order();
        double[] x = new double[order];
        Arrays.fill(x, 1.0 / order);
        double[] y = solved(x);
        double norm = Vectors.sumOfSizes(y);
        if (order == 1) {
            return norm;
        }
        double[] signs = signs(y);
        int last = -1;
        for (int k = 0; k < 4; k++) {
            double[] z = solved(signs);
            int peak = 0;
            for (int i = 1; i < order; i++) {
                peak = Math.abs(z[i]) > Math.abs(z[peak]) ? i : peak;
            }
            if (last >= 0 && Math.abs(z[last]) == Math.abs(z[peak])) {
                break;
            }
            last = peak;
            Arrays.fill(x, 0);
            x[peak] = 1;
            y = solved(x);
            double next = Vectors.sumOfSizes(y);
            double[] nextSigns = signs(y);
            if (next <= norm || Arrays.equals(nextSigns, signs)) {
                norm = Math.max(norm, next);
                break;
            }
            norm = next;
            signs = nextSigns;
        }
        for (int i = 0; i < order; i++) {
            x[i] = (i % 2 == 0 ? 1 : -1) * (1 + (double) i / (order - 1));
        }
        return Math.max(norm, 2 * Vectors.sumOfSizes(solved(x)) / (3 * order));
    }

    private static double[] signs(double[] x) {
        double[] signs = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            signs[i] = x[i] < 0 ? -1 : 1;
        }
        return signs;
    }

    /**
     * Gives the logarithm of the determinant's size, ln|det A|.
     *
     * @return Σ ln|dₖ|; −∞ when a pivot counts as zero
     */
    public double logDeterminant() {
        double sum = 0;
        for (double pivot : diagonal) {
            sum += StrictMath.log(Math.abs(pivot));
        }
        return sum;
    }
}
