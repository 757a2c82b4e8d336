package org.skewback.desk.issue;

/**
 * How many checks of a package came out how.
 *
 * @param passed demand within capacity
 * @param failed demand above capacity
 * @param stale computed from something that has changed since
 */
public record CheckCount(int passed, int failed, int stale) {

    /** No check at all. */
    public static final CheckCount NONE = new CheckCount(0, 0, 0);

    /**
     * Adds two counts.
     *
     * @param other the other count
     * @return the sum
     */
    public CheckCount plus(CheckCount other) {
        return new CheckCount(passed + other.passed, failed + other.failed, stale + other.stale);
    }

    /**
     * Gives the number of checks.
     *
     * @return passed, failed and stale together
     */
    public int total() {
        return passed + failed + stale;
    }

    /**
     * Tells whether every check passed.
     *
     * @return true where none failed and none is stale
     */
    public boolean allPassed() {
        return failed == 0 && stale == 0;
    }
}
