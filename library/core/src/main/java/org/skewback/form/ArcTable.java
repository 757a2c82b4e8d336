package org.skewback.form;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/** Arc length and its first moment of a line given by its slope, tabulated panel by panel. */
final class ArcTable implements ArcMeasure {

    /** Panels are no longer than this part of the span. */
    private static final int LEAST_PANELS = 16;

    private final ChebyshevPanel[] lengths;
    private final ChebyshevPanel[] moments;
    private final double[] starts;
    private final double[] lengthBefore;
    private final double[] momentBefore;

    private ArcTable(double[] ends, DoubleUnaryOperator slope) {
        int panels = ends.length - 1;
        lengths = new ChebyshevPanel[panels];
        moments = new ChebyshevPanel[panels];
        starts = Arrays.copyOf(ends, panels);
        lengthBefore = new double[panels];
        momentBefore = new double[panels];
        for (int i = 0; i < panels; i++) {
            double from = ends[i];
            double to = ends[i + 1];
            lengths[i] = ChebyshevPanel.of(x -> secant(slope, x), from, to);
            moments[i] = ChebyshevPanel.of(x -> x * secant(slope, x), from, to);
            if (i > 0) {
                lengthBefore[i] = lengthBefore[i - 1] + lengths[i - 1].integralTo(from);
                momentBefore[i] = momentBefore[i - 1] + moments[i - 1].integralTo(from);
            }
        }
    }

    static ArcTable of(double span, List<Double> breaks, DoubleUnaryOperator slope) {
        return new ArcTable(panelEnds(span, breaks), slope);
    }

    /** Ends of panels, which no break of the line lies within. */
    static double[] panelEnds(double span, List<Double> breaks) {
        TreeSet<Double> corners = new TreeSet<>(breaks);
        corners.add(0.0);
        corners.add(span);
        TreeSet<Double> ends = new TreeSet<>(corners);
        double from = 0;
        for (double to : corners.tailSet(0.0, false)) {
            int pieces = (int) Math.ceil((to - from) / span * LEAST_PANELS);
            for (int i = 1; i < pieces; i++) {
                ends.add(from + (to - from) * i / pieces);
            }
            from = to;
        }
        return ends.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public double arcLength(double from, double to) {
        int left = panel(from);
        int right = panel(to);
        return (lengthBefore[right] - lengthBefore[left])
                + (lengths[right].integralTo(to) - lengths[left].integralTo(from));
    }

    @Override
    public double arcMoment(double from, double to) {
        int left = panel(from);
        int right = panel(to);
        return (momentBefore[right] - momentBefore[left])
                + (moments[right].integralTo(to) - moments[left].integralTo(from));
    }

    private int panel(double x) {
        int found = Arrays.binarySearch(starts, x);
        return found >= 0 ? found : Math.max(0, -found - 2);
    }

    private static double secant(DoubleUnaryOperator slope, double x) {
        double p = slope.applyAsDouble(x);
        return Math.sqrt(1 + p * p);
    }
}
