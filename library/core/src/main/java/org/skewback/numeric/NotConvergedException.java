package org.skewback.numeric;

/**
 * An iteration ended without reaching its tolerance; the message names what was sought, after how
 * many steps, and how far off it still was.
 */
public final class NotConvergedException extends ArithmeticException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message what was sought, the steps taken and the remaining error
     */
    public NotConvergedException(String message) {
        super(message);
    }

    /**
     * Makes the exception for an iteration that ended with an exception of its own.
     *
     * @param message what was sought
     * @param cause what ended the iteration
     */
    public NotConvergedException(String message, Throwable cause) {
        super(message);
        initCause(cause);
    }
}
