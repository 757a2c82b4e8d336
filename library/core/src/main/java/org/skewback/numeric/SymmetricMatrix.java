package org.skewback.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A symmetric sparse matrix of SI doubles: the lower triangle by compressed columns.
 *
 * <p>Immutable. Made by a {@link SymmetricAssembler} or by the factories here.
 */
public final class SymmetricMatrix {

    private final SymmetricPattern pattern;
    private final double[] values;

    /** Takes the values over; they are not copied. */
    SymmetricMatrix(SymmetricPattern pattern, double[] values) {
        this.pattern = pattern;
        this.values = values;
    }

    /**
     * Gives the matrix that is the sum of single entries; an entry off the diagonal also stands at
     * its mirror, so each pair is given once.
     *
     * @param order number of unknowns n
     * @param rows row of each entry
     * @param columns column of each entry
     * @param values value of each entry, finite; entries at one place are summed in order
     * @return the matrix
     * @throws IllegalArgumentException when lengths differ, an index is outside or a value not finite
     */
    public static SymmetricMatrix ofEntries(int order, int[] rows, int[] columns, double[] values) {
        Require.length("columns", columns.length, rows.length);
        Require.length("values", values.length, rows.length);
        List<int[]> pairs = new ArrayList<>(rows.length);
        for (int p = 0; p < rows.length; p++) {
            Require.index("row", rows[p], order);
            Require.index("column", columns[p], order);
            pairs.add(new int[] {rows[p], columns[p]});
        }
        SymmetricAssembler sum = new SymmetricAssembler(SymmetricPattern.ofElements(order, pairs));
        for (int p = 0; p < rows.length; p++) {
            sum.add(rows[p], columns[p], values[p]);
        }
        return sum.matrix();
    }

    /**
     * Gives a diagonal matrix.
     *
     * @param diagonal its diagonal, finite
     * @return the matrix
     */
    public static SymmetricMatrix ofDiagonal(double[] diagonal) {
        Require.finite("diagonal", diagonal);
        int[] starts = new int[diagonal.length + 1];
        Arrays.setAll(starts, j -> j);
        int[] rows = Arrays.copyOf(starts, diagonal.length);
        return new SymmetricMatrix(SymmetricPattern.wrap(starts, rows), diagonal.clone());
    }

