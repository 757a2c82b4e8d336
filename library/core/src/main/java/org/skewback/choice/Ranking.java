package org.skewback.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.skewback.quantity.Quantity;

/**
 * Options ranked by weighted measures: the score is the weighted mean of where an option lies between
 * the best (0) and the worst (1) in each measure, {@code s_i = Σ w_j p_ij / Σ w_j}; the lowest is first.
 *
 * <p>Source: the additive weighting of any text on decisions with several aims; no single one is
 * followed. The weights are a judgement. A ranking is therefore worth no more than the answer to the
 * question of how much another judgement would change it: {@link #turns} and {@link #firstShares}.
 *
 * <p>Places between best and worst depend on which options are compared: adding a poor option draws the
 * others together in its measures.
 *
 * @param options names of the options, at least two, all different
 * @param measures what is compared, at least one, each with a value for each option
 */
public record Ranking(List<String> options, List<Measure> measures) {

    private static final int MOST_WEIGHTINGS = 5_000_000;

    /**
     * Checks and keeps copies.
     *
     * @param options names of the options, at least two, all different
     * @param measures what is compared, at least one, each with a value for each option
     * @throws IllegalArgumentException if there are too few options or measures, two options of one name,
     *     a measure without a value for each option, or no weight above 0
     */
    public Ranking {
        options = List.copyOf(options);
        measures = List.copyOf(measures);
        if (options.size() < 2 || options.stream().distinct().count() < options.size()) {
            throw new IllegalArgumentException(
                    "options are " + options + "; allowed are at least two, all different");
        }
        if (measures.stream().noneMatch(measure -> measure.weight().si() > 0)) {
            throw new IllegalArgumentException("no measure has a weight above 0");
        }
        for (Measure measure : measures) {
            if (measure.values().size() != options.size()) {
                throw new IllegalArgumentException(
                        "measure "
                                + measure.name()
                                + " has "
                                + measure.values().size()
                                + " values for "
                                + options.size()
                                + " options");
            }
        }
    }

    /**
     * Another option that becomes first when one weight alone is changed, the others keeping their
     * proportions.
     *
     * @param measure measure whose weight is changed
     * @param weight its part of all weights as it stands
     * @param turning its part at which both are level
     * @param option name of the option that is first beyond it
     */
    public record Turn(String measure, Quantity weight, Quantity turning, String option) {}

