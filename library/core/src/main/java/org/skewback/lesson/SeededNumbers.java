package org.skewback.lesson;

import java.math.BigDecimal;

/**
 * Whole numbers that follow from a seed by SplitMix64, and by nothing of the JDK's own that another
 * release might change. Belongs to one thread.
 *
 * <p>State s grows by 9E3779B97F4A7C15 (hexadecimal) for each number; a number is s, mixed as {@code
 * z ^= z >>> 30; z *= BF58476D1CE4E5B9; z ^= z >>> 27; z *= 94D049BB133111EB; z ^= z >>> 31}.
 *
 * <p>Source: G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators,
 * OOPSLA 2014, with the mixing constants of variant 13 of D. Stafford (title and constants from
 * memory; a test holds them against values worked out apart from this code).
 */
final class SeededNumbers {

    private static final long STEP = 0x9E3779B97F4A7C15L;

    private long state;

    SeededNumbers(long seed) {
        this.state = seed;
    }

    /** Gives the next 64 bits. */
    long next() {
        state += STEP;
        long mixed = state;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    /** Gives a whole number from 0 to count − 1, each alike but for one part in 2⁶⁴/count. */
    int below(int count) {
        return (int) Long.remainderUnsigned(next(), count);
    }

    /** Gives from + k · step for a k drawn evenly, as the shortest decimal says it. */
    double within(BigDecimal from, BigDecimal step, int count) {
        return from.add(step.multiply(BigDecimal.valueOf(below(count)))).doubleValue();
    }
}
