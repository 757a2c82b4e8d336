package org.skewback.desk.render;

import java.util.List;
import org.skewback.sheet.Entry;
import org.skewback.sheet.Verdict;

/**
 * How checks came out.
 *
 * @param passed how many are met
 * @param failed how many are not
 * @param stale how many rest on something that has changed
 */
record Tally(long passed, long failed, long stale) {

    static Tally of(List<Entry> checks) {
        return new Tally(
                count(checks, Verdict.PASSED),
                count(checks, Verdict.FAILED),
                count(checks, Verdict.STALE));
    }

    long all() {
        return passed + failed + stale;
    }

    /** Says the count in words; what is bad is said even where it is none. */
    String inWords() {
        if (all() == 0) {
            return "This sheet has no checks.";
        }
        return all()
                + (all() == 1 ? " check: " : " checks: ")
                + passed
                + " passed, "
                + failed
                + " failed, "
                + stale
                + " stale.";
    }

    private static long count(List<Entry> checks, Verdict verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).count();
    }
}
