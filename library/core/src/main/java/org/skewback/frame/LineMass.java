package org.skewback.frame;

/**
 * Mass that a member carries along its axis besides its own, such as ballast and track.
 *
 * @param member the member
 * @param perLength kg/m, 0 or more
 */
public record LineMass(String member, double perLength) {

    /**
     * Checks the number.
     *
     * @param member the member
     * @param perLength kg/m
     * @throws IllegalArgumentException if the mass is negative or not finite
     */
    public LineMass {
        Require.notNegative("mass along member " + member, perLength, "kg/m");
    }
}
