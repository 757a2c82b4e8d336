package org.skewback.figure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Where an axis has its ticks, and what stands beside each: whole multiples of 1, 2 or 5 times a
 * power of ten.
 *
 * @param places place of each tick on the page, in points
 * @param labels number beside each tick; empty for none
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

    /**
     * Sets out the ticks of an axis of dates: at the first of January of whole years; where fewer
     * than two of them lie in the range, at the first of a month, written as in ISO 8601, 2023-07.
     *
     * @param range least and greatest date, each as {@link #year(LocalDate)} writes it
     * @param from place of the least date, in points
     * @param to place of the greatest date, in points
     * @param least least distance between two ticks, in points
     */
    static Ticks dates(double[] range, double from, double to, double least) {
        double perPoint = (range[1] - range[0]) / Math.abs(to - from);
        int first = (int) Math.ceil(range[0] - AT_THE_END);
        int last = (int) Math.floor(range[1] + AT_THE_END);
        List<Double> places = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        if (last > first) {
            int step = (int) Numbers.niceAbove(Math.max(1, least * perPoint));
            for (int year = -Math.floorDiv(-first, step) * step; year <= last; year += step) {
                places.add(from + (year - range[0]) / (range[1] - range[0]) * (to - from));
                labels.add(String.valueOf(year));
            }
            return new Ticks(places, labels);
        }
        int step = 1;
        while (step < 12 && step / 12.0 < least * perPoint) {
            step += step < 3 ? 1 : step;
        }
        LocalDate date = LocalDate.of((int) Math.floor(range[0]), 1, 1);
        for (; year(date) <= range[1] + AT_THE_END; date = date.plusMonths(step)) {
            if (year(date) >= range[0] - AT_THE_END) {
                places.add(from + (year(date) - range[0]) / (range[1] - range[0]) * (to - from));
                labels.add(date.toString().substring(0, 7));
            }
        }
        return new Ticks(places, labels);
    }

    /** Writes a date as a number of years: its year and what of it has passed. */
    static double year(LocalDate date) {
        return date.getYear() + (date.getDayOfYear() - 1) / (double) date.lengthOfYear();
    }

    /**
     * Sets out the ticks of a logarithmic axis: one at each decade, and at 2 and 5 times it where
     * there is room; between them, ticks without a number at the other whole multiples.
     *
     * @param range logarithms of the least and greatest value
     * @param from place of the least value, in points
     * @param to place of the greatest value, in points
     * @param least least distance between two numbers, in points
     */
    static Ticks logarithmic(double[] range, double from, double to, double least) {
        double perDecade = Math.abs(to - from) / (range[1] - range[0]);
        boolean between = perDecade * StrictMath.log10(2) >= least;
        List<Double> places = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (int decade = (int) Math.floor(range[0]); decade <= range[1]; decade++) {
            for (int i = 1; i < 10; i++) {
                double at = decade + StrictMath.log10(i);
                if (at < range[0] - AT_THE_END || at > range[1] + AT_THE_END) {
                    continue;
                }
                boolean named = i == 1 || (between && (i == 2 || i == 5));
                places.add(from + (at - range[0]) / (range[1] - range[0]) * (to - from));
                double value = i * Double.parseDouble("1e" + decade);
                labels.add(named ? Numbers.fixed(value, Math.max(0, -decade)) : "");
            }
        }
        return new Ticks(places, labels);
    }
}
