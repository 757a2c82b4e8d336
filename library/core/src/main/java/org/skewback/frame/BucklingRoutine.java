package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.numeric.Monitor;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Linearised buckling of a frame as a routine; see {@link BucklingAnalysis} for how the load
 * behaves and for what is left out. Bars act in tension and compression alike. A factor is an upper
 * bound of what a real structure carries, never its resistance.
 */
public final class BucklingRoutine
        implements Routine<BucklingRoutine.Input, BucklingRoutine.Output> {

    /** Makes the routine. */
    public BucklingRoutine() {}

    /**
     * A frame, what acts and what grows.
     *
     * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param loads table of loads, CSV
     * @param permanent cases with factors that act in full and do not grow, such as {@code G};
     *     blank for none
     * @param growing cases with factors that grow together, such as {@code G + Q}
     * @param count how many factors, lowest first, 1 or more
     * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
     * @param following whether line loads in local axes across members stay at right angles to
     *     them, as fluid pressure does; else all keep their direction
     * @param names names of the quantities in {@code given}, separated by {@code ;}
     * @param given quantities that fields such as {@code =g} stand for
     */
    public record Input(
            String nodes,
            String materials,
            String sections,
            String members,
            String supports,
            String loads,
            String permanent,
            String growing,
            int count,
            int pieces,
            boolean following,
            String names,
            List<Quantity> given)
            implements FrameInput {

        /**
         * Copies the list.
         *
         * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
         * @param materials table of materials, CSV
         * @param sections table of sections, CSV
         * @param members table of members, CSV
         * @param supports table of supports, CSV
         * @param loads table of loads, CSV
         * @param permanent cases with factors that act in full and do not grow, such as {@code G};
         *     blank for none
         * @param growing cases with factors that grow together, such as {@code G + Q}
         * @param count how many factors, lowest first, 1 or more
         * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
         * @param following whether line loads in local axes across members stay at right angles to
         *     them, as fluid pressure does; else all keep their direction
         * @param names names of the quantities in {@code given}, separated by {@code ;}
         * @param given quantities that fields such as {@code =g} stand for
         */
        public Input {
            given = List.copyOf(given);
        }
    }

    /**
     * The factors; none where the load only stiffens.
     *
     * @param factors factor of each mode, lowest first
     * @param residual largest bound of the relative error of a factor from the iteration
     */
    public record Output(List<Quantity> factors, Quantity residual) {

        /**
         * Copies the list.
         *
         * @param factors factor of each mode, lowest first
         * @param residual largest bound of the relative error of a factor from the iteration
         */
        public Output {
            factors = List.copyOf(factors);
        }
    }

    @Override
    public String name() {
        return "frame.buckling";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        FrameModel model = input.model();
        List<FrameSolution> cases = LinearAnalysis.of(model).solve(input.cases(input.loads()));
        stop.check();
        BucklingAnalysis analysis = BucklingAnalysis.of(model).divided(input.pieces());
        if (input.following()) {
            analysis = analysis.withFollowingPressure();
        }
        FrameSolution growing = Superposition.of(cases, FrameInput.combination(input.growing()));
        Monitor monitor = Monitor.of(stop);
        Buckling buckling =
                input.permanent().isBlank()
                        ? analysis.factors(growing, input.count(), monitor)
                        : analysis.factors(
                                Superposition.of(cases, FrameInput.combination(input.permanent())),
                                growing,
                                input.count(),
                                monitor);
        double residual = 0;
        List<Quantity> factors = new ArrayList<>();
        for (BucklingMode mode : buckling.modes()) {
            residual = Math.max(residual, mode.residual());
            factors.add(Quantity.of(mode.factor()));
        }
        return new Output(factors, Quantity.of(residual));
    }
}
