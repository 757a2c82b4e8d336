package org.skewback.frame;

/**
 * Holds one motion of a node against the ground, rigidly or by a linear spring.
 *
 * @param node node held
 * @param rotation whether a rotation is held, else a displacement
 * @param direction direction along which or about which it is held, global axes, made a unit vector
 * @param stiffness N/m or N·m/rad; infinite for rigid; greater than 0
 */
public record Support(String node, boolean rotation, Vector direction, double stiffness) {

    /**
     * Checks the numbers and makes the direction a unit vector.
     *
     * @param node node held
     * @param rotation whether a rotation is held
     * @param direction direction along which or about which it is held
     * @param stiffness N/m or N·m/rad; infinite for rigid
     * @throws IllegalArgumentException if the direction is zero or the stiffness not greater than 0
     */
    public Support {
        direction = direction.unit();
        if (!(stiffness > 0)) {
            throw Require.refused(
                    "stiffness of the support of node " + node,
                    stiffness,
                    rotation ? "N·m/rad" : "N/m",
                    "greater than 0, or infinity for rigid");
        }
    }

    /**
     * Holds a displacement rigidly.
     *
     * @param node node held
     * @param direction direction along which it is held
     * @return the support
     */
    public static Support along(String node, Vector direction) {
        return new Support(node, false, direction, Double.POSITIVE_INFINITY);
    }

    /**
     * Holds a rotation rigidly.
     *
     * @param node node held
     * @param direction axis about which it is held
     * @return the support
     */
    public static Support about(String node, Vector direction) {
        return new Support(node, true, direction, Double.POSITIVE_INFINITY);
    }

    /**
     * Holds a motion along or about a global axis rigidly.
     *
     * @param node node held
     * @param motion what is held
     * @return the support
     */
    public static Support of(String node, Motion motion) {
        return new Support(node, motion.isRotation(), motion.axis(), Double.POSITIVE_INFINITY);
    }

    /**
     * Tells rigid supports from springs.
     *
     * @return whether it is rigid
     */
    public boolean rigid() {
        return stiffness == Double.POSITIVE_INFINITY;
    }
}
