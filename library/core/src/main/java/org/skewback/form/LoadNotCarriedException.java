package org.skewback.form;

/** The load can't be carried in the way asked for; the message says which load and why. */
public class LoadNotCarriedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message what can't be carried, and why
     */
    public LoadNotCarriedException(String message) {
        super(message);
    }
}
