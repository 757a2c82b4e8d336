package org.skewback.frame;

/**
 * Linear springs between two nodes, one for each motion of the end against the start. The springs sit
 * at the start node; where the nodes lie apart, a rigid arm runs from the end node to them.
 *
 * @param name what it is called
 * @param start node where it starts
 * @param end node where it ends
 * @param stiffness springs along and about the three axes of the link, N/m and N·m/rad, each finite;
 *     0 for free
 * @param axis direction of the springs' x, global axes
 * @param upward direction whose side the springs' z is on, not along {@code axis}
 */
public record SpringLink(
        String name, String start, String end, EndConnection stiffness, Vector axis, Vector upward)
        implements Member {

    /**
     * Checks the springs.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param stiffness springs, N/m and N·m/rad, each finite
     * @param axis direction of the springs' x, global axes
     * @param upward direction whose side the springs' z is on
     * @throws IllegalArgumentException if the name is blank or a stiffness infinite
     */
    public SpringLink {
        Require.name("member", name);
        for (Motion motion : Motion.values()) {
            Require.finite(
                    "stiffness of link " + name + " " + motion,
                    stiffness.stiffness(motion),
                    motion.isRotation() ? "N·m/rad" : "N/m");
        }
    }

    /**
     * Makes a link whose springs lie along the global axes.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param stiffness springs, N/m and N·m/rad, each finite
     * @return the link
     */
    public static SpringLink of(String name, String start, String end, EndConnection stiffness) {
        return new SpringLink(name, start, end, stiffness, Vector.X, Vector.Z);
    }
}
