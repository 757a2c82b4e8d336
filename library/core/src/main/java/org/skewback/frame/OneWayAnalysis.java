package org.skewback.frame;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.SymbolicFactorization;

/**
 * Statics with bars that carry tension only or compression only: bars of the wrong sign are taken out
 * and put back until each one that acts has the right sign and each one that does not would have the
 * wrong one. Load cases must be combined beforehand: their effects do not add up.
 */
public final class OneWayAnalysis {

    private final FrameSystem system;
    private final SymbolicFactorization symbolic;

    private OneWayAnalysis(FrameSystem system) {
        this.system = system;
        symbolic = SymbolicFactorization.of(system.stiffnessPattern());
    }

    /**
     * Makes a model ready.
     *
     * @param model the structure
     * @return the analysis, ready for load cases
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static OneWayAnalysis of(FrameModel model) {
        return new OneWayAnalysis(new FrameSystem(model));
    }

    /**
     * Solves for one load case.
     *
     * @param loads all that acts together
     * @return what the structure does; bars out of action do not carry
     * @throws MechanismException if the structure cannot stand with the bars that act
     * @throws NotConvergedException if the choice of bars goes round in a circle
     * @throws IllegalArgumentException if a load names what is not there or cannot be carried
     */
    public FrameSolution solve(LoadCase loads) {
        return settled(
                loads.name(),
                system.elements().size(),
                acting -> LinearAnalysis.of(system, symbolic, acting).solve(loads));
    }

    /**
     * Solves with the bars that act until those are the ones that the solution lets act.
     *
     * @param loads what the loads are called, for the message
     * @param members number of members
     * @param solver solves with the members that act
     */
    static FrameSolution settled(
            String loads, int members, Function<boolean[], FrameSolution> solver) {
        boolean[] acting = new boolean[members];
        Arrays.fill(acting, true);
        Set<String> tried = new HashSet<>();
        while (tried.add(Arrays.toString(acting))) {
            FrameSolution solution = solver.apply(acting);
            boolean[] next = next(solution, acting);
            if (Arrays.equals(next, acting)) {
                return solution;
            }
            acting = next;
        }
        throw new NotConvergedException(
                "which bars act under "
                        + loads
                        + " goes round in a circle after "
                        + tried.size()
                        + " choices.");
    }

    /** Which bars act next, by the forces of a solution. */
    private static boolean[] next(FrameSolution solution, boolean[] acting) {
        boolean[] next = acting.clone();
        for (int m = 0; m < acting.length; m++) {
            if (solution.system().elements().get(m).member() instanceof Bar bar
                    && bar.carries() != Bar.Carries.BOTH) {
                next[m] = carries(bar, solution.state(m), acting[m]);
            }
        }
        return next;
    }

    /** The axial force that the bar has, or would have if it acted between these nodes. */
    private static boolean carries(Bar bar, ElementState state, boolean acts) {
        double force =
                (state.forces(0, true)[0] + state.forces(state.element().length(), false)[0]) / 2;
        double sense = bar.carries() == Bar.Carries.TENSION ? force : -force;
        return acts ? sense >= 0 : sense > 0;
    }

    /**
     * Lists the bars that are out of action.
     *
     * @param solution a solution of this analysis
     * @return their names
     */
    public static List<String> idle(FrameSolution solution) {
        return solution.model().members().stream()
                .map(Member::name)
                .filter(name -> !solution.carries(name))
                .toList();
    }
}
