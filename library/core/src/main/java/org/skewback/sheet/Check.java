package org.skewback.sheet;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Quantity;

/**
 * A requirement on a quantity: at most a limit, at least a limit, or between two.
 *
 * @param title what is required, in words
 * @param demand the quantity that must meet the requirement
 * @param least the lower limit, of the same dimension, or null for none
 * @param most the upper limit, of the same dimension, or null for none
 */
public record Check(
        String title, Quantity demand, @Nullable Quantity least, @Nullable Quantity most) {

    /**
     * Checks what can be checked.
     *
     * @param title what is required, in words
     * @param demand the quantity that must meet the requirement
     * @param least the lower limit, of the same dimension, or null for none
     * @param most the upper limit, of the same dimension, or null for none
     * @throws IllegalArgumentException when the title is blank, there is no limit, a limit has
     *     another dimension or is a reading in °C where the demand is none, or the lower limit is
     *     not below the upper one
     */
    public Check {
        if (title.isBlank()) {
            throw new IllegalArgumentException("the check of " + demand + " has a blank title");
        }
        if (least == null && most == null) {
            throw new IllegalArgumentException("check \"" + title + "\" has no limit");
        }
        for (Quantity limit : Stream.of(least, most).filter(Objects::nonNull).toList()) {
            // Comparing is what refuses two dimensions.
            demand.atMost(limit);
            if (demand.unit().isReading() != limit.unit().isReading()) {
                throw new IllegalArgumentException(
                        "check \""
                                + title
                                + "\": "
                                + demand
                                + " and "
                                + limit
                                + " are a reading in °C and a difference in kelvin; allowed are two"
                                + " of a kind");
            }
        }
        if (least != null && most != null && !least.lessThan(most).holds()) {
            throw new IllegalArgumentException(
                    "check \""
                            + title
                            + "\": the lower limit is "
                            + least
                            + " and the upper "
                            + most
                            + "; allowed is a lower limit below the upper");
        }
    }

    /**
     * Gives the limits.
     *
     * @return one or two quantities, the lower first
     */
    public List<Quantity> limits() {
        return Stream.of(least, most).filter(Objects::nonNull).toList();
    }

    /**
     * Says how the quantity must stand to the limits.
     *
     * @return {@code ≤}, {@code ≥} or {@code between}
     */
    public String relation() {
        if (least == null) {
            return "≤";
        }
        return most == null ? "≥" : "between";
    }

    /**
     * Says the same in words.
     *
     * @return {@code at most}, {@code at least} or {@code between}
     */
    public String inWords() {
        if (least == null) {
            return "at most";
        }
        return most == null ? "at least" : "between";
    }

    /**
     * Tells whether the requirement is met.
     *
     * @return whether least ≤ demand ≤ most, as far as there are such limits
     */
    public boolean isMet() {
        return (least == null || demand.atLeast(least).holds())
                && (most == null || demand.atMost(most).holds());
    }

    /**
     * Gives how much of the limit is used: 1 at the limit.
     *
     * @return demand / most for at most; least / demand for at least; the distance from the middle
     *     over half the range for between, |(demand − least) − (most − demand)| / (most − least); or
     *     null where a ratio would mean nothing: for one limit where either is not positive or a
     *     reading in °C, and where the ratio is beyond all numbers
     */
    public @Nullable Quantity utilisation() {
        Quantity low = least;
        Quantity high = most;
        if (low != null && high != null) {
            Quantity fromMiddle = demand.minus(low).minus(high.minus(demand)).abs();
            return ratio(fromMiddle, high.minus(low));
        }
        Quantity part = low == null ? demand : low;
        Quantity whole = low == null ? Objects.requireNonNull(high) : demand;
        boolean reading = part.unit().isReading() || whole.unit().isReading();
        return reading || part.si() <= 0 || whole.si() <= 0 ? null : ratio(part, whole);
    }

    /** A ratio beyond all numbers says no more than the verdict does. */
    private static @Nullable Quantity ratio(Quantity part, Quantity whole) {
        return Double.isFinite(part.si() / whole.si()) ? part.over(whole) : null;
    }

    /**
     * Gives what is left to the limit; negative where the requirement is not met.
     *
     * @return most − demand, demand − least, or the lesser of the two
     */
    public Quantity margin() {
        Quantity low = least;
        Quantity high = most;
        if (low == null) {
            return Objects.requireNonNull(high).minus(demand);
        }
        Quantity above = demand.minus(low);
        return high == null ? above : Quantity.min(above, high.minus(demand));
    }
}
