package org.skewback.slope;

/**
 * A load on the ground, upright and even on plan.
 *
 * @param from left end, m
 * @param to right end, m
 * @param pressure load per plan area, Pa
 */
public record Surcharge(double from, double to, double pressure) {

    /**
     * Makes a load.
     *
     * @param from left end, m
     * @param to right end, m, greater than the left end
     * @param pressure load per plan area, Pa, at least 0
     * @throws IllegalArgumentException if a value is outside
     */
    public Surcharge {
        Require.finite("left end of the surcharge", from, "m");
        Require.positive("length of the surcharge", to - from, "m");
        Require.notNegative("surcharge", pressure, "Pa");
    }
}
