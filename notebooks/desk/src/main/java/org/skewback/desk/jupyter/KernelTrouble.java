package org.skewback.desk.jupyter;

/** Says, in the user's words, why a kernel could not start or a cell did not end by itself. */
public final class KernelTrouble extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message a clause that reads on from the name of the cell or sheet, such as {@code it
     *     ran longer than 5 min}
     */
    public KernelTrouble(String message) {
        super(message);
    }

    /**
     * Makes the exception.
     *
     * @param message a clause as above
     * @param cause what caused it
     */
    public KernelTrouble(String message, Throwable cause) {
        super(message, cause);
    }
}
