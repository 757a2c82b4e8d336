package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Long work says how far it is and ends when asked to. */
class MonitorTest {

    private final SymmetricMatrix stiffness = RandomMatrices.grid(30, 30);

    @Test
    void anInterruptEndsTheWork() {
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, () -> Factorization.of(stiffness));
        assertTrue(Thread.interrupted());
    }

    @Test
    void modesEndInTheMiddleWhenAsked() {
        AtomicInteger calls = new AtomicInteger();
        Monitor monitor = Monitor.of(() -> calls.incrementAndGet() > 10);
        assertThrows(
                CancellationException.class,
                () -> Eigenproblem.vibration(stiffness, stiffness, 5, monitor));
        assertEquals(11, calls.get());
    }

    @Test
    void sharesDoneGrowFromNoneToAll() {
        List<Double> shares = new ArrayList<>();
        Monitor listener = (work, done) -> shares.add(done);
        SymbolicFactorization.of(stiffness.pattern())
                .factorize(stiffness, PivotLimits.usual(), Monitor.of(() -> false, listener));
        assertEquals(0, shares.get(0));
        assertEquals(1, shares.get(shares.size() - 1));
        assertEquals(shares.stream().sorted().toList(), shares);
    }
}
