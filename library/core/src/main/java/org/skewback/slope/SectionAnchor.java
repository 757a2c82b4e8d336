package org.skewback.slope;

/**
 * An anchor in a section, its force spread over the metre run.
 *
 * <p>It holds what lies between its head and a slip surface. A surface that crosses the free length
 * meets the whole force; one that crosses the bond the share of the bond behind it; one behind the
 * bond's end nothing.
 *
 * @param x position of the head, m
 * @param y height of the head, m
 * @param plunge plunge below the level, into the slope, rad
 * @param force force per metre run, N/m
 * @param freeLength free length, m
 * @param bondLength bond length, m
 * @param convention on which side of the factor the force along the surface stands
 */
public record SectionAnchor(
        double x,
        double y,
        double plunge,
        double force,
        double freeLength,
        double bondLength,
        AnchorConvention convention) {

    /**
     * Makes an anchor.
     *
     * @param x position of the head, m
     * @param y height of the head, m
     * @param plunge plunge below the level, into the slope, rad, from −π/2 to π/2, both excluded
     * @param force force per metre run, N/m, at least 0
     * @param freeLength free length, m, greater than 0
     * @param bondLength bond length, m, greater than 0
     * @param convention on which side of the factor the force along the surface stands
     * @throws IllegalArgumentException if a value is outside
     */
    public SectionAnchor {
        Require.finite("position of the anchor head", x, "m");
        Require.finite("height of the anchor head", y, "m");
        if (!(Math.abs(plunge) < Math.PI / 2)) {
            throw Require.refused(
                    "plunge of the anchor",
                    StrictMath.toDegrees(plunge),
                    "°",
                    "more than −90°, less than 90°");
        }
        Require.notNegative("anchor force", force, "N/m");
        Require.positive("free length", freeLength, "m");
        Require.positive("bond length", bondLength, "m");
    }

    /**
     * Gives the same anchor with another force.
     *
     * @param other force per metre run, N/m, at least 0
     * @return the anchor
     */
    public SectionAnchor withForce(double other) {
        return new SectionAnchor(x, y, plunge, other, freeLength, bondLength, convention);
    }

    /** Share of the force that a surface crossing at a distance from the head meets. */
    double share(double distance) {
        if (distance <= freeLength) {
            return 1;
        }
        return Math.max(0, 1 - (distance - freeLength) / bondLength);
    }
}
