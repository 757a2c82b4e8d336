package org.skewback.kernel.evaluation;

import java.nio.file.Path;
import java.util.List;

/** Where libraries named by coordinates come from. */
public interface Libraries {

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
     * @return files for the class path, the library first
     * @throws MissingException if a file is missing or the coordinates are not of that form
     */
    List<Path> find(String coordinates) throws MissingException;
}
