package org.skewback.numeric;

import java.util.Arrays;

/** Forward and backward substitution with the panels of L, for one vector or for several at once. */
final class Substitution {

    /** Most right-hand sides worked at once. */
    static final int MOST_TOGETHER = 32;

    private final Supernodes supernodes;
    private final double[][] lower;
    private final int highest;

    Substitution(Supernodes supernodes, double[][] lower) {
        this.supernodes = supernodes;
        this.lower = lower;
        int most = 0;
        for (int s = 0; s < supernodes.size(); s++) {
            most = Math.max(most, supernodes.height(s) - supernodes.width(s));
        }
        highest = most;
    }

    /** x becomes L⁻¹x, in the order of elimination. */
    void forward(double[] x) {
        double[] rest = new double[highest];
        for (int s = 0; s < supernodes.size(); s++) {
            double[] panel = lower[s];
            int first = supernodes.first[s];
            int width = supernodes.width(s);
            int height = supernodes.height(s);
            for (int q = 0; q < width; q++) {
                Panels.subtract1(
                        x, first + q + 1, panel, q * height + q + 1, width - q - 1, x[first + q]);
            }
            int below = height - width;
            if (below == 0) {
                continue;
            }
            Arrays.fill(rest, 0, below, 0);
            for (int q = 0; q < width; q += Panels.BLOCK) {
                Panels.subtract(
                        rest,
                        0,
                        panel,
                        q * height + width,
                        height,
                        below,
                        x,
                        first + q,
                        Math.min(Panels.BLOCK, width - q));
            }
            int from = supernodes.rowStarts[s];
            for (int i = 0; i < below; i++) {
                x[supernodes.rows[from + i]] += rest[i];
            }
        }
    }

    /** x becomes L⁻ᵀx. */
    void backward(double[] x) {
        double[] rest = new double[highest];
        for (int s = supernodes.size() - 1; s >= 0; s--) {
            double[] panel = lower[s];
            int first = supernodes.first[s];
            int width = supernodes.width(s);
            int height = supernodes.height(s);
            int below = height - width;
            int from = supernodes.rowStarts[s];
            for (int i = 0; i < below; i++) {
                rest[i] = x[supernodes.rows[from + i]];
            }
            int q = 0;
            for (; q + 4 <= width; q += 4) {
                int a0 = q * height + width;
                int a1 = a0 + height;
                int a2 = a1 + height;
                int a3 = a2 + height;
                double s0 = 0;
                double s1 = 0;
                double s2 = 0;
                double s3 = 0;
                for (int i = 0; i < below; i++) {
                    double value = rest[i];
                    s0 += panel[a0 + i] * value;
                    s1 += panel[a1 + i] * value;
                    s2 += panel[a2 + i] * value;
                    s3 += panel[a3 + i] * value;
                }
                x[first + q] -= s0;
                x[first + q + 1] -= s1;
                x[first + q + 2] -= s2;
                x[first + q + 3] -= s3;
            }
            for (; q < width; q++) {
                int a0 = q * height + width;
                double sum = 0;
                for (int i = 0; i < below; i++) {
                    sum += panel[a0 + i] * rest[i];
                }
                x[first + q] -= sum;
            }
            for (q = width - 1; q >= 0; q--) {
                double sum = 0;
                for (int i = q + 1; i < width; i++) {
                    sum += panel[q * height + i] * x[first + i];
                }
                x[first + q] -= sum;
            }
        }
    }

    /** Each of several vectors becomes L⁻¹x; unknown k of vector c is x[k·together + c]. */
    void forwardTogether(double[] x, int together) {
        double[] own = new double[widest() * together];
        double[] row = new double[together];
        double[] factors = new double[widest()];
        for (int s = 0; s < supernodes.size(); s++) {
            double[] panel = lower[s];
            int first = supernodes.first[s];
            int width = supernodes.width(s);
            int height = supernodes.height(s);
            int from = supernodes.rowStarts[s] - width;
            for (int i = 0; i < height; i++) {
                int known = Math.min(i, width);
                for (int q = 0; q < known; q++) {
                    factors[q] = panel[q * height + i];
                }
                int at = (i < width ? first + i : supernodes.rows[from + i]) * together;
                System.arraycopy(x, at, row, 0, together);
                subtractRows(row, own, factors, known, together);
                System.arraycopy(row, 0, x, at, together);
                if (i < width) {
                    System.arraycopy(row, 0, own, i * together, together);
                }
            }
        }
    }

    /** Each of several vectors becomes L⁻ᵀx. */
    void backwardTogether(double[] x, int together) {
        double[] rest = new double[(highest + widest()) * together];
        double[] row = new double[together];
        double[] factors = new double[highest + widest()];
        for (int s = supernodes.size() - 1; s >= 0; s--) {
            double[] panel = lower[s];
            int first = supernodes.first[s];
            int width = supernodes.width(s);
            int height = supernodes.height(s);
            int from = supernodes.rowStarts[s] - width;
            // Rows last to first, so that those of the panel's own columns follow as they come.
            for (int i = height - 1; i >= width; i--) {
                System.arraycopy(
                        x,
                        supernodes.rows[from + i] * together,
                        rest,
                        (height - 1 - i) * together,
                        together);
            }
            for (int q = width - 1; q >= 0; q--) {
                int known = height - 1 - q;
                int last = q * height + height - 1;
                for (int i = 0; i < known; i++) {
                    factors[i] = panel[last - i];
                }
                int at = (first + q) * together;
                System.arraycopy(x, at, row, 0, together);
                subtractRows(row, rest, factors, known, together);
                System.arraycopy(row, 0, x, at, together);
                System.arraycopy(row, 0, rest, known * together, together);
            }
        }
    }

    private static void subtractRows(
            double[] row, double[] rows, double[] factors, int count, int together) {
        int q = 0;
        for (; q + Panels.BLOCK <= count; q += Panels.BLOCK) {
            Panels.subtract(
                    row, 0, rows, q * together, together, together, factors, q, Panels.BLOCK);
        }
        if (q < count) {
            Panels.subtract(row, 0, rows, q * together, together, together, factors, q, count - q);
        }
    }

    private int widest() {
        int most = 0;
        for (int s = 0; s < supernodes.size(); s++) {
            most = Math.max(most, supernodes.width(s));
        }
        return most;
    }
}
