package org.skewback.quantity;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;

/**
 * Runs routines so that their results know what they came from.
 *
 * <p>The components of the two records are read by reflection, as a record's own declaration is the
 * one place where its inputs and outputs are named.
 */
public final class Routines {

    private Routines() {}

    /**
     * Runs a routine and ties every quantity of its output to the quantities of its input.
     *
     * @param <I> the input record
     * @param <O> the output record
     * @param routine what to run
     * @param input what it works on
     * @return the output; each quantity in it is a node with the routine's name and edition
     * @throws IllegalArgumentException when a component is of a kind that cannot be recorded, or the
     *     routine refuses the input
     */
    public static <I extends Record, O extends Record> O call(Routine<I, O> routine, I input) {
        RoutineCall call = describe(routine, input);
        return tie(routine.run(input, Stop.onInterrupt()), call);
    }

    /**
     * Ties results to the input for which the routine gave them, where it was run by other means
     * than {@link #call}, such as with somebody who is told of its progress.
     *
     * @param <I> the input record
     * @param <O> the output record
     * @param routine what gives this output for this input
     * @param input what it worked on
     * @param output what it gave
     * @return the output; each quantity in it is a node with the routine's name and edition
     * @throws IllegalArgumentException when a component is of a kind that cannot be recorded
     */
    public static <I extends Record, O extends Record> O tie(
            Routine<I, O> routine, I input, O output) {
        return tie(output, describe(routine, input));
    }

    private static RoutineCall describe(Routine<?, ?> routine, Record input) {
        List<Quantity> inputs = new ArrayList<>();
        Map<String, Object> components = new LinkedHashMap<>();
        for (RecordComponent component : input.getClass().getRecordComponents()) {
            Object value = read(component, input);
            if (value instanceof Quantity quantity) {
                components.put(component.getName(), new Position(inputs.size()));
                inputs.add(quantity);
            } else if (value instanceof List<?> list) {
                List<Position> positions = new ArrayList<>();
                for (Object element : list) {
                    if (!(element instanceof Quantity quantity)) {
                        throw unrecordable(input, component);
                    }
                    positions.add(new Position(inputs.size()));
                    inputs.add(quantity);
                }
                components.put(component.getName(), List.copyOf(positions));
            } else if (value instanceof Number
                    || value instanceof Boolean
                    || value instanceof String) {
                components.put(component.getName(), value);
            } else {
                throw unrecordable(input, component);
            }
        }
        return new RoutineCall(
                routine.name(),
                routine.edition(),
                inputs,
                components,
                new LiveRoutine(routine, input.getClass()));
    }

    private static <O extends Record> O tie(O output, RoutineCall call) {
        RecordComponent[] components = output.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            Object value = read(components[i], output);
            values[i] = value;
            if (value instanceof Quantity quantity) {
                values[i] = node(quantity, call, components[i].getName(), -1);
            } else if (value instanceof List<?> list) {
                List<Quantity> nodes = new ArrayList<>();
                for (Object element : list) {
                    if (!(element instanceof Quantity quantity)) {
                        throw unrecordable(output, components[i]);
                    }
                    nodes.add(node(quantity, call, components[i].getName(), nodes.size()));
                }
                values[i] = List.copyOf(nodes);
            }
        }
        @SuppressWarnings("unchecked") // the class of an O
        Class<O> type = (Class<O>) output.getClass();
        return make(type, values, "routine " + call.name() + ": its output record");
    }

    /** The routines that come with this library and whatever was installed beside it. */
    static List<Routine<?, ?>> installed() {
        @SuppressWarnings("rawtypes") // a service is found by its raw class
        ServiceLoader<Routine> found =
                ServiceLoader.load(Routine.class, Routine.class.getClassLoader());
        List<Routine<?, ?>> routines = new ArrayList<>();
        for (Routine<?, ?> routine : found) {
            routines.add(routine);
        }
        return routines;
    }

    /** Makes a record through its canonical constructor. */
    static <R extends Record> R make(Class<R> type, Object[] values, String what) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
        }
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException(what + " refused its values", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(what + " cannot be made", e);
        }
    }

    private static Quantity node(Quantity plain, RoutineCall call, String component, int index) {
        return node(plain, new RoutineOutput(call, component, index));
    }

    static Quantity node(Quantity plain, RoutineOutput output) {
        return Quantity.node(
                plain.si(),
                plain.dimension().packed(),
                Operation.ROUTINE,
                null,
                null,
                output,
                plain.unit());
    }

    static Object read(RecordComponent component, Record from) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(from);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(
                    "component " + component.getName() + " cannot be read", e);
        }
    }

    private static IllegalArgumentException unrecordable(Record record, RecordComponent component) {
        return new IllegalArgumentException(
                record.getClass().getSimpleName()
                        + "."
                        + component.getName()
                        + " is a "
                        + component.getType().getSimpleName()
                        + "; allowed are Quantity, a list of Quantity, numbers, booleans and text");
    }

    /**
     * Where in the list of inputs a component's quantity stands.
     *
     * @param index position from 0
     */
    record Position(int index) {
        @Override
        public String toString() {
            return "#" + index;
        }
    }
}
