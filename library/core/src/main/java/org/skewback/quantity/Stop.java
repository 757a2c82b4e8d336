package org.skewback.quantity;

import java.util.concurrent.CancellationException;

/** Tells long work whether somebody wants it to stop. */
@FunctionalInterface
public interface Stop {

    /**
     * Tells whether the work should stop now.
     *
     * @return whether a stop was asked for
     */
    boolean requested();

    /**
     * Ends the work if a stop was asked for.
     *
     * @throws CancellationException when a stop was asked for
     */
    default void check() {
        if (requested()) {
            throw new CancellationException("stopped as asked");
        }
    }

    /**
     * Gives a stop that heeds the interrupt of the thread that asks.
     *
     * @return a stop that is requested while the asking thread is interrupted
     */
    static Stop onInterrupt() {
        return () -> Thread.currentThread().isInterrupted();
    }
}
