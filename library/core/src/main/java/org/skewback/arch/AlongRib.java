package org.skewback.arch;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.skewback.form.Axis;
import org.skewback.numeric.NotConvergedException;

/**
 * Integrals along the length of a rib.
 *
 * <p>The position is {@code x = L (1 − cos t)/2}, so that an axis upright at its springings, such as a
 * semicircle, has a smooth {@code ds/dt}; Gauss–Legendre with 12 points on panels whose number doubles
 * until two results agree.
 */
final class AlongRib {

    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(12);
    private static final double RELATIVE = 1e-12;
    private static final int MOST_PANELS = 1 << 11;

    private final Axis axis;

    AlongRib(Axis axis) {
        this.axis = axis;
    }

    /** What of a point of the axis is wanted again and again. */
    record Place(double x, double y, double cosine, double sine) {}

    /**
     * Gives the integrals of several functions at once.
     *
     * @param breaks positions where an integrand is not smooth; the axis' own are added
     */
    double[] integrate(
            String sought, Function<Place, double[]> integrands, Iterable<Double> breaks) {
        TreeSet<Double> ends = new TreeSet<>();
        ends.add(0.0);
        ends.add(StrictMath.PI);
        axis.breaks().forEach(x -> ends.add(parameter(x)));
        breaks.forEach(x -> ends.add(parameter(x)));
        double[] previous = null;
        for (int panels = 1; panels <= MOST_PANELS; panels *= 2) {
            double[][] sums = sums(integrands, ends, panels);
            if (previous != null && settled(sums, previous)) {
                return sums[0];
            }
            previous = sums[0];
        }
        throw new NotConvergedException(
                "The integral for " + sought + " did not settle with " + MOST_PANELS + " panels.");
    }

    private static boolean settled(double[][] sums, double[] previous) {
        for (int i = 0; i < previous.length; i++) {
            if (!(Math.abs(sums[0][i] - previous[i]) <= RELATIVE * sums[1][i])) {
                return false;
            }
        }
        return true;
    }

    private double[][] sums(
            Function<Place, double[]> integrands, SortedSet<Double> ends, int panels) {
        double[][] sums = null;
        Double from = null;
        for (Double to : ends) {
            if (from != null) {
                for (int panel = 0; panel < panels; panel++) {
                    double half = (to - from) / (2 * panels);
                    double middle = from + (2 * panel + 1) * half;
                    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
                        double t = middle + half * RULE.getPoint(i);
                        Place place = place(t);
                        double weight = half * RULE.getWeight(i) * stretch(t, place);
                        double[] values = integrands.apply(place);
                        if (sums == null) {
                            sums = new double[2][values.length];
                        }
                        for (int j = 0; j < values.length; j++) {
                            sums[0][j] += weight * values[j];
                            sums[1][j] += weight * Math.abs(values[j]);
                        }
                    }
                }
            }
            from = to;
        }
        if (sums == null) {
            throw new IllegalStateException("An axis without length.");
        }
        return sums;
    }

    private Place place(double t) {
        double x = axis.span() * (1 - StrictMath.cos(t)) / 2;
        double angle = axis.angle(x);
        return new Place(x, axis.y(x), StrictMath.cos(angle), StrictMath.sin(angle));
    }

    /** ds/dt. */
    private double stretch(double t, Place place) {
        return axis.span() * StrictMath.sin(t) / (2 * place.cosine());
    }

    private double parameter(double x) {
        return StrictMath.acos(Math.max(-1, Math.min(1, 1 - 2 * x / axis.span())));
    }
}
