package org.skewback.study;

import org.skewback.quantity.Quantity;

/**
 * Where a simulation stands after some of its samples.
 *
 * @param samples samples drawn so far
 * @param wanted samples wanted in all
 * @param mean mean of the demand so far
 * @param meanError standard error of that mean: standard deviation/√samples
 * @param probability share of the samples that failed so far
 * @param probabilityError standard error of that share p: √(p(1 − p)/samples)
 */
public record Progress(
        long samples,
        long wanted,
        Quantity mean,
        Quantity meanError,
        double probability,
        double probabilityError) {

    /**
     * Gives the share of the samples that are drawn.
     *
     * @return from 0 to 1
     */
    public double share() {
        return (double) samples / wanted;
    }

    /**
     * Writes it on one line.
     *
     * @return such as {@code 30 %, 300 000 of 1 000 000 samples: mean 1.544 ± 0.0003, probability of
     *     failure 0.0001100 ± 0.00001900}; ± is one standard error
     */
    @Override
    public String toString() {
        return (int) (100 * share())
                + " %, "
                + Words.of(Quantity.of((double) samples))
                + " of "
                + Words.of(Quantity.of((double) wanted))
                + " samples: mean "
                + Words.of(mean)
                + " ± "
                + Words.of(meanError)
                + ", probability of failure "
                + Words.of(Quantity.of(probability))
                + " ± "
                + Words.of(Quantity.of(probabilityError));
    }
}
