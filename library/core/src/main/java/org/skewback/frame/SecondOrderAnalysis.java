package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.SmallPivot;
import org.skewback.numeric.SymbolicFactorization;

/**
 * Second-order statics: equilibrium of the slightly deformed structure, with the exact stability functions
 * of beam-columns in compression and tension (R. K. Livesley and D. B. Chandler, Stability Functions for
 * Structural Frameworks, 1956; {@link StabilityFunctions}) and the exact effect of axial forces on loads
 * along members. The axial forces on which it rests are found by iteration from those of linear statics,
 * until they stand still; so cases cannot be added up: combine loads first.
 *
 * <p><b>What is exact.</b> One member is enough, whatever its load, where section and axial force are the
 * same all along it. Where they change, it is cut into uniform spans, 16 unless {@link #divided} says
 * otherwise; the error falls with the square of their number (0.1 % or so with 16).
 *
 * <p><b>Conventions.</b> Movements are small; N acts along the deformed axis, V at right angles to it, so
 * that dM/dx = V still holds. Shear flexibility softens after Engesser: N_cr = N_E/(1 + N_E/GA_s). Loads
 * keep their direction and their point of the structure. Imperfections are not made up: give them as
 * geometry, as {@link Dislocation} or as loads.
 *
 * <p><b>What is left out.</b> Shortening by bow, lateral buckling by bending (coupling of M with twist),
 * yield, and forces in spring links; {@link LargeDisplacementAnalysis} and {@link BucklingAnalysis} have
 * some of these. Bars for tension only or compression only are put in and out as in {@link
 * OneWayAnalysis}.
 */
public final class SecondOrderAnalysis {

    private static final int USUAL_PARTS = 16;
    private static final int MOST_ITERATIONS = 100;

    /** Change of the forces, over the largest of them, at which they stand still. */
    private static final double STANDS_STILL = 1e-11;

    private final FrameSystem system;
    private final SymbolicFactorization symbolic;
    private final int parts;

    private SecondOrderAnalysis(FrameSystem system, SymbolicFactorization symbolic, int parts) {
        this.system = system;
        this.symbolic = symbolic;
        this.parts = parts;
    }

    /**
     * Makes a model ready.
     *
     * @param model the structure
     * @return the analysis
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static SecondOrderAnalysis of(FrameModel model) {
        FrameSystem system = new FrameSystem(model);
        return new SecondOrderAnalysis(
                system, SymbolicFactorization.of(system.stiffnessPattern()), USUAL_PARTS);
    }

    /**
     * Gives this analysis with other spans in members whose section or axial force changes.
     *
     * @param spans uniform spans in each such member, 1 or more
     * @return the analysis
     * @throws IllegalArgumentException if the number is out of range
     */
    public SecondOrderAnalysis divided(int spans) {
        Require.within("spans in a member", spans, 1, 1000, "");
        return new SecondOrderAnalysis(system, symbolic, spans);
    }

    /**
     * Solves for one load case.
     *
     * @param loads all that acts together
     * @return what the structure does; bars out of action do not carry
     * @throws MechanismException if the structure cannot stand even without loads
     * @throws UnstableException if the loads are at or beyond the critical load: the tangent stiffness is
     *     no longer positive definite, which the signs of its pivots tell, or a member buckles between its
     *     ends
     * @throws NotConvergedException if axial forces or the choice of bars do not settle
     * @throws IllegalArgumentException if a load names what is not there or cannot be carried
     */
    public FrameSolution solve(LoadCase loads) {
        return solve(loads, Monitor.quiet());
    }

    /**
     * Solves for one load case.
     *
     * @param loads all that acts together
     * @param monitor may stop the work
     * @return what the structure does; bars out of action do not carry
     * @throws MechanismException if the structure cannot stand even without loads
     * @throws UnstableException if the loads are at or beyond the critical load
     * @throws NotConvergedException if axial forces or the choice of bars do not settle
     * @throws IllegalArgumentException if a load names what is not there or cannot be carried
     */
    public FrameSolution solve(LoadCase loads, Monitor monitor) {
        return settled(loads.name(), linear -> linear.solve(loads), monitor);
    }

