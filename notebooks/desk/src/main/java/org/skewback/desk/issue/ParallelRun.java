package org.skewback.desk.issue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;

/** Does pieces of work side by side, each when those that it needs are done. */
final class ParallelRun {

    private final int atOnce;

    ParallelRun(int atOnce) {
        this.atOnce = atOnce;
    }

    /** A piece of work. */
    interface Work {
        void run() throws Problem;
    }

    /** Ends whatever runs, from another thread. */
    interface End {
        void now();
    }

    /**
     * Does pieces of work that need nothing of each other and come to their end by themselves.
     *
     * @param work the pieces
     * @throws Problem the first of the pieces' problems
     */
    void run(List<Work> work) throws Problem {
        int pieces = work.size();
        run(work, Collections.nCopies(pieces, Set.of()), Collections.nCopies(pieces, 1), () -> {});
    }

    /**
     * Does all pieces of work.
     *
     * @param work the pieces
     * @param needs for each the positions of earlier ones that it needs
     * @param sizes for each how long it takes, in any measure
     * @param end called once where a piece fails while others run
     * @throws Problem the first of the pieces' problems; no piece runs any more then
     */
    void run(List<Work> work, List<Set<Integer>> needs, List<Integer> sizes, End end)
            throws Problem {
        ExecutorService threads =
                Executors.newFixedThreadPool(Math.max(1, Math.min(atOnce, work.size())));
        try {
            run(work, needs, order(needs, sizes), end, new ExecutorCompletionService<>(threads));
        } finally {
            threads.shutdown();
        }
    }

    /**
     * In which order to begin: side by side, first what most of the rest waits for, so that the end does
     * not wait for a long chain that began late; one by one, as they stand.
     */
    private List<Integer> order(List<Set<Integer>> needs, List<Integer> sizes) {
        int[] untilEnd = new int[sizes.size()];
        List<Integer> order = new ArrayList<>();
        for (int i = sizes.size() - 1; i >= 0; i--) {
            order.add(0, i);
            untilEnd[i] += sizes.get(i);
            for (int need : needs.get(i)) {
                untilEnd[need] = Math.max(untilEnd[need], untilEnd[i]);
            }
        }
        if (atOnce > 1) {
            order.sort(Comparator.comparingInt(i -> -untilEnd[i]));
        }
        return order;
    }

    private void run(
            List<Work> work,
            List<Set<Integer>> needs,
            List<Integer> waiting,
            End end,
            CompletionService<Integer> threads)
            throws Problem {
        Set<Integer> done = new HashSet<>();
        int running = 0;
        @Nullable Problem first = null;
        @Nullable RuntimeException fault = null;
        while (true) {
            // No more than can run, so that what comes first of those that may is still open.
            for (int i = 0;
                    first == null && fault == null && i < waiting.size() && running < atOnce; ) {
                int next = waiting.get(i);
                if (done.containsAll(needs.get(next))) {
                    waiting.remove(i);
                    running++;
                    threads.submit(
                            () -> {
                                work.get(next).run();
                                return next;
                            });
                } else {
                    i++;
                }
            }
            if (running == 0) {
                break;
            }
            try {
                done.add(threads.take().get());
            } catch (ExecutionException e) {
                boolean stops = first == null && fault == null;
                if (e.getCause() instanceof Problem problem) {
                    first = first == null && fault == null ? problem : first;
                } else if (fault == null) {
                    fault = new IllegalStateException("a piece of work failed", e.getCause());
                }
                if (stops) {
                    end.now();
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                end.now();
                throw new Problem("the issue was interrupted", e);
            }
            running--;
        }
        if (first != null) {
            throw first;
        } else if (fault != null) {
            throw fault;
        }
    }
}
