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
import org.jspecify.annotations.Nullable;

/**
 * The graph behind quantities with the branches that were not taken.
 *
 * <p>Branches are opened level by level: those of the graph itself, then those inside them. A formula
 * that calls itself has a new branch inside each, so there is an end to it; a branch beyond the end
 * counts as absent, which refuses rather than misleads.
 */
final class Branches {

    /** A chain of conditions in a design formula has a handful of cases. */
    private static final int DEEPEST = 12;

    private static final int MOST = 2_000;

    private final IdentityHashMap<Quantity, Quantity> others = new IdentityHashMap<>();
    private final Collection<Quantity> roots;
    private final Predicate<Quantity> passable;
    private final List<Quantity> ordered;

    private Branches(Collection<Quantity> roots, Predicate<Quantity> passable) {
        this.roots = roots;
        this.passable = passable;
        open();
        List<Quantity> laid = lay();
        while (laid == null) {
            laid = lay();
        }
        ordered = laid;
    }

    static Branches of(Collection<Quantity> roots, Predicate<Quantity> passable) {
        return new Branches(roots, passable);
    }

    /** Every node once, both branches of a choice included, operands first. */
    List<Quantity> ordered() {
        return ordered;
    }

    /** The operands of a node; a choice ends with its other branch, where there is one. */
    List<Quantity> operands(Quantity node) {
        if (!passable.test(node)) {
            return List.of();
        }
        Quantity other = other(node);
        if (other == null) {
            return node.operands();
        }
        List<Quantity> operands = new ArrayList<>(node.operands());
        operands.add(other);
        return operands;
    }

    /** The branch that a choice did not take, or null where it cannot be had. */
    @Nullable Quantity other(Quantity node) {
        return others.get(node);
    }

    private void open() {
        Set<Quantity> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Collection<Quantity> level = roots;
        for (int depth = 0; depth < DEEPEST && !level.isEmpty(); depth++) {
            List<Quantity> next = new ArrayList<>();
            for (Quantity node : Graph.ordered(level, n -> !seen.contains(n) && passable.test(n))) {
                if (seen.add(node)
                        && passable.test(node)
                        && node.detail() instanceof Guard guard
                        && others.size() < MOST) {
                    Quantity other = guard.other(node.operands().get(0));
                    if (other != null) {
                        others.put(node, other);
                        next.add(other);
                    }
                }
            }
            level = next;
        }
    }

    /**
     * Orders the nodes. Where a branch refers to the very choice it belongs to, as one that reads a
     * variable assigned later can, that branch is dropped and there is no order yet.
     */
    private @Nullable List<Quantity> lay() {
        List<Quantity> laid = new ArrayList<>();
        IdentityHashMap<Quantity, Boolean> finished = new IdentityHashMap<>();
        Deque<Visit> open = new ArrayDeque<>();
        for (Quantity root : roots) {
            if (finished.putIfAbsent(root, false) == null) {
                open.push(new Visit(root, conditionsFirst(root)));
            }
            while (!open.isEmpty()) {
                Visit visit = open.element();
                if (visit.next < visit.operands.size()) {
                    Quantity operand = visit.operands.get(visit.next++);
                    Boolean done = finished.putIfAbsent(operand, false);
                    if (done == null) {
                        open.push(new Visit(operand, conditionsFirst(operand)));
                    } else if (!done) {
                        closeLoop(open);
                        return null;
                    }
                } else {
                    laid.add(visit.node);
                    finished.put(visit.node, true);
                    open.pop();
                }
            }
        }
        return laid;
    }

    /** What decides comes before what it decides about, so that a branch need not be run in vain. */
    private List<Quantity> conditionsFirst(Quantity node) {
        List<Quantity> operands = operands(node);
        if (!(node.detail() instanceof Guard) || operands.isEmpty()) {
            return operands;
        }
        List<Quantity> visited = new ArrayList<>(operands);
        visited.add(2, visited.remove(0));
        return visited;
    }

    private void closeLoop(Deque<Visit> open) {
        for (Visit visit : open) {
            Quantity other = other(visit.node);
            if (other != null && visit.operands.get(visit.next - 1).isSameNode(other)) {
                others.remove(visit.node);
                return;
            }
        }
        throw new IllegalStateException("a quantity was calculated from itself");
    }

    private static final class Visit {
        final Quantity node;
        final List<Quantity> operands;
        int next;

        Visit(Quantity node, List<Quantity> operands) {
            this.node = node;
            this.operands = operands;
        }
    }
}
