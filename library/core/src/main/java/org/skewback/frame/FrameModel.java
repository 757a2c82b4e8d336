package org.skewback.frame;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A structure: nodes, what joins them, and what holds them. Immutable; made by a builder. */
public final class FrameModel {

    private final List<Node> nodes;
    private final List<Member> members;
    private final List<Support> supports;
    private final boolean inPlane;
    private final Map<String, Integer> nodeIndex = new HashMap<>();
    private final Map<String, Integer> memberIndex = new HashMap<>();

    FrameModel(List<Node> nodes, List<Member> members, List<Support> supports, boolean inPlane) {
        this.nodes = List.copyOf(nodes);
        this.members = List.copyOf(members);
        this.supports = List.copyOf(supports);
        this.inPlane = inPlane;
        for (Node node : nodes) {
            if (nodeIndex.put(node.name(), nodeIndex.size()) != null) {
                throw twice("node", node.name());
            }
        }
        for (Member member : members) {
            if (memberIndex.put(member.name(), memberIndex.size()) != null) {
                throw twice("member", member.name());
            }
            indexOfNode(member.start());
            indexOfNode(member.end());
            if (member.start().equals(member.end())) {
                throw new IllegalArgumentException(
                        "member "
                                + member.name()
                                + " starts and ends at node "
                                + member.start()
                                + "; allowed are two nodes.");
            }
        }
        for (Support support : supports) {
            indexOfNode(support.node());
        }
    }

    private static IllegalArgumentException twice(String what, String name) {
        return new IllegalArgumentException(
                what + " " + name + " is there twice; allowed is once.");
    }

    /**
     * Begins a model.
     *
     * @return a builder without anything in it
     */
    public static FrameModelBuilder builder() {
        return new FrameModelBuilder();
    }

    /**
     * Gives a builder that holds all of this model, to make another from it.
     *
     * @return a builder
     */
    public FrameModelBuilder toBuilder() {
        FrameModelBuilder builder = new FrameModelBuilder();
        nodes.forEach(builder::node);
        members.forEach(builder::add);
        supports.forEach(builder::support);
        return inPlane ? builder.inPlane() : builder;
    }

    /**
     * Lists the nodes.
     *
     * @return the nodes in the order in which they were given
     */
    public List<Node> nodes() {
        return nodes;
    }

    /**
     * Lists the members.
     *
     * @return the members in the order in which they were given
     */
    public List<Member> members() {
        return members;
    }

    /**
     * Lists the supports.
     *
     * @return the supports in the order in which they were given
     */
    public List<Support> supports() {
        return supports;
    }

    /**
     * Tells whether nodes move in the x–z plane only.
     *
     * @return whether displacement along y and rotation about x and z are held everywhere
     */
    public boolean isInPlane() {
        return inPlane;
    }

    /**
     * Finds a node.
     *
     * @param name its name
     * @return the node
     * @throws IllegalArgumentException if there is none of that name
     */
    public Node node(String name) {
        return nodes.get(indexOfNode(name));
    }

    /**
     * Finds a member.
     *
     * @param name its name
     * @return the member
     * @throws IllegalArgumentException if there is none of that name
     */
    public Member member(String name) {
        return members.get(indexOfMember(name));
    }

    /**
     * Gives the local axes of a member; see the package for the rule.
     *
     * @param name its name
     * @return unit vectors along local x, y and z, global axes
     * @throws IllegalArgumentException if there is none of that name, its length is 0, or its upward
     *     direction lies along it
     */
    public List<Vector> localAxes(String name) {
        Member member = member(name);
        Vector from = node(member.start()).place();
        Vector to = node(member.end()).place();
        if (member instanceof BeamColumn beam) {
            Vector along = to.plus(beam.endOffset()).minus(from.plus(beam.startOffset()));
            return List.of(beam.orientation().axes(name, along));
        } else if (member instanceof SpringLink link) {
            return List.of(new Orientation(link.upward(), 0).axes(name, link.axis()));
        }
        return List.of(Orientation.USUAL.axes(name, to.minus(from)));
    }

    int indexOfNode(String name) {
        Integer index = nodeIndex.get(name);
        if (index == null) {
            throw new IllegalArgumentException(
                    "node " + name + " is not in the model, which has " + nodes.size() + ".");
        }
        return index;
    }

    int indexOfMember(String name) {
        Integer index = memberIndex.get(name);
        if (index == null) {
            throw new IllegalArgumentException(
                    "member " + name + " is not in the model, which has " + members.size() + ".");
        }
        return index;
    }
}
