package org.skewback.desk.audit;

/** What an audit counts. */
public enum Tally {
    /** Files that are as the manifest says. */
    INTACT("file as issued", "files as issued"),
    /** Numbers that the author wrote. */
    TAKEN("number taken as it stands", "numbers taken as they stand"),
    /** Numbers that come out again. */
    WORKED_OUT(
            "number worked out again, the same to the last bit",
            "numbers worked out again, the same to the last bit"),
    /** Pages and other forms that show what is recorded. */
    SHOWN("page that shows what is recorded", "pages that show what is recorded"),
    /** Signatures that hold. */
    SIGNED("signature that holds", "signatures that hold"),
    /** Quantities that come out again when the notebooks run. */
    RERUN(
            "quantity the same when the notebooks run again",
            "quantities the same when the notebooks run again");

    private final String one;
    private final String many;

    Tally(String one, String many) {
        this.one = one;
        this.many = many;
    }

    /**
     * Says a count in words.
     *
     * @param count how many
     * @return such as {@code 5 files as issued}
     */
    public String inWords(long count) {
        return count + " " + (count == 1 ? one : many);
    }
}
