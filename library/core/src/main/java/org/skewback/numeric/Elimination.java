package org.skewback.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The numeric phase of LDLᵀ by fronts: each supernode gathers its part of the matrix and what its
 * children leave, eliminates its own columns eight at a time, and leaves the rest to its parent
 * (J. W. H. Liu, The multifrontal method for sparse matrix solution: theory and practice, SIAM Review
 * 34 (1992), 82–109; E. G. Ng and B. W. Peyton, Block sparse Cholesky algorithms on advanced
 * uniprocessor computers, SIAM Journal on Scientific Computing 14 (1993), 1034–1056).
 */
final class Elimination {

    /** Columns eliminated at a time. */
    private static final int BLOCK = 8;

    /** Rows taken at a time, so that a block of columns of them stays in the nearest cache. */
    private static final int ROWS = 256;

    private static final double REPORT_EVERY = 2e7;

    private final Supernodes supernodes;
    private final double[] values;
    private final double[] scales;
    private final PivotLimits limits;

    /** Panels of L by supernode, column by column; the unit diagonal and above are not to be read. */
    final double[][] lower;

    /** Pivots in the order of elimination; 0 where they count as zero. */
    final double[] diagonal;

    final List<SmallPivot> smallPivots = new ArrayList<>();
    private int negative;
    private int zero;

    /** Parts of fronts left for parents, each a lower triangle packed by columns. */
    private final double[] stack;

    private final int[] pendingStart;
    private final int[] pending;
    private final int[] local;

    /** Columns of the block being eliminated, not yet divided by their pivots. */
    private final double[][] unscaled;

    private final double[] column;
    private final double[] factors = new double[BLOCK];

    Elimination(
            Supernodes supernodes,
            SymmetricMatrix matrix,
            PivotLimits limits,
            double operations,
            Monitor monitor) {
        this.supernodes = supernodes;
        this.limits = limits;
        values = matrix.values();
        scales = pivotScales(matrix);
        int count = supernodes.size();
        lower = new double[count][];
        diagonal = new double[matrix.order()];
        stack = new double[Math.toIntExact(supernodes.stackSize)];
        pendingStart = new int[count + 1];
        pending = new int[count];
        local = new int[matrix.order()];
        int highest = 0;
        for (int s = 0; s < count; s++) {
            highest = Math.max(highest, supernodes.height(s));
        }
        unscaled = new double[BLOCK][highest];
        column = new double[highest];
        run(operations, monitor);
    }

    Inertia inertia() {
        return new Inertia(negative, zero, diagonal.length - negative - zero);
    }

    private void run(double operations, Monitor monitor) {
        double done = 0;
        double told = 0;
        int waiting = 0;
        int stackTop = 0;
        monitor.at("factorization", 0);
        for (int s = 0; s < supernodes.size(); s++) {
            int width = supernodes.width(s);
            int height = supernodes.height(s);
            int below = height - width;
            lower[s] = new double[Math.multiplyExact(width, height)];
            int base = waiting - supernodes.children[s];
            int stackBase = base == waiting ? stackTop : pendingStart[base];
            Arrays.fill(stack, stackTop, stackTop + below * (below + 1) / 2, 0);
            assemble(s, base, waiting, stackTop);
            eliminate(s, stackTop);
            int size = below * (below + 1) / 2;
            System.arraycopy(stack, stackTop, stack, stackBase, size);
            waiting = base;
            pending[waiting] = s;
            pendingStart[waiting++] = stackBase;
            stackTop = stackBase + size;
            done += (double) width * height * height;
            if (done - told > REPORT_EVERY) {
                told = done;
                monitor.at("factorization", Math.min(1, done / operations));
            }
        }
        monitor.at("factorization", 1);
    }

    private void assemble(int s, int base, int waiting, int own) {
        double[] panel = lower[s];
        int[] entryValues = supernodes.entryValues;
        int[] entryPlaces = supernodes.entryPlaces;
        for (int q = supernodes.entryStarts[s]; q < supernodes.entryStarts[s + 1]; q++) {
            panel[entryPlaces[q]] += values[entryValues[q]];
        }
        if (base == waiting) {
            return;
        }
        int width = supernodes.width(s);
        for (int k = 0; k < width; k++) {
            local[supernodes.first[s] + k] = k;
        }
        int from = supernodes.rowStarts[s];
        for (int p = from; p < supernodes.rowStarts[s + 1]; p++) {
            local[supernodes.rows[p]] = width + p - from;
        }
        for (int c = base; c < waiting; c++) {
            extendAdd(pending[c], pendingStart[c], s, own);
        }
    }

