package org.skewback.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * What came of calculating every node of a recorded graph again.
 *
 * <p>Each node is worked out from its operands, themselves worked out again, by the operation that
 * the record names; routines are called by their published name. No code of a notebook is run. A
 * result counts as reproduced only if it is the same double to the last bit and has the same
 * dimension: operations are deterministic (see {@link StrictMath}), so no tolerance is needed.
 *
 * <p>A number that the author wrote stands as it is: nothing in a record can show that it was
 * another one. Changing it shows in what was worked out from it.
 *
 * @param findings one for each node, in the order of the record
 */
public record Reevaluation(List<Finding> findings) {

    /** How a node came out. */
    public enum Outcome {
        /** The author wrote the number; there is nothing from which to work it out. */
        TAKEN("taken as it stands"),
        /** The same value again. */
        REPRODUCED("reproduced"),
        /** Another value or dimension, another branch, or none at all. */
        DIFFERS("differs"),
        /** There is nothing by which to work it out here; the recorded value is gone on with. */
        CANNOT_TELL("can't tell");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /**
         * Gives the outcome in words.
         *
         * @return such as {@code can't tell}
         */
        public String inWords() {
            return words;
        }
    }

    /**
     * How one node came out.
     *
     * @param node position of the node in the record, from 0
     * @param outcome the outcome
     * @param recorded the recorded value, in SI base units
     * @param recomputed the value now, in SI base units; NaN where there is none
     * @param reason why it is not reproduced, in words; empty where it is
     */
    public record Finding(
            int node, Outcome outcome, double recorded, double recomputed, String reason) {

        /**
         * Gives the change relative to the recorded value.
         *
         * @return (recomputed − recorded) / |recorded|; infinite where the recorded value is zero
         *     and the other not, NaN where there is no value now, 0 where nothing changed
         */
        public double relativeChange() {
            return recomputed == recorded ? 0 : (recomputed - recorded) / Math.abs(recorded);
        }
    }

    /**
     * Keeps a copy of the list.
     *
     * @param findings one for each node, in the order of the record
     */
    public Reevaluation {
        findings = List.copyOf(findings);
    }

    /**
     * Works a graph out again with the routines that are installed.
     *
     * @param graph a graph as recorded
     * @return the findings
     * @throws IllegalArgumentException when it is no graph, see {@link FlatGraph#restore}
     */
    public static Reevaluation of(FlatGraph graph) {
        return of(graph, Routines.installed());
    }

    /**
     * Works a graph out again.
     *
     * @param graph a graph as recorded
     * @param routines the routines that may be called
     * @return the findings
     * @throws IllegalArgumentException when it is no graph, see {@link FlatGraph#restore}
     * @throws java.util.concurrent.CancellationException when the thread is interrupted and a
     *     routine heeds it
     */
    public static Reevaluation of(FlatGraph graph, Collection<? extends Routine<?, ?>> routines) {
        return new Reevaluation(new Recomputation(graph, routines).findings());
    }

    /**
     * Works a graph out again, some of whose calls were made ahead.
     *
     * @param ahead its calls
     * @return the findings, the same as if none had been made ahead
     * @throws java.util.concurrent.CancellationException when the thread is interrupted and a
     *     routine heeds it
     */
    public static Reevaluation of(CallsAhead ahead) {
        return new Reevaluation(new Recomputation(ahead).findings());
    }

    /**
     * Counts the nodes that came out one way.
     *
     * @param outcome which way
     * @return how many
     */
    public long count(Outcome outcome) {
        return findings.stream().filter(finding -> finding.outcome() == outcome).count();
    }

    /**
     * Gives the findings of one kind.
     *
     * @param outcome which kind
     * @return the findings in order
     */
    public List<Finding> all(Outcome outcome) {
        return findings.stream().filter(finding -> finding.outcome() == outcome).toList();
    }

    /**
     * Tells whether nothing contradicts the record.
     *
     * @return whether no node differs
     */
    public boolean isConsistent() {
        return count(Outcome.DIFFERS) == 0;
    }

    @Override
    public String toString() {
        List<String> counts = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            counts.add(count(outcome) + " " + outcome.inWords());
        }
        return findings.size() + " nodes: " + String.join(", ", counts);
    }
}
