package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.numeric.Eigenpairs;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;

/**
 * Free vibration: K u = ω² M u, with the masses of the members spread along them, the rotary inertia of
 * their sections, and masses at nodes (R. W. Clough and J. Penzien, Dynamics of Structures, 2nd edition,
 * 1993, chapters 10 and 11; participation after section 12-3).
 *
 * <p>Each beam-column is divided into equal pieces; frequencies come out too high by a share that falls
 * with the fourth power of their length in bending, with the second in shear, twist and along the axis:
 * with the usual four pieces 0.03 % for one half-wave of bending in a slender member, 0.4 % for two; 0.6 %
 * for a quarter wave of twist. Left out: damping, mass of water or soil that moves along, and tension-only
 * bars going slack.
 */
public final class ModalAnalysis {

    private static final int USUAL_PARTS = 4;

    private final FrameSystem whole;
    private final List<NodalMass> nodal;
    private final List<LineMass> lines;
    private final int parts;
    private final @Nullable FrameSolution preload;

    private ModalAnalysis(
            FrameSystem whole,
            List<NodalMass> nodal,
            List<LineMass> lines,
            int parts,
            @Nullable FrameSolution preload) {
        this.whole = whole;
        this.nodal = nodal;
        this.lines = lines;
        this.parts = parts;
        this.preload = preload;
    }

    /**
     * Makes a model ready, with the masses of its members.
     *
     * @param model the structure
     * @return the analysis, with four pieces a member
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static ModalAnalysis of(FrameModel model) {
        return new ModalAnalysis(new FrameSystem(model), List.of(), List.of(), USUAL_PARTS, null);
    }

    /**
     * Gives this analysis with masses at nodes besides.
     *
     * @param masses the masses, added to those given before
     * @return the analysis
     * @throws IllegalArgumentException if there is no such node
     */
    public ModalAnalysis with(NodalMass... masses) {
        List<NodalMass> all = new ArrayList<>(nodal);
        for (NodalMass mass : masses) {
            whole.model().indexOfNode(mass.node());
            all.add(mass);
        }
        return new ModalAnalysis(whole, List.copyOf(all), lines, parts, preload);
    }

    /**
     * Gives this analysis with masses along members besides.
     *
     * @param masses the masses, added to those given before
     * @return the analysis
     * @throws IllegalArgumentException if there is no such member, or it is a link
     */
    public ModalAnalysis with(LineMass... masses) {
        List<LineMass> all = new ArrayList<>(lines);
        for (LineMass mass : masses) {
            if (whole.model().member(mass.member()) instanceof SpringLink) {
                throw new IllegalArgumentException(
                        "link " + mass.member() + " carries mass along it; allowed are members.");
            }
            all.add(mass);
        }
        return new ModalAnalysis(whole, nodal, List.copyOf(all), parts, preload);
    }

    /**
     * Gives this analysis with other pieces.
     *
     * @param pieces equal pieces in each beam-column, 1 or more
     * @return the analysis
     * @throws IllegalArgumentException if the number is less than 1
     */
    public ModalAnalysis divided(int pieces) {
        Require.within("pieces in a member", pieces, 1, 1000, "");
        return new ModalAnalysis(whole, nodal, lines, pieces, preload);
    }

    /**
     * Gives this analysis with the stiffness that forces present add or take away.
     *
     * @param solution the state about which the structure vibrates; members out of action in it are out
     *     of action here
     * @return the analysis
     * @throws IllegalArgumentException if the solution is of another model
     */
    public ModalAnalysis under(FrameSolution solution) {
        if (!solution.model().equals(whole.model())) {
            throw new IllegalArgumentException(
                    "solution "
                            + solution.name()
                            + " is of another model; allowed is the model of"
                            + " this analysis.");
        }
        return new ModalAnalysis(whole, nodal, lines, parts, solution);
    }

    /**
     * Finds the lowest modes.
     *
     * @param count how many, 1 or more
     * @return the modes; fewer where there are fewer
     * @throws NotConvergedException if the iteration does not converge
     * @throws IllegalArgumentException if the forces present make the structure buckle
     */
    public Modes modes(int count) {
        return modes(count, Monitor.quiet());
    }

    /**
     * Finds the lowest modes.
     *
     * @param count how many, 1 or more
     * @param monitor may stop the work
     * @return the modes; fewer where there are fewer
     * @throws NotConvergedException if the iteration does not converge
     * @throws IllegalArgumentException if the forces present make the structure buckle
     */
    public Modes modes(int count, Monitor monitor) {
        Require.within("number of modes", count, 1, Integer.MAX_VALUE, "");
        DynamicSystem dynamic = system();
        Eigenpairs pairs =
                Eigenproblem.vibration(dynamic.stiffness(), dynamic.mass(), count, monitor);
        return Modes.of(dynamic, pairs);
    }

    DynamicSystem system() {
        boolean[] members = new boolean[whole.elements().size()];
        Arrays.fill(members, true);
        FrameSolution present = preload;
        for (int m = 0; m < members.length && present != null; m++) {
            members[m] = present.isPresent(m);
        }
        DividedSystem divided = new DividedSystem(whole, members, parts);
        double[] extra = new double[members.length];
        for (LineMass line : lines) {
            extra[whole.model().indexOfMember(line.member())] += line.perLength();
        }
        SymmetricMatrix stiffness = divided.stiffness();
        if (present != null) {
            SymmetricMatrix geometric =
                    divided.sum(
                            p -> {
                                Division.Piece part = divided.division().piece(p);
                                return SecondOrder.geometric(
                                        divided.system().elements().get(p),
                                        present.state(part.member()),
                                        part.from());
                            });
            stiffness = SymmetricMatrix.combine(1, stiffness, 1, geometric);
        }
        return DynamicSystem.of(divided, stiffness, extra, nodal);
    }

    /** Adds masses at nodes, in the nodes' own directions. */
    static void addNodal(
            DividedSystem divided, List<NodalMass> masses, SymmetricAssembler assembler) {
        FrameSystem system = divided.system();
        for (NodalMass mass : masses) {
            int node = divided.model().indexOfNode(mass.node());
            double[][] six = new double[6][6];
            int[] unknowns = new int[6];
            for (int i = 0; i < 6; i++) {
                six[i][i] = i < 3 ? mass.mass() : mass.rotary().get(i - 3);
                unknowns[i] = system.unknown(6 * node + i);
                if (unknowns[i] < 0 && six[i][i] > 0 && !system.holds().isHeld(6 * node + i)) {
                    throw new IllegalArgumentException(
                            "moment of inertia at node "
                                    + mass.node()
                                    + " is "
                                    + six[i][i]
                                    + " kg·m²; allowed is 0, as nothing there resists turning.");
                }
            }
            assembler.add(unknowns, system.holds().toOwn(six, node));
        }
    }
}
