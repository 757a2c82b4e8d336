package org.skewback.desk.issue;

import java.util.List;

/**
 * What a package states as the basis of its calculations, each in words of its author; any may be
 * empty. What its sheets themselves cite needs no statement.
 *
 * @param standards standards and codes that the design follows
 * @param factors partial factors and other choices that a code leaves open
 * @param units units, where more is to be said than stands beside each number
 * @param signs sign conventions
 * @param values how far the values are settled: measured, from drawings of which status, estimated
 */
public record Basis(
        List<String> standards,
        List<String> factors,
        List<String> units,
        List<String> signs,
        List<String> values) {

    /** Nothing stated. */
    public static final Basis NONE =
            new Basis(List.of(), List.of(), List.of(), List.of(), List.of());

    /** Keeps copies of the lists. */
    public Basis {
        standards = List.copyOf(standards);
        factors = List.copyOf(factors);
        units = List.copyOf(units);
        signs = List.copyOf(signs);
        values = List.copyOf(values);
    }

    /**
     * Tells whether nothing is stated.
     *
     * @return whether every list is empty
     */
    public boolean isEmpty() {
        return equals(NONE);
    }
}
