package org.skewback.rock;

import org.skewback.quantity.Quantity;

/** The geological strength index GSI from numbers that a log holds. */
public final class GeologicalStrengthIndex {

    private GeologicalStrengthIndex() {}

    /**
     * Gives {@code GSI = 1.5 JCond₈₉ + RQD/2}, RQD in per cent.
     *
     * <p>Source: E. Hoek, T. G. Carter and M. S. Diederichs, Quantification of the Geological
     * Strength Index chart, 47th US Rock Mechanics Symposium (2013) (from memory).
     *
     * @param condition rating of the joints' condition of RMR89, JCond₈₉, from 0 to 30
     * @param designation rock quality designation, from 0 % to 100 %
     * @return GSI, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity ofCondition(Quantity condition, Quantity designation) {
        Require.within("rating of the joints' condition", condition, 0, 30, "");
        Require.within("rock quality designation", designation, 0, 1, "");
        return condition.times(1.5).plus(designation.times(100).over(2));
    }

    /**
     * Gives {@code GSI = RMR₈₉ − 5}, where the rating was made with dry joints (15 points) and
     * without one for orientation.
     *
     * <p>A rating with water or orientation in it counts both twice once strength is derived.
     * Source: E. Hoek and E. T. Brown, Practical estimates of rock mass strength (1997) (from
     * memory).
     *
     * @param rating the rating; its water is taken as dry and its orientation left out
     * @return GSI
     * @throws IllegalArgumentException if the rating made so is not above 23
     */
    public static int ofRating(RockMassRating rating) {
        int wet = rating.ratings().get(4).points();
        int dry = rating.basic() - wet + 15;
        if (dry <= 23) {
            throw Require.refused(
                    "RMR with dry joints and without orientation", dry, "", "more than 23");
        }
        return dry - 5;
    }
}
