package org.skewback.numeric;

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
    private final Supernodes supernodes;
    private final long factorEntries;
    private final double operations;

    private SymbolicFactorization(SymmetricPattern pattern, Supernodes supernodes) {
        this.pattern = pattern;
        this.supernodes = supernodes;
        long entries = 0;
        double work = 0;
        for (int s = 0; s < supernodes.size(); s++) {
            int height = supernodes.height(s);
            for (int q = 1; q <= supernodes.width(s); q++) {
                entries += height - q;
                work += (double) (height - q) * (height - q + 3);
            }
        }
        factorEntries = entries;
        operations = work;
    }

    /**
     * Analyses a pattern in the order of approximate minimum degree.
     *
     * @param pattern pattern of the matrices to come
     * @return the analysis
     */
    public static SymbolicFactorization of(SymmetricPattern pattern) {
        CompressedGraph graph = CompressedGraph.of(pattern);
        int[] wanted = graph.expand(MinimumDegree.order(graph));
        return new SymbolicFactorization(pattern, new Supernodes(pattern, graph, wanted));
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
        return new SymbolicFactorization(
                pattern, new Supernodes(pattern, CompressedGraph.of(pattern), ordering.sequence()));
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
     * Gives the number of entries of the factor below its diagonal, zeros of panels
     * included.
     *
     * @return entries of L
     */
    public long factorEntries() {
        return factorEntries;
    }

    /**
     * Gives the floating point operations of one factorization.
     *
     * @return multiplications and additions
     */
    public double operations() {
        return operations;
    }

    Supernodes supernodes() {
        return supernodes;
    }

    int[] sequence() {
        return supernodes.sequence;
    }
}
