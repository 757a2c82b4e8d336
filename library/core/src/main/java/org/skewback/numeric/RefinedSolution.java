package org.skewback.numeric;

/** Solution of A x = b improved by its residual. */
public final class RefinedSolution {

    private final double[] x;
    private final double residual;
    private final double backwardError;
    private final int steps;

    RefinedSolution(double[] x, double residual, double backwardError, int steps) {
        this.x = x;
        this.residual = residual;
        this.backwardError = backwardError;
        this.steps = steps;
    }

    /**
     * Gives the solution.
     *
     * @return x, a copy
     */
    public double[] x() {
        return x.clone();
    }

    /**
     * Gives the residual left.
     *
     * @return largest |b − A x|, in units of b
     */
    public double residual() {
        return residual;
    }

    /**
     * Gives the backward error, the largest |b − A x|ᵢ / (|A||x| + |b|)ᵢ: the smallest relative change
     * of the entries of A and b for which x would be exact (W. Oettli and W. Prager, Compatibility of
     * approximate solution of linear equations with given error bounds for coefficient matrix and
     * right-hand sides, Numerische Mathematik 6 (1964), 405–409).
     *
     * @return the error, about 1e-16 where all is well
     */
    public double backwardError() {
        return backwardError;
    }

    /**
     * Gives the number of steps of refinement made.
     *
     * @return steps, 0 or more
     */
    public int steps() {
        return steps;
    }
}
