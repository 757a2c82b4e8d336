package org.skewback.quantity;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Walks over the graph behind quantities, however deep, without recursion. */
public final class Graph {

    private Graph() {}

    /**
     * Lists every node that the roots reach, operands before what they gave.
     *
     * @param roots where to start
     * @return each node once, the roots included; the same order for the same graph
     */
    public static List<Quantity> ordered(Collection<Quantity> roots) {
        return ordered(roots, node -> true);
    }

    /**
     * Lists the nodes that the roots reach without going past certain nodes.
     *
     * @param roots where to start
     * @param passable whether the walk goes on to a node's operands
     * @return each node once, operands before what they gave; nodes that are not passable are
     *     listed, their operands only if reached otherwise
     */
    public static List<Quantity> ordered(Collection<Quantity> roots, Predicate<Quantity> passable) {
        List<Quantity> ordered = new ArrayList<>();
        Set<Quantity> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Visit> open = new ArrayDeque<>();
        for (Quantity root : roots) {
            if (seen.add(root)) {
                open.push(new Visit(root, passable.test(root)));
            }
            while (!open.isEmpty()) {
                Visit visit = open.element();
                if (visit.next < visit.operands.size()) {
                    Quantity operand = visit.operands.get(visit.next++);
                    if (seen.add(operand)) {
                        open.push(new Visit(operand, passable.test(operand)));
                    }
                } else {
                    ordered.add(visit.node);
                    open.pop();
                }
            }
        }
        return ordered;
    }

    private static final class Visit {
        final Quantity node;
        final List<Quantity> operands;
        int next;

        Visit(Quantity node, boolean enter) {
            this.node = node;
            this.operands = enter ? node.operands() : List.of();
        }
    }
}
