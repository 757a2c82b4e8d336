package org.skewback.quantity;

/** Something cannot be worked out here, as a routine that it takes is not installed. */
public final class CannotTellException extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    /**
     * Says what is missing.
     *
     * @param message what cannot be told, and why
     */
    public CannotTellException(String message) {
        super(message);
    }

    /**
     * Says what is missing, and who found out.
     *
     * @param message what cannot be told, and why
     * @param cause what was thrown where it was missing
     */
    public CannotTellException(String message, Throwable cause) {
        super(message, cause);
    }
}
