package org.skewback.kernel.wire;

/** A received message that is not to be trusted or not to be understood. */
public final class BadMessageException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Says what is wrong.
     *
     * @param message what is wrong with the message, in words
     */
    public BadMessageException(String message) {
        super(message);
    }

    /**
     * Says what is wrong and what showed it.
     *
     * @param message what is wrong with the message, in words
     * @param cause what showed it
     */
    public BadMessageException(String message, Throwable cause) {
        super(message, cause);
    }
}
