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

    /**
     * A library and all it needs to run.
     *
     * @param libraries the library first, then what it needs
     * @param notes what the author should know, such as a version that is older than another library
     *     wants
     */
    record Found(List<Library> libraries, List<String> notes) {

        /**
         * Keeps copies.
         *
         * @param libraries the library first, then what it needs
         * @param notes what the author should know
         */
        public Found {
            libraries = List.copyOf(libraries);
            notes = List.copyOf(notes);
        }
    }

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
     * @return the library and what it needs
     * @throws MissingException if a file is missing or the coordinates are not of that form
     */
    Found find(String coordinates) throws MissingException;
}
