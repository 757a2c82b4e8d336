package org.skewback.kernel.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A line between a cell and the front end, over which both send JSON objects.
 *
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/messaging.html#custom-messages">Jupyter
 *     client documentation, "Custom Messages"</a>
 */
public final class Comm {

    private final Comms comms;
    private final String id;
    private final String target;
    private final String openedWith;
    private volatile @Nullable Consumer<String> receiver;
    private volatile @Nullable Runnable closed;

    Comm(Comms comms, String id, String target, String openedWith) {
        this.comms = comms;
        this.id = id;
        this.target = target;
        this.openedWith = openedWith;
    }

    /**
     * Gives the identifier, which front end and cell share.
     *
     * @return the identifier
     */
    public String id() {
        return id;
    }

    /**
     * Gives the name of what is spoken to.
     *
     * @return the target
     */
    public String target() {
        return target;
    }

    /**
     * Gives what the one who opened it sent along.
     *
     * @return a JSON object as text
     */
    public String openedWith() {
        return openedWith;
    }

    /**
     * Says who takes what the front end sends. Messages come between cells, one at a time.
     *
     * @param taker takes each message, a JSON object as text
     * @return this
     */
    public Comm onMessage(Consumer<String> taker) {
        receiver = taker;
        return this;
    }

    /**
     * Says what is done once the front end has closed it.
     *
     * @param action what is done
     * @return this
     */
    public Comm onClose(Runnable action) {
        closed = action;
        return this;
    }

    /**
     * Sends a message to the front end.
     *
     * @param json a JSON object as text
     */
    public void send(String json) {
        tell("comm_msg", json);
    }

    /** Closes the line. */
    public void close() {
        comms.forget(this);
        tell("comm_close", "{}");
    }

    private void tell(String type, String json) {
        try {
            comms.send(this, type, json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void received(String json) {
        Consumer<String> taker = receiver;
        if (taker != null) {
            taker.accept(json);
        }
    }

    void closedByFrontEnd() {
        Runnable action = closed;
        if (action != null) {
            action.run();
        }
    }
}
