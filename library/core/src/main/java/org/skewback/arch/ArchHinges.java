package org.skewback.arch;

/** Where an arch has hinges. */
public enum ArchHinges {
    /** None: fixed at both springings. */
    NONE("fixed", false, false),
    /** One at the crown; fixed at both springings. */
    CROWN("one-hinged", false, true),
    /** One at each springing. */
    SPRINGINGS("two-hinged", true, false),
    /** One at each springing and one at the crown. */
    ALL("three-hinged", true, true);

    private final String words;
    private final boolean atSpringings;
    private final boolean atCrown;

    ArchHinges(String words, boolean atSpringings, boolean atCrown) {
        this.words = words;
        this.atSpringings = atSpringings;
        this.atCrown = atCrown;
    }

    /**
     * Gives the trade's word for an arch with these hinges.
     *
     * @return fixed, one-hinged, two-hinged or three-hinged
     */
    public String inWords() {
        return words;
    }

    /**
     * Reads what {@link #inWords} writes.
     *
     * @param words fixed, one-hinged, two-hinged or three-hinged
     * @return the hinges
     * @throws IllegalArgumentException when there is no such arch
     */
    public static ArchHinges ofWords(String words) {
        for (ArchHinges hinges : values()) {
            if (hinges.words.equals(words)) {
                return hinges;
            }
        }
        throw new IllegalArgumentException(
                "kind of arch is \""
                        + words
                        + "\"; allowed are fixed, one-hinged, two-hinged and three-hinged.");
    }

    boolean atSpringings() {
        return atSpringings;
    }

    boolean atCrown() {
        return atCrown;
    }
}
