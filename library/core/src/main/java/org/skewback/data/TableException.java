package org.skewback.data;

/** A table can't be used; the message names the file, the line and the column. */
public class TableException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message what is wrong and where
     */
    public TableException(String message) {
        super(message);
    }

    /**
     * Makes the exception for a file that can't be read.
     *
     * @param message what is wrong and where
     * @param cause why
     */
    public TableException(String message, Throwable cause) {
        super(message, cause);
    }
}
