package org.skewback.kernel.install;

import org.jspecify.annotations.Nullable;

/**
 * One thing that a look at the installed kernel has found.
 *
 * @param weight how much it matters
 * @param text what is so, in plain words
 * @param remedy what to do about it, or null where nothing is wrong
 */
public record Finding(Weight weight, String text, @Nullable String remedy) {

    /** How much a finding matters. */
    public enum Weight {
        /** As it should be. */
        GOOD,
        /** The kernel runs, but something is to be mended. */
        TO_MEND,
        /** The kernel does not run. */
        BROKEN
    }

    static Finding good(String text) {
        return new Finding(Weight.GOOD, text, null);
    }

    static Finding toMend(String text, String remedy) {
        return new Finding(Weight.TO_MEND, text, remedy);
    }

    static Finding broken(String text, String remedy) {
        return new Finding(Weight.BROKEN, text, remedy);
    }
}
