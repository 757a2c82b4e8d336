package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.PivotLimits;
import org.skewback.numeric.SingularMatrixException;
import org.skewback.numeric.SymbolicFactorization;
import org.skewback.numeric.SymmetricAssembler;

/**
 * Large displacements and rotations with small strains: co-rotational members, Newton's method with a
 * line search, and arc-length steps past limit points (M. A. Crisfield, Non-linear Finite Element
 * Analysis of Solids and Structures, volume 1, 1991, chapter 9, and volume 2, 1997, chapter 17).
 *
 * <p><b>Loads</b> act on nodes and keep their direction; moments on nodes must act where rotation is
 * about one axis only, or they are not conservative. Lines of load, temperature and prestress are not
 * taken: divide members and load their nodes.
 *
 * <p><b>Cables</b> are exact catenaries; their weight and pull act in full from the start, whatever the
 * factor of the load.
 *
 * <p><b>What is left out.</b> Yield, warping, shortening by bow between the ends of a piece (divide to
 * make it small: the error falls with the square of the pieces' length), finite turns of spring links and
 * spring supports, bars going slack.
 */
public final class LargeDisplacementAnalysis {

    private static final int USUAL_PARTS = 8;
    private static final int MOST_ITERATIONS = 40;

    /** Residual over the largest force at which a state counts as equilibrium. */
    private static final double BALANCED = 1e-9;

    private final DividedSystem divided;
    private final FrameSystem whole;
    private final SymbolicFactorization symbolic;
    private final double rounding;

    private LargeDisplacementAnalysis(FrameSystem whole, int parts) {
        this.whole = whole;
        boolean[] all = new boolean[whole.elements().size()];
        Arrays.fill(all, true);
        divided = new DividedSystem(whole, all, parts);
        symbolic = SymbolicFactorization.of(divided.system().stiffnessPattern());
        rounding = rounding();
    }

