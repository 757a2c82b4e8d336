package org.skewback.numeric;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Lanczos iteration for the largest eigenvalues θ of an operator A that is self-adjoint in an inner
 * product xᵀB y, with full reorthogonalisation and thick restart (K. Wu and H. Simon, Thick-restart
 * Lanczos method for large symmetric eigenvalue problems, SIAM Journal on Matrix Analysis and
 * Applications 22 (2000), 602–616). B may be semidefinite: vectors are started in the range of A, and
 * their images under A, which the iteration knows, are free of what rounding adds outside it (B.
 * Nour-Omid, B. N. Parlett, T. Ericsson and P. S. Jensen, How to implement the spectral transformation,
 * Mathematics of Computation 48 (1987), 663–673).
 */
final class ThickRestartLanczos {

    private static final int MOST_RESTARTS = 300;

    private final SelfAdjoint operator;
    private final Basis basis;
    private final int wanted;
    private final int most;
    private final double tolerance;

    /** Below this share of the largest |θ|, an eigenvalue counts as 0 and is not one of those sought. */
    private final double nothing;

    private final Monitor monitor;
    private final Random random = new Random(20261125);
    private final double[][] projected;
    private double[] next;
    private double nextNorm;
    private boolean exhausted;
    private int restarts;

    /** Ritz values, decreasing, with their vectors in the basis and residuals. */
    private double[] ritz = new double[0];

    private double[][] coefficients = new double[0][];
    private double[] residuals = new double[0];

    ThickRestartLanczos(
            SelfAdjoint operator,
            SymmetricMatrix inner,
            int wanted,
            double tolerance,
            double nothing,
            Monitor monitor) {
        this.operator = operator;
        this.wanted = wanted;
        this.tolerance = tolerance;
        this.nothing = nothing;
        this.monitor = monitor;
        most = Math.min(inner.order(), 2 * wanted + 24);
        basis = new Basis(inner, most + 1);
        projected = new double[most + 1][most + 1];
        next = new double[inner.order()];
        inject();
    }

    /** Puts a new random direction of the range of A next, orthogonal to all that is there. */
    private void inject() {
        nextNorm = 0;
        for (int attempt = 0; attempt < 2 && nextNorm == 0; attempt++) {
            double[] start = new double[basis.order];
            for (int i = 0; i < start.length; i++) {
                start[i] = random.nextDouble() - 0.5;
            }
            next = operator.apply(start);
            double before = basis.norm(next);
            double left = basis.orthogonalize(next, new double[basis.size]);
            nextNorm = left <= 1e-10 * before ? 0 : left;
        }
        exhausted = nextNorm == 0;
    }

    /**
     * Iterates until so many Ritz values at the upper end have converged, or there are no more.
     *
     * @return how many have converged from the largest on, without a gap
     */
    int converge(int count) {
        while (true) {
            int converged = iterate(count);
            if (converged >= count || noMore(converged)) {
                return converged;
            }
            if (++restarts > MOST_RESTARTS) {
                throw new NotConvergedException(
                        String.format(
                                "eigenvalues sought: %d; %d converged to %s after %d restarts of"
                                        + " the iteration, the next has a relative residual of %s.",
                                count,
                                converged,
                                tolerance,
                                MOST_RESTARTS,
                                residuals[converged] / Math.abs(ritz[converged])));
            }
            restart(Math.min(ritz.length - 1, Math.max(count, wanted) + (most - wanted) / 3));
        }
    }

    /** Whether the next eigenvalue, if there is one, is none of those sought. */
    private boolean noMore(int converged) {
        if (exhausted) {
            return true;
        }
        return ritz[converged] <= nothing * largest()
                && residuals[converged] <= nothing * largest();
    }

    /** Largest |θ| seen; 0 when the operator gives only zeros. */
    double largest() {
        return ritz.length == 0 ? 0 : Math.max(Math.abs(ritz[0]), Math.abs(ritz[ritz.length - 1]));
    }

    private int iterate(int count) {
        int checkAt = Math.min(most, Math.max(basis.size + 8, count + 16));
        boolean fresh = true;
        while (true) {
            if (exhausted || basis.size == most) {
                int converged = decompose();
                if (!exhausted) {
                    return converged;
                }
                exhausted = basis.size == 0 || stillExhausted(converged, count);
                if (exhausted || basis.size == most) {
                    return converged;
                }
                fresh = true;
            } else if (basis.size >= checkAt) {
                checkAt += 2;
                int converged = decompose();
                if (converged >= count) {
                    return converged;
                }
            }
            expand(fresh);
            fresh = false;
        }
    }

