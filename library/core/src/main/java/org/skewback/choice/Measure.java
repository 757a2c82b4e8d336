package org.skewback.choice;

import java.util.List;
import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;

/**
 * One thing that is compared, of which less is better.
 *
 * @param name what it is, in words
 * @param weight how much it counts, without unit, at least 0; the author's judgement
 * @param values its value for each option, all of one dimension
 */
public record Measure(String name, Quantity weight, List<Quantity> values) {

    /**
     * Checks and keeps a copy.
     *
     * @param name what it is, in words
     * @param weight how much it counts, without unit, at least 0; the author's judgement
     * @param values its value for each option, all of one dimension
     * @throws IllegalArgumentException if the name is blank, the weight negative or no plain number, there
     *     are fewer than two values or they are of different dimensions
     */
    public Measure {
        if (name.isBlank()) {
            throw new IllegalArgumentException("the name of a measure is blank");
        }
        Require.notNegative("weight of " + name, weight, "");
        values = List.copyOf(values);
        if (values.size() < 2) {
            throw new IllegalArgumentException(
                    "measure "
                            + name
                            + " has "
                            + values.size()
                            + " values; at least 2 are compared");
        }
        for (Quantity value : values) {
            if (!value.dimension().equals(values.get(0).dimension())) {
                throw new DimensionException(
                        "measure "
                                + name
                                + " has the values "
                                + values.get(0)
                                + " and "
                                + value
                                + "; allowed are those of one dimension");
            }
        }
    }

    private Quantity best() {
        return values.stream().reduce(Quantity::min).orElseThrow();
    }

    private Quantity worst() {
        return values.stream().reduce(Quantity::max).orElseThrow();
    }

    /**
     * Tells where the options lie between the best and the worst, {@code (x − best)/(worst − best)}.
     *
     * @return a number for each option: 0 for the best, 1 for the worst, 0 for all where they are alike
     */
    public List<Quantity> places() {
        Quantity range = worst().minus(best());
        if (range.si() == 0) {
            return values.stream().map(value -> Quantity.of(0)).toList();
        }
        Quantity best = best();
        return values.stream().map(value -> value.minus(best).over(range)).toList();
    }
}
