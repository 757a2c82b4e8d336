package org.skewback.form;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.skewback.numeric.NotConvergedException;

/**
 * Bracketed roots by Brent's method (R. P. Brent, Algorithms for Minimization Without Derivatives,
 * Prentice-Hall 1973, ch. 4), as Commons Math has it.
 */
final class Roots {

    private static final double RELATIVE = 1e-15;
    private static final double ABSOLUTE = 1e-300;
    private static final double VALUE = 1e-16;
    private static final int EVALUATIONS = 200;

    private Roots() {}

    /**
     * Gives the root between two limits to a relative 1e-15 of the root.
     *
     * @throws NotConvergedException if the limits do not bracket a root or 200 evaluations are not
     *     enough
     */
    static double between(String sought, UnivariateFunction function, double low, double high) {
        try {
            return new BrentSolver(RELATIVE, ABSOLUTE, VALUE)
                    .solve(EVALUATIONS, function, low, high);
        } catch (MathIllegalArgumentException | MathIllegalStateException e) {
            throw new NotConvergedException(
                    "No " + sought + " found between " + low + " and " + high + ".", e);
        }
    }
}