    /** What rounding of the places of nodes makes of the forces in stiff members. */
    private double rounding() {
        double reach = 0;
        for (Node node : divided.division().model().nodes()) {
            reach = Math.max(reach, node.place().length());
        }
        double stiffest = 0;
        for (Element element : divided.system().elements()) {
            // Along the member, the only motion whose forces follow from differences of places.
            double[][] k = element.stiffness();
            Vector x = element.axis(0);
            double along = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    along += x.get(i) * k[i][j] * x.get(j);
                }
            }
            stiffest = Math.max(stiffest, along);
        }
        return 16 * Math.ulp(1.0) * reach * stiffest * Math.sqrt(divided.division().size());
    }

    /**
     * Makes a model ready.
     *
     * @param model the structure, free of force where it is drawn but for what cables do
     * @return the analysis, with eight pieces a member
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static LargeDisplacementAnalysis of(FrameModel model) {
        return new LargeDisplacementAnalysis(new FrameSystem(model), USUAL_PARTS);
    }

    /**
     * Gives this analysis with other pieces.
     *
     * @param pieces equal pieces in each beam-column, 1 or more
     * @return the analysis
     * @throws IllegalArgumentException if the number is less than 1
     */
    public LargeDisplacementAnalysis divided(int pieces) {
        Require.within("pieces in a member", pieces, 1, 1000, "");
        return new LargeDisplacementAnalysis(whole, pieces);
    }

    /**
     * Puts a load on in equal steps.
     *
     * @param load forces and moments on nodes
     * @param steps number of steps, 1 or more
     * @return the states after each step, the last under the full load
     * @throws NotConvergedException if a step finds no equilibrium, as beyond a limit point
     * @throws IllegalArgumentException if the load is not one on nodes
     */
    public List<LargeState> load(LoadCase load, int steps) {
        Require.within("number of steps", steps, 1, 1_000_000, "");
        double[] full = forces(load);
        List<LargeState> states = new ArrayList<>();
        LargeState state = LargeState.start(divided, load.name());
        for (int step = 1; step <= steps; step++) {
            state = newton(state, full, (double) step / steps);
            states.add(state);
        }
        return List.copyOf(states);
    }

    private double[] forces(LoadCase load) {
        for (Load one : load.loads()) {
            if (!(one instanceof NodalLoad)) {
                throw new IllegalArgumentException(
                        "load "
                                + one
                                + " in "
                                + load.name()
                                + " is not on a node; allowed are forces and moments on nodes.");
            }
        }
        AppliedLoads applied = divided.system().apply(load.loads());
        boolean[] none = new boolean[divided.system().elements().size()];
        return divided.system().rightHandSide(applied, none);
    }

    /** Full steps first: where members hardly stretch, the residual must grow before it falls. */
    private LargeState newton(LargeState from, double[] full, double factor) {
        for (boolean search : new boolean[] {false, true}) {
            try {
                LargeState state = newton(from, full, factor, search);
                if (state != null) {
                    return state;
                }
            } catch (SingularMatrixException astray) {
                // A step went to where nothing resists: as good as no state found.
            }
        }
        throw new NotConvergedException(
                "equilibrium under "
                        + factor
                        + " of "
                        + from.name()
                        + ": not found after "
                        + MOST_ITERATIONS
                        + " iterations with full steps and as many with a line search. Beyond a"
                        + " limit point follow the path by arc length.");
    }

    private @Nullable LargeState newton(
            LargeState from, double[] full, double factor, boolean search) {
        LargeState state = from.under(factor);
        double[] residual = state.residual(full);
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            double off = norm(residual);
            if (off <= Math.max(rounding, BALANCED * state.scale(full))) {
                return state;
            }
            double[] step = factorize(state).solve(residual);
            if (!Double.isFinite(norm(step))) {
                return null;
            }
            LargeState next = state.moved(step, 1);
            double[] left = next.residual(full);
            // Line search on the work of what is left over (Crisfield 1991, section 9.2).
            double first = Modes.dot(step, residual);
            double share = 1;
            for (int k = 0;
                    search && k < 6 && Math.abs(Modes.dot(step, left)) > 0.8 * Math.abs(first);
                    k++) {
                double guess = share * first / (first - Modes.dot(step, left));
                share = Math.min(Math.max(guess, 0.1 * share), 0.7 * share);
                next = state.moved(step, share);
                left = next.residual(full);
            }
            state = next;
            residual = left;
        }
        return null;
    }

    /**
     * Follows the path of equilibrium by steps of equal length, over limit points and back, while the load
     * factor grows and falls (Crisfield's cylindrical arc length).
     *
     * @param load forces and moments on nodes; its factor begins at 0
     * @param arc length of a step: root of the sum of squares of all nodes' displacements, m, greater than
     *     0
     * @param steps number of steps, 1 or more
     * @return the states after each step
     * @throws NotConvergedException if a step finds no equilibrium even when a thousandth as long
     * @throws IllegalArgumentException if the load is not one on nodes or a number is out of range
     */
    public List<LargeState> follow(LoadCase load, double arc, int steps) {
        Require.positive("length of a step", arc, "m");
        Require.within("number of steps", steps, 1, 1_000_000, "");
        double[] full = forces(load);
        List<LargeState> states = new ArrayList<>();
        // Cables pull before any load is on.
        LargeState state = newton(LargeState.start(divided, load.name()), full, 0);
        double[] before = new double[full.length];
        double length = arc;
        while (states.size() < steps) {
            double[] moved = new double[full.length];
            LargeState next;
            try {
                next = arcStep(state, full, length, before, moved);
            } catch (SingularMatrixException e) {
                next = null;
            }
            if (next == null) {
                length /= 2;
                if (length < 1e-3 * arc) {
                    throw new NotConvergedException(
                            "path of equilibrium under "
                                    + load.name()
                                    + ": no next state after factor "
                                    + state.factor()
                                    + " with steps down to "
                                    + length
                                    + " m.");
                }
                continue;
            }
            before = moved;
            state = next;
            states.add(state);
            length = Math.min(arc, 1.5 * length);
        }
        return List.copyOf(states);
    }

    private @Nullable LargeState arcStep(
            LargeState from, double[] full, double length, double[] before, double[] moved) {
        double[] toward = factorize(from).solve(full);
        double sign = inner(before, toward) < 0 ? -1 : 1;
        double share = sign * length / Math.sqrt(inner(toward, toward));
        LargeState state = from.moved(toward, share).under(from.factor() + share);
        for (int i = 0; i < moved.length; i++) {
            moved[i] = share * toward[i];
        }
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            double[] residual = state.residual(full);
            double off = norm(residual);
            if (off <= Math.max(rounding, BALANCED * state.scale(full))) {
                return state;
            }
            if (!Double.isFinite(off)) {
                return null;
            }
            Factorization factorization = factorize(state);
            double[] correction = factorization.solve(residual);
            toward = factorization.solve(full);
            double change = root(moved, correction, toward, length);
            if (Double.isNaN(change)) {
                return null;
            }
            double[] step = new double[moved.length];
            for (int i = 0; i < step.length; i++) {
                step[i] = correction[i] + change * toward[i];
                moved[i] += step[i];
            }
            state = state.moved(step, 1).under(state.factor() + change);
        }
        return null;
    }

    /** The change of factor that keeps the length, of the two the one that goes on ahead. */
    private double root(double[] moved, double[] correction, double[] toward, double length) {
        double[] sum = new double[moved.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = moved[i] + correction[i];
        }
        double a = inner(toward, toward);
        double b = inner(toward, sum);
        double c = inner(sum, sum) - length * length;
        double under = b * b - a * c;
        if (!(under >= 0)) {
            return Double.NaN;
        }
        double spread = Math.sqrt(under) / a;
        double along = inner(moved, toward);
        double middle = -b / a;
        return along >= 0 ? middle + spread : middle - spread;
    }

    /** Sum of products of displacements, rotations left out. */
    private double inner(double[] a, double[] b) {
        double sum = 0;
        FrameSystem system = divided.system();
        for (int i = 0; i < 6 * divided.division().model().nodes().size(); i++) {
            int unknown = system.unknown(i);
            if (i % 6 < 3 && unknown >= 0) {
                sum += a[unknown] * b[unknown];
            }
        }
        return sum;
    }

    private static double norm(double[] a) {
        return Math.sqrt(Modes.dot(a, a));
    }

    private Factorization factorize(LargeState state) {
        SymmetricAssembler assembler = divided.assembler();
        MovedElement[] elements = state.elements();
        divided.add(assembler, p -> elements[p].tangent());
        divided.system().addSprings(assembler);
        return symbolic.factorize(assembler.matrix(), PivotLimits.usual(), Monitor.quiet());
    }
}
