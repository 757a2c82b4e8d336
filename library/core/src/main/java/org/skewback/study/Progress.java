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
        double probabilityError) {}
