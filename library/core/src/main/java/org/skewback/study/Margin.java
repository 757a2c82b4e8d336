package org.skewback.study;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.skewback.quantity.Graph;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Tape;
import org.skewback.sheet.Check;

/**
 * A check made ready to be run again: its demand, and its margin, which is negative where the check
 * fails.
 *
 * @param check the check
 * @param tape outputs {@link #DEMAND} and {@link #MARGIN}
 */
record Margin(Check check, Tape tape) {

    static final int DEMAND = 0;
    static final int MARGIN = 1;

    /**
     * Compiles.
     *
     * @throws IllegalArgumentException when the check does not rest on one of the givens
     */
    static Margin of(Check check, List<Quantity> givens) {
        Quantity margin = check.margin();
        requireReached(List.of(margin), givens, "the check \"" + check.title() + "\"");
        return new Margin(check, Tape.of(List.of(check.demand(), margin), givens));
    }

    /** Limits that none of the tape's inputs reaches. */
    List<Quantity> fixedLimits() {
        return check.limits().stream()
                .filter(
                        limit ->
                                Graph.ordered(List.of(limit)).stream()
                                        .noneMatch(
                                                node ->
                                                        tape.inputs().stream()
                                                                .anyMatch(node::isSameNode)))
                .toList();
    }

    static boolean reaches(Quantity result, Quantity given) {
        return Graph.ordered(List.of(result)).stream().anyMatch(given::isSameNode);
    }

    static void requireReached(List<Quantity> results, List<Quantity> givens, String what) {
        Set<Quantity> reached = Collections.newSetFromMap(new IdentityHashMap<>());
        reached.addAll(Graph.ordered(results));
        for (Quantity given : givens) {
            if (!reached.contains(given)) {
                throw new IllegalArgumentException(
                        what
                                + " does not rest on "
                                + given
                                + "; allowed are the very quantities it was calculated from");
            }
        }
    }
}
