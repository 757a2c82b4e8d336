package org.skewback.cable;

/**
 * A vertical load that hangs on a cable.
 *
 * @param at place s of the load, unstressed length from the start, m
 * @param force the load, N, positive downward
 */
public record CableLoad(double at, double force) {

    /**
     * Checks the numbers.
     *
     * @param at unstressed length from the start, m
     * @param force the load, N, positive downward
     * @throws IllegalArgumentException if the place is negative or a number not finite
     */
    public CableLoad {
        Require.notNegative("place of a load on a cable", at, "m");
        Require.finite("load on a cable", force, "N");
    }
}
