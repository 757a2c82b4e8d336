package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;
import org.skewback.numeric.SymmetricPattern;

/**
 * A model made ready for calculation: its elements, its unknowns, and the sums over them.
 *
 * <p>A motion is numbered 6 · node + 0 … 5, in the node's own directions (see {@link Holds}). An
 * unknown is a motion that is neither held nor without any stiffness in rotation, as at a node where
 * only bars meet or every member is hinged.
 */
final class FrameSystem {

    private final FrameModel model;
    private final List<Element> elements;
    private final Holds holds;
    private final int[] unknowns;
    private final int count;
    private final SymmetricPattern pattern;

    FrameSystem(FrameModel model) {
        this.model = model;
        List<Element> all = new ArrayList<>(model.members().size());
        for (Member member : model.members()) {
            all.add(Element.of(model, member));
        }
        elements = List.copyOf(all);
        holds = new Holds(model, model.supports());
        unknowns = new int[6 * model.nodes().size()];
        count = number();
        pattern = pattern();
    }

    private int number() {
        double[] diagonal = new double[unknowns.length];
        for (Element element : elements) {
            double[][] k = holds.toOwn(element.stiffness(), element.start(), element.end());
            for (int i = 0; i < 12; i++) {
                diagonal[motion(element, i)] += k[i][i];
            }
        }
        for (Support spring : holds.springs()) {
            double[][] k = springMatrix(spring);
            for (int i = 0; i < 6; i++) {
                diagonal[6 * model.indexOfNode(spring.node()) + i] += k[i][i];
            }
        }
        int next = 0;
        for (int i = 0; i < unknowns.length; i++) {
            boolean loose = i % 6 >= 3 && diagonal[i] == 0;
            unknowns[i] = holds.isHeld(i) || loose ? -1 : next++;
        }
        return next;
    }

    private static int motion(Element element, int i) {
        return i < 6 ? 6 * element.start() + i : 6 * element.end() + i - 6;
    }

    private SymmetricPattern pattern() {
        List<int[]> blocks = new ArrayList<>(elements.size());
        for (Element element : elements) {
            blocks.add(unknownsOf(element));
        }
        for (Support spring : holds.springs()) {
            blocks.add(unknownsOf(model.indexOfNode(spring.node())));
        }
        return SymmetricPattern.ofElements(count, blocks);
    }

    FrameModel model() {
        return model;
    }

    List<Element> elements() {
        return elements;
    }

    Holds holds() {
        return holds;
    }

    /** Number of unknowns. */
    int count() {
        return count;
    }

    /** Number of the unknown of a motion, or −1. */
    int unknown(int motion) {
        return unknowns[motion];
    }

    /** Motion of an unknown. */
    int motionOf(int unknown) {
        for (int i = 0; i < unknowns.length; i++) {
            if (unknowns[i] == unknown) {
                return i;
            }
        }
        throw new IllegalArgumentException("unknown " + unknown + " is none of " + count + ".");
    }

    int[] unknownsOf(Element element) {
        int[] twelve = new int[12];
        for (int i = 0; i < 12; i++) {
            twelve[i] = unknowns[motion(element, i)];
        }
        return twelve;
    }

    private int[] unknownsOf(int node) {
        return Arrays.copyOfRange(unknowns, 6 * node, 6 * node + 6);
    }

