package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Linear statics of a frame as a routine, so that a sheet can hold its results with all that they come
 * from: the model as tables, in which fields such as {@code =g} stand for quantities of the sheet.
 */
public final class LinearRoutine implements Routine<LinearRoutine.Input, LinearRoutine.Output> {

    /** Makes the routine. */
    public LinearRoutine() {}

    /**
     * A frame, its loads, and what is wanted.
     *
     * @param nodes table of nodes, CSV; for all tables see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param loads table of loads, CSV
     * @param names names of the quantities in {@code given}, separated by {@code ;}
     * @param given quantities that fields such as {@code =g} stand for
     * @param combination cases with factors, such as {@code 1.35 G + 1.5 Q}
     * @param responses what is wanted, separated by {@code ;}: {@code M_y of beam at 4.0} (a force, a
     *     member, a position in m), {@code movement of n along z}, {@code reaction of n about y}
     */
    public record Input(
            String nodes,
            String materials,
            String sections,
            String members,
            String supports,
            String loads,
            String names,
            List<Quantity> given,
            String combination,
            String responses)
            implements FrameInput {

        /**
         * Copies the list.
         *
         * @param nodes table of nodes, CSV
         * @param materials table of materials, CSV
         * @param sections table of sections, CSV
         * @param members table of members, CSV
         * @param supports table of supports, CSV
         * @param loads table of loads, CSV
         * @param names names of the quantities in {@code given}, separated by {@code ;}
         * @param given quantities that fields stand for
         * @param combination cases with factors
         * @param responses what is wanted, separated by {@code ;}
         */
        public Input {
            given = List.copyOf(given);
        }
    }

    /**
     * What was wanted.
     *
     * @param responses one quantity for each response, in N, N·m, m or rad
     * @param residual residual of equilibrium, see {@link Equilibrium}
     */
    public record Output(List<Quantity> responses, Quantity residual) {

        /**
         * Copies the list.
         *
         * @param responses one quantity for each response
         * @param residual residual of equilibrium
         */
        public Output {
            responses = List.copyOf(responses);
        }
    }

    @Override
    public String name() {
        return "frame.linear";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        List<FrameSolution> cases =
                LinearAnalysis.of(input.model()).solve(input.cases(input.loads()));
        stop.check();
        FrameSolution solution =
                Superposition.of(cases, FrameInput.combination(input.combination()));
        List<Quantity> responses = new ArrayList<>();
        for (Wanted wanted : Wanted.all(input.responses())) {
            responses.add(wanted.quantity(wanted.in(solution)));
        }
        return new Output(responses, Quantity.of(solution.equilibrium().residual(), ""));
    }
}
