package org.skewback.desk.audit;

/** What an audit found. */
public enum Verdict {
    /** All that was looked at is as it was issued and comes out again. */
    REPRODUCED("reproduced"),
    /** Something is not as it was issued, comes out otherwise, or is shown otherwise. */
    DIFFERS("differs"),
    /** Nothing differs, but something could not be looked at or worked out here. */
    CANNOT_TELL("can't tell");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /**
     * Gives the verdict in words.
     *
     * @return such as {@code can't tell}
     */
    public String inWords() {
        return words;
    }

    /**
     * Joins two verdicts: what differs outweighs what cannot be told.
     *
     * @param other the other verdict
     * @return the graver one
     */
    public Verdict and(Verdict other) {
        if (this == DIFFERS || other == DIFFERS) {
            return DIFFERS;
        }
        return this == CANNOT_TELL ? this : other;
    }
}