    /**
     * Gives the sparse form of a dense symmetric matrix, zeros left out.
     *
     * @param dense square, finite, symmetric to 1e-9 of its largest entry; its lower triangle is kept
     * @return the matrix
     * @throws IllegalArgumentException when it is not square, finite and symmetric
     */
    public static SymmetricMatrix ofDense(double[][] dense) {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < dense.length; i++) {
            Require.length("row", dense[i].length, dense.length);
            for (int j = 0; j < i; j++) {
                if (dense[i][j] != 0 || dense[j][i] != 0) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
        SymmetricPattern pattern = SymmetricPattern.ofElements(dense.length, pairs);
        double largest = 0;
        for (double[] row : dense) {
            for (double value : row) {
                largest = Math.max(largest, Math.abs(Require.finite("entry", value)));
            }
        }
        SymmetricAssembler sum = new SymmetricAssembler(pattern);
        for (int i = 0; i < dense.length; i++) {
            for (int j = 0; j <= i; j++) {
                if (Math.abs(dense[i][j] - dense[j][i]) > 1e-9 * largest) {
                    throw new IllegalArgumentException(
                            String.format(
                                    "entries (%d, %d) and (%d, %d) are %s and %s; allowed is a"
                                            + " symmetric matrix.",
                                    i, j, j, i, dense[i][j], dense[j][i]));
                }
                if (dense[i][j] != 0) {
                    sum.add(i, j, dense[i][j]);
                }
            }
        }
        return sum.matrix();
    }

    /**
     * Gives a linear combination a A + b B.
     *
     * @param a factor of the first, finite
     * @param first matrix A
     * @param b factor of the second, finite
     * @param second matrix B of the same order
     * @return a A + b B on the union of both patterns
     */
    public static SymmetricMatrix combine(
            double a, SymmetricMatrix first, double b, SymmetricMatrix second) {
        Require.finite("first factor", a);
        Require.finite("second factor", b);
        SymmetricPattern union = first.pattern.union(second.pattern);
        double[] sum = new double[union.entries()];
        first.addTo(union, a, sum);
        second.addTo(union, b, sum);
        return new SymmetricMatrix(union, sum);
    }

    private void addTo(SymmetricPattern wider, double factor, double[] sum) {
        int[] starts = pattern.starts();
        int[] rows = pattern.rows();
        for (int j = 0; j < order(); j++) {
            int q = wider.starts()[j];
            for (int p = starts[j]; p < starts[j + 1]; p++) {
                while (wider.rows()[q] != rows[p]) {
                    q++;
                }
                sum[q] += factor * values[p];
            }
        }
    }

    /**
     * Gives the number of unknowns.
     *
     * @return n
     */
    public int order() {
        return pattern.order();
    }

    /**
     * Gives the pattern.
     *
     * @return where entries are kept
     */
    public SymmetricPattern pattern() {
        return pattern;
    }

    /**
     * Gives one entry.
     *
     * @param row row, 0 to n − 1
     * @param column column, 0 to n − 1
     * @return the value; 0 where the pattern has no entry
     */
    public double get(int row, int column) {
        int position = pattern.position(row, column);
        return position < 0 ? 0 : values[position];
    }

    /** Takes the entries of one triangle, one by one. */
    @FunctionalInterface
    public interface EntryVisitor {

        /**
         * Takes an entry.
         *
         * @param row row, not less than the column
         * @param column column
         * @param value value, which also stands at the mirror
         */
        void visit(int row, int column, double value);
    }

    /**
     * Shows the entries of the lower triangle, column by column, rows increasing.
     *
     * @param visitor takes them
     */
    public void forEach(EntryVisitor visitor) {
        for (int j = 0; j < order(); j++) {
            for (int p = pattern.starts()[j]; p < pattern.starts()[j + 1]; p++) {
                visitor.visit(pattern.rows()[p], j, values[p]);
            }
        }
    }

    /**
     * Gives the number of entries kept: those of the lower triangle with the diagonal.
     *
     * @return entries of one triangle
     */
    public int entries() {
        return pattern.entries();
    }

    /**
     * Gives the diagonal.
     *
     * @return n values
     */
    public double[] diagonal() {
        double[] diagonal = new double[order()];
        for (int j = 0; j < diagonal.length; j++) {
            diagonal[j] = values[pattern.starts()[j]];
        }
        return diagonal;
    }

    /**
     * Gives the product A x.
     *
     * @param x vector of n values
     * @return A x
     */
    public double[] times(double[] x) {
        double[] product = new double[order()];
        times(x, product);
        return product;
    }

    /**
     * Writes the product A x.
     *
     * @param x vector of n values
     * @param product takes A x, n values; not the same array as x
     */
    public void times(double[] x, double[] product) {
        int order = order();
        Require.length("x", x.length, order);
        Require.length("product", product.length, order);
        Arrays.fill(product, 0);
        int[] starts = pattern.starts();
        int[] rows = pattern.rows();
        for (int j = 0; j < order; j++) {
            double xj = x[j];
            int p = starts[j];
            double sum = values[p] * xj;
            for (p++; p < starts[j + 1]; p++) {
                int i = rows[p];
                double value = values[p];
                product[i] += value * xj;
                sum += value * x[i];
            }
            product[j] += sum;
        }
    }

    /** |A||x|, the sum of the sizes of what A x adds up. */
    double[] timesSizes(double[] x) {
        double[] product = new double[order()];
        int[] starts = pattern.starts();
        int[] rows = pattern.rows();
        for (int j = 0; j < product.length; j++) {
            double size = Math.abs(x[j]);
            int p = starts[j];
            double sum = Math.abs(values[p]) * size;
            for (p++; p < starts[j + 1]; p++) {
                int i = rows[p];
                double value = Math.abs(values[p]);
                product[i] += value * size;
                sum += value * Math.abs(x[i]);
            }
            product[j] += sum;
        }
        return product;
    }

    /**
     * Gives the bilinear form xᵀA y.
     *
     * @param x vector of n values
     * @param y vector of n values
     * @return xᵀA y
     */
    public double form(double[] x, double[] y) {
        Require.length("x", x.length, order());
        return Vectors.dot(x, times(y));
    }

    /**
     * Gives a multiple of this matrix.
     *
     * @param factor finite factor
     * @return factor · A
     */
    public SymmetricMatrix scaled(double factor) {
        Require.finite("factor", factor);
        double[] scaled = values.clone();
        for (int p = 0; p < scaled.length; p++) {
            scaled[p] *= factor;
        }
        return new SymmetricMatrix(pattern, scaled);
    }

    /**
     * Gives the 1-norm, for a symmetric matrix also the ∞-norm: the largest sum of |aᵢⱼ| in a column.
     *
     * @return the norm
     */
    public double norm() {
        double[] sums = new double[order()];
        int[] starts = pattern.starts();
        int[] rows = pattern.rows();
        for (int j = 0; j < sums.length; j++) {
            for (int p = starts[j]; p < starts[j + 1]; p++) {
                double size = Math.abs(values[p]);
                sums[j] += size;
                if (rows[p] != j) {
                    sums[rows[p]] += size;
                }
            }
        }
        double norm = 0;
        for (double sum : sums) {
            norm = Math.max(norm, sum);
        }
        return norm;
    }

    /**
     * Gives a principal submatrix.
     *
     * @param kept the unknowns kept, in the order wanted, each once
     * @return rows and columns of those unknowns
     */
    public SymmetricMatrix submatrix(int[] kept) {
        int[] place = new int[order()];
        Arrays.fill(place, -1);
        for (int k = 0; k < kept.length; k++) {
            if (place[Require.index("kept unknown", kept[k], order())] >= 0) {
                throw new IllegalArgumentException(
                        "kept unknown " + kept[k] + " is given twice; allowed is once.");
            }
            place[kept[k]] = k;
        }
        int[] starts = pattern.starts();
        int[] rows = pattern.rows();
        List<int[]> pairs = new ArrayList<>();
        for (int j : kept) {
            for (int p = starts[j]; p < starts[j + 1]; p++) {
                if (place[rows[p]] >= 0) {
                    pairs.add(new int[] {place[rows[p]], place[j]});
                }
            }
        }
        SymmetricPattern part = SymmetricPattern.ofElements(kept.length, pairs);
        double[] partValues = new double[part.entries()];
        for (int j : kept) {
            for (int p = starts[j]; p < starts[j + 1]; p++) {
                if (place[rows[p]] >= 0) {
                    partValues[part.position(place[rows[p]], place[j])] = values[p];
                }
            }
        }
        return new SymmetricMatrix(part, partValues);
    }

    /**
     * Gives the matrix with every entry written out.
     *
     * @return n rows of n values
     */
    public double[][] toDense() {
        double[][] dense = new double[order()][order()];
        for (int j = 0; j < order(); j++) {
            for (int p = pattern.starts()[j]; p < pattern.starts()[j + 1]; p++) {
                int i = pattern.rows()[p];
                dense[i][j] = values[p];
                dense[j][i] = values[p];
            }
        }
        return dense;
    }

    /** Values by the pattern; not to be changed. */
    double[] values() {
        return values;
    }

    @Override
    public String toString() {
        return "symmetric matrix of order "
                + order()
                + " with "
                + pattern.entries()
                + " entries in one triangle";
    }
}
