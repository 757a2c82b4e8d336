package org.skewback.desk.compare;

import java.util.List;

/**
 * What changed between two issues.
 *
 * @param before title, number and revision of the earlier issue
 * @param now the same of the later one
 * @param sentence what moved what, in one sentence
 * @param givens givens that changed, came or went
 * @param results results that changed, came or went
 * @param checks checks whose values or verdicts changed, that came or went
 * @param sources sources that changed, in words
 * @param software software that changed, in words
 * @param others title, status, sheets and the like that changed, in words
 */
public record Comparison(
        String before,
        String now,
        String sentence,
        List<Moved> givens,
        List<Moved> results,
        List<Turned> checks,
        List<String> sources,
        List<String> software,
        List<String> others) {

    /** Keeps copies of the lists. */
    public Comparison {
        givens = List.copyOf(givens);
        results = List.copyOf(results);
        checks = List.copyOf(checks);
        sources = List.copyOf(sources);
        software = List.copyOf(software);
        others = List.copyOf(others);
    }

    /**
     * Tells whether nothing changed.
     *
     * @return whether every list is empty
     */
    public boolean isSame() {
        return givens.isEmpty()
                && results.isEmpty()
                && checks.isEmpty()
                && sources.isEmpty()
                && software.isEmpty()
                && others.isEmpty();
    }
}
