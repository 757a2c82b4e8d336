package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.numeric.Monitor;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Motion of a frame, by modes, under a record of the ground as a routine: its extremes; see {@link
 * TimeHistoryAnalysis}. Permanent forces are not in the results.
 */
public final class HistoryRoutine implements Routine<HistoryRoutine.Input, HistoryRoutine.Output> {

    /** Makes the routine. */
    public HistoryRoutine() {}

    /**
     * A frame, its masses, what slides or stops, and the ground.
     *
     * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param masses table of masses besides those of members, CSV, see {@link MotionTables}; blank
     *     for none
     * @param loads table of loads, CSV; a header alone where there is no preload
     * @param preload cases with factors, such as {@code G + 0.3 Q}, whose forces stiffen or soften
     *     the structure; blank for none
     * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
     * @param count how many modes take part, 1 or more; shapes of the links' forces come besides
     * @param damping damping ratio ζ of each mode, 0 or more
     * @param links table of bearings and stops, CSV, see {@link MotionTables}; blank for none
     * @param ground record of the ground, CSV of time and accelerations along x, y, z, see {@link
     *     MotionTables}
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
            String masses,
            String loads,
            String preload,
            int pieces,
            int count,
            Quantity damping,
            String links,
            String ground,
            String responses,
            String names,
            List<Quantity> given)
            implements MovingInput {

        /**
         * Copies the list.
         *
         * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
         * @param materials table of materials, CSV
         * @param sections table of sections, CSV
         * @param members table of members, CSV
         * @param supports table of supports, CSV
         * @param masses table of masses besides those of members, CSV, see {@link MotionTables};
         *     blank for none
         * @param loads table of loads, CSV; a header alone where there is no preload
         * @param preload cases with factors, such as {@code G + 0.3 Q}, whose forces stiffen or
         *     soften the structure; blank for none
         * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
         * @param count how many modes take part, 1 or more; shapes of the links' forces come
         *     besides
         * @param damping damping ratio ζ of each mode, 0 or more
         * @param links table of bearings and stops, CSV, see {@link MotionTables}; blank for none
         * @param ground record of the ground, CSV of time and accelerations along x, y, z, see
         *     {@link MotionTables}
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
     * The extremes of what was wanted.
     *
     * @param largest largest value of each response, with its sign, in N, N·m, m or rad
     * @param smallest smallest value of each response, with its sign
     * @param times time at which each response is largest in size, the first of equals, s
     * @param imbalance what the account of energy misses, over its largest part, see {@link
     *     org.skewback.numeric.LocalHistory.Energy#imbalance}
     */
    public record Output(
            List<Quantity> largest,
            List<Quantity> smallest,
            List<Quantity> times,
            Quantity imbalance) {

        /**
         * Copies the lists.
         *
         * @param largest largest value of each response, with its sign, in N, N·m, m or rad
         * @param smallest smallest value of each response, with its sign
         * @param times time at which each response is largest in size, the first of equals, s
         * @param imbalance what the account of energy misses, over its largest part, see {@link
         *     org.skewback.numeric.LocalHistory.Energy#imbalance}
         */
        public Output {
            largest = List.copyOf(largest);
            smallest = List.copyOf(smallest);
            times = List.copyOf(times);
        }
    }

    @Override
    public String name() {
        return "frame.history";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        TimeHistoryAnalysis analysis =
                TimeHistoryAnalysis.of(input.moving()).damped(input.damping().in(""));
        if (!input.links().isBlank()) {
            analysis =
                    analysis.with(
                            MotionTables.links(
                                            CsvTable.parse("links", input.links()), input.byName())
                                    .toArray(new NonlinearLink[0]));
        }
        FrameHistory history =
                analysis.modal(
                        input.count(),
                        MotionTables.ground(CsvTable.parse("ground", input.ground())),
                        Monitor.of(stop));
        List<Quantity> largest = new ArrayList<>();
        List<Quantity> smallest = new ArrayList<>();
        List<Quantity> times = new ArrayList<>();
        for (Wanted wanted : Wanted.all(input.responses())) {
            double[] values = wanted.in(history);
            int high = 0;
            int low = 0;
            for (int n = 1; n < values.length; n++) {
                high = values[n] > values[high] ? n : high;
                low = values[n] < values[low] ? n : low;
            }
            int at = Math.abs(values[low]) > Math.abs(values[high]) ? low : high;
            if (Math.abs(values[low]) == Math.abs(values[high])) {
                at = Math.min(low, high);
            }
            largest.add(wanted.quantity(values[high]));
            smallest.add(wanted.quantity(values[low]));
            times.add(Quantity.of(at * history.step(), "s"));
        }
        return new Output(largest, smallest, times, Quantity.of(history.energy().imbalance()));
    }
}
