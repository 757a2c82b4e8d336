package org.skewback.arch;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.skewback.data.CsvTable;
import org.skewback.form.Axis;

/**
 * An axis through surveyed points: the natural cubic spline, smooth through every point and straight at
 * both springings (J. H. Ahlberg, E. N. Nilson and J. L. Walsh, The Theory of Splines and Their
 * Applications, 1967).
 *
 * <p>A spline follows errors of survey with waves of its own; with points that scatter, fit a curve
 * instead.
 */
public final class SurveyedAxis implements Axis {

    private final PolynomialSplineFunction level;
    private final PolynomialSplineFunction slope;
    private final PolynomialSplineFunction bend;
    private final double span;

    private SurveyedAxis(PolynomialSplineFunction level) {
        this.level = level;
        this.slope = level.polynomialSplineDerivative();
        this.bend = slope.polynomialSplineDerivative();
        double[] knots = level.getKnots();
        this.span = knots[knots.length - 1];
    }

    /**
     * Draws the axis through points.
     *
     * @param positions level distances from the left springing, m; at least 3, ascending, the first 0
     * @param levels heights above the left springing, m; the first 0, one for each position
     * @return the axis, its span the last position
     * @throws IllegalArgumentException if there are too few points, they do not ascend, the first is not the
     *     left springing, or a number is not finite
     */
    public static SurveyedAxis through(double[] positions, double[] levels) {
        if (positions.length < 3 || positions.length != levels.length) {
            throw new IllegalArgumentException(
                    "number of surveyed points is "
                            + positions.length
                            + " with "
                            + levels.length
                            + " levels; allowed are at least 3, with a level each.");
        }
        for (int i = 0; i < positions.length; i++) {
            Require.finite("position of a surveyed point", positions[i], "m");
            Require.finite("level of a surveyed point", levels[i], "m");
            if (i > 0 && !(positions[i] > positions[i - 1])) {
                throw Require.refused(
                        "position of a surveyed point",
                        positions[i],
                        "m",
                        "more than " + positions[i - 1] + " m");
            }
        }
        if (positions[0] != 0 || levels[0] != 0) {
            throw Require.refused(
                    "position of the first surveyed point",
                    positions[0],
                    "m",
                    "0 m, and 0 m its level, as it is the left springing");
        }
        return new SurveyedAxis(
                new SplineInterpolator().interpolate(positions.clone(), levels.clone()));
    }

    /**
     * Draws the axis through the points of a table.
     *
     * @param table the table
     * @param position name of the column of level distances from the left springing, a length; ascending
     * @param level name of the column of levels, a length, on any datum
     * @return the axis; levels count from the first point
     * @throws IllegalArgumentException if a column is missing or of the wrong dimension, or the points are not
     *     those of an axis
     */
    public static SurveyedAxis of(CsvTable table, String position, String level) {
        double[] x = table.ascending(position, "m");
        double[] z = table.numbers(level, "m");
        return through(
                Arrays.stream(x).map(at -> at - x[0]).toArray(),
                Arrays.stream(z).map(at -> at - z[0]).toArray());
    }

    @Override
    public double span() {
        return span;
    }

    @Override
    public double rightLevel() {
        return level.value(span);
    }

    @Override
    public double y(double x) {
        return level.value(at(x));
    }

    @Override
    public double slope(double x) {
        return slope.value(at(x));
    }

    @Override
    public OptionalDouble curvature(double x) {
        double y1 = slope.value(at(x));
        return OptionalDouble.of(-bend.value(at(x)) / StrictMath.pow(1 + y1 * y1, 1.5));
    }

    @Override
    public List<Double> breaks() {
        double[] knots = level.getKnots();
        return Arrays.stream(knots, 1, knots.length - 1).boxed().toList();
    }

    private double at(double x) {
        return Math.min(span, Math.max(0, Require.within("x", x, -1e-9, span + 1e-9, "m")));
    }
}
