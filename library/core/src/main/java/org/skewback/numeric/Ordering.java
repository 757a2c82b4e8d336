package org.skewback.numeric;

/**
 * The order in which unknowns are eliminated.
 *
 * <p>Immutable.
 */
public final class Ordering {

    private final int[] sequence;

    private Ordering(int[] sequence) {
        this.sequence = sequence;
    }

    /**
     * Orders by approximate minimum degree: little fill for most frames. Published by P. R. Amestoy,
     * T. A. Davis and I. S. Duff, An approximate minimum degree ordering algorithm, SIAM Journal on
     * Matrix Analysis and Applications 17 (1996), 886–905.
     *
     * @param pattern pattern of the matrix
     * @return the ordering
     */
    public static Ordering minimumDegree(SymmetricPattern pattern) {
        CompressedGraph graph = CompressedGraph.of(pattern);
        return new Ordering(graph.expand(MinimumDegree.order(graph)));
    }

    /**
     * Orders by reverse Cuthill–McKee: a narrow band, for long thin structures. Published by E.
     * Cuthill and J. McKee, Reducing the bandwidth of sparse symmetric matrices (1969), with the
     * reversal and choice of the first vertex of A. George and J. W. H. Liu, Computer solution of
     * large sparse positive definite systems (1981), chapter 4.
     *
     * @param pattern pattern of the matrix
     * @return the ordering
     */
    public static Ordering reverseCuthillMcKee(SymmetricPattern pattern) {
        CompressedGraph graph = CompressedGraph.of(pattern);
        return new Ordering(graph.expand(CuthillMcKee.order(graph)));
    }

    /**
     * Keeps the unknowns as they are.
     *
     * @param order number of unknowns n
     * @return 0, 1 … n − 1
     */
    public static Ordering natural(int order) {
        int[] sequence = new int[Require.atLeast("order", order, 0)];
        for (int k = 0; k < order; k++) {
            sequence[k] = k;
        }
        return new Ordering(sequence);
    }

    /**
     * Takes a given order.
     *
     * @param sequence unknown eliminated first, second …: each of 0 to n − 1 once
     * @return the ordering
     * @throws IllegalArgumentException when an unknown is outside, missing or given twice
     */
    public static Ordering of(int[] sequence) {
        boolean[] seen = new boolean[sequence.length];
        for (int unknown : sequence) {
            Require.index("unknown", unknown, sequence.length);
            if (seen[unknown]) {
                throw new IllegalArgumentException(
                        "unknown " + unknown + " is ordered twice; allowed is once.");
            }
            seen[unknown] = true;
        }
        return new Ordering(sequence.clone());
    }

    /**
     * Gives the number of unknowns.
     *
     * @return n
     */
    public int order() {
        return sequence.length;
    }

    /**
     * Gives the unknowns in the order of elimination.
     *
     * @return n unknowns, the first eliminated first
     */
    public int[] sequence() {
        return sequence.clone();
    }

    @Override
    public String toString() {
        return "ordering of " + sequence.length + " unknowns";
    }
}
