package org.skewback.rock;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One rating of a rock mass, with what it was read from.
 *
 * @param what what was rated
 * @param points points given
 * @param reason the value, the class it falls in, and the rule at the class's limits
 */
public record Rating(String what, int points, String reason) {

    /** A class of a rated value: from its least value up, the points it gets. */
    record Band(double from, int points, String words) {}

    /**
     * Rates a value by bands in descending order; the last takes all that is left.
     *
     * <p>A value on the limit of two bands belongs to the better one.
     */
    static Rating of(String what, double value, String unit, Band... bands) {
        for (Band band : bands) {
            if (value >= band.from()) {
                return new Rating(
                        what,
                        band.points(),
                        BigDecimal.valueOf(value)
                                        .round(new MathContext(4))
                                        .stripTrailingZeros()
                                        .toPlainString()
                                + (unit.isEmpty() ? "" : " " + unit)
                                + " is in the class "
                                + band.words()
                                + "; a value on a limit belongs to the better class");
            }
        }
        throw Require.refused(what, value, unit, "one of the classes");
    }
}
