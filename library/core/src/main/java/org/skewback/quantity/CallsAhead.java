package org.skewback.quantity;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * The calls of routines of a recorded graph, made with what the record says went in, before the
 * arithmetic that leads to it is worked out again.
 *
 * <p>In a record that holds, what went in comes out again, so the calls do not have to wait for each
 * other and may run side by side. {@link Reevaluation#of(CallsAhead)} takes what a call gave only
 * where everything behind its inputs came out as recorded, to the last bit; else it makes the call
 * again with what comes out now. So the findings are those of {@link Reevaluation#of(FlatGraph)},
 * whatever the record says and whichever of the calls were made ahead.
 */
public final class CallsAhead {

    private final FlatGraph graph;
    private final List<Quantity> recorded;
    private final Collection<? extends Routine<?, ?>> routines;
    private final Map<Integer, Call> calls = new TreeMap<>();

    private CallsAhead(
            FlatGraph graph,
            List<Quantity> recorded,
            Collection<? extends Routine<?, ?>> routines) {
        this.graph = graph;
        this.recorded = recorded;
        this.routines = routines;
        for (int i = 0; i < recorded.size(); i++) {
            int position = graph.nodes().get(i).call();
            if (recorded.get(i).detail() instanceof RoutineOutput output
                    && !calls.containsKey(position)) {
                RecordedCall made =
                        RecordedCall.of(graph.calls().get(position), recorded, routines);
                if (made.why().isEmpty()) {
                    calls.put(position, new Call(made, output.call()));
                }
            }
        }
    }

    /**
     * Finds the calls of a graph for which the routines are installed.
     *
     * @param graph a graph as recorded
     * @return its calls, none of which is made yet
     * @throws IllegalArgumentException when it is no graph, see {@link FlatGraph#restore}
     */
    public static CallsAhead of(FlatGraph graph) {
        return of(graph, Routines.installed());
    }

    /**
     * Finds the calls of a graph.
     *
     * @param graph a graph as recorded
     * @param routines the routines that may be called
     * @return its calls, none of which is made yet
     * @throws IllegalArgumentException when it is no graph, see {@link FlatGraph#restore}
     */
    public static CallsAhead of(FlatGraph graph, Collection<? extends Routine<?, ?>> routines) {
        return new CallsAhead(graph, graph.restore(), routines);
    }

    /**
     * Gives the calls.
     *
     * @return one for each call of a routine that is installed in the recorded edition, in the order
     *     of the record
     */
    public List<Call> calls() {
        return List.copyOf(calls.values());
    }

    FlatGraph graph() {
        return graph;
    }

    List<Quantity> recorded() {
        return recorded;
    }

    Collection<? extends Routine<?, ?>> routines() {
        return routines;
    }

    /** The call as it was made ahead; null where it was not, or was broken off. */
    @Nullable RecordedCall made(int position) {
        Call call = calls.get(position);
        return call == null || !call.isDone ? null : call.recorded;
    }

    /**
     * One call of a routine, to be made on whatever thread. It is made once, however often it is run.
     */
    public static final class Call implements Runnable {

        private final RecordedCall recorded;
        private final RoutineCall what;
        private volatile boolean isDone;

        private Call(RecordedCall recorded, RoutineCall what) {
            this.recorded = recorded;
            this.what = what;
        }

        /**
         * Gives the routine's name.
         *
         * @return its published name, such as {@code form.funicular}
         */
        public String routine() {
            return what.name();
        }

        /**
         * Gives how many quantities go in.
         *
         * @return a number from 0; by and large, who takes much in works long
         */
        public int inputs() {
            return what.inputs().size();
        }

        /**
         * Makes the call. That the routine refuses what went in is no fault here: it is said of the
         * numbers that it was to give.
         *
         * @throws CancellationException when the thread is interrupted and the routine heeds it
         */
        @Override
        public synchronized void run() {
            if (!isDone) {
                recorded.make(what);
                isDone = true;
            }
        }
    }
}
