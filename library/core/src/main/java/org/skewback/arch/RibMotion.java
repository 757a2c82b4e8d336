package org.skewback.arch;

import org.skewback.frame.FrameModel;
import org.skewback.frame.ModeShape;
import org.skewback.frame.Node;

/** What the ribs do in a shape of a deck arch. */
final class RibMotion {

    private RibMotion() {}

    /** Largest displacement of a node of the ribs. */
    static double largest(FrameModel model, ModeShape shape) {
        double ribs = 0;
        for (Node node : model.nodes()) {
            if (isOfRib(node)) {
                ribs = Math.max(ribs, shape.movement(node.name()).translation().length());
            }
        }
        return ribs;
    }

    /** Largest displacement of the ribs over the largest of all nodes. */
    static double ofRibs(FrameModel model, ModeShape shape) {
        double all = 0;
        for (Node node : model.nodes()) {
            all = Math.max(all, shape.movement(node.name()).translation().length());
        }
        return largest(model, shape) / all;
    }

    /** Share of the motion, by squares, that goes across the bridge. */
    static double across(FrameModel model, ModeShape shape) {
        double across = 0;
        double all = 0;
        for (Node node : model.nodes()) {
            var moved = shape.movement(node.name()).translation();
            across += moved.y() * moved.y();
            all += moved.dot(moved);
        }
        return across / all;
    }

    static boolean isOfRib(Node node) {
        String name = node.name();
        return name.startsWith("upper ") || name.startsWith("lower ") || name.startsWith("rib ");
    }
}
