package org.skewback.numeric;

import java.util.Arrays;
import java.util.List;

/**
 * Where a symmetric sparse matrix may differ from zero: its lower triangle by columns, rows in
 * increasing order, every diagonal entry included.
 *
 * <p>Immutable; shared by all matrices assembled on it and by the symbolic factorization.
 */
public final class SymmetricPattern {

    private final int[] starts;
    private final int[] rows;

    private SymmetricPattern(int[] starts, int[] rows) {
        this.starts = starts;
        this.rows = rows;
    }

    /**
     * Gives the pattern to which elements add blocks: entry (i, j) is in it when some element holds
     * both i and j, or i = j.
     *
     * @param order number of unknowns n, 0 or more
     * @param elements unknowns of each element, each in 0 to n − 1; negative ones are left out
     *     (supported directions, say); an unknown may occur twice in an element
     * @return the pattern
     * @throws IllegalArgumentException when an unknown is n or more
     */
    public static SymmetricPattern ofElements(int order, List<int[]> elements) {
        Require.atLeast("order", order, 0);
        int[] first = new int[order + 1];
        for (int[] element : elements) {
            for (int unknown : element) {
                if (unknown >= 0) {
                    first[Require.index("unknown", unknown, order) + 1]++;
                }
            }
        }
        for (int j = 0; j < order; j++) {
            first[j + 1] += first[j];
        }
        int[] touching = new int[first[order]];
        int[] next = Arrays.copyOf(first, order);
        for (int e = 0; e < elements.size(); e++) {
            for (int unknown : elements.get(e)) {
                if (unknown >= 0) {
                    touching[next[unknown]++] = e;
                }
            }
        }
        int[] starts = new int[order + 1];
        int[] rows = new int[Math.max(16, 4 * order)];
        int[] seen = new int[order];
        Arrays.fill(seen, -1);
        int count = 0;
        for (int j = 0; j < order; j++) {
            seen[j] = j;
            rows = room(rows, count, 1);
            rows[count++] = j;
            int last = -1;
            for (int p = first[j]; p < first[j + 1]; p++) {
                if (touching[p] == last) {
                    continue;
                }
                last = touching[p];
                int[] element = elements.get(last);
                rows = room(rows, count, element.length);
                for (int i : element) {
                    if (i > j && seen[i] != j) {
                        seen[i] = j;
                        rows[count++] = i;
                    }
                }
            }
            Arrays.sort(rows, starts[j], count);
            starts[j + 1] = count;
        }
        return new SymmetricPattern(starts, Arrays.copyOf(rows, count));
    }

    private static int[] room(int[] rows, int count, int more) {
        return count + more <= rows.length
                ? rows
                : Arrays.copyOf(rows, Math.max(count + more, rows.length + rows.length / 2));
    }

    /**
     * Gives the pattern that holds the entries of two patterns of one order.
     *
     * @param other the other pattern
     * @return the union; this pattern itself when the other adds nothing
     * @throws IllegalArgumentException when the orders differ
     */
    public SymmetricPattern union(SymmetricPattern other) {
        if (other.equals(this)) {
            return this;
        }
        int order = order();
        Require.length("other pattern", other.order(), order);
        int[] merged = new int[rows.length + other.rows.length];
        int[] mergedStarts = new int[order + 1];
        int count = 0;
        for (int j = 0; j < order; j++) {
            int p = starts[j];
            int q = other.starts[j];
            while (p < starts[j + 1] || q < other.starts[j + 1]) {
                int mine = p < starts[j + 1] ? rows[p] : order;
                int theirs = q < other.starts[j + 1] ? other.rows[q] : order;
                merged[count++] = Math.min(mine, theirs);
                p += mine <= theirs ? 1 : 0;
                q += theirs <= mine ? 1 : 0;
            }
            mergedStarts[j + 1] = count;
        }
        return count == rows.length
                ? this
                : new SymmetricPattern(mergedStarts, Arrays.copyOf(merged, count));
    }

    /**
     * Gives the number of unknowns.
     *
     * @return n
     */
    public int order() {
        return starts.length - 1;
    }

    /**
     * Gives the number of entries kept: those of the lower triangle with the diagonal.
     *
     * @return entries of one triangle
     */
    public int entries() {
        return rows.length;
    }

    /**
     * Tells whether an entry is in the pattern.
     *
     * @param row row, 0 to n − 1
     * @param column column, 0 to n − 1
     * @return whether the entry or its mirror is kept
     */
    public boolean holds(int row, int column) {
        return position(row, column) >= 0;
    }

    /** Index of entry (row, column) or of its mirror among the values; negative when not kept. */
    int position(int row, int column) {
        Require.index("row", row, order());
        Require.index("column", column, order());
        int low = Math.min(row, column);
        return Arrays.binarySearch(rows, starts[low], starts[low + 1], Math.max(row, column));
    }

    /** First index of each column; not to be changed. */
    int[] starts() {
        return starts;
    }

    /** Row of each entry; not to be changed. */
    int[] rows() {
        return rows;
    }

    /** Pattern with the same entries as the arrays, which are taken over: sorted, diagonal first. */
    static SymmetricPattern wrap(int[] starts, int[] rows) {
        return new SymmetricPattern(starts, rows);
    }

    @Override
    public boolean equals(Object other) {
        if (this == other) {
            return true;
        }
        return other instanceof SymmetricPattern pattern
                && Arrays.equals(starts, pattern.starts)
                && Arrays.equals(rows, pattern.rows);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(starts) + Arrays.hashCode(rows);
    }

    @Override
    public String toString() {
        return "symmetric pattern of order " + order() + " with " + entries() + " entries";
    }
}
