package org.skewback.frame;

/**
 * A member drawn to a force while its ends are held; then they are let go.
 *
 * @param member member
 * @param tension axial force while the ends are held, N, positive in tension
 */
public record InitialForce(String member, double tension) implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member
     * @param tension axial force while the ends are held, N, positive in tension
     * @throws IllegalArgumentException if the number is not finite
     */
    public InitialForce {
        Require.finite("initial force of member " + member, tension, "N");
    }
}
