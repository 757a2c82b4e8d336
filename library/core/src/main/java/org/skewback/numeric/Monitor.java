package org.skewback.numeric;

import java.util.concurrent.CancellationException;
import org.skewback.quantity.Stop;

/** Watches long work: it may stop it, and it is told how far it has come. */
@FunctionalInterface
public interface Monitor {

    /**
     * Told from time to time by the thread that works; whoever wants the work to end throws from
     * here.
     *
     * @param work what is being done, such as {@code "factorization"}
     * @param done share done, 0 to 1
     * @throws CancellationException when the work should stop
     */
    void at(String work, double done);

    /**
     * Gives a monitor that stops the work when the thread that does it is interrupted, and tells
     * nobody.
     *
     * @return the monitor used where none is named
     */
    static Monitor quiet() {
        return of(Stop.onInterrupt());
    }

    /**
     * Gives a monitor that stops the work when asked to, and tells nobody.
     *
     * @param stop tells whether to stop
     * @return the monitor
     */
    static Monitor of(Stop stop) {
        return (work, done) -> stop.check();
    }

    /**
     * Gives a monitor that stops the work when asked to, and tells a listener.
     *
     * @param stop tells whether to stop
     * @param listener told what is done and how far
     * @return the monitor
     */
    static Monitor of(Stop stop, Monitor listener) {
        return (work, done) -> {
            stop.check();
            listener.at(work, done);
        };
    }
}
