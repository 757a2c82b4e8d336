package org.skewback.study;

/**
 * How many samples to draw, from which seed, on how many threads.
 *
 * <p>The result is the same on any number of threads: each block of samples has random numbers of its
 * own, and blocks are put together in their order.
 *
 * @param samples how many samples, from 2 to 10⁹
 * @param seed where the random numbers start
 * @param threads how many threads work, from 1 to 256
 */
public record Sampling(long samples, long seed, int threads) {

    private static final long MOST_SAMPLES = 1_000_000_000L;
    private static final int MOST_THREADS = 256;

    /**
     * Checks the numbers.
     *
     * @param samples how many samples, from 2 to 10⁹
     * @param seed where the random numbers start
     * @param threads how many threads work, from 1 to 256
     * @throws IllegalArgumentException when a number is outside
     */
    public Sampling {
        if (samples < 2 || samples > MOST_SAMPLES) {
            throw Require.refused("number of samples", samples, "from 2 to " + MOST_SAMPLES);
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw Require.refused("number of threads", threads, "from 1 to " + MOST_THREADS);
        }
    }

    /**
     * Draws on one thread with the seed 1.
     *
     * @param samples how many samples, from 2 to 10⁹
     * @return the sampling
     * @throws IllegalArgumentException when the number is outside
     */
    public static Sampling of(long samples) {
        return new Sampling(samples, 1, 1);
    }

    /**
     * Takes another seed.
     *
     * @param another the seed
     * @return this with that seed
     */
    public Sampling from(long another) {
        return new Sampling(samples, another, threads);
    }

    /**
     * Takes another number of threads.
     *
     * @param another number of threads, from 1 to 256
     * @return this with that number
     * @throws IllegalArgumentException when the number is outside
     */
    public Sampling on(int another) {
        return new Sampling(samples, seed, another);
    }
}
