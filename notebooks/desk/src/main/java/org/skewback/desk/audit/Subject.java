package org.skewback.desk.audit;

/** What part of an audit found something. */
public enum Subject {
    /** The manifest and the files it names. */
    FILES("files"),
    /** Who signed the manifest. */
    SIGNATURES("signatures"),
    /** The numbers of the records, worked out again. */
    NUMBERS("numbers"),
    /** What the pages show, held against the records. */
    PAGES("pages"),
    /** The notebooks, run again. */
    RERUN("rerun");

    private final String words;

    Subject(String words) {
        this.words = words;
    }

    /**
     * Gives the part in words.
     *
     * @return such as {@code numbers}
     */
    public String inWords() {
        return words;
    }
}
