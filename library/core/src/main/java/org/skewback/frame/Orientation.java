package org.skewback.frame;

import org.jspecify.annotations.Nullable;

/**
 * How the local axes of a member lie about its own line; see the package for the rule.
 *
 * @param upward direction whose side local z is on, global axes, or null for the rule's own
 * @param roll angle by which local y and z are turned about local x, right-handed, rad
 */
public record Orientation(@Nullable Vector upward, double roll) {

    /** Upward is global z, with no roll. */
    public static final Orientation USUAL = new Orientation(null, 0);

    /** Level length below this share of the length counts as vertical. */
    private static final double VERTICAL = 1e-6;

    /**
     * Checks the numbers.
     *
     * @param upward direction whose side local z is on, or null
     * @param roll angle about local x, rad
     * @throws IllegalArgumentException if the direction is zero or the angle not finite
     */
    public Orientation {
        if (upward != null) {
            upward = upward.unit();
        }
        Require.finite("roll of a member", roll, "rad");
    }

    /**
     * Gives the local axes of a member.
     *
     * @param member name of the member, for the message
     * @param along vector from its start to its end, m
     * @return unit vectors along local x, y and z, global axes
     * @throws IllegalArgumentException if the member has no length or runs along its upward direction
     */
    Vector[] axes(String member, Vector along) {
        Vector x = along.unit();
        Vector y;
        if (upward == null && Math.sqrt(x.x() * x.x() + x.y() * x.y()) < VERTICAL) {
            Vector z = x.cross(Vector.Y).unit();
            y = z.cross(x);
        } else {
            Vector across = (upward == null ? Vector.Z : upward).cross(x);
            if (across.length() < VERTICAL) {
                throw new IllegalArgumentException(
                        "upward direction of member "
                                + member
                                + " is "
                                + upward
                                + "; allowed is one that is not along the member.");
            }
            y = across.unit();
        }
        Vector z = x.cross(y);
        if (roll == 0) {
            return new Vector[] {x, y, z};
        }
        double cosine = StrictMath.cos(roll);
        double sine = StrictMath.sin(roll);
        return new Vector[] {
            x, y.times(cosine).plus(z.times(sine)), z.times(cosine).minus(y.times(sine))
        };
    }
}
