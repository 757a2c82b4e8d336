package org.skewback.frame;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Abscissas and weights of Gauss–Legendre quadrature on 0 … 1. */
final class Gauss {

    private static final GaussIntegratorFactory FACTORY = new GaussIntegratorFactory();

    private final double[] points;
    private final double[] weights;

    private Gauss(double[] points, double[] weights) {
        this.points = points;
        this.weights = weights;
    }

    static Gauss ofOrder(int order) {
        GaussIntegrator integrator = FACTORY.legendre(order);
        double[] points = new double[order];
        double[] weights = new double[order];
        for (int i = 0; i < order; i++) {
            points[i] = (1 + integrator.getPoint(i)) / 2;
            weights[i] = integrator.getWeight(i) / 2;
        }
        return new Gauss(points, weights);
    }

    int size() {
        return points.length;
    }

    double point(int i) {
        return points[i];
    }

    double weight(int i) {
        return weights[i];
    }

    double integrate(double from, double to, DoubleUnaryOperator f) {
        double sum = 0;
        for (int i = 0; i < points.length; i++) {
            sum += weights[i] * f.applyAsDouble(from + points[i] * (to - from));
        }
        return sum * (to - from);
    }
}
