package org.skewback.desk.audit;

/**
 * What a stage of an audit took. It differs from run to run and is no part of the verdict.
 *
 * @param stage which stage
 * @param from when it first began, s from the start of its process
 * @param to when it last ended, s from the start of its process
 * @param threads how long threads were at it, s, summed over them
 * @param processor how long processors were at it, s, summed over threads
 */
public record Effort(Stage stage, double from, double to, double threads, double processor) {

    /** Takes two shares of the same stage in one process together. */
    Effort and(Effort other) {
        return new Effort(
                stage,
                Math.min(from, other.from),
                Math.max(to, other.to),
                threads + other.threads,
                processor + other.processor);
    }
}
