package org.skewback.frame;

/**
 * A member made longer or shorter than the distance it is to fill, and forced in.
 *
 * @param member member
 * @param excess how much longer it was made, m; negative for shorter
 */
public record LackOfFit(String member, double excess) implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member
     * @param excess how much longer it was made, m; negative for shorter
     * @throws IllegalArgumentException if the number is not finite
     */
    public LackOfFit {
        Require.finite("lack of fit of member " + member, excess, "m");
    }
}
