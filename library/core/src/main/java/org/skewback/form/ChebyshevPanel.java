package org.skewback.form;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function on one interval as a Chebyshev series, with its integral.
 *
 * <p>Source: J. C. Mason, D. C. Handscomb, Chebyshev Polynomials, Chapman and Hall/CRC 2002, ch. 2
 * and 6 (chapters from memory; tests hold the series against closed forms).
 */
final class ChebyshevPanel {

    private static final int TERMS = 16;

    private final double from;
    private final double to;
    private final double[] integral;

    private ChebyshevPanel(double from, double to, double[] integral) {
        this.from = from;
        this.to = to;
        this.integral = integral;
    }

    static ChebyshevPanel of(DoubleUnaryOperator function, double from, double to) {
        double[] values = new double[TERMS];
        for (int i = 0; i < TERMS; i++) {
            values[i] = function.applyAsDouble(node(from, to, i));
        }
        double[] series = new double[TERMS + 2];
        for (int k = 0; k < TERMS; k++) {
            double sum = 0;
            for (int i = 0; i < TERMS; i++) {
                sum += values[i] * StrictMath.cos(k * (i + 0.5) * Math.PI / TERMS);
            }
            series[k] = (k == 0 ? 1.0 : 2.0) / TERMS * sum;
        }
        // ∫T_k = T_(k+1)/(2(k+1)) − T_(k−1)/(2(k−1)), and ∫T_0 = T_1.
        double[] integral = new double[TERMS + 1];
        for (int k = 1; k <= TERMS; k++) {
            double before = k == 1 ? 2 * series[0] : series[k - 1];
            integral[k] = (to - from) / 2 * (before - series[k + 1]) / (2 * k);
        }
        double atStart = 0;
        for (int k = 1; k <= TERMS; k++) {
            atStart += (k % 2 == 0 ? 1 : -1) * integral[k];
        }
        integral[0] = -atStart;
        return new ChebyshevPanel(from, to, integral);
    }

    static double node(double from, double to, int i) {
        return (from + to) / 2 + (to - from) / 2 * StrictMath.cos((i + 0.5) * Math.PI / TERMS);
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    /** Gives the integral from the begin of the interval to x. */
    double integralTo(double x) {
        double t = (2 * x - from - to) / (to - from);
        // Clenshaw's recurrence.
        double next = 0;
        double afterNext = 0;
        for (int k = TERMS; k >= 1; k--) {
            double here = 2 * t * next - afterNext + integral[k];
            afterNext = next;
            next = here;
        }
        return t * next - afterNext + integral[0];
    }
}
