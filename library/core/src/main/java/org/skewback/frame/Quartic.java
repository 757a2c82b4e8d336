package org.skewback.frame;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** The polynomial of degree 4 through five values at even distances on 0 … 1. */
final class Quartic {

    private static final int BRACKETS = 32;
    private static final int HALVINGS = 60;
    private static final Gauss EXACT = Gauss.ofOrder(3);

    private final double[] newton;

    private Quartic(double[] newton) {
        this.newton = newton;
    }

    static Quartic through(double[] values) {
        double[] c = values.clone();
        for (int order = 1; order < 5; order++) {
            for (int i = 4; i >= order; i--) {
                c[i] = (c[i] - c[i - 1]) / order;
            }
        }
        return new Quartic(c);
    }

    /** Newton's form c₀ + c₁s + c₂s(s − 1) + … at s = 4t. */
    double value(double t) {
        double s = 4 * t;
        double value = newton[4];
        for (int i = 3; i >= 0; i--) {
            value = value * (s - i) + newton[i];
        }
        return value;
    }

    double slope(double t) {
        double s = 4 * t;
        double value = newton[4];
        double slope = 0;
        for (int i = 3; i >= 0; i--) {
            slope = slope * (s - i) + value;
            value = value * (s - i) + newton[i];
        }
        return 4 * slope;
    }

    double integral(double from, double to) {
        return EXACT.integrate(from, to, this::value);
    }

    /** Places between 0 and 1 where the slope changes its sign. */
    double[] stationary() {
        return signChanges(this::slope);
    }

    /** Places between 0 and 1 where the value changes its sign. */
    double[] roots() {
        return signChanges(this::value);
    }

    private static double[] signChanges(DoubleUnaryOperator f) {
        double[] found = new double[BRACKETS];
        int count = 0;
        double last = f.applyAsDouble(0);
        double lastAt = 0;
        for (int i = 1; i <= BRACKETS; i++) {
            double at = (double) i / BRACKETS;
            double now = f.applyAsDouble(at);
            if (now == 0) {
                continue;
            }
            if (last * now < 0) {
                found[count++] = root(f, lastAt, at);
            }
            last = now;
            lastAt = at;
        }
        return Arrays.copyOf(found, count);
    }

    private static double root(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        boolean rising = f.applyAsDouble(low) < 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (f.applyAsDouble(middle) < 0 == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
