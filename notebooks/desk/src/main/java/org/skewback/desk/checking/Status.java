package org.skewback.desk.checking;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How far a package has come. */
public enum Status {
    /** Still being worked on. */
    PRELIMINARY,
    /** Handed to the checker. */
    FOR_CHECKING,
    /** May be built from: checked, approved and signed. */
    FOR_CONSTRUCTION,
    /** Replaced by another issue. */
    SUPERSEDED;

    /**
     * Gives the status in words.
     *
     * @return such as {@code for construction}
     */
    public String inWords() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Finds a status.
     *
     * @param words its words
     * @return the status; empty where there is none of these words
     */
    public static Optional<Status> of(String words) {
        return Arrays.stream(values()).filter(s -> s.inWords().equals(words)).findFirst();
    }
}
