package org.skewback.desk.audit;

/** Takes down what an audit finds and counts, as it goes. */
interface Findings {

    /** Takes down a finding. */
    void add(Finding finding);

    /** Counts something. */
    void count(Tally tally, long number);

    /** Takes down what the package says of itself. */
    default void identify(Identity identity) {}

    /** Takes down what something took. */
    default void spend(Effort effort) {}

    /** Takes down that something differs. */
    default void differs(Subject subject, String place, String words) {
        add(Finding.of(Verdict.DIFFERS, subject, place, words));
    }

    /** Takes down that something cannot be told. */
    default void cannotTell(Subject subject, String place, String words) {
        add(Finding.of(Verdict.CANNOT_TELL, subject, place, words));
    }

    /** Takes down a remark that does not weigh. */
    default void remark(Subject subject, String place, String words) {
        add(Finding.of(Verdict.REPRODUCED, subject, place, words));
    }
}
