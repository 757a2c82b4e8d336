package org.skewback.numeric;

import java.util.Arrays;

/**
 * What the factorization LDLᵀ of a sparse symmetric matrix needs that does not depend on values: the
 * order of elimination, the elimination tree and where the factor has entries (J. W. H. Liu, The
 * role of elimination trees in sparse factorization, SIAM Journal on Matrix Analysis and
 * Applications 11 (1990), 134–172).
 *
 * <p>Made once for a pattern and used for as many matrices on it as wanted. Immutable.
 */
public final class SymbolicFactorization {

    private final SymmetricPattern pattern;
    private final int[] sequence;

    /** Upper triangle of the permuted matrix by columns, with the places of the values. */
    private final int[] columnStarts;

    private final int[] columnRows;
    private final int[] columnValues;
    private final int[] parent;
    private final int[] factorStarts;
    private final double operations;

    private SymbolicFactorization(SymmetricPattern pattern, int[] sequence) {
        this.pattern = pattern;
        this.sequence = sequence;
        int order = pattern.order();
        int[] place = new int[order];
        for (int k = 0; k < order; k++) {
            place[sequence[k]] = k;
        }
        columnStarts = new int[order + 1];
        columnRows = new int[pattern.entries()];
        columnValues = new int[pattern.entries()];
        permute(place);
        parent = new int[order];
        int[] counts = new int[order];
        treeAndCounts(counts);
        factorStarts = new int[order + 1];
        double work = 0;
        for (int k = 0; k < order; k++) {
            factorStarts[k + 1] = Math.addExact(factorStarts[k], counts[k]);
            work += (double) counts[k] * (counts[k] + 3);
        }
        operations = work;
    }

    /**
     * Analyses a pattern in the order of approximate minimum degree.
     *
     * @param pattern pattern of the matrices to come
     * @return the analysis
     */
    public static SymbolicFactorization of(SymmetricPattern pattern) {
        return of(pattern, Ordering.minimumDegree(pattern));
    }

    /**
     * Analyses a pattern in a given order of elimination.
     *
     * @param pattern pattern of the matrices to come
     * @param ordering order of elimination, which may be rearranged to one with the same fill
     * @return the analysis
     * @throws IllegalArgumentException when the orders differ
     */
    public static SymbolicFactorization of(SymmetricPattern pattern, Ordering ordering) {
        Require.length("ordering", ordering.order(), pattern.order());
        return new SymbolicFactorization(pattern, ordering.sequence());
    }

    private void permute(int[] place) {
        int order = pattern.order();
        for (int j = 0; j < order; j++) {
            for (int p = pattern.starts()[j]; p < pattern.starts()[j + 1]; p++) {
                columnStarts[Math.max(place[j], place[pattern.rows()[p]]) + 1]++;
            }
        }
        for (int k = 0; k < order; k++) {
            columnStarts[k + 1] += columnStarts[k];
        }
        int[] next = Arrays.copyOf(columnStarts, order);
        for (int j = 0; j < order; j++) {
            for (int p = pattern.starts()[j]; p < pattern.starts()[j + 1]; p++) {
                int a = place[j];
                int b = place[pattern.rows()[p]];
                int q = next[Math.max(a, b)]++;
                columnRows[q] = Math.min(a, b);
                columnValues[q] = p;
            }
        }
    }

    private void treeAndCounts(int[] counts) {
        int[] seen = new int[parent.length];
        for (int k = 0; k < parent.length; k++) {
            parent[k] = -1;
            seen[k] = k;
            for (int p = columnStarts[k]; p < columnStarts[k + 1]; p++) {
                for (int i = columnRows[p]; seen[i] != k; i = parent[i]) {
                    if (parent[i] < 0) {
                        parent[i] = k;
                    }
                    counts[i]++;
                    seen[i] = k;
                }
            }
        }
    }

    /**
     * Factorizes a matrix, pivots taken as they come.
     *
     * @param matrix matrix on this pattern
     * @return the factorization
     */
    public Factorization factorize(SymmetricMatrix matrix) {
        return factorize(matrix, PivotLimits.usual(), Monitor.quiet());
    }

    /**
     * Factorizes a matrix, pivots taken as they come.
     *
     * @param matrix matrix on this pattern
     * @param limits which pivots count as zero and which are reported
     * @param monitor may stop the work
     * @return the factorization
     * @throws IllegalArgumentException when the matrix has another pattern
     * @throws java.util.concurrent.CancellationException when the monitor stops the work
     */
    public Factorization factorize(SymmetricMatrix matrix, PivotLimits limits, Monitor monitor) {
        if (!matrix.pattern().equals(pattern)) {
            throw new IllegalArgumentException(
                    "matrix has another pattern, "
                            + matrix.pattern()
                            + "; allowed is the one analysed, "
                            + pattern
                            + ".");
        }
        return new Factorization(this, matrix, limits, monitor);
    }

    /**
     * Gives the pattern analysed.
     *
     * @return the pattern
     */
    public SymmetricPattern pattern() {
        return pattern;
    }

    /**
     * Gives the number of entries of the factor below its diagonal.
     *
     * @return entries of L
     */
    public long factorEntries() {
        return factorStarts[factorStarts.length - 1];
    }

    /**
     * Gives the floating point operations of one factorization.
     *
     * @return multiplications and additions
     */
    public double operations() {
        return operations;
    }

    int[] sequence() {
        return sequence;
    }

    int[] columnStarts() {
        return columnStarts;
    }

    int[] columnRows() {
        return columnRows;
    }

    int[] columnValues() {
        return columnValues;
    }

    int[] parent() {
        return parent;
    }

    int[] factorStarts() {
        return factorStarts;
    }
}
