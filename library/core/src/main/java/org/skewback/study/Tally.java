package org.skewback.study;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Unit;

/**
 * Count, mean, squares, failures and classes of samples, to which blocks are added in their order.
 *
 * <p>Two sets are put together as in T. F. Chan, G. H. Golub and R. J. LeVeque, Updating formulae and
 * a pairwise algorithm for computing sample variances (1979).
 */
final class Tally {

    /** Classes within one standard deviation, and standard deviations to each side. */
    private static final int CLASSES_A_DEVIATION = 6;

    private static final int DEVIATIONS = 8;
    private static final int CLASSES = 2 * DEVIATIONS * CLASSES_A_DEVIATION;

    private final double low;
    private final double width;
    private final long[] classes = new long[CLASSES + 2];
    private long count;
    private double mean;
    private double squares;
    private long failures;

    Tally(double low, double width) {
        this.low = low;
        this.width = width;
    }

    /** An empty one whose classes suit a first block. */
    static Tally suiting(double[] demands, int size) {
        Tally plain = new Tally(0, 1);
        plain.add(demands, demands, size);
        double deviation = Math.sqrt(plain.squares / size);
        // A result that does not spread still needs classes, around it.
        double least = 1e-9 * Math.max(Math.abs(plain.mean), Double.MIN_NORMAL * 1e20);
        double width = Math.max(deviation, least) / CLASSES_A_DEVIATION;
        return new Tally(plain.mean - width * CLASSES / 2, width);
    }

    Tally empty() {
        return new Tally(low, width);
    }

    /** Adds samples; a margin below zero is a failure. */
    void add(double[] demands, double[] margins, int size) {
        double sum = 0;
        for (int s = 0; s < size; s++) {
            sum += demands[s];
        }
        double itsMean = sum / size;
        double itsSquares = 0;
        long itsFailures = 0;
        double perWidth = 1 / width;
        for (int s = 0; s < size; s++) {
            double off = demands[s] - itsMean;
            itsSquares += off * off;
            itsFailures += margins[s] < 0 ? 1 : 0;
            double place = Math.floor((demands[s] - low) * perWidth);
            classes[1 + (int) Math.max(-1, Math.min(CLASSES, place))]++;
        }
        merge(size, itsMean, itsSquares, itsFailures);
    }

    void add(Tally other) {
        merge(other.count, other.mean, other.squares, other.failures);
        for (int i = 0; i < classes.length; i++) {
            classes[i] += other.classes[i];
        }
    }

    private void merge(long itsCount, double itsMean, double itsSquares, long itsFailures) {
        long all = count + itsCount;
        double apart = itsMean - mean;
        mean += apart * ((double) itsCount / all);
        squares += itsSquares + apart * apart * ((double) count * itsCount / all);
        count = all;
        failures += itsFailures;
    }

    long count() {
        return count;
    }

    long failures() {
        return failures;
    }

    double mean() {
        return mean;
    }

    double deviation() {
        return Math.sqrt(squares / (count - 1));
    }

    double probability() {
        return (double) failures / count;
    }

    Progress progress(long wanted, Unit unit) {
        double p = probability();
        return new Progress(
                count,
                wanted,
                Require.quantity(mean, unit),
                Require.quantity(
                        deviation() / Math.sqrt((double) count), Require.ofDifferences(unit)),
                p,
                Math.sqrt(p * (1 - p) / count));
    }

    /** The classes without the empty ones at both ends. */
    Histogram histogram(Unit unit) {
        int first = 1;
        while (first < CLASSES && classes[first] == 0) {
            first++;
        }
        int last = CLASSES;
        while (last > first && classes[last] == 0) {
            last--;
        }
        List<Long> counts = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            counts.add(classes[i]);
        }
        return new Histogram(
                Require.quantity(low + (first - 1) * width, unit),
                Require.quantity(width, Require.ofDifferences(unit)),
                counts,
                classes[0],
                classes[CLASSES + 1]);
    }
}
