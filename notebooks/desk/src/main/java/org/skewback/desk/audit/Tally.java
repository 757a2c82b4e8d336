package org.skewback.desk.audit;

/** What an audit counts. */
public enum Tally {
    /** Files that are as the manifest says. */
    INTACT("files as issued"),
    /** Numbers that the author wrote. */
    TAKEN("numbers taken as they stand"),
    /** Numbers that come out again. */
    WORKED_OUT("numbers worked out again, the same to the last bit"),
    /** Pages and other forms that show what is recorded. */
    SHOWN("pages that show what is recorded"),
    /** Signatures that hold. */
    SIGNED("signatures that hold"),
    /** Quantities that come out again when the notebooks run. */
    RERUN("quantities the same when the notebooks run again");

    private final String words;

    Tally(String words) {
        this.words = words;
    }

    /**
     * Says what is counted.
     *
     * @return such as {@code files as issued}
     */
    public String inWords() {
        return words;
    }
}
