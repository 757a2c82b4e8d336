package org.skewback.kernel.evaluation;

import java.nio.file.Path;
import java.util.List;

/** Where libraries named by coordinates come from. */
public interface Libraries {

    /**
     * A library on disk.
     *
     * @param name {@code group:artifact}
     * @param version its version
     * @param file jar for the class path
     */
    record Library(String name, String version, Path file) {}

    /** A library cannot be had; the message says why and what to do. */
    final class MissingException extends Exception {
        private static final long serialVersionUID = 1L;

        /**
         * Says what is missing.
         *
         * @param message what is missing, where it was looked for and what to do
         */
        public MissingException(String message) {
            super(message);
        }
    }

    /**
     * Finds a library and all it needs to run.
     *
     * @param coordinates {@code group:artifact:version}
     * @return the library first, then what it needs
     * @throws MissingException if a file is missing or the coordinates are not of that form
     */
    List<Library> find(String coordinates) throws MissingException;
}
