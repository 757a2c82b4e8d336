package org.skewback.sheet;

import java.util.Locale;

/** What somebody did for a sheet. */
public enum Role {
    /** Wrote it. */
    PREPARED,
    /** Went through it independently. */
    CHECKED,
    /** Let it be used. */
    APPROVED;

    /**
     * Gives the role in words.
     *
     * @return {@code prepared by}, {@code checked by} or {@code approved by}
     */
    public String inWords() {
        return name().toLowerCase(Locale.ROOT) + " by";
    }
}
