package org.skewback.desk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.jspecify.annotations.Nullable;

/**
 * Stops the work of the desk for a reason that the user can act on.
 *
 * <p>The message is shown as it is, without a stack trace, so it says which file, sheet or cell is
 * meant and what is expected there.
 */
public final class Problem extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes a problem.
     *
     * @param message what is wrong, in the user's words
     */
    public Problem(String message) {
        super(message);
    }

    /**
     * Makes a problem that something else caused.
     *
     * @param message what is wrong, in the user's words
     * @param cause what caused it
     */
    public Problem(String message, Throwable cause) {
        super(message, cause);
    }

    /**
     * Makes a problem of a failed reading or writing.
     *
     * @param doing what could not be done, such as {@code cannot read a.ipynb}
     * @param cause what the system said
     * @return the problem, with the system's reason in plain words
     */
    public static Problem of(String doing, IOException cause) {
        return new Problem(doing + ": " + reason(cause), cause);
    }

    private static String reason(IOException cause) {
        if (cause instanceof NoSuchFileException missing) {
            return "there is no " + missing.getFile();
        }
        if (cause instanceof AccessDeniedException denied) {
            return "access to " + denied.getFile() + " is denied";
        }
        if (cause instanceof FileSystemException system) {
            @Nullable String reason = system.getReason();
            return reason == null ? "the system refused " + system.getFile() : reason;
        }
        @Nullable String message = cause.getMessage();
        return message == null ? cause.getClass().getSimpleName() : message;
    }
}
