package org.skewback.numeric;

/** Sums over vectors, always from the first entry to the last. */
final class Vectors {

    private Vectors() {}

    static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }

    /** y += factor x. */
    static void add(double factor, double[] x, double[] y) {
        for (int i = 0; i < x.length; i++) {
            y[i] += factor * x[i];
        }
    }

    static void scale(double factor, double[] x) {
        for (int i = 0; i < x.length; i++) {
            x[i] *= factor;
        }
    }

    static double largest(double[] x) {
        double largest = 0;
        for (double value : x) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }

    static double norm(double[] x) {
        return Math.sqrt(dot(x, x));
    }

    static double sumOfSizes(double[] x) {
        double sum = 0;
        for (double value : x) {
            sum += Math.abs(value);
        }
        return sum;
    }
}
