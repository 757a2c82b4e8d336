package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
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
    private final Map<Support, Double> rests;
    private final int[] unknowns;
    private final int count;
    private final int[] idle;
    private final SymmetricPattern pattern;

    FrameSystem(FrameModel model) {
        this.model = model;
        elements = elements(model);
        holds = new Holds(model, model.supports());
        rests = Map.of();
        unknowns = new int[6 * model.nodes().size()];
        boolean[] all = new boolean[elements.size()];
        Arrays.fill(all, true);
        boolean[] loose = loose(all);
        int next = 0;
        for (int i = 0; i < unknowns.length; i++) {
            unknowns[i] = holds.isHeld(i) || (i % 6 >= 3 && loose[i]) ? -1 : next++;
        }
        count = next;
        idle = new int[0];
        List<int[]> blocks = new ArrayList<>(elements.size());
        for (Element element : elements) {
            blocks.add(unknownsOf(element));
        }
        for (Support spring : holds.springs()) {
            blocks.add(unknownsOf(model.indexOfNode(spring.node())));
        }
        pattern = SymmetricPattern.ofElements(count, blocks);
    }

    private FrameSystem(
            FrameModel model,
            List<Element> elements,
            Holds holds,
            Map<Support, Double> rests,
            int[] unknowns,
            int count,
            int[] idle,
            SymmetricPattern pattern) {
        this.model = model;
        this.elements = elements;
        this.holds = holds;
        this.rests = rests;
        this.unknowns = unknowns;
        this.count = count;
        this.idle = idle;
        this.pattern = pattern;
    }

    private static List<Element> elements(FrameModel model) {
        List<Element> all = new ArrayList<>(model.members().size());
        for (Member member : model.members()) {
            all.add(Element.of(model, member));
        }
        return List.copyOf(all);
    }

    /**
     * Numbers every motion, whatever is held, so that all stages of a structure share one pattern.
     */
    static FrameSystem ofAllMotions(FrameModel model) {
        List<Element> elements = elements(model);
        Holds none = new Holds(model, List.of());
        int[] unknowns = new int[6 * model.nodes().size()];
        int next = 0;
        for (int i = 0; i < unknowns.length; i++) {
            unknowns[i] = none.isHeld(i) ? -1 : next++;
        }
        List<int[]> blocks = new ArrayList<>();
        for (int n = 0; n < model.nodes().size(); n++) {
            blocks.add(Arrays.copyOfRange(unknowns, 6 * n, 6 * n + 6));
        }
        for (Element element : elements) {
            int[] twelve = new int[12];
            for (int i = 0; i < 12; i++) {
                twelve[i] = unknowns[motion(element, i)];
            }
            blocks.add(twelve);
        }
        return new FrameSystem(
                model,
                elements,
                none,
                Map.of(),
                unknowns,
                next,
                new int[0],
                SymmetricPattern.ofElements(next, blocks));
    }

    /**
     * Gives the structure at one stage, on the numbering of this one. Motions that are held, or that
     * nothing touches, stay in the matrix with a 1 on the diagonal.
     *
     * @param now the members as they are now
     * @param present which of them are there
     * @param supports supports with the place at which each took its node
     */
    FrameSystem stage(List<Element> now, boolean[] present, Map<Support, Double> supports) {
        Holds held = new Holds(model, List.copyOf(supports.keySet()));
        FrameSystem bare =
                new FrameSystem(
                        model,
                        List.copyOf(now),
                        held,
                        Map.copyOf(supports),
                        unknowns,
                        count,
                        idle,
                        pattern);
        boolean[] loose = bare.loose(present);
        int[] numbers = unknowns.clone();
        int[] out = new int[count];
        int found = 0;
        for (int i = 0; i < numbers.length; i++) {
            boolean absent = loose[6 * (i / 6)] && loose[6 * (i / 6) + 1] && loose[6 * (i / 6) + 2];
            if (numbers[i] >= 0 && (held.isHeld(i) || (loose[i] && (i % 6 >= 3 || absent)))) {
                out[found++] = numbers[i];
                numbers[i] = -1;
            }
        }
        return new FrameSystem(
                model,
                bare.elements,
                held,
                bare.rests,
                numbers,
                count,
                Arrays.copyOf(out, found),
                pattern);
    }

    /** The same structure with its members in another state, on the numbering of this one. */
    FrameSystem with(List<Element> others) {
        return new FrameSystem(
                model, List.copyOf(others), holds, rests, unknowns, count, idle, pattern);
    }

    /** Whether equilibrium is that of the deformed structure. */
    boolean isDeformed() {
        return elements.stream().anyMatch(Element::isDeformed);
    }

    /** Which motions no member and no spring resists. */
    private boolean[] loose(boolean[] present) {
        double[] diagonal = new double[6 * model.nodes().size()];
        for (int e = 0; e < present.length; e++) {
            if (present[e]) {
                Element element = elements.get(e);
                double[][] k = holds.toOwn(element.stiffness(), element.start(), element.end());
                for (int i = 0; i < 12; i++) {
                    diagonal[motion(element, i)] += k[i][i];
                }
            }
        }
        for (Support spring : holds.springs()) {
            double[][] k = springMatrix(spring);
            for (int i = 0; i < 6; i++) {
                diagonal[6 * model.indexOfNode(spring.node()) + i] += k[i][i];
            }
        }
        boolean[] loose = new boolean[diagonal.length];
        for (int i = 0; i < loose.length; i++) {
            loose[i] = diagonal[i] == 0;
        }
        return loose;
    }

    private static int motion(Element element, int i) {
        return i < 6 ? 6 * element.start() + i : 6 * element.end() + i - 6;
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
        double[] d = direction(spring);
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
        addSprings(assembler);
        for (int unknown : idle) {
            assembler.add(unknown, unknown, 1);
        }
        return assembler.matrix();
    }

    void addSprings(SymmetricAssembler assembler) {
        for (Support spring : holds.springs()) {
            assembler.add(unknownsOf(model.indexOfNode(spring.node())), springMatrix(spring));
        }
    }

    /** Adds the forces that nodes exert on spring supports, global axes. */
    void addSpringForces(double[] movements, double[] forces) {
        for (Support spring : holds.springs()) {
            int at = 6 * model.indexOfNode(spring.node());
            double[] d = direction(spring);
            double stretch = 0;
            for (int k = 0; k < 6; k++) {
                stretch += d[k] * movements[at + k];
            }
            for (int k = 0; k < 6; k++) {
                forces[at + k] += spring.stiffness() * stretch * d[k];
            }
        }
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

    /** Movement of its node at which a spring support took it, along its direction. */
    double rest(Support spring) {
        Double rest = rests.get(spring);
        return rest == null ? 0 : rest;
    }

    /** Movements at which rigid supports took their nodes, six a node, global axes. */
    double[] places() {
        double[] places = new double[unknowns.length];
        if (!rests.isEmpty()) {
            holds.places(model, rests, places);
        }
        return places;
    }

    /** Movements of held motions (others 0), six a node, global axes. */
    double[] heldMovements(AppliedLoads loads) {
        double[] u = loads.ground().clone();
        if (loads.takesPlaces()) {
            double[] places = places();
            for (int i = 0; i < u.length; i++) {
                u[i] += places[i];
            }
        }
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
            double pull = loads.takesPlaces() ? rest(spring) : 0;
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
                                        : "nothing there resists it."));
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
