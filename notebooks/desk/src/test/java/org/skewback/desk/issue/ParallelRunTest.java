package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.skewback.desk.Problem;

/** Work that needs nothing runs side by side, the rest when what it needs is done. */
class ParallelRunTest {

    private static void await(CyclicBarrier barrier) {
        try {
            barrier.await(1, TimeUnit.MINUTES);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void twoThatNeedNothingRunAtOnceAndTheThirdAfterBoth() throws Exception {
        // Each of the two waits for the other, so they end only if they run at once.
        CyclicBarrier both = new CyclicBarrier(2);
        List<String> ended = Collections.synchronizedList(new ArrayList<>());
        ParallelRun.Work meets =
                () -> {
                    await(both);
                    ended.add("meets");
                };
        new ParallelRun(2)
                .run(
                        List.of(meets, meets, () -> ended.add("third")),
                        List.of(Set.of(), Set.of(), Set.of(0, 1)),
                        List.of(1, 1, 1),
                        () -> {});
        assertEquals(List.of("meets", "meets", "third"), ended);
    }

    @Test
    void whatMostOfTheRestWaitsForBeginsFirstSideBySide() throws Exception {
        assertEquals(List.of("long", "needed", "short", "last"), begun(2));
    }

    @Test
    void oneByOneTheyRunAsTheyStand() throws Exception {
        assertEquals(List.of("short", "long", "needed", "last"), begun(1));
    }

    /** Of four, the last needs the third; what begins second waits until the first has begun. */
    private static List<String> begun(int atOnce) throws Exception {
        List<String> begun = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch first = new CountDownLatch(atOnce == 1 ? 0 : 1);
        CountDownLatch others = new CountDownLatch(atOnce == 1 ? 0 : 3);
        ParallelRun.Work isLong =
                () -> {
                    begun.add("long");
                    first.countDown();
                    await(others);
                };
        new ParallelRun(atOnce)
                .run(
                        List.of(
                                begins("short", begun, first, others),
                                isLong,
                                begins("needed", begun, first, others),
                                begins("last", begun, first, others)),
                        List.of(Set.of(), Set.of(), Set.of(), Set.of(2)),
                        List.of(6, 9, 3, 5),
                        () -> {});
        return begun;
    }

    private static ParallelRun.Work begins(
            String name, List<String> begun, CountDownLatch first, CountDownLatch others) {
        return () -> {
            await(first);
            begun.add(name);
            others.countDown();
        };
    }

    private static void await(CountDownLatch latch) {
        try {
            assertTrue(latch.await(1, TimeUnit.MINUTES));
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whenOneFailsTheOthersAreEndedAndNoFurtherOneStarts() {
        CountDownLatch end = new CountDownLatch(1);
        CyclicBarrier started = new CyclicBarrier(2);
        List<String> ran = Collections.synchronizedList(new ArrayList<>());
        ParallelRun.Work waits =
                () -> {
                    await(started);
                    try {
                        assertTrue(end.await(1, TimeUnit.MINUTES));
                    } catch (InterruptedException e) {
                        throw new IllegalStateException(e);
                    }
                    throw new Problem("ended");
                };
        ParallelRun.Work fails =
                () -> {
                    await(started);
                    throw new Problem("the first");
                };
        Problem problem =
                assertThrows(
                        Problem.class,
                        () ->
                                new ParallelRun(2)
                                        .run(
                                                List.of(waits, fails, () -> ran.add("third")),
                                                List.of(Set.of(), Set.of(), Set.of()),
                                                List.of(1, 1, 1),
                                                end::countDown));
        assertEquals("the first", problem.getMessage());
        assertEquals(List.of(), ran);
    }
}