    /** Adds what a child left to the front of its parent. */
    private void extendAdd(int child, int from, int s, int own) {
        double[] panel = lower[s];
        int width = supernodes.width(s);
        int height = supernodes.height(s);
        int below = height - width;
        int start = supernodes.rowStarts[child];
        int count = supernodes.rowStarts[child + 1] - start;
        int[] rows = supernodes.rows;
        int source = from;
        for (int j = 0; j < count; j++) {
            int column = local[rows[start + j]];
            if (column < width) {
                int to = column * height;
                for (int i = j; i < count; i++) {
                    panel[to + local[rows[start + i]]] += stack[source++];
                }
            } else {
                int k = column - width;
                int to = own + k * below - k * (k + 1) / 2 - width;
                for (int i = j; i < count; i++) {
                    stack[to + local[rows[start + i]]] += stack[source++];
                }
            }
        }
    }

    private void eliminate(int s, int own) {
        double[] panel = lower[s];
        int width = supernodes.width(s);
        int height = supernodes.height(s);
        int below = height - width;
        for (int begin = 0; begin < width; begin += BLOCK) {
            int count = Math.min(BLOCK, width - begin);
            int end = begin + count;
            for (int j = begin; j < end; j++) {
                pivot(s, panel, begin, j, height);
            }
            for (int top = end; top < height; top += ROWS) {
                int bottom = Math.min(height, top + ROWS);
                int last = Math.min(width, bottom);
                for (int j = end; j < last; j++) {
                    int at = Math.max(j, top);
                    gather(panel, begin, count, j, height);
                    update(panel, j * height + at, at, bottom, count);
                }
                for (int j = width; j < bottom; j++) {
                    int k = j - width;
                    int at = Math.max(j, top);
                    gather(panel, begin, count, j, height);
                    int to = own + k * below - k * (k + 1) / 2 + at - width;
                    update(stack, to, at, bottom, count);
                }
            }
        }
    }

    /** Takes the block from rows at to bottom of a column that starts at an index of its array. */
    private void update(double[] target, int to, int at, int bottom, int count) {
        System.arraycopy(target, to, column, at, bottom - at);
        Panels.subtract(column, unscaled, at, bottom, factors, count);
        System.arraycopy(column, at, target, to, bottom - at);
    }

    /** Row j of the columns just eliminated. */
    private void gather(double[] panel, int begin, int count, int j, int height) {
        for (int q = 0; q < count; q++) {
            factors[q] = panel[(begin + q) * height + j];
        }
    }

    /** Brings column j up to date within its block, takes its pivot and divides by it. */
    private void pivot(int s, double[] panel, int begin, int j, int height) {
        int start = j * height;
        int before = j - begin;
        gather(panel, begin, before, j, height);
        update(panel, start + j, j, height, before);
        int k = supernodes.first[s] + j;
        double pivot = panel[start + j];
        int unknown = supernodes.sequence[k];
        double scale = scales[unknown];
        double size = Math.abs(pivot);
        // Written so that a pivot that is not a number counts as zero.
        boolean isZero = !(size > limits.zero() * scale);
        if (isZero || size <= limits.small() * scale) {
            smallPivots.add(new SmallPivot(unknown, pivot, scale, isZero));
        }
        if (isZero) {
            zero++;
            Arrays.fill(panel, start + j, start + height, 0);
            Arrays.fill(unscaled[before], j, height, 0);
            return;
        }
        negative += pivot < 0 ? 1 : 0;
        diagonal[k] = pivot;
        System.arraycopy(panel, start + j, unscaled[before], j, height - j);
        for (int i = start + j + 1; i < start + height; i++) {
            panel[i] /= pivot;
        }
    }

    /** What each pivot is measured against, see {@link PivotLimits}. */
    static double[] pivotScales(SymmetricMatrix matrix) {
        int[] starts = matrix.pattern().starts();
        int[] rows = matrix.pattern().rows();
        double[] values = matrix.values();
        double[] scales = matrix.diagonal();
        boolean[] empty = new boolean[scales.length];
        for (int j = 0; j < scales.length; j++) {
            scales[j] = Math.abs(scales[j]);
            empty[j] = scales[j] == 0;
        }
        for (int j = 0; j < scales.length; j++) {
            for (int p = starts[j] + 1; p < starts[j + 1]; p++) {
                int i = rows[p];
                if (empty[i] && !empty[j]) {
                    scales[i] = Math.max(scales[i], values[p] * values[p] / scales[j]);
                } else if (empty[j] && !empty[i]) {
                    scales[j] = Math.max(scales[j], values[p] * values[p] / scales[i]);
                }
            }
        }
        return scales;
    }
}
