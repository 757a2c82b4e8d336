package org.skewback.study;

import java.util.List;
import java.util.OptionalDouble;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;

/**
 * What a Monte Carlo simulation of a check found.
 *
 * @param check the check
 * @param sampling how it was drawn
 * @param mean mean of the demand
 * @param standardDeviation standard deviation of the demand, with n − 1
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
        long failures,
        Histogram histogram,
        List<Progress> convergence,
        List<Quantity> fixedLimits) {

    /** Φ⁻¹(0.95). */
    private static final double ONE_SIDED_95 = 1.6448536269514726;

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param check the check
     * @param sampling how it was drawn
     * @param mean mean of the demand
     * @param standardDeviation standard deviation of the demand
     * @param failures how many samples failed the check
     * @param histogram how the demands spread
     * @param convergence how mean and probability settled
     * @param fixedLimits limits of the check that no uncertain given moves
     */
    public Simulation {
        convergence = List.copyOf(convergence);
        fixedLimits = List.copyOf(fixedLimits);
    }

    /**
     * Gives the probability of failure found.
     *
     * @return p = failures/samples; 0 where none failed, which is no proof: see {@link #upperLimit}
     */
    public double probability() {
        return (double) failures / sampling.samples();
    }

    /**
     * Gives the standard error of the probability.
     *
     * @return √(p(1 − p)/samples)
     */
    public double standardError() {
        double p = probability();
        return Math.sqrt(p * (1 - p) / sampling.samples());
    }

    /**
     * Gives what the probability of failure stays below with a confidence of 95 %, also where no
     * sample failed.
     *
     * @return the one-sided score limit of E. B. Wilson (Journal of the American Statistical
     *     Association 22, 1927), (p + z²/2n + z√(p(1 − p)/n + z²/4n²))/(1 + z²/n) with z = 1.645
     */
    public double upperLimit() {
        double n = sampling.samples();
        double p = probability();
        double z2 = ONE_SIDED_95 * ONE_SIDED_95;
        double root = Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
        return (p + z2 / (2 * n) + ONE_SIDED_95 * root) / (1 + z2 / n);
    }

    /**
     * Gives the reliability index that belongs to the probability.
     *
     * @return β = −Φ⁻¹(p); empty where none failed or all did
     */
    public OptionalDouble index() {
        double p = probability();
        return p > 0 && p < 1
                ? OptionalDouble.of(ReliabilityIndex.ofProbability(p))
                : OptionalDouble.empty();
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
                ? text + "below " + Words.of(Quantity.of(upperLimit())) + " (none failed)"
                : text
                        + Words.of(Quantity.of(probability()))
                        + " ± "
                        + Words.of(Quantity.of(standardError()));
    }
}
