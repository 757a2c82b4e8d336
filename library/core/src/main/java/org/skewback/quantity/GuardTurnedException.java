package org.skewback.quantity;

/**
 * Thrown when a sample turns a condition whose other branch is not known, so that the formula for it
 * is not known either.
 */
public final class GuardTurnedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message names the condition, the values and why the other branch is absent
     */
    public GuardTurnedException(String message) {
        super(message);
    }
}
