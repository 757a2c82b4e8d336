package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;

/** Collects nodes, members and supports in any order and makes a model of them. */
public final class FrameModelBuilder {

    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private boolean inPlane;

    FrameModelBuilder() {}

    /**
     * Adds a node.
     *
     * @param name what it is called
     * @param x place along the bridge, m
     * @param y place across, m
     * @param z level, m
     * @return this
     * @throws IllegalArgumentException if a number is not finite
     */
    public FrameModelBuilder node(String name, double x, double y, double z) {
        return node(new Node(name, new Vector(x, y, z)));
    }

    /**
     * Adds a node.
     *
     * @param node the node
     * @return this
     */
    public FrameModelBuilder node(Node node) {
        nodes.add(node);
        return this;
    }

    /**
     * Adds a member.
     *
     * @param member the member
     * @return this
     */
    public FrameModelBuilder add(Member member) {
        members.add(member);
        return this;
    }

    /**
     * Adds a support.
     *
     * @param support the support
     * @return this
     */
    public FrameModelBuilder support(Support support) {
        supports.add(support);
        return this;
    }

    /**
     * Holds motions of a node rigidly.
     *
     * @param node the node
     * @param motions what is held
     * @return this
     */
    public FrameModelBuilder hold(String node, Motion... motions) {
        for (Motion motion : motions) {
            supports.add(Support.of(node, motion));
        }
        return this;
    }

    /**
     * Holds all six motions of a node rigidly.
     *
     * @param node the node
     * @return this
     */
    public FrameModelBuilder fix(String node) {
        return hold(node, Motion.values());
    }

    /**
     * Holds the displacements of a node rigidly and leaves its rotations free.
     *
     * @param node the node
     * @return this
     */
    public FrameModelBuilder pin(String node) {
        return hold(node, Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z);
    }

    /**
     * Holds a motion of a node by a spring.
     *
     * @param node the node
     * @param motion what is held
     * @param stiffness N/m or N·m/rad, greater than 0
     * @return this
     * @throws IllegalArgumentException if the stiffness is not greater than 0
     */
    public FrameModelBuilder spring(String node, Motion motion, double stiffness) {
        supports.add(new Support(node, motion.isRotation(), motion.axis(), stiffness));
        return this;
    }

    /**
     * Lets nodes move in the x–z plane only: displacement along y and rotation about x and z are held
     * everywhere.
     *
     * @return this
     */
    public FrameModelBuilder inPlane() {
        inPlane = true;
        return this;
    }

    /**
     * Makes the model.
     *
     * @return the model
     * @throws IllegalArgumentException if a name is there twice, a node is missing, or a member starts
     *     where it ends
     */
    public FrameModel build() {
        return new FrameModel(nodes, members, supports, inPlane);
    }
}
