package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.numeric.Monitor;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Second-order statics of a frame as a routine; see {@link SecondOrderAnalysis} for what is exact
 * and what is left out. Bars for tension only or compression only are put in and out.
 */
public final class SecondOrderRoutine
        implements Routine<SecondOrderRoutine.Input, SecondOrderRoutine.Output> {

    /** Makes the routine. */
    public SecondOrderRoutine() {}

    /**
     * A frame, its loads, and what is wanted.
     *
     * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param loads table of loads, CSV
     * @param combination cases with factors, such as {@code 1.35 G + 1.5 Q}, that act together
     * @param pieces uniform spans in each member whose section or axial force changes, 1 or more;
     *     16 as a rule
     * @param responses what is wanted, separated by {@code ;}: {@code M_y of beam at 4.0} (a force,
     *     a member, a position in m), {@code movement of n along z}, {@code reaction of n about y}
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
            String combination,
            int pieces,
            String responses,
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
         * @param combination cases with factors, such as {@code 1.35 G + 1.5 Q}, that act together
         * @param pieces uniform spans in each member whose section or axial force changes, 1 or
         *     more; 16 as a rule
         * @param responses what is wanted, separated by {@code ;}: {@code M_y of beam at 4.0} (a
         *     force, a member, a position in m), {@code movement of n along z}, {@code reaction of
         *     n about y}
         * @param names names of the quantities in {@code given}, separated by {@code ;}
         * @param given quantities that fields such as {@code =g} stand for
         */
        public Input {
            given = List.copyOf(given);
        }
    }

    /**
     * What was wanted.
     *
     * @param responses one quantity for each response, in N, N·m, m or rad
     * @param residual residual of equilibrium in the deformed state, see {@link Equilibrium}
     */
    public record Output(List<Quantity> responses, Quantity residual) {

        /**
         * Copies the list.
         *
         * @param responses one quantity for each response, in N, N·m, m or rad
         * @param residual residual of equilibrium in the deformed state, see {@link Equilibrium}
         */
        public Output {
            responses = List.copyOf(responses);
        }
    }

    @Override
    public String name() {
        return "frame.secondorder";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        FrameSolution solution =
                SecondOrderAnalysis.of(input.model())
                        .divided(input.pieces())
                        .solve(
                                input.cases(input.loads()),
                                FrameInput.combination(input.combination()),
                                Monitor.of(stop));
        List<Quantity> responses = new ArrayList<>();
        for (Wanted wanted : Wanted.all(input.responses())) {
            responses.add(wanted.quantity(wanted.in(solution)));
        }
        return new Output(responses, Quantity.of(solution.equilibrium().residual()));
    }
}
