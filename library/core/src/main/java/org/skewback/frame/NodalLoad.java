package org.skewback.frame;

/**
 * A force and a moment on a node, global axes.
 *
 * @param node node loaded
 * @param force force, N
 * @param moment moment, right-handed, N·m
 */
public record NodalLoad(String node, Vector force, Vector moment) implements Load {

    /**
     * Makes a force without a moment.
     *
     * @param node node loaded
     * @param x force along x, N
     * @param y force along y, N
     * @param z force along z, upward, N
     * @return the load
     */
    public static NodalLoad force(String node, double x, double y, double z) {
        return new NodalLoad(node, new Vector(x, y, z), Vector.ZERO);
    }

    /**
     * Makes a moment without a force.
     *
     * @param node node loaded
     * @param x moment about x, N·m
     * @param y moment about y, N·m
     * @param z moment about z, N·m
     * @return the load
     */
    public static NodalLoad moment(String node, double x, double y, double z) {
        return new NodalLoad(node, Vector.ZERO, new Vector(x, y, z));
    }
}
