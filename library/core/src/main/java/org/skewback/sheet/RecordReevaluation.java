package org.skewback.sheet;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.CallsAhead;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.Reevaluation;

/**
 * What came of calculating a record again: its numbers, and everything that it says about them.
 *
 * <p>Verdicts, utilisations, margins and the texts of tables follow from the recorded values; where
 * the record says otherwise, the place is listed. No code of a notebook is run. A record that
 * passes is consistent; who wrote it, and whether its givens are right, it cannot show.
 *
 * @param record the record as read
 * @param nodes how each number came out
 * @param contradictions where the record says what does not follow from its own values
 */
public record RecordReevaluation(
        SheetRecord record, Reevaluation nodes, List<Contradiction> contradictions) {

    /**
     * A place where a record says what does not follow from its values.
     *
     * @param place where, such as {@code checks 2, verdict}
     * @param recorded what it says; empty where it says nothing
     * @param follows what follows; empty where nothing should stand
     */
    public record Contradiction(String place, String recorded, String follows) {}

    /**
     * Keeps a copy of the list.
     *
     * @param record the record as read
     * @param nodes how each number came out
     * @param contradictions where the record says what does not follow from its own values
     */
    public RecordReevaluation {
        contradictions = List.copyOf(contradictions);
    }

    /**
     * Works a record out again with the routines that are installed.
     *
     * @param json the record
     * @return what came of it
     * @throws IllegalArgumentException when the text is no record; says where
     */
    public static RecordReevaluation of(String json) {
        return begin(json).finish();
    }

    /**
     * Reads a record and finds its calls of routines, so that these can be made side by side.
     *
     * @param json the record
     * @return what was read, to be worked out
     * @throws IllegalArgumentException when the text is no record; says where
     */
    public static Begun begin(String json) {
        Json tree = Json.object(json, "the record");
        FlatGraph graph = RecordReader.graph(tree);
        SheetRecord read = RecordReader.read(tree, graph);
        Json derived = Json.object(RecordWriter.write(read), "the record written again");
        List<Contradiction> contradictions = new ArrayList<>();
        Json.compare(
                tree,
                derived,
                (place, before, after) -> {
                    // What is written again is of the newest edition; which it was, is no claim.
                    if (!place.equals("edition")) {
                        contradictions.add(new Contradiction(place, before, after));
                    }
                });
        return new Begun(read, CallsAhead.of(graph), contradictions);
    }

    /**
     * A record that has been read and waits to be worked out.
     *
     * @param record the record as read
     * @param calls its calls of routines, each of which may be made ahead or not
     * @param contradictions where the record says what does not follow from its own values
     */
    public record Begun(SheetRecord record, CallsAhead calls, List<Contradiction> contradictions) {

        /**
         * Keeps a copy of the list.
         *
         * @param record the record as read
         * @param calls its calls of routines, each of which may be made ahead or not
         * @param contradictions where the record says what does not follow from its own values
         */
        public Begun {
            contradictions = List.copyOf(contradictions);
        }

        /**
         * Works the record out.
         *
         * @return what came of it, the same whichever of the calls were made ahead
         */
        public RecordReevaluation finish() {
            return new RecordReevaluation(record, Reevaluation.of(calls), contradictions);
        }
    }

    /**
     * Tells whether nothing contradicts the record.
     *
     * @return whether no number differs and nothing else is contradicted
     */
    public boolean isConsistent() {
        return nodes.isConsistent() && contradictions.isEmpty();
    }
}
