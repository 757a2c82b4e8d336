package org.skewback.quantity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One node of a graph laid flat for a record.
 *
 * @param operation published name of the operation
 * @param arguments positions of the operands, each lower than the node's own; those of a choice are
 *     the value chosen, both sides of the condition, and the value not chosen where it can be had
 * @param value value in SI base units, finite
 * @param dimension powers of m, kg, s and K, each as a fraction such as {@code 1} or {@code 3/2}
 * @param unit unit to show, or null for the habit of the trade
 * @param symbol symbol, or null
 * @param note note; empty where there is none
 * @param source source, or null
 * @param detail exponent of a power, outcome of a choice such as {@code ≥ held}, position of a
 *     table such as {@code #0}, or output of a routine such as {@code ordinates[3]}; empty for other operations
 * @param call position of the routine's call, or −1
 */
public record FlatNode(
        String operation,
        List<Integer> arguments,
        double value,
        List<String> dimension,
        @Nullable String unit,
        @Nullable String symbol,
        String note,
        @Nullable Source source,
        String detail,
        int call) {

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param operation published name of the operation
     * @param arguments positions of the operands, each lower than the node's own; those of a choice are
     *     the value chosen, both sides of the condition, and the value not chosen where it can be had
     * @param value value in SI base units, finite
     * @param dimension powers of m, kg, s and K, each as a fraction such as {@code 1} or {@code
     *     3/2}
     * @param unit unit to show, or null for the habit of the trade
     * @param symbol symbol, or null
     * @param note note; empty where there is none
     * @param source source, or null
     * @param detail exponent of a power, outcome of a choice such as {@code ≥ held}, position of a
     *     table such as {@code #0}, or output of a routine such as {@code ordinates[3]}; empty for other operations
     * @param call position of the routine's call, or −1
     */
    public FlatNode {
        arguments = List.copyOf(arguments);
        dimension = List.copyOf(dimension);
    }

    /**
     * Takes another value.
     *
     * @param another value in SI base units, finite
     * @return this with that value
     */
    FlatNode with(double another) {
        return new FlatNode(
                operation, arguments, another, dimension, unit, symbol, note, source, detail, call);
    }

    /**
     * Leaves out note and source, which matter to people alone.
     *
     * @return this without them
     */
    public FlatNode bare() {
        return new FlatNode(
                operation, arguments, value, dimension, unit, symbol, "", null, detail, call);
    }
}
