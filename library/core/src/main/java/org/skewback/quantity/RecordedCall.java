package org.skewback.quantity;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One call of a routine as recorded, to be made again once for all its outputs. */
final class RecordedCall {

    private final FlatCall call;
    private final List<Quantity> inputs;
    private final @Nullable Routine<?, ?> routine;
    private final String why;
    private final int lost;
    private @Nullable Record output;
    private @Nullable RuntimeException failure;

    private RecordedCall(
            FlatCall call,
            List<Quantity> inputs,
            @Nullable Routine<?, ?> routine,
            String why,
            int lost) {
        this.call = call;
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
                return new RecordedCall(call, List.of(), null, "", position);
            }
            inputs.add(input);
        }
        String why = "no routine " + call.name() + " is installed; it may be the author's own";
        for (Routine<?, ?> routine : routines) {
            if (routine.name().equals(call.name())) {
                if (routine.edition() == call.edition()) {
                    return new RecordedCall(call, inputs, routine, "", -1);
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
        return new RecordedCall(call, inputs, null, why, -1);
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
        RuntimeException failed = failure;
        if (failed != null) {
            throw failed;
        }
        Record gave = output;
        if (gave == null) {
            try {
                gave = run(Objects.requireNonNull(routine));
            } catch (RuntimeException e) {
                failure = e;
                throw e;
            }
            output = gave;
        }
        for (RecordComponent component : gave.getClass().getRecordComponents()) {
            if (component.getName().equals(wanted.component())) {
                Object value = Routines.read(component, gave);
                if (value instanceof Quantity single && wanted.index() < 0) {
                    return single;
                } else if (value instanceof List<?> list
                        && wanted.index() >= 0
                        && wanted.index() < list.size()
                        && list.get(wanted.index()) instanceof Quantity one) {
                    return one;
                }
            }
        }
        throw new IllegalArgumentException("it has no output " + wanted.inWords());
    }

    private Record run(Routine<?, ?> found) {
        @SuppressWarnings("unchecked") // the input is built from the class that run() takes
        Routine<Record, Record> any = (Routine<Record, Record>) found;
        return any.run(input(inputClass(found)), Stop.onInterrupt());
    }

    private static Class<?> inputClass(Routine<?, ?> routine) {
        for (Method method : routine.getClass().getMethods()) {
            boolean named = method.getName().equals("run") && !method.isBridge();
            if (named
                    && method.getParameterCount() == 2
                    && method.getParameterTypes()[0].isRecord()) {
                return method.getParameterTypes()[0];
            }
        }
        throw new IllegalArgumentException("what it takes cannot be found out");
    }

    private Record input(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = value(components[i]);
        }
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return (Record) constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException("its input is refused: " + e.getCause(), e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("its input cannot be made", e);
        }
    }

    /** A record keeps every number as a double; the declaration says what it was. */
    private Object value(RecordComponent component) {
        Object kept = call.components().get(component.getName());
        Class<?> type = component.getType();
        if (type == Quantity.class && kept instanceof String text) {
            return input(text);
        } else if (type == List.class && kept instanceof List<?> list) {
            return list.stream().map(text -> input(String.valueOf(text))).toList();
        } else if (type == String.class && kept instanceof String text) {
            return text;
        } else if (kept instanceof Boolean truth) {
            return truth;
        } else if (kept instanceof Number number) {
            if (type == int.class || type == Integer.class) {
                return number.intValue();
            } else if (type == long.class || type == Long.class) {
                return number.longValue();
            }
            return number.doubleValue();
        }
        throw new IllegalArgumentException(
                "the record does not say what its input " + component.getName() + " was");
    }

    private Quantity input(String position) {
        if (position.matches("#[0-9]{1,9}")) {
            int index = Integer.parseInt(position.substring(1));
            if (index < inputs.size()) {
                return inputs.get(index);
            }
        }
        throw new IllegalArgumentException("the record has no input " + position);
    }
}