    /**
     * Gives the scores; the place of option i in measure j is called {@code p_j,i} in them, counted
     * from 1.
     *
     * @return a number from 0 to 1 for each option, in their order; less is better
     */
    public List<Quantity> scores() {
        Quantity all = Quantity.sum(measures.stream().map(Measure::weight).toList());
        List<Quantity> scores = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            List<Quantity> parts = new ArrayList<>();
            for (int j = 0; j < measures.size(); j++) {
                parts.add(measures.get(j).weight().times(place(j, i)));
            }
            scores.add(Quantity.sum(parts).over(all));
        }
        return scores;
    }

    /** Named, so that a score prints as a sum of weights and places. */
    private Quantity place(int measure, int option) {
        Measure of = measures.get(measure);
        String symbol = "p_" + (measure + 1) + "," + (option + 1);
        return of.places()
                .get(option)
                .named(symbol, "", of.name() + ", place of " + options.get(option));
    }

    /**
     * Gives the options in order.
     *
     * @return indices of the options, the best first; those of one score in the order given
     */
    public List<Integer> order() {
        List<Quantity> scores = scores();
        return IntStream.range(0, options.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> scores.get(i).si()))
                .toList();
    }

    /**
     * Tells how far each weight may move before another option is first: with the scores {@code r_i} that
     * the other measures alone would give, the first option a and another b are level where {@code v = (r_b
     * − r_a)/((r_b − r_a) − (p_b − p_a))}.
     *
     * @return for each measure the nearest such weights from 0 to 1, the one below and the one above the
     *     weight that stands, where there are such; a measure that has all the weight is left out
     */
    public List<Turn> turns() {
        List<Turn> turns = new ArrayList<>();
        Quantity all = Quantity.sum(measures.stream().map(Measure::weight).toList());
        List<Quantity> scores = scores();
        int first = order().get(0);
        for (Measure measure : measures) {
            Quantity weight = measure.weight().over(all);
            if (weight.si() >= 1) {
                continue;
            }
            List<Turn> found = turns(measure, weight, scores, first);
            nearest(found, true).ifPresent(turns::add);
            nearest(found, false).ifPresent(turns::add);
        }
        return turns;
    }

    private List<Turn> turns(Measure measure, Quantity weight, List<Quantity> scores, int first) {
        List<Quantity> places = measure.places();
        Quantity rest = Quantity.of(1).minus(weight);
        List<Turn> found = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            if (i == first) {
                continue;
            }
            Quantity here = places.get(i).minus(places.get(first));
            Quantity others =
                    scores.get(i).minus(scores.get(first)).minus(weight.times(here)).over(rest);
            Quantity slope = others.minus(here);
            double level = others.si() / slope.si();
            if (level >= 0 && level <= 1) {
                found.add(new Turn(measure.name(), weight, others.over(slope), options.get(i)));
            }
        }
        return found;
    }

    private static Optional<Turn> nearest(List<Turn> found, boolean below) {
        Comparator<Turn> byTurning = Comparator.comparingDouble(turn -> turn.turning().si());
        return below
                ? found.stream()
                        .filter(turn -> turn.turning().si() < turn.weight().si())
                        .max(byTurning)
                : found.stream()
                        .filter(turn -> turn.turning().si() >= turn.weight().si())
                        .min(byTurning);
    }

    /**
     * Tells under what part of all weightings each option would be first: every way of giving whole
     * {@code parts} to the measures counts once, and options that are level share it.
     *
     * @param parts number of equal parts that the whole weight is cut into, at least 1
     * @return a number for each option, in their order; their sum is 1
     * @throws IllegalArgumentException if the number is less than 1 or there would be more than 5 million
     *     weightings
     */
    public List<Double> firstShares(int parts) {
        long count = weightings(parts);
        double[][] places = new double[options.size()][measures.size()];
        for (int j = 0; j < measures.size(); j++) {
            List<Quantity> of = measures.get(j).places();
            for (int i = 0; i < options.size(); i++) {
                places[i][j] = of.get(i).si();
            }
        }
        double[] won = new double[options.size()];
        give(0, parts, new double[options.size()], places, won);
        return Arrays.stream(won).mapToObj(part -> part / count).toList();
    }

    private long weightings(int parts) {
        if (parts < 1) {
            throw new IllegalArgumentException(
                    "number of parts is " + parts + "; allowed is at least 1");
        }
        long count = 1;
        for (int j = 1; j < measures.size(); j++) {
            count = count * (parts + j) / j;
            if (count > MOST_WEIGHTINGS) {
                throw new IllegalArgumentException(
                        "number of parts is "
                                + parts
                                + "; with "
                                + measures.size()
                                + " measures that makes more than "
                                + MOST_WEIGHTINGS
                                + " weightings");
            }
        }
        return count;
    }

    /** Gives parts to this measure and those after it. */
    private static void give(int j, int left, double[] scores, double[][] places, double[] won) {
        if (j == places[0].length - 1) {
            award(scores, places, left, won);
            return;
        }
        for (int given = 0; given <= left; given++) {
            double[] next = new double[scores.length];
            for (int i = 0; i < next.length; i++) {
                next[i] = scores[i] + given * places[i][j];
            }
            give(j + 1, left - given, next, places, won);
        }
    }

    private static void award(double[] scores, double[][] places, int last, double[] won) {
        int lastMeasure = places[0].length - 1;
        double[] total = new double[scores.length];
        Arrays.setAll(total, i -> scores[i] + last * places[i][lastMeasure]);
        double best = Arrays.stream(total).min().orElseThrow();
        // Sums of the same products in the same order: only true ties are level beyond rounding.
        double level = best + 1e-9;
        long ties = Arrays.stream(total).filter(score -> score <= level).count();
        for (int i = 0; i < total.length; i++) {
            if (total[i] <= level) {
                won[i] += 1.0 / ties;
            }
        }
    }
}
