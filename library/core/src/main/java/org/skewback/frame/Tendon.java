package org.skewback.frame;

/**
 * A tendon anchored at both ends of a member, on a parabola, of constant force.
 *
 * <p>Forces in the member are then those of the member without the tendon: −P on the tendon's line, and
 * what the held structure adds. The slope of the tendon is taken as small (N = −P, V = dM/dx). Losses
 * are the caller's to deduct.
 *
 * @param member member
 * @param force tension of the tendon P, N, at least 0
 * @param startY eccentricity along local y at the start, m
 * @param startZ eccentricity along local z at the start, m
 * @param middleY eccentricity along local y at the middle, m
 * @param middleZ eccentricity along local z at the middle, m
 * @param endY eccentricity along local y at the end, m
 * @param endZ eccentricity along local z at the end, m
 */
public record Tendon(
        String member,
        double force,
        double startY,
        double startZ,
        double middleY,
        double middleZ,
        double endY,
        double endZ)
        implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member
     * @param force tension of the tendon P, N, at least 0
     * @param startY eccentricity along local y at the start, m
     * @param startZ eccentricity along local z at the start, m
     * @param middleY eccentricity along local y at the middle, m
     * @param middleZ eccentricity along local z at the middle, m
     * @param endY eccentricity along local y at the end, m
     * @param endZ eccentricity along local z at the end, m
     * @throws IllegalArgumentException if the force is negative or a number not finite
     */
    public Tendon {
        Require.notNegative("force of the tendon in member " + member, force, "N");
        Require.finite("eccentricity of the tendon in member " + member, startY, "m");
        Require.finite("eccentricity of the tendon in member " + member, startZ, "m");
        Require.finite("eccentricity of the tendon in member " + member, middleY, "m");
        Require.finite("eccentricity of the tendon in member " + member, middleZ, "m");
        Require.finite("eccentricity of the tendon in member " + member, endY, "m");
        Require.finite("eccentricity of the tendon in member " + member, endZ, "m");
    }
}
