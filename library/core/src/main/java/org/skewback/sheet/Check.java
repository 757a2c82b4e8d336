package org.skewback.sheet;

import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Condition;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Relation;

/**
 * A requirement on a quantity.
 *
 * @param title what is required, in words
 * @param demand the quantity that must meet the requirement
 * @param relation {@link Relation#AT_MOST} or {@link Relation#AT_LEAST}
 * @param capacity the limit, of the same dimension
 */
public record Check(String title, Quantity demand, Relation relation, Quantity capacity) {

    /**
     * Checks what can be checked.
     *
     * @param title what is required, in words
     * @param demand the quantity that must meet the requirement
     * @param relation {@link Relation#AT_MOST} or {@link Relation#AT_LEAST}
     * @param capacity the limit, of the same dimension
     * @throws IllegalArgumentException when the title is blank, the relation is another, or the two
     *     differ in dimension
     */
    public Check {
        if (title.isBlank()) {
            throw new IllegalArgumentException("the check of " + demand + " has a blank title");
        }
        if (relation != Relation.AT_MOST && relation != Relation.AT_LEAST) {
            throw new IllegalArgumentException(
                    "check \"" + title + "\": allowed relations are at most and at least");
        }
        // Comparing is what refuses two dimensions.
        new Condition(demand, relation, capacity).holds();
    }

    /**
     * Tells whether the requirement is met.
     *
     * @return whether demand and capacity stand in the relation
     */
    public boolean isMet() {
        return new Condition(demand, relation, capacity).holds();
    }

    /**
     * Gives how much of the limit is used.
     *
     * @return demand / capacity for at most, capacity / demand for at least: 1 at the limit; or null
     *     where either is not positive and a ratio would mean nothing
     */
    public @Nullable Quantity utilisation() {
        if (demand.si() <= 0 || capacity.si() <= 0) {
            return null;
        }
        return relation == Relation.AT_MOST ? demand.over(capacity) : capacity.over(demand);
    }
}