    /** Stiffness of a spring support against the six motions of its node, in its own directions. */
    private double[][] springMatrix(Support spring) {
        double[] d = spring.direction().equals(Vector.ZERO) ? new double[6] : direction(spring);
        double[][] k = new double[6][6];
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                k[i][j] = spring.stiffness() * d[i] * d[j];
            }
        }
        return holds.toOwn(k, model.indexOfNode(spring.node()));
    }

    /** The six components of a support's direction, global axes. */
    static double[] direction(Support support) {
        double[] six = new double[6];
        int from = support.rotation() ? 3 : 0;
        for (int k = 0; k < 3; k++) {
            six[from + k] = support.direction().get(k);
        }
        return six;
    }

    SymmetricPattern stiffnessPattern() {
        return pattern;
    }

    /** The stiffness matrix of the whole. */
    SymmetricMatrix stiffness() {
        boolean[] all = new boolean[elements.size()];
        Arrays.fill(all, true);
        return stiffness(all);
    }

    /** The stiffness matrix with some members only. */
    SymmetricMatrix stiffness(boolean[] present) {
        SymmetricAssembler assembler = new SymmetricAssembler(pattern);
        for (int e = 0; e < present.length; e++) {
            if (present[e]) {
                Element element = elements.get(e);
                assembler.add(
                        unknownsOf(element),
                        holds.toOwn(element.stiffness(), element.start(), element.end()));
            }
        }
        for (Support spring : holds.springs()) {
            assembler.add(unknownsOf(model.indexOfNode(spring.node())), springMatrix(spring));
        }
        return assembler.matrix();
    }

    AppliedLoads apply(List<Load> loads) {
        AppliedLoads applied = AppliedLoads.of(model, elements, loads);
        for (int i = 0; i < unknowns.length; i++) {
            if (applied.ground()[i] != 0 && !holds.isSupported(i / 6)) {
                throw new IllegalArgumentException(
                        "the ground moves under node "
                                + model.nodes().get(i / 6).name()
                                + ", which has no support; allowed are nodes with supports.");
            }
        }
        return applied;
    }

    /** Movements of held motions (others 0), six a node, global axes. */
    double[] heldMovements(AppliedLoads loads) {
        double[] u = loads.ground().clone();
        holds.allToOwn(u);
        for (int i = 0; i < u.length; i++) {
            if (!holds.isHeld(i)) {
                u[i] = 0;
            }
        }
        holds.toGlobal(u);
        return u;
    }

    /**
     * The right-hand side for the unknowns.
     *
     * @param loads what acts
     * @param present which members are there
     * @throws IllegalArgumentException if a load acts where nothing can carry it
     */
    double[] rightHandSide(AppliedLoads loads, boolean[] present) {
        double[] forces = loads.nodal().clone();
        double[] held = heldMovements(loads);
        double[] twelve = new double[12];
        for (int e = 0; e < present.length; e++) {
            if (!present[e]) {
                continue;
            }
            Element element = elements.get(e);
            if (loads.isLoaded(e)) {
                add(element, element.toGlobal(element.clamped(loads.member(e))), -1, forces);
            }
            if (gather(element, held, twelve)) {
                add(element, times(element.stiffness(), twelve), -1, forces);
            }
        }
        for (Support spring : holds.springs()) {
            int node = model.indexOfNode(spring.node());
            double[] d = direction(spring);
            double pull = 0;
            for (int k = 0; k < 6; k++) {
                pull += d[k] * (loads.ground()[6 * node + k] - held[6 * node + k]);
            }
            for (int k = 0; k < 6; k++) {
                forces[6 * node + k] += spring.stiffness() * pull * d[k];
            }
        }
        holds.allToOwn(forces);
        double[] right = new double[count];
        double largest = 0;
        for (double force : forces) {
            largest = Math.max(largest, Math.abs(force));
        }
        for (int i = 0; i < forces.length; i++) {
            if (unknowns[i] >= 0) {
                right[unknowns[i]] = forces[i];
            } else if (Math.abs(forces[i]) > 1e-9 * largest
                    && (!holds.isHeld(i) || (model.isInPlane() && !holds.isSupported(i / 6)))) {
                throw new IllegalArgumentException(
                        "load on node "
                                + model.nodes().get(i / 6).name()
                                + " "
                                + Motion.at(i % 6)
                                + " is "
                                + forces[i]
                                + (i % 6 < 3 ? " N" : " N·m")
                                + "; allowed is 0, as "
                                + (holds.isHeld(i)
                                        ? "the model moves in the x–z plane only."
                                        : "nothing there resists a rotation."));
            }
        }
        return right;
    }

    /** All movements, six a node, global axes, from the unknowns and what is held. */
    double[] movements(double[] solution, AppliedLoads loads) {
        double[] u = heldMovements(loads);
        holds.allToOwn(u);
        for (int i = 0; i < u.length; i++) {
            if (unknowns[i] >= 0) {
                u[i] = solution[unknowns[i]];
            }
        }
        holds.toGlobal(u);
        return u;
    }

    /** Movements of an element's two nodes; tells whether any is not 0. */
    static boolean gather(Element element, double[] u, double[] twelve) {
        boolean any = false;
        for (int i = 0; i < 12; i++) {
            twelve[i] = u[motion(element, i)];
            any |= twelve[i] != 0;
        }
        return any;
    }

    /** Adds twelve forces of an element to those of all nodes. */
    static void add(Element element, double[] twelve, double factor, double[] forces) {
        for (int i = 0; i < 12; i++) {
            forces[motion(element, i)] += factor * twelve[i];
        }
    }

    static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[matrix.length];
        for (int i = 0; i < product.length; i++) {
            double sum = 0;
            for (int j = 0; j < vector.length; j++) {
                sum += matrix[i][j] * vector[j];
            }
            product[i] = sum;
        }
        return product;
    }
}