    /**
     * Solves for load cases that act together.
     *
     * @param cases load cases; those without a factor do not act
     * @param combination the factor of each
     * @param monitor may stop the work
     * @return what the structure does; bars out of action do not carry
     * @throws MechanismException if the structure cannot stand even without loads
     * @throws UnstableException if the loads are at or beyond the critical load
     * @throws NotConvergedException if axial forces or the choice of bars do not settle
     * @throws IllegalArgumentException if a case is missing or there twice, or a load names what is not
     *     there or cannot be carried
     */
    public FrameSolution solve(List<LoadCase> cases, Combination combination, Monitor monitor) {
        return settled(
                combination.name(),
                linear -> Superposition.of(linear.solve(cases), combination),
                monitor);
    }

    private FrameSolution settled(
            String name, Function<LinearAnalysis, FrameSolution> first, Monitor monitor) {
        return OneWayAnalysis.settled(
                name,
                system.elements().size(),
                acting ->
                        settle(
                                name,
                                first.apply(LinearAnalysis.of(system, symbolic, acting)),
                                acting,
                                monitor));
    }

    private FrameSolution settle(
            String name, FrameSolution first, boolean[] acting, Monitor monitor) {
        FrameSolution solution = first;
        AppliedLoads applied = solution.loads();
        double change = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MOST_ITERATIONS; k++) {
            monitor.at("second-order forces under " + name, (double) k / MOST_ITERATIONS);
            FrameSolution next = next(name, solution, applied, acting);
            change = change(solution, next, acting);
            if (change <= STANDS_STILL) {
                return next;
            }
            solution = next;
        }
        throw new NotConvergedException(
                "axial forces under "
                        + name
                        + ": after "
                        + MOST_ITERATIONS
                        + " iterations they still change by "
                        + change
                        + " of the largest.");
    }

    private FrameSolution next(
            String name, FrameSolution before, AppliedLoads applied, boolean[] acting) {
        List<Element> elements = new ArrayList<>();
        for (int m = 0; m < acting.length; m++) {
            elements.add(acting[m] ? deformed(m, before.state(m)) : system.elements().get(m));
        }
        FrameSystem now = system.with(elements);
        Factorization factorization = symbolic.factorize(now.stiffness(acting));
        if (factorization.inertia().negative() > 0 || factorization.isSingular()) {
            throw new UnstableException(" under " + name, motion(now, factorization).toString());
        }
        double[] solved = factorization.solve(now.rightHandSide(applied, acting));
        return new FrameSolution(
                name, now, applied, now.movements(solved, applied), acting, List.of());
    }

    private Element deformed(int member, ElementState before) {
        Element first = system.elements().get(member);
        if (first instanceof BeamElement beam) {
            return StabilityElement.of(beam, before, parts);
        } else if (first instanceof BarElement bar) {
            return bar.under(before.resultant(bar.length() / 2, false)[0]);
        }
        return first;
    }

    /** The motion of least resistance, by inverse iteration. */
    private static FreeMotion motion(FrameSystem system, Factorization factorization) {
        double[] x = new double[factorization.order()];
        if (factorization.isSingular()) {
            for (SmallPivot pivot : factorization.smallPivots()) {
                x = pivot.zero() ? factorization.freeMovement(pivot) : x;
            }
        } else {
            Arrays.setAll(x, i -> 1 + i % 7 / 10.0);
            for (int k = 0; k < 12; k++) {
                x = factorization.solve(x);
                double size = Math.sqrt(Modes.dot(x, x));
                for (int i = 0; i < x.length; i++) {
                    x[i] /= size;
                }
            }
        }
        double[] u = new double[6 * system.model().nodes().size()];
        for (int i = 0; i < u.length; i++) {
            if (system.unknown(i) >= 0) {
                u[i] = x[system.unknown(i)];
            }
        }
        system.holds().toGlobal(u);
        return FreeMotion.of(system.model(), u, 0);
    }

    /** Largest change of the forces on the ends of members, over the largest axial force. */
    private double change(FrameSolution before, FrameSolution now, boolean[] acting) {
        double largest = 0;
        double change = 0;
        for (int m = 0; m < acting.length; m++) {
            if (acting[m]) {
                double[] then = before.state(m).endForces();
                double[] ends = now.state(m).endForces();
                boolean armed = armed(now.system().elements().get(m));
                for (int i = 0; i < 12; i++) {
                    if (i % 6 == 0 || (i % 6 < 3 && armed)) {
                        largest = Math.max(largest, Math.abs(ends[i]));
                        change = Math.max(change, Math.abs(ends[i] - then[i]));
                    }
                }
            }
        }
        return largest == 0 ? 0 : change / largest;
    }

    private static boolean armed(Element element) {
        return element.arm(false).length() + element.arm(true).length() > 0;
    }
}
