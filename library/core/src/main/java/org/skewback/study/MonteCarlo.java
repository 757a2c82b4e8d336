package org.skewback.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.random.RandomGenerator.JumpableGenerator;
import java.util.random.RandomGeneratorFactory;
import org.skewback.quantity.Stop;
import org.skewback.quantity.Unit;

/** Draws blocks of samples, works them out on the tape and puts them together in their order. */
final class MonteCarlo {

    /** Samples of a block: a few rows of them fit the processor's second cache. */
    private static final int BLOCK = 2048;

    /** Blocks under way for each thread, so that none waits for the one that is put together. */
    private static final int AHEAD = 4;

    private static final int MOST_REPORTS = 200;
    private static final long LOOK_UP_MILLISECONDS = 50;

    /** D. Blackman and S. Vigna (2021); a jump skips 2¹²⁸ numbers, so no two blocks overlap. */
    private static final String GENERATOR = "Xoshiro256PlusPlus";

    private final Margin margin;
    private final StandardSpace space;
    private final Sampling sampling;
    private final Unit unit;
    private final long blocks;
    private final long reportEvery;
    private final JumpableGenerator root;
    private final ConcurrentLinkedQueue<Memory> memories = new ConcurrentLinkedQueue<>();
    private final List<Progress> reports = new ArrayList<>();

    /** Room for one block; used by one thread at a time. */
    private static final class Memory {
        private final double[][] values;
        private final double[][] room;
        private final double[][] results = new double[2][BLOCK];

        Memory(int givens) {
            values = new double[givens][BLOCK];
            room = new double[givens][BLOCK];
        }
    }

    MonteCarlo(Margin margin, StandardSpace space, Sampling sampling) {
        this.margin = margin;
        this.space = space;
        this.sampling = sampling;
        unit = margin.check().demand().unit();
        blocks = (sampling.samples() + BLOCK - 1) / BLOCK;
        reportEvery = (blocks + MOST_REPORTS - 1) / MOST_REPORTS;
        root = RandomGeneratorFactory.<JumpableGenerator>of(GENERATOR).create(sampling.seed());
    }

    Simulation run(Stop stop, Consumer<Progress> listener) {
        stop.check();
        Tally all = first();
        report(all, 1, listener);
        if (sampling.threads() == 1 || blocks == 1) {
            for (long block = 1; block < blocks; block++) {
                stop.check();
                add(all, worked(block, root.copyAndJump(), all), block, listener);
            }
        } else {
            together(all, stop, listener);
        }
        return Simulation.of(
                margin.check(),
                sampling,
                Require.quantity(all.mean(), unit),
                Require.quantity(all.deviation(), Require.ofDifferences(unit)),
                all.failures(),
                all.histogram(unit),
                reports,
                margin.fixedLimits());
    }

    private void together(Tally all, Stop stop, Consumer<Progress> listener) {
        ExecutorService workers = Executors.newFixedThreadPool(sampling.threads());
        try {
            Deque<Future<Tally>> underWay = new ArrayDeque<>();
            long next = 1;
            for (long block = 1; block < blocks; block++) {
                while (next < blocks && underWay.size() < sampling.threads() * AHEAD) {
                    long number = next++;
                    RandomGenerator own = root.copyAndJump();
                    underWay.add(workers.submit(() -> worked(number, own, all)));
                }
                stop.check();
                add(all, finished(underWay.remove(), stop), block, listener);
            }
        } finally {
            workers.shutdownNow();
        }
    }

    private static Tally finished(Future<Tally> work, Stop stop) {
        while (true) {
            try {
                return work.get(LOOK_UP_MILLISECONDS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                stop.check();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                CancellationException stopped = new CancellationException("stopped as asked");
                stopped.initCause(e);
                throw stopped;
            } catch (ExecutionException e) {
                if (e.getCause() instanceof RuntimeException known) {
                    throw known;
                }
                if (e.getCause() instanceof Error error) {
                    throw error;
                }
                throw new IllegalStateException(e);
            }
        }
    }

    private void add(Tally all, Tally block, long number, Consumer<Progress> listener) {
        all.add(block);
        report(all, number + 1, listener);
    }

    private void report(Tally all, long done, Consumer<Progress> listener) {
        if (done % reportEvery == 0 || done == blocks) {
            Progress progress = all.progress(sampling.samples(), unit);
            reports.add(progress);
            listener.accept(progress);
        }
    }

    private Tally first() {
        int size = size(0);
        double[][] results = results(size, root.copyAndJump(), memory());
        Tally all = Tally.suiting(results[Margin.DEMAND], size);
        all.add(results[Margin.DEMAND], results[Margin.MARGIN], size);
        return all;
    }

    private Tally worked(long block, RandomGenerator own, Tally pattern) {
        int size = size(block);
        Memory pooled = memories.poll();
        Memory memory = pooled == null ? memory() : pooled;
        double[][] results = results(size, own, memory);
        Tally tally = pattern.empty();
        tally.add(results[Margin.DEMAND], results[Margin.MARGIN], size);
        memories.add(memory);
        return tally;
    }

    private double[][] results(int size, RandomGenerator own, Memory memory) {
        space.draw(new Draws(own), memory.values, memory.room, size);
        margin.tape().evaluate(memory.values, size, memory.results);
        return memory.results;
    }

    private Memory memory() {
        return new Memory(space.size());
    }

    private int size(long block) {
        return (int) Math.min(BLOCK, sampling.samples() - block * BLOCK);
    }
}
