package org.skewback.arch;

/** How an arch is held at its springings. */
public enum Springings {
    /** Hinges at both springings. */
    PINNED,
    /** Both springings held against turning. */
    FIXED;

    /**
     * Reads how a routine names the arch.
     *
     * @param words {@code fixed} or {@code two-hinged}
     * @return how it is held at its springings
     * @throws IllegalArgumentException for any other arch
     */
    static Springings ofWords(String words) {
        return switch (ArchHinges.ofWords(words)) {
            case NONE -> FIXED;
            case SPRINGINGS -> PINNED;
            default ->
                    throw new IllegalArgumentException(
                            "kind of arch is \""
                                    + words
                                    + "\"; allowed are fixed and two-hinged: the line of thrust of"
                                    + " a three-hinged arch follows from statics.");
        };
    }
}
