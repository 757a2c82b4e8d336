package org.skewback.frame;

import java.util.Arrays;

/** A state of equilibrium on the path of a structure that moves far. */
public final class LargeState {

    private final DividedSystem divided;
    private final String name;
    private final double factor;
    private final double[] displacements;
    private final Turn[] turns;
    private final MovedElement[] elements;

    private LargeState(
            DividedSystem divided,
            String name,
            double factor,
            double[] displacements,
            Turn[] turns,
            MovedElement[] elements) {
        this.divided = divided;
        this.name = name;
        this.factor = factor;
        this.displacements = displacements;
        this.turns = turns;
        this.elements = elements;
    }

    static LargeState start(DividedSystem divided, String name) {
        int nodes = divided.division().model().nodes().size();
        Turn[] turns = new Turn[nodes];
        Arrays.fill(turns, Turn.NONE);
        return at(divided, name, 0, new double[6 * nodes], turns);
    }

    private static LargeState at(
            DividedSystem divided, String name, double factor, double[] u, Turn[] turns) {
        MovedElement[] elements = new MovedElement[divided.division().size()];
        for (int p = 0; p < elements.length; p++) {
            elements[p] =
                    MovedElement.of(
                            divided.system().elements().get(p),
                            divided.division().model(),
                            u,
                            turns);
        }
        return new LargeState(divided, name, factor, u, turns, elements);
    }

    LargeState under(double otherFactor) {
        return new LargeState(divided, name, otherFactor, displacements, turns, elements);
    }

    LargeState moved(double[] step, double share) {
        double[] by = divided.movements(step);
        double[] u = displacements.clone();
        Turn[] next = turns.clone();
        for (int n = 0; n < next.length; n++) {
            Vector turn = Vector.of(by, 6 * n + 3).times(share);
            if (turn.length() > 0) {
                next[n] = Turn.about(turn).after(turns[n]);
            }
            Vector total = next[n].vector();
            for (int k = 0; k < 3; k++) {
                u[6 * n + k] += share * by[6 * n + k];
                u[6 * n + 3 + k] = total.get(k);
            }
        }
        return at(divided, name, factor, u, next);
    }

    /** Load less internal forces, on the unknowns. */
    double[] residual(double[] full) {
        double[] inside = inside();
        double[] residual = new double[full.length];
        for (int i = 0; i < inside.length; i++) {
            int unknown = divided.system().unknown(i);
            if (unknown >= 0) {
                residual[unknown] = factor * full[unknown] - inside[i];
            }
        }
        return residual;
    }

    /** Forces that nodes exert on members and springs, in the nodes' own directions. */
    private double[] inside() {
        double[] inside = new double[displacements.length];
        for (int p = 0; p < elements.length; p++) {
            FrameSystem.add(divided.system().elements().get(p), elements[p].forces(), 1, inside);
        }
        divided.system().addSpringForces(displacements, inside);
        divided.system().holds().allToOwn(inside);
        return inside;
    }

    /** The largest force about, against which what is left over is measured. */
    double scale(double[] full) {
        double scale = 0;
        for (double force : full) {
            scale = Math.max(scale, Math.abs(factor * force));
        }
        for (MovedElement element : elements) {
            for (double force : element.forces()) {
                scale = Math.max(scale, Math.abs(force));
            }
        }
        return scale;
    }

    MovedElement[] elements() {
        return elements;
    }

    String name() {
        return name;
    }

    /**
     * Gives the load factor.
     *
     * @return share of the load that acts
     */
    public double factor() {
        return factor;
    }

    /**
     * Gives the movement of a node.
     *
     * @param node the node
     * @return displacement and rotation vector (of length up to π), global axes
     * @throws IllegalArgumentException if there is no such node
     */
    public Movement movement(String node) {
        int at = divided.model().indexOfNode(node);
        return new Movement(Vector.of(displacements, 6 * at), turns[at].vector());
    }

    /**
     * Tells where a point of a member's axis has gone.
     *
     * @param member the member
     * @param position distance from its start on the undeformed member, m
     * @return place, global axes, m
     * @throws IllegalArgumentException if there is no such member, it is a link, or not so long
     */
    public Vector place(String member, double position) {
        int index = divided.model().indexOfMember(member);
        int piece = divided.division().holding(index, position);
        Element element = divided.system().elements().get(piece);
        if (element.length() == 0) {
            throw new IllegalArgumentException(
                    "member " + member + " is a link; allowed are members with a length.");
        }
        double x = position - divided.division().piece(piece).from();
        Require.within(
                "position in its piece of member " + member,
                x,
                0,
                element.length() * (1 + 1e-9),
                "m");
        return elements[piece].place(
                divided.division().model(), displacements, Math.min(x, element.length()));
    }

    /**
     * Gives the structure.
     *
     * @return the model analysed
     */
    public FrameModel model() {
        return divided.model();
    }

    /**
     * Gives the forces in a member at a place, along the axes of its deformed pieces.
     *
     * @param member the member
     * @param position distance from its start on the undeformed member, m
     * @return section forces
     * @throws IllegalArgumentException if there is no such member, it is a link, or not so long
     */
    public SectionForces at(String member, double position) {
        int index = divided.model().indexOfMember(member);
        int piece = divided.division().holding(index, position);
        Element element = divided.system().elements().get(piece);
        double x = position - divided.division().piece(piece).from();
        Require.within(
                "position in its piece of member " + member,
                x,
                0,
                element.length() * (1 + 1e-9),
                "m");
        double[] s = elements[piece].state().forces(Math.min(x, element.length()), false);
        return SectionForces.of(s);
    }
}
