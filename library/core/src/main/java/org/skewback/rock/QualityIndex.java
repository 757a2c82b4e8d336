package org.skewback.rock;

import org.skewback.quantity.Quantity;

/**
 * Tunnelling quality index Q and what is read from it.
 *
 * <p>Source: N. Barton, R. Lien and J. Lunde, Engineering classification of rock masses for the
 * design of tunnel support, Rock Mechanics 6 (1974) (as in E. Hoek, Practical Rock Engineering, ch.
 * 3; from memory).
 */
public final class QualityIndex {

    /** Least RQD that is put into Q. */
    private static final double LEAST_DESIGNATION = 0.10;

    private QualityIndex() {}

    /**
     * Gives {@code Q = RQD/J_n · J_r/J_a · J_w/SRF}, RQD in per cent and not below 10.
     *
     * @param designation rock quality designation RQD, from 0 % to 100 %
     * @param sets number of joint sets, J_n, from 0.5 to 20
     * @param roughness joint roughness, J_r, from 0.5 to 4
     * @param alteration joint alteration, J_a, from 0.75 to 20
     * @param water joint water, J_w, from 0.05 to 1
     * @param stress stress reduction factor SRF, from 0.5 to 400
     * @return Q, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity of(
            Quantity designation,
            Quantity sets,
            Quantity roughness,
            Quantity alteration,
            Quantity water,
            Quantity stress) {
        Require.within("rock quality designation", designation, 0, 1, "");
        Require.within("number of joint sets", sets, 0.5, 20, "");
        Require.within("joint roughness", roughness, 0.5, 4, "");
        Require.within("joint alteration", alteration, 0.75, 20, "");
        Require.within("joint water", water, 0.05, 1, "");
        Require.within("stress reduction factor", stress, 0.5, 400, "");
        Quantity inPercent = Quantity.max(designation, Quantity.of(LEAST_DESIGNATION)).times(100);
        return inPercent.over(sets).times(roughness.over(alteration)).times(water.over(stress));
    }

    /**
     * Gives the equivalent dimension of an opening, {@code D_e = B/ESR}.
     *
     * @param span span or height, B, more than 0
     * @param supportRatio excavation support ratio ESR, more than 0
     * @return the equivalent dimension
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity equivalentDimension(Quantity span, Quantity supportRatio) {
        Require.positive("span", span, "m");
        Require.positive("excavation support ratio", supportRatio, "");
        return span.over(supportRatio);
    }

    /**
     * Gives the greatest span without support, {@code 2 ESR Q^0.4} in metres.
     *
     * @param index Q, more than 0
     * @param supportRatio excavation support ratio ESR, more than 0
     * @return the span
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity unsupportedSpan(Quantity index, Quantity supportRatio) {
        Require.positive("quality index Q", index, "");
        Require.positive("excavation support ratio", supportRatio, "");
        return Quantity.of(2, "m").times(supportRatio).times(index.power(2, 5));
    }

    /**
     * Gives the length of rock bolts, {@code 2 + 0.15 B/ESR} in metres.
     *
     * @param span span, B, more than 0
     * @param supportRatio excavation support ratio ESR, more than 0
     * @return the length
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity boltLength(Quantity span, Quantity supportRatio) {
        return equivalentDimension(span, supportRatio).times(0.15).plus(Quantity.of(2, "m"));
    }

    /**
     * Gives the rock mass rating that goes with Q on average, {@code RMR = 9 ln Q + 44}.
     *
     * <p>The scatter is some ±18 points: no substitute for logging. Source: Z. T. Bieniawski (1976);
     * A. Palmström (2008).
     *
     * @param index Q, more than 0
     * @return RMR, a plain number
     * @throws IllegalArgumentException if Q is not positive
     */
    public static Quantity ratingByBieniawski(Quantity index) {
        Require.positive("quality index Q", index, "");
        return index.ln().times(9).plus(44);
    }

    /**
     * Gives the rock mass rating that goes with Q on average, {@code RMR = 15 lg Q + 50}.
     *
     * <p>Source: N. Barton (1995) (from memory).
     *
     * @param index Q, more than 0
     * @return RMR, a plain number
     * @throws IllegalArgumentException if Q is not positive
     */
    public static Quantity ratingByBarton(Quantity index) {
        Require.positive("quality index Q", index, "");
        return index.log10().times(15).plus(50);
    }
}
