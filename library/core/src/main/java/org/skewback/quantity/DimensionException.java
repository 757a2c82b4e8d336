package org.skewback.quantity;

/** Thrown when an operation needs other dimensions than it was given; its message says both. */
public final class DimensionException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Says what was asked and of which quantities.
     *
     * @param message the operation, both quantities and both dimensions
     */
    public DimensionException(String message) {
        super(message);
    }
}
