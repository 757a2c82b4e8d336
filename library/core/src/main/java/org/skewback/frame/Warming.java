package org.skewback.frame;

/**
 * A change of temperature of a member, uniform along it and linear over its section.
 *
 * @param member member
 * @param rise rise of temperature at the centroid, K
 * @param gradientY rise of temperature per length along local y, K/m
 * @param gradientZ rise of temperature per length along local z, K/m; positive when the top is warmer
 */
public record Warming(String member, double rise, double gradientY, double gradientZ)
        implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member
     * @param rise rise of temperature at the centroid, K
     * @param gradientY rise of temperature per length along local y, K/m
     * @param gradientZ rise of temperature per length along local z, K/m; positive when the top is warmer
     * @throws IllegalArgumentException if a number is not finite
     */
    public Warming {
        Require.finite("rise of temperature of member " + member, rise, "K");
        Require.finite("gradient of temperature of member " + member, gradientY, "K/m");
        Require.finite("gradient of temperature of member " + member, gradientZ, "K/m");
    }
}
