package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.numeric.Eigenpairs;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;

/**
 * Linearised buckling: (K + K_g(permanent) + λ K_g(growing)) u = 0 (S. P. Timoshenko and J. M. Gere,
 * Theory of Elastic Stability, 2nd edition, 1961; matrices after {@code SecondOrder}).
 *
 * <p><b>The load.</b> The forces in members are those of linear statics in the undeformed shape. Loads
 * keep their points of the structure, their size and their direction while it buckles; moments on
 * nodes are semitangential. Where asked, loads across members given in local axes stay at right angles
 * to them instead, as fluid pressure does. Forces from temperature, lack of fit and prestress count as
 * loads of their case.
 *
 * <p><b>What is left out.</b> Deformation before buckling (shallow arches may snap through below the
 * factor), imperfections, yield, warping of sections, coupling of torsion and bending in sections
 * without two axes of symmetry, loads above or below the axis, and forces in spring links. Tension-only
 * and compression-only bars act as in the solution given. A factor is an upper bound of what a real
 * structure carries, never its resistance; codes ask for imperfections and second order besides.
 *
 * <p><b>Accuracy.</b> Each beam-column is divided into equal pieces with consistent geometric stiffness;
 * factors come out too high by a share that falls with the fourth power of their length in bending, with
 * the second where shear or twist take part: with the usual four pieces 0.05 % for a slender column of
 * one half-wave, 0.8 % between clamped ends, and some 2 % for a strip that tips sideways. More pieces are
 * asked for by {@link #divided(int)}.
 */
public final class BucklingAnalysis {

    private static final int USUAL_PARTS = 4;

    private final LinearAnalysis linear;
    private final int parts;
    private final boolean following;

    private BucklingAnalysis(LinearAnalysis linear, int parts, boolean following) {
        this.linear = linear;
        this.parts = parts;
        this.following = following;
    }

    /**
     * Makes a model ready.
     *
     * @param model the structure
     * @return the analysis, with four pieces a member and loads that keep their direction
     * @throws MechanismException if a part of the structure can move without resistance
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static BucklingAnalysis of(FrameModel model) {
        return new BucklingAnalysis(LinearAnalysis.of(model), USUAL_PARTS, false);
    }

    /**
     * Gives this analysis with other pieces.
     *
     * @param pieces equal pieces in each beam-column, 1 or more
     * @return the analysis
     * @throws IllegalArgumentException if the number is less than 1
     */
    public BucklingAnalysis divided(int pieces) {
        Require.within("pieces in a member", pieces, 1, 1000, "");
        return new BucklingAnalysis(linear, pieces, following);
    }

    /**
     * Gives this analysis with line loads in local axes across members that stay at right angles to
     * them and keep their size on the deformed length. They turn with the member in the plane of member
     * and load and do not roll with it. What holds the ends of the loaded line must let the load have a
     * potential: ends that are held, or move along lines through one point that all normals meet at.
     *
     * @return the analysis
     */
    public BucklingAnalysis withFollowingPressure() {
        return new BucklingAnalysis(linear, parts, true);
    }

    /**
     * Finds the lowest factors by which a load can grow.
     *
     * @param growing the load that grows, itself at factor 1
     * @param count how many factors, 1 or more
     * @return factors and shapes
     * @throws IllegalArgumentException if a load names what is not there or cannot be carried
     * @throws NotConvergedException if the iteration does not converge
     */
    public Buckling factors(LoadCase growing, int count) {
        return find(null, linear.solve(growing), count, Monitor.quiet());
    }

    /**
     * Finds the lowest factors by which a load can grow beside another that does not.
     *
     * @param permanent the load that stays as it is
     * @param growing the load that grows, itself at factor 1
     * @param count how many factors, 1 or more
     * @return factors and shapes
     * @throws IllegalArgumentException if a load cannot be carried, or the structure buckles under the
     *     permanent load already
     * @throws NotConvergedException if the iteration does not converge
     */
    public Buckling factors(LoadCase permanent, LoadCase growing, int count) {
        List<FrameSolution> both = linear.solve(List.of(permanent, growing));
        return find(both.get(0), both.get(1), count, Monitor.quiet());
    }

