package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Where an axis has its ticks, and what stands beside each: whole multiples of 1, 2 or 5 times a
 * power of ten.
 *
 * @param places place of each tick on the page, in points
 * @param labels number beside each tick
 */
record Ticks(List<Double> places, List<String> labels) {

    /** A tick this share of a step beyond the end still is at the end. */
    private static final double AT_THE_END = 1e-6;

    /**
     * Sets out the ticks of an axis.
     *
     * @param range least and greatest value
     * @param from place of the least value, in points
     * @param to place of the greatest value, in points
     * @param least least distance between two ticks, in points
     */
    static Ticks along(double[] range, double from, double to, double least) {
        double perPoint = (range[1] - range[0]) / Math.abs(to - from);
        double step = Numbers.niceAbove(least * perPoint);
        int decimals = (int) Math.max(0, -Math.floor(StrictMath.log10(step) + 1e-9));
        List<Double> places = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        double first = Math.ceil(range[0] / step - AT_THE_END);
        double last = Math.floor(range[1] / step + AT_THE_END);
        for (double i = first; i <= last; i++) {
            double value = i * step;
            places.add(from + (value - range[0]) / (range[1] - range[0]) * (to - from));
            labels.add(Numbers.fixed(value, decimals));
        }
        return new Ticks(places, labels);
    }
}
