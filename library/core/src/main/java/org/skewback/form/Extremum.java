package org.skewback.form;

import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * Where a function over the span is largest in magnitude.
 *
 * @param x position from the left springing, m
 * @param value the function there, with its sign
 */
record Extremum(double x, double value) {

    /** Samples between two breaks; a bulge narrower than that may be missed. */
    private static final int SAMPLES = 96;

    /** Relative and, in spans, absolute tolerance of the position. */
    private static final double POSITION = 1e-9;

    /**
     * Searches between each two breaks: sampled, then refined by Brent's method (Algorithms for
     * Minimization Without Derivatives, 1973, ch. 5). Jumps at breaks are seen from both sides.
     */
    static Extremum ofMagnitude(
            double span, Iterable<Double> breaks, DoubleUnaryOperator function) {
        TreeSet<Double> ends = new TreeSet<>();
        breaks.forEach(ends::add);
        ends.add(span);
        Extremum largest = new Extremum(0, function.applyAsDouble(0));
        double from = 0;
        for (double to : ends) {
            largest = largest.or(between(from, to, span, function));
            from = to;
        }
        return largest;
    }

    private static Extremum between(
            double from, double to, double span, DoubleUnaryOperator function) {
        double[] x = new double[SAMPLES + 1];
        Extremum largest = new Extremum(from, function.applyAsDouble(from));
        int index = 0;
        for (int i = 0; i <= SAMPLES; i++) {
            // The last sample sees a jump at the right break from its left.
            x[i] = i == SAMPLES ? Math.nextDown(to) : from + (to - from) * i / SAMPLES;
            Extremum here = new Extremum(x[i], function.applyAsDouble(x[i]));
            if (Math.abs(here.value) > Math.abs(largest.value)) {
                largest = here;
                index = i;
            }
        }
        double sign = Math.signum(largest.value);
        double low = x[Math.max(0, index - 1)];
        double high = x[Math.min(SAMPLES, index + 1)];
        if (sign == 0 || !(low < high)) {
            return largest;
        }
        UnivariatePointValuePair top =
                new BrentOptimizer(POSITION, POSITION * span)
                        .optimize(
                                new MaxEval(300),
                                new UnivariateObjectiveFunction(
                                        at -> sign * function.applyAsDouble(at)),
                                GoalType.MAXIMIZE,
                                new SearchInterval(low, high));
        return largest.or(new Extremum(top.getPoint(), sign * top.getValue()));
    }

    /** Gives the larger in magnitude; of two equal ones, this. */
    private Extremum or(Extremum other) {
        return Math.abs(other.value) > Math.abs(value) ? other : this;
    }
}