    /**
     * Finds the lowest factors by which the forces of a solution can grow, such as one with bars that
     * went slack, or one of a stage.
     *
     * @param growing the solution
     * @param count how many factors, 1 or more
     * @param monitor may stop the work
     * @return factors and shapes
     * @throws IllegalArgumentException if the solution is of another model
     * @throws NotConvergedException if the iteration does not converge
     */
    public Buckling factors(FrameSolution growing, int count, Monitor monitor) {
        requireOwn(growing);
        return find(null, growing, count, monitor);
    }

    /**
     * Finds the lowest factors by which the forces of a solution can grow beside those of another that
     * do not.
     *
     * @param permanent the solution whose forces stay as they are
     * @param growing the solution whose forces grow, themselves at factor 1
     * @param count how many factors, 1 or more
     * @param monitor may stop the work
     * @return factors and shapes
     * @throws IllegalArgumentException if a solution is of another model, or the structure buckles under
     *     the permanent one already
     * @throws NotConvergedException if the iteration does not converge
     */
    public Buckling factors(
            FrameSolution permanent, FrameSolution growing, int count, Monitor monitor) {
        requireOwn(permanent);
        requireOwn(growing);
        return find(permanent, growing, count, monitor);
    }

    private void requireOwn(FrameSolution solution) {
        if (solution.model() != linear.model()) {
            throw new IllegalArgumentException(
                    "solution "
                            + solution.name()
                            + " is of another model; allowed is the model of"
                            + " this analysis.");
        }
    }

    private Buckling find(
            @Nullable FrameSolution permanent, FrameSolution growing, int count, Monitor monitor) {
        Require.within("number of factors", count, 1, Integer.MAX_VALUE, "");
        boolean[] members = new boolean[linear.model().members().size()];
        for (int m = 0; m < members.length; m++) {
            members[m] = growing.isPresent(m);
        }
        DividedSystem divided = new DividedSystem(linear.system(), members, parts);
        SymmetricMatrix stiffness = divided.stiffness();
        if (permanent != null) {
            stiffness = SymmetricMatrix.combine(1, stiffness, 1, geometric(divided, permanent));
        }
        Eigenpairs pairs;
        try {
            pairs = Eigenproblem.buckling(stiffness, geometric(divided, growing), count, monitor);
        } catch (IllegalArgumentException e) {
            if (permanent == null) {
                throw e;
            }
            throw new IllegalArgumentException(
                    "the structure buckles under "
                            + permanent.name()
                            + " before "
                            + growing.name()
                            + " is added; allowed is a permanent load below its buckling load.",
                    e);
        }
        List<BucklingMode> modes = new ArrayList<>();
        for (int k = 0; k < pairs.size(); k++) {
            modes.add(
                    new BucklingMode(
                            pairs.value(k),
                            pairs.residual(k),
                            new ModeShape(divided, divided.movements(pairs.vector(k))),
                            divided,
                            growing,
                            permanent));
        }
        return new Buckling(growing.name(), loadDefinition(permanent), modes, pairs);
    }

    private SymmetricMatrix geometric(DividedSystem divided, FrameSolution solution) {
        ElementState[] states = new ElementState[linear.model().members().size()];
        for (int m = 0; m < states.length; m++) {
            states[m] = solution.state(m);
        }
        SymmetricAssembler assembler = divided.assembler();
        divided.add(
                assembler,
                p -> {
                    Division.Piece part = divided.division().piece(p);
                    return SecondOrder.geometric(
                            divided.system().elements().get(p), states[part.member()], part.from());
                });
        if (following) {
            divided.add(
                    assembler,
                    p -> {
                        Division.Piece part = divided.division().piece(p);
                        return SecondOrder.pressure(
                                divided.system().elements().get(p),
                                solution.loads().member(part.member()),
                                part.from());
                    });
        }
        return assembler.matrix();
    }

    private String loadDefinition(@Nullable FrameSolution permanent) {
        String direction =
                following
                        ? "line loads across members stay at right angles to them; all other loads"
                                + " keep their direction, size and point of the structure"
                        : "loads keep their direction, size and point of the structure";
        return permanent == null
                ? direction
                : direction + "; " + permanent.name() + " acts in full and does not grow";
    }
}
