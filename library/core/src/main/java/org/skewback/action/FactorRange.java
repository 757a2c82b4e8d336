package org.skewback.action;

/**
 * Factors between which an action counts in a combination.
 *
 * @param permanent whether the action is there always, else only where it hurts
 * @param low factor where it helps; 0 for a variable action
 * @param high factor where it hurts, at least {@code low}
 */
public record FactorRange(boolean permanent, double low, double high) {

    /**
     * Checks the order.
     *
     * @param permanent whether the action is there always
     * @param low factor where it helps
     * @param high factor where it hurts
     * @throws IllegalArgumentException if the factors are negative or out of order, or a variable action
     *     has a lower factor other than 0
     */
    public FactorRange {
        Require.within("lower factor of an action", low, 0, permanent ? high : 0, "");
    }
}
