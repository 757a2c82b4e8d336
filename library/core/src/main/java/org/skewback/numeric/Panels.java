package org.skewback.numeric;

/**
 * Inner loops over dense columns. The arrays read and written are always different ones, so that the
 * compiler may work several rows at a time.
 */
final class Panels {

    /** Columns taken away in one pass. */
    static final int BLOCK = 8;

    private Panels() {}

    /**
     * c[to + i] −= Σ a[from + q·stride + i]·f[at + q] for i = 0 … rows − 1 and q = 0 … count − 1, at
     * most {@link #BLOCK} columns.
     */
    static void subtract(
            double[] c,
            int to,
            double[] a,
            int from,
            int stride,
            int rows,
            double[] f,
            int at,
            int count) {
        if (count == BLOCK) {
            subtract8(
                    c, to, a, from, stride, rows, f[at], f[at + 1], f[at + 2], f[at + 3], f[at + 4],
                    f[at + 5], f[at + 6], f[at + 7]);
            return;
        }
        int q = 0;
        if (count >= 4) {
            subtract4(c, to, a, from, stride, rows, f[at], f[at + 1], f[at + 2], f[at + 3]);
            q = 4;
        }
        if (count - q >= 2) {
            subtract2(c, to, a, from + q * stride, stride, rows, f[at + q], f[at + q + 1]);
            q += 2;
        }
        if (q < count) {
            subtract1(c, to, a, from + q * stride, rows, f[at + q]);
        }
    }

    private static void subtract8(
            double[] c,
            int to,
            double[] a,
            int from,
            int stride,
            int rows,
            double f0,
            double f1,
            double f2,
            double f3,
            double f4,
            double f5,
            double f6,
            double f7) {
        int a1 = from + stride;
        int a2 = a1 + stride;
        int a3 = a2 + stride;
        int a4 = a3 + stride;
        int a5 = a4 + stride;
        int a6 = a5 + stride;
        int a7 = a6 + stride;
        for (int i = 0; i < rows; i++) {
            c[to + i] -=
                    ((a[from + i] * f0 + a[a1 + i] * f1) + (a[a2 + i] * f2 + a[a3 + i] * f3))
                            + ((a[a4 + i] * f4 + a[a5 + i] * f5)
                                    + (a[a6 + i] * f6 + a[a7 + i] * f7));
        }
    }

    private static void subtract4(
            double[] c,
            int to,
            double[] a,
            int from,
            int stride,
            int rows,
            double f0,
            double f1,
            double f2,
            double f3) {
        int a1 = from + stride;
        int a2 = a1 + stride;
        int a3 = a2 + stride;
        for (int i = 0; i < rows; i++) {
            c[to + i] -= (a[from + i] * f0 + a[a1 + i] * f1) + (a[a2 + i] * f2 + a[a3 + i] * f3);
        }
    }

    private static void subtract2(
            double[] c, int to, double[] a, int from, int stride, int rows, double f0, double f1) {
        int a1 = from + stride;
        for (int i = 0; i < rows; i++) {
            c[to + i] -= a[from + i] * f0 + a[a1 + i] * f1;
        }
    }

    static void subtract1(double[] c, int to, double[] a, int from, int rows, double f) {
        for (int i = 0; i < rows; i++) {
            c[to + i] -= a[from + i] * f;
        }
    }

    /**
     * c[i] −= Σ a[q][i]·f[q] for i = low … high − 1 and q = 0 … count − 1. One index for all arrays and
     * four columns at a time: a longer body the compiler no longer turns to vector instructions.
     */
    static void subtract(double[] c, double[][] a, int low, int high, double[] f, int count) {
        int q = 0;
        for (; q + 4 <= count; q += 4) {
            subtract(
                    c, a[q], a[q + 1], a[q + 2], a[q + 3], low, high, f[q], f[q + 1], f[q + 2],
                    f[q + 3]);
        }
        if (q + 2 <= count) {
            subtract(c, a[q], a[q + 1], low, high, f[q], f[q + 1]);
            q += 2;
        }
        if (q < count) {
            subtract(c, a[q], low, high, f[q]);
        }
    }

    private static void subtract(
            double[] c,
            double[] a0,
            double[] a1,
            double[] a2,
            double[] a3,
            int low,
            int high,
            double f0,
            double f1,
            double f2,
            double f3) {
        for (int i = low; i < high; i++) {
            c[i] -= (a0[i] * f0 + a1[i] * f1) + (a2[i] * f2 + a3[i] * f3);
        }
    }

    private static void subtract(
            double[] c, double[] a0, double[] a1, int low, int high, double f0, double f1) {
        for (int i = low; i < high; i++) {
            c[i] -= a0[i] * f0 + a1[i] * f1;
        }
    }

    private static void subtract(double[] c, double[] a, int low, int high, double f) {
        for (int i = low; i < high; i++) {
            c[i] -= a[i] * f;
        }
    }
}
