package org.skewback.sheet;

import java.util.Locale;

/** How a check stands. */
public enum Verdict {
    /** The requirement is met. */
    PASSED,
    /** The requirement is not met. */
    FAILED,
    /** Something the check rests on has changed and was not worked out again. */
    STALE;

    /**
     * Gives the verdict in words.
     *
     * @return {@code passed}, {@code failed} or {@code stale}
     */
    public String inWords() {
        return name().toLowerCase(Locale.ROOT);
    }
}
