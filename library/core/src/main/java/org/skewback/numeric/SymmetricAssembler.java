package org.skewback.numeric;

import java.util.Arrays;

/**
 * Sums element matrices into a symmetric sparse matrix on a given pattern.
 *
 * <p>Reusable: {@link #clear()} begins anew with other values on the same pattern. Sums are formed in
 * the order of the calls, so the same calls give the same bits. Not for several threads at once.
 */
public final class SymmetricAssembler {

    /** Relative difference of mirrored entries that round-off explains. */
    private static final double ROUND_OFF = 1e-9;

    private final SymmetricPattern pattern;
    private final double[] values;

    /**
     * Makes an assembler that holds the zero matrix.
     *
     * @param pattern where entries may be
     */
    public SymmetricAssembler(SymmetricPattern pattern) {
        this.pattern = pattern;
        values = new double[pattern.entries()];
    }

    /**
     * Gives the pattern assembled on.
     *
     * @return the pattern
     */
    public SymmetricPattern pattern() {
        return pattern;
    }

    /** Sets every entry to zero. */
    public void clear() {
        Arrays.fill(values, 0);
    }

    /**
     * Adds a value at an entry and, off the diagonal, at its mirror.
     *
     * @param row row, 0 to n − 1
     * @param column column, 0 to n − 1
     * @param value what is added, finite
     * @throws IllegalArgumentException when the entry is not in the pattern or the value not finite
     */
    public void add(int row, int column, double value) {
        int position = pattern.position(row, column);
        if (position < 0) {
            throw new IllegalArgumentException(
                    "entry (" + row + ", " + column + ") is not in the pattern.");
        }
        values[position] += Require.finite("value", value);
    }

    /**
     * Adds a symmetric element matrix: its entry (a, b) goes to row unknowns[a] and column
     * unknowns[b]. The lower triangle is used; the upper is only compared with it.
     *
     * @param unknowns unknown of each row of the element, 0 to n − 1; negative ones are left out; an
     *     unknown that occurs twice collects both rows
     * @param element element matrix, square, finite, symmetric to 1e-9 of its largest entry
     * @throws IllegalArgumentException when the shapes differ, an entry is not finite or not in the
     *     pattern, or the matrix is not symmetric
     */
    public void add(int[] unknowns, double[][] element) {
        int size = Require.length("element matrix", element.length, unknowns.length);
        double tolerance = ROUND_OFF * largest(element, size);
        int order = pattern.order();
        for (int a = 0; a < size; a++) {
            int row = unknowns[a];
            for (int b = 0; b <= a; b++) {
                double value = element[a][b];
                if (Math.abs(value - element[b][a]) > tolerance) {
                    throw new IllegalArgumentException(
                            String.format(
                                    "element entries (%d, %d) and (%d, %d) are %s and %s; allowed"
                                            + " is a symmetric matrix.",
                                    a, b, b, a, value, element[b][a]));
                }
                int column = unknowns[b];
                if (row < 0 || column < 0) {
                    continue;
                }
                Require.index("unknown", row, order);
                Require.index("unknown", column, order);
                // Two rows of the element on one unknown: both mirrors land on the diagonal.
                add(row, column, row == column && a != b ? 2 * value : value);
            }
        }
    }

    private static double largest(double[][] element, int size) {
        double largest = 0;
        for (double[] row : element) {
            Require.length("row of the element matrix", row.length, size);
            for (double value : row) {
                largest = Math.max(largest, Math.abs(Require.finite("element entry", value)));
            }
        }
        return largest;
    }

    /**
     * Gives the matrix summed so far; later additions do not change it.
     *
     * @return the matrix
     */
    public SymmetricMatrix matrix() {
        return new SymmetricMatrix(pattern, values.clone());
    }
}
