package org.skewback.quantity;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A routine at hand, to be run again with other inputs.
 *
 * @param routine the routine
 * @param input class of its input record
 */
record LiveRoutine(Routine<?, ?> routine, Class<? extends Record> input) {

    private static final Pattern POSITION = Pattern.compile("#[0-9]{1,9}");

    /**
     * Finds the routine of a call: its own, else by its name among those that are installed.
     *
     * @param call the call
     * @return the routine, or null where there is none of that name and edition
     */
    static @Nullable LiveRoutine of(RoutineCall call) {
        if (call.live() != null) {
            return call.live();
        }
        for (Routine<?, ?> routine : Routines.installed()) {
            if (routine.name().equals(call.name()) && routine.edition() == call.edition()) {
                return of(routine);
            }
        }
        return null;
    }

    /** Takes a routine that was found by its name; null where what it takes cannot be found out. */
    static @Nullable LiveRoutine of(Routine<?, ?> routine) {
        // The record that the routine's own run takes; the compiler's bridge takes any.
        for (Method method : routine.getClass().getMethods()) {
            if (method.getName().equals("run")
                    && !method.isBridge()
                    && method.getParameterCount() == 2
                    && method.getParameterTypes()[0].isRecord()) {
                return new LiveRoutine(
                        routine, method.getParameterTypes()[0].asSubclass(Record.class));
            }
        }
        return null;
    }

    /**
     * Runs the routine.
     *
     * @param call the call whose plain values are kept
     * @param values values of the call's inputs in SI base units
     * @return the output record
     */
    Record run(RoutineCall call, double[] values) {
        List<Quantity> inputs = new ArrayList<>();
        for (Quantity old : call.inputs()) {
            inputs.add(
                    Quantity.node(
                            values[inputs.size()],
                            old.dimension().packed(),
                            Operation.VALUE,
                            null,
                            null,
                            null,
                            old.unit()));
        }
        return output(input(call, inputs));
    }

    /**
     * Runs the routine as recorded.
     *
     * @param call the call whose plain values are kept
     * @param inputs the quantities to put in, in the order of the call's inputs
     * @return the output record
     * @throws RuntimeException when it refuses them
     */
    Record runVerified(RoutineCall call, List<Quantity> inputs) {
        Record made = input(call, inputs);
        verify(made);
        return output(made);
    }

    @SuppressWarnings("unchecked") // the input is of the class that the routine takes
    private void verify(Record made) {
        ((Routine<Record, Record>) routine).verify(made);
    }

    private Record input(RoutineCall call, List<Quantity> inputs) {
        RecordComponent[] components = input.getRecordComponents();
        Object[] arguments = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            Object was = call.components().get(components[i].getName());
            Class<?> type = components[i].getType();
            if (type == Quantity.class) {
                arguments[i] = at(was, call, inputs);
            } else if (was instanceof List<?> list) {
                arguments[i] = list.stream().map(each -> at(each, call, inputs)).toList();
            } else {
                arguments[i] = plain(was, type, call, components[i].getName());
            }
        }
        return Routines.make(input, arguments, "routine " + call.name() + ": its input");
    }

    /** The quantity at a position such as #3, which a record may state wrongly. */
    private static Quantity at(@Nullable Object position, RoutineCall call, List<Quantity> inputs) {
        if (position instanceof Routines.Position known) {
            return inputs.get(known.index());
        }
        String text = String.valueOf(position);
        if (POSITION.matcher(text).matches()) {
            int index = Integer.parseInt(text.substring(1));
            if (index < inputs.size()) {
                return inputs.get(index);
            }
        }
        throw new IllegalArgumentException(
                "routine " + call.name() + ": its call has no input " + text);
    }

    @SuppressWarnings("unchecked") // the input is of the class that the routine takes
    private Record output(Record made) {
        return ((Routine<Record, Record>) routine).run(made, Stop.onInterrupt());
    }

    /** A record holds every number as a double; the input wants it as it was declared. */
    private static Object plain(
            @Nullable Object was, Class<?> type, RoutineCall call, String component) {
        if (was instanceof Number number) {
            if (type == int.class || type == Integer.class) {
                return number.intValue();
            } else if (type == long.class || type == Long.class) {
                return number.longValue();
            }
            return number.doubleValue();
        } else if (was instanceof Boolean || was instanceof String) {
            return was;
        }
        throw new IllegalArgumentException(
                "routine "
                        + call.name()
                        + ": its call does not say what \""
                        + component
                        + "\" was");
    }

    /** One output of a run. */
    static Quantity result(Record output, RoutineOutput which) {
        for (RecordComponent component : output.getClass().getRecordComponents()) {
            if (component.getName().equals(which.component())) {
                Object value = Routines.read(component, output);
                if (value instanceof Quantity single && which.index() < 0) {
                    return single;
                } else if (value instanceof List<?> list
                        && which.index() >= 0
                        && which.index() < list.size()
                        && list.get(which.index()) instanceof Quantity one) {
                    return one;
                }
            }
        }
        throw new IllegalArgumentException(
                "routine "
                        + which.call().name()
                        + " gives no "
                        + which.inWords()
                        + " for these inputs");
    }
}
