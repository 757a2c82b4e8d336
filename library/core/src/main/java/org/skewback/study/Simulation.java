package org.skewback.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;

/**
 * What a Monte Carlo simulation of a check found.
 *
 * @param check the check
 * @param sampling how it was drawn
 * @param mean mean of the demand
 * @param standardDeviation standard deviation of the demand, with n − 1
 * @param probability probability of failure p = failures/samples; 0 where none failed, which is
 *     no proof: see the upper limit
 * @param standardError standard error of the probability, √(p(1 − p)/samples)
 * @param upperLimit what the probability of failure stays below with a confidence of 95 %, also
 *     where no sample failed: the one-sided score limit of E. B. Wilson (Journal of the American
 *     Statistical Association 22, 1927), (p + z²/2n + z√(p(1 − p)/n + z²/4n²))/(1 + z²/n) with z
 *     = 1.645
 * @param index reliability index that belongs to the probability, β = −Φ⁻¹(p); empty where none
 *     failed or all did
 * @param failures how many samples failed the check
 * @param histogram how the demands spread
 * @param convergence how mean and probability settled, from the first block to the last
 * @param fixedLimits limits of the check that no uncertain given moves
 */
public record Simulation(
        Check check,
        Sampling sampling,
        Quantity mean,
        Quantity standardDeviation,
        Quantity probability,
        Quantity standardError,
        Quantity upperLimit,
        List<Quantity> index,
        long failures,
        Histogram histogram,
        List<Progress> convergence,
        List<Quantity> fixedLimits)
        implements Displayable {

    /** Φ⁻¹(0.95). */
    private static final double ONE_SIDED_95 = 1.6448536269514726;

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param check the check
     * @param sampling how it was drawn
     * @param mean mean of the demand
     * @param standardDeviation standard deviation of the demand
     * @param probability probability of failure p = failures/samples; 0 where none failed, which is
     *     no proof: see the upper limit
     * @param standardError standard error of the probability, √(p(1 − p)/samples)
     * @param upperLimit what the probability of failure stays below with a confidence of 95 %, also
     *     where no sample failed: the one-sided score limit of E. B. Wilson (Journal of the American
     *     Statistical Association 22, 1927), (p + z²/2n + z√(p(1 − p)/n + z²/4n²))/(1 + z²/n) with z
     *     = 1.645
     * @param index reliability index that belongs to the probability, β = −Φ⁻¹(p); empty where none
     *     failed or all did
     * @param failures how many samples failed the check
     * @param histogram how the demands spread
     * @param convergence how mean and probability settled
     * @param fixedLimits limits of the check that no uncertain given moves
     */
    public Simulation {
        index = List.copyOf(index);
        convergence = List.copyOf(convergence);
        fixedLimits = List.copyOf(fixedLimits);
    }

    /** Works out what follows from the counts. */
    static Simulation of(
            Check check,
            Sampling sampling,
            Quantity mean,
            Quantity standardDeviation,
            long failures,
            Histogram histogram,
            List<Progress> convergence,
            List<Quantity> fixedLimits) {
        double n = sampling.samples();
        double p = failures / n;
        return new Simulation(
                check,
                sampling,
                mean,
                standardDeviation,
                Quantity.of(p),
                Quantity.of(Math.sqrt(p * (1 - p) / n)),
                Quantity.of(upperLimit(p, n)),
                p > 0 && p < 1
                        ? List.of(Quantity.of(ReliabilityIndex.ofProbability(p)))
                        : List.of(),
                failures,
                histogram,
                convergence,
                fixedLimits);
    }

    private static double upperLimit(double p, double n) {
        double z2 = ONE_SIDED_95 * ONE_SIDED_95;
        double root = Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
        return (p + z2 / (2 * n) + ONE_SIDED_95 * root) / (1 + z2 / n);
    }

    MonteCarloRoutine.Output figures() {
        return new MonteCarloRoutine.Output(
                mean, standardDeviation, probability, standardError, upperLimit, index);
    }

    /** This with figures that know where they come from. */
    Simulation with(MonteCarloRoutine.Output tied) {
        return new Simulation(
                check,
                sampling,
                tied.mean(),
                tied.standardDeviation(),
                tied.probability(),
                tied.standardError(),
                tied.upperLimit(),
                tied.index(),
                failures,
                histogram,
                convergence,
                fixedLimits);
    }

    /**
     * Gives the figures as a table.
     *
     * @return what was found, and its value
     */
    public Table table() {
        List<String> what = new ArrayList<>();
        List<String> values = new ArrayList<>();
        what.add("samples drawn, and failed");
        values.add(count(sampling.samples()) + ", " + count(failures));
        what.add("mean of the demand");
        values.add(Words.of(mean));
        what.add("standard deviation of the demand");
        values.add(Words.of(standardDeviation));
        what.add("probability of failure");
        values.add(
                failures == 0
                        ? "none failed"
                        : Words.of(probability) + " ± " + Words.of(standardError));
        what.add("below that with a confidence of 95 %");
        values.add(Words.of(upperLimit));
        if (!index.isEmpty()) {
            what.add("reliability index of that probability");
            values.add(Words.of(index.get(0)));
        }
        return Table.of(
                "What the samples gave",
                Column.texts("result", what),
                Column.texts("value", values));
    }

    private static String count(long samples) {
        return Words.of(Quantity.of((double) samples));
    }

    @Override
    public Map<String, String> display() {
        return StudyView.titled("Simulation: " + check.title())
                .table(table(), List.of())
                .saying(
                        "Seed "
                                + sampling.seed()
                                + "; the same on any number of threads. ± is one standard error.")
                .cautioning()
                .figures(this)
                .bundle();
    }

    /**
     * Writes the figures.
     *
     * @return such as {@code 1 000 000 samples: mean 1.544, standard deviation 0.1477, …}
     */
    @Override
    public String toString() {
        String text =
                Words.of(Quantity.of((double) sampling.samples()))
                        + " samples: mean "
                        + Words.of(mean)
                        + ", standard deviation "
                        + Words.of(standardDeviation)
                        + ", probability of failure ";
        return failures == 0
                ? text + "below " + Words.of(upperLimit) + " (none failed)"
                : text + Words.of(probability) + " ± " + Words.of(standardError);
    }
}
