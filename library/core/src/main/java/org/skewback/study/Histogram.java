package org.skewback.study;

import java.util.List;
import org.skewback.quantity.Quantity;

/**
 * How many samples fell where: classes of one width, and how many fell below and above them.
 *
 * @param low lower end of the first class
 * @param width width of each class, more than 0
 * @param counts samples in each class, from low up
 * @param below samples below the first class
 * @param above samples above the last class
 */
public record Histogram(Quantity low, Quantity width, List<Long> counts, long below, long above) {

    /**
     * Keeps a copy of the list.
     *
     * @param low lower end of the first class
     * @param width width of each class, more than 0
     * @param counts samples in each class, from low up
     * @param below samples below the first class
     * @param above samples above the last class
     */
    public Histogram {
        counts = List.copyOf(counts);
    }

    /**
     * Gives the number of all samples.
     *
     * @return those in the classes, below and above
     */
    public long samples() {
        return below + above + counts.stream().mapToLong(Long::longValue).sum();
    }
}
