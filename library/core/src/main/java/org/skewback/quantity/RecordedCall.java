package org.skewback.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/** One call of a routine as recorded, to be made again once for all its outputs. */
final class RecordedCall {

    private final List<Quantity> inputs;
    private final @Nullable Routine<?, ?> routine;
    private final String why;
    private final int lost;
    private @Nullable Record output;
    private @Nullable RuntimeException failure;
    private @Nullable RoutineCall now;

    private RecordedCall(
            List<Quantity> inputs, @Nullable Routine<?, ?> routine, String why, int lost) {
        this.inputs = inputs;
        this.routine = routine;
        this.why = why;
        this.lost = lost;
    }

    static RecordedCall of(
            FlatCall call,
            List<@Nullable Quantity> again,
            Collection<? extends Routine<?, ?>> routines) {
        List<Quantity> inputs = new ArrayList<>();
        for (int position : call.inputs()) {
            Quantity input = again.get(position);
            if (input == null) {
                return new RecordedCall(List.of(), null, "", position);
            }
            inputs.add(input);
        }
        String why = "no routine " + call.name() + " is installed; it may be the author's own";
        for (Routine<?, ?> routine : routines) {
            if (routine.name().equals(call.name())) {
                if (routine.edition() == call.edition()) {
                    return new RecordedCall(inputs, routine, "", -1);
                }
                why =
                        "routine "
                                + call.name()
                                + " was of edition "
                                + call.edition()
                                + "; installed is edition "
                                + routine.edition();
            }
        }
        return new RecordedCall(inputs, null, why, -1);
    }

    /** Why nothing can be said; empty where the routine is at hand. */
    String why() {
        return why;
    }

    /** Position of an input that has no value now, or −1. */
    int lost() {
        return lost;
    }

    /**
     * Gives one output, running the routine where it has not run yet.
     *
     * @throws RuntimeException when the routine refuses the input or has no such output
     */
    Quantity output(RoutineOutput wanted) {
        make(wanted.call());
        RuntimeException failed = failure;
        if (failed != null) {
            throw failed;
        }
        return Routines.node(
                LiveRoutine.result(Objects.requireNonNull(output), wanted),
                new RoutineOutput(now(wanted.call()), wanted.component(), wanted.index()));
    }

    /**
     * Runs the routine where it has not run yet.
     *
     * @throws CancellationException when the thread is interrupted and the routine heeds it
     */
    void make(RoutineCall recorded) {
        if (output == null && failure == null) {
            try {
                output = run(Objects.requireNonNull(routine), recorded);
            } catch (CancellationException e) {
                throw e;
            } catch (RuntimeException e) {
                // A routine may come from anyone; whatever it throws, it has not given its values.
                failure = e;
            }
        }
    }

    /** Takes over what the same call gave when it was made with what the record says went in. */
    void takeOver(RecordedCall ahead) {
        output = ahead.output;
        failure = ahead.failure;
    }

    /** The recorded value of an output as it stands, upon what goes in now. */
    Quantity asRecorded(Quantity value, RoutineOutput wanted) {
        return Routines.node(
                value, new RoutineOutput(now(wanted.call()), wanted.component(), wanted.index()));
    }

    /** The call as it is made now, one for all its outputs. */
    private RoutineCall now(RoutineCall recorded) {
        RoutineCall known = now;
        if (known == null) {
            known =
                    new RoutineCall(
                            recorded.name(),
                            recorded.edition(),
                            inputs,
                            recorded.components(),
                            routine == null ? null : LiveRoutine.of(routine));
            now = known;
        }
        return known;
    }

    private Record run(Routine<?, ?> found, RoutineCall recorded) {
        LiveRoutine live = LiveRoutine.of(found);
        if (live == null) {
            throw new IllegalArgumentException("what it takes cannot be found out");
        }
        return live.runVerified(recorded, inputs);
    }
}
