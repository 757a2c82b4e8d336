package org.skewback.frame;

import java.util.Locale;

/**
 * A motion that nothing resists, or hardly anything, told by the node that moves most.
 *
 * @param node the node
 * @param rotation whether it turns, else it moves
 * @param direction direction along which, or axis about which; a unit vector, global axes
 */
public record FreeMotion(String node, boolean rotation, Vector direction) {

    private static final double ALONG_AN_AXIS = 1e-6;

    @Override
    public String toString() {
        String where = null;
        for (int axis = 0; axis < 3; axis++) {
            if (Math.abs(direction.get(axis)) > 1 - ALONG_AN_AXIS) {
                where = String.valueOf("xyz".charAt(axis));
            }
        }
        if (where == null) {
            where =
                    String.format(
                            Locale.ROOT,
                            "(%.3f, %.3f, %.3f)",
                            direction.x(),
                            direction.y(),
                            direction.z());
        }
        return rotation
                ? "node " + node + " turns about " + where
                : "node " + node + " moves along " + where;
    }

    /**
     * Reads the motion from movements of all nodes.
     *
     * @param model the structure
     * @param u six movements a node
     * @param preferred node named if it moves as much as any other
     */
    static FreeMotion of(FrameModel model, double[] u, int preferred) {
        int count = model.nodes().size();
        int most = preferred;
        int turns = preferred;
        double scale = 1 - ALONG_AN_AXIS;
        for (int i = 0; i < count; i++) {
            if (size(u, i, 0) * scale > size(u, most, 0)) {
                most = i;
            }
            if (size(u, i, 3) * scale > size(u, turns, 3)) {
                turns = i;
            }
        }
        boolean rotation = size(u, most, 0) <= ALONG_AN_AXIS * size(u, turns, 3) * reach(model);
        int node = rotation ? turns : most;
        Vector direction = Vector.of(u, 6 * node + (rotation ? 3 : 0)).unit();
        // Of the two senses the one whose largest component is positive.
        for (int axis = 0; axis < 3; axis++) {
            if (direction.get(axis) < -0.5773) {
                direction = direction.times(-1);
                break;
            }
        }
        return new FreeMotion(model.nodes().get(node).name(), rotation, direction);
    }

    private static double size(double[] u, int node, int from) {
        return Vector.of(u, 6 * node + from).length();
    }

    /** The size of the structure, by which rotations are made comparable with displacements. */
    private static double reach(FrameModel model) {
        Vector first = model.nodes().get(0).place();
        double reach = 0;
        for (Node node : model.nodes()) {
            reach = Math.max(reach, node.place().minus(first).length());
        }
        return reach;
    }
}
