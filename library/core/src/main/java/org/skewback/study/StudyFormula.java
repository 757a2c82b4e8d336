package org.skewback.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.FlatNode;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;
import org.skewback.sheet.GraphText;

/**
 * The formula of a check as text, so that a study of it can be run again from a record, and the
 * numbers that it rests on.
 *
 * @param text where the results and the numbers stand in the graph, and the graph
 * @param numbers what the results rest on, in the order in which the text names them: first the
 *     givens of the study, then everything else that an author wrote
 */
record StudyFormula(String text, List<Quantity> numbers) {

    /** Most nodes that the formula of a study may have. */
    static final int MOST_NODES = 100_000;

    private static final int LONGEST = 24 << 20;
    private static final String RESULTS = "results ";
    private static final String NUMBERS = "; numbers ";
    private static final String GRAPH = "; graph ";

    StudyFormula {
        numbers = List.copyOf(numbers);
    }

    /**
     * Lays the formula of a check flat.
     *
     * @throws IllegalArgumentException when it is too large to be kept with a result
     */
    static StudyFormula of(Check check, List<Quantity> givens) {
        String what = "the formula of the check \"" + check.title() + "\"";
        List<Quantity> results = new ArrayList<>(List.of(check.demand()));
        results.addAll(check.limits());
        FlatGraph.Positions positions = FlatGraph.lay(results, givens);
        FlatGraph graph = positions.graph();
        if (graph.nodes().size() > MOST_NODES) {
            throw Require.refused(
                    what, graph.nodes().size() + " operations", "at most " + MOST_NODES);
        }
        List<Quantity> numbers = new ArrayList<>(givens);
        for (Quantity node : positions.ordered()) {
            boolean given = givens.stream().anyMatch(node::isSameNode);
            if (!given && isNumber(graph.nodes().get(positions.of(node)))) {
                numbers.add(node);
            }
        }
        FlatGraph bare =
                new FlatGraph(
                        graph.nodes().stream().map(FlatNode::bare).toList(),
                        graph.calls(),
                        graph.tables());
        String text =
                RESULTS
                        + places(results, positions)
                        + NUMBERS
                        + places(numbers, positions)
                        + GRAPH
                        + GraphText.write(bare);
        if (text.length() > LONGEST) {
            throw Require.refused(what, text.length() + " characters long", "at most " + LONGEST);
        }
        return new StudyFormula(text, numbers);
    }

    private static boolean isNumber(FlatNode node) {
        return node.arguments().isEmpty() && node.call() < 0;
    }

    private static String places(List<Quantity> quantities, FlatGraph.Positions positions) {
        List<String> places = new ArrayList<>();
        quantities.forEach(each -> places.add(Integer.toString(positions.of(each))));
        return String.join(" ", places);
    }

    /**
     * A formula built again.
     *
     * @param results demand and limits of the check
     * @param numbers what they rest on, in order
     */
    record Built(List<Quantity> results, List<Quantity> numbers) {}

    /**
     * Builds a formula again upon numbers.
     *
     * @param text the formula
     * @param numbers what it rests on, in order
     * @throws IllegalArgumentException when the text is no formula upon so many numbers
     * @throws ArithmeticException when it has no value with these numbers
     */
    static Built build(String text, List<Quantity> numbers) {
        int afterResults = text.indexOf(NUMBERS);
        int afterNumbers = text.indexOf(GRAPH);
        if (!text.startsWith(RESULTS)
                || afterResults < 0
                || afterNumbers < afterResults
                || text.length() > LONGEST) {
            throw new IllegalArgumentException("the formula of a study is none that is known");
        }
        FlatGraph graph = GraphText.read(text.substring(afterNumbers + GRAPH.length()));
        if (graph.nodes().size() > MOST_NODES) {
            throw Require.refused(
                    "the formula of a study",
                    graph.nodes().size() + " operations",
                    "at most " + MOST_NODES);
        }
        List<Integer> places = places(text, afterResults + NUMBERS.length(), afterNumbers);
        if (places.size() != numbers.size()) {
            throw new IllegalArgumentException(
                    "the formula of a study rests on "
                            + places.size()
                            + " numbers, not on "
                            + numbers.size());
        }
        List<Quantity> restored = graph.restore();
        Map<Integer, Double> values = new HashMap<>();
        for (int i = 0; i < numbers.size(); i++) {
            int place = places.get(i);
            if (place >= restored.size()) {
                throw new IllegalArgumentException(
                        "the formula of a study has no operation " + place);
            }
            Require.sameDimension(
                    "number " + i + " of the study",
                    numbers.get(i),
                    "that of its formula,",
                    restored.get(place));
            values.put(place, numbers.get(i).si());
        }
        List<@Nullable Quantity> again = graph.recalculated(values);
        return new Built(
                pick(places(text, RESULTS.length(), afterResults), again), pick(places, again));
    }

    private static List<Integer> places(String text, int from, int to) {
        List<Integer> places = new ArrayList<>();
        for (String place : text.substring(from, to).split(" ", -1)) {
            try {
                places.add(Integer.parseUnsignedInt(place));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        "\"" + place + "\" is no place in the formula of a study", e);
            }
        }
        return places;
    }

    private static List<Quantity> pick(List<Integer> places, List<@Nullable Quantity> from) {
        List<Quantity> picked = new ArrayList<>();
        for (int place : places) {
            if (place >= from.size()) {
                throw new IllegalArgumentException(
                        "the formula of a study has no operation " + place);
            }
            Quantity quantity = from.get(place);
            if (quantity == null) {
                throw new ArithmeticException(
                        "the formula of the study has no value with these numbers");
            }
            picked.add(quantity);
        }
        return picked;
    }
}