    /** Whether no direction is left, or none is needed. */
    private boolean stillExhausted(int converged, int count) {
        if (converged >= count || basis.size == basis.order) {
            return true;
        }
        inject();
        return exhausted;
    }

    /** Takes the next vector into the basis and applies the operator to it. */
    private void expand(boolean fresh) {
        monitor.at("eigenvalues", (double) Math.min(basis.size, most - 1) / most);
        basis.append(next, nextNorm);
        int j = basis.size - 1;
        double[] w = operator.apply(basis.column(j));
        double[] h = new double[basis.size];
        double size = basis.norm(w);
        // What is to be taken away lies along the last two; the full pass then finds only rounding.
        h[j] = basis.subtractLast(w, j);
        if (!fresh && j > 0) {
            h[j - 1] = nextNorm;
            basis.subtract(w, j - 1, nextNorm);
        }
        nextNorm = basis.orthogonalize(w, h);
        next = w;
        for (int i = 0; i <= j; i++) {
            projected[i][j] = h[i];
            projected[j][i] = h[i];
        }
        if (nextNorm <= 1e-14 * size) {
            nextNorm = 0;
            exhausted = true;
        }
    }

    private int decompose() {
        int size = basis.size;
        double[][] square = new double[size][];
        for (int i = 0; i < size; i++) {
            square[i] = Arrays.copyOf(projected[i], size);
        }
        if (size == 0) {
            return 0;
        }
        EigenDecomposition small = new EigenDecomposition(new Array2DRowRealMatrix(square, false));
        double[] values = small.getRealEigenvalues();
        Integer[] order = new Integer[size];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(values[b], values[a]));
        ritz = new double[size];
        coefficients = new double[size][];
        residuals = new double[size];
        for (int k = 0; k < size; k++) {
            ritz[k] = values[order[k]];
            coefficients[k] = small.getEigenvector(order[k]).toArray();
            residuals[k] = nextNorm * Math.abs(coefficients[k][size - 1]);
        }
        int converged = 0;
        while (converged < size
                && residuals[converged] <= tolerance * Math.abs(ritz[converged])
                && ritz[converged] > nothing * largest()) {
            converged++;
        }
        return converged;
    }

    private void restart(int kept) {
        basis.combine(Arrays.copyOf(coefficients, kept));
        for (double[] row : projected) {
            Arrays.fill(row, 0);
        }
        for (int k = 0; k < kept; k++) {
            projected[k][k] = ritz[k];
        }
    }

    /**
     * Looks again for what a single start cannot see, copies of repeated eigenvalues: what has
     * converged is kept and a new direction taken.
     *
     * @return whether there was a new direction
     */
    boolean lookAgain(int converged) {
        restart(Math.min(converged, most - 1));
        inject();
        return !exhausted;
    }

    /** How many of the converged have origin + 1/θ below a value. */
    int countBelow(double value, double origin, int converged) {
        int count = 0;
        while (count < converged && origin + 1 / ritz[count] < value) {
            count++;
        }
        return count;
    }

    double ritzValue(int index) {
        return ritz[index];
    }

    /** Ritz vectors from the largest value on. */
    double[][] vectors(int count) {
        double[][] found = new double[count][];
        for (int k = 0; k < count; k++) {
            double[] x = new double[basis.order];
            double[] factors = coefficients[k].clone();
            Vectors.scale(-1, factors);
            basis.subtract(x, factors);
            found[k] = x;
        }
        return found;
    }

    /**
     * What the operator makes of Ritz vectors. The iteration holds A Q = Q T + w eᵀ, so A y = θ y + (eᵀs)
     * w of y = Q s costs no application of A.
     *
     * @param vectors those of {@link #vectors(int)}
     */
    double[][] images(double[][] vectors) {
        double[][] images = new double[vectors.length][];
        for (int k = 0; k < vectors.length; k++) {
            double[] image = vectors[k].clone();
            Vectors.scale(ritz[k], image);
            Vectors.add(coefficients[k][basis.size - 1], next, image);
            images[k] = image;
        }
        return images;
    }
}
