package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Reevaluation.Finding;
import org.skewback.quantity.Reevaluation.Outcome;
import org.skewback.sheet.SheetRecord;

class ReevaluationTest {

    private static final Source ASSUMED = Source.assumption("for this test");

    private final Quantity span = Quantity.given("L", 336, "m", "span", ASSUMED);
    private final Quantity rise = Quantity.given("f", 72, "m", "rise", ASSUMED);
    private final Quantity load = Quantity.given("g", 148, "kN/m", "load", ASSUMED);

    /** Every operation, each of whose results goes into the last one. */
    private Quantity everyOperation() {
        Quantity n = rise.over(span).named("n", "", "rise-to-span ratio");
        Quantity difference =
                Quantity.given("T", 31.5, "°C", "air", ASSUMED)
                        .minus(Quantity.given("T_0", 8.25, "°C", "closure", ASSUMED));
        List<Quantity> plain =
                List.of(
                        n.exp(),
                        n.ln(),
                        n.log10(),
                        n.sin(),
                        n.cos(),
                        n.tan(),
                        n.asin(),
                        n.acos(),
                        n.atan(),
                        n.sinh(),
                        n.cosh(),
                        n.tanh(),
                        n.asinh(),
                        n.plus(1).acosh(),
                        n.root(),
                        n.cubeRoot(),
                        n.power(5, 2),
                        n.power(-3),
                        n.negated().abs(),
                        Quantity.min(n, n.times(2)),
                        Quantity.max(n, n.over(2)),
                        difference.per("K"),
                        n.interpolated(
                                new InterpolationTable(
                                        "k",
                                        "a factor",
                                        InterpolationTable.Axis.linear("", 0.1, 0.2, 0.3),
                                        InterpolationTable.Axis.linear("", 1, 1.3, 1.9),
                                        ASSUMED)),
                        Quantity.choose(
                                load.moreThan(Quantity.of(100, "kN/m")),
                                () -> n.minus(0.1),
                                () -> n));
        return load.times(span.squared())
                .over(rise.times(8))
                .times(Quantity.sum(plain))
                .named("H", "MN", "not a thrust");
    }

    private static FlatGraph flat(Quantity... roots) {
        return FlatGraph.lay(List.of(roots)).graph();
    }

    private static FlatGraph with(FlatGraph graph, int position, FlatNode node) {
        List<FlatNode> nodes = new ArrayList<>(graph.nodes());
        nodes.set(position, node);
        return new FlatGraph(nodes, graph.calls(), graph.tables());
    }

    private static FlatNode valued(FlatNode n, double value) {
        return new FlatNode(
                n.operation(),
                n.arguments(),
                value,
                n.dimension(),
                n.unit(),
                n.symbol(),
                n.note(),
                n.source(),
                n.detail(),
                n.call());
    }

    private static FlatNode detailed(FlatNode n, String detail) {
        return new FlatNode(
                n.operation(),
                n.arguments(),
                n.value(),
                n.dimension(),
                n.unit(),
                n.symbol(),
                n.note(),
                n.source(),
                detail,
                n.call());
    }

    private static boolean isLeaf(FlatNode node) {
        return node.arguments().isEmpty() && node.call() < 0;
    }

    @Test
    void theSampleHasEveryOperation() {
        Set<String> used =
                flat(everyOperation()).nodes().stream()
                        .map(FlatNode::operation)
                        .collect(Collectors.toSet());
        Set<String> all =
                Arrays.stream(Operation.values())
                        .map(Operation::published)
                        .collect(Collectors.toSet());
        all.remove("routine"); // RoutineReevaluationTest has them
        assertEquals(all, used);
    }

    @Test
    void thePublishedSchemaListsTheOperations() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(
                        SheetRecord.class.getResourceAsStream("record.schema.json"))) {
            String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Matcher listed =
                    Pattern.compile("\"operation\": \\{\\s*\"enum\": \\[([^]]*)]").matcher(schema);
            assertTrue(listed.find());
            assertEquals(
                    Arrays.stream(Operation.values()).map(Operation::published).toList(),
                    Arrays.asList(listed.group(1).replaceAll("[\\s\"]", "").split(",")));
        }
    }

    @Test
    void aGraphIsReproducedToTheLastBit() {
        Reevaluation again = Reevaluation.of(flat(everyOperation()), List.of());
        assertEquals(List.of(), again.all(Outcome.DIFFERS));
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
        assertTrue(again.count(Outcome.REPRODUCED) > 35, again.toString());
    }

    @Property(tries = 300)
    void randomGraphsAreReproduced(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int n) {
        Reevaluation again = Reevaluation.of(flat(new RandomGraph(seed).grow(n)), List.of());
        assertTrue(again.isConsistent(), again.toString());
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
    }

    @Test
    void theLastBitOfAnyResultIsMissedNowhere() {
        FlatGraph graph = flat(everyOperation());
        for (int i = 0; i < graph.nodes().size(); i++) {
            FlatNode node = graph.nodes().get(i);
            if (isLeaf(node)) {
                continue;
            }
            double tampered = Math.nextUp(node.value());
            Reevaluation again = Reevaluation.of(with(graph, i, valued(node, tampered)), List.of());
            List<Finding> differing = again.all(Outcome.DIFFERS);
            assertEquals(1, differing.size(), node.toString());
            assertEquals(i, differing.get(0).node());
            assertEquals(tampered, differing.get(0).recorded());
            assertEquals(node.value(), differing.get(0).recomputed());
        }
    }

    /** Far enough to turn the sample's condition too: a limit moved a little decides the same. */
    @Test
    void anyChangedGivenShowsInWhatRestsOnIt() {
        FlatGraph graph = flat(everyOperation());
        for (int i = 0; i < graph.nodes().size(); i++) {
            FlatNode node = graph.nodes().get(i);
            if (isLeaf(node)) {
                FlatGraph tampered = with(graph, i, valued(node, 3 * node.value() + 1));
                Reevaluation again = Reevaluation.of(tampered, List.of());
                assertFalse(again.isConsistent(), node.toString());
                assertEquals(Outcome.TAKEN, again.findings().get(i).outcome());
            }
        }
    }

    @Property(tries = 200)
    void aTamperedResultOfARandomGraphIsTheOneFinding(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 40) int size,
            @ForAll @IntRange(max = 1_000_000) int pick) {
        FlatGraph graph = flat(new RandomGraph(seed).grow(size));
        int position = pick % graph.nodes().size();
        FlatNode node = graph.nodes().get(position);
        if (isLeaf(node)) {
            return;
        }
        Reevaluation again =
                Reevaluation.of(
                        with(graph, position, valued(node, Math.nextDown(node.value()))),
                        List.of());
        assertEquals(
                List.of(position), again.all(Outcome.DIFFERS).stream().map(Finding::node).toList());
    }

    @Test
    void theRelativeChangeIsMeasuredOnTheRecordedValue() {
        FlatGraph graph = flat(span.times(2));
        int last = graph.nodes().size() - 1;
        Finding finding =
                Reevaluation.of(with(graph, last, valued(graph.nodes().get(last), 600)), List.of())
                        .all(Outcome.DIFFERS)
                        .get(0);
        assertEquals((672.0 - 600) / 600, finding.relativeChange());
    }

    private FlatGraph turned(Supplier<Quantity> otherwise) {
        Quantity chosen =
                Quantity.choose(
                        load.moreThan(Quantity.of(100, "kN/m")), () -> span.times(2), otherwise);
        FlatGraph graph = flat(chosen.plus(rise));
        int loadAt = position(graph, "g");
        return with(graph, loadAt, valued(graph.nodes().get(loadAt), 50_000));
    }

    @Test
    void aGuardThatTurnsDiffersAndIsGoneOnWithByTheOtherBranch() {
        FlatGraph graph = turned(() -> span.times(3));
        Reevaluation again = Reevaluation.of(graph, List.of());
        Finding guard = again.all(Outcome.DIFFERS).get(0);
        assertEquals("choose", graph.nodes().get(guard.node()).operation());
        assertEquals(
                "the condition g = 50\u00A0kN/m > 100\u00A0kN/m held and holds no more",
                guard.reason());
        assertEquals(3 * 336, guard.recomputed());
        assertEquals(3 * 336 + 72, again.all(Outcome.DIFFERS).get(1).recomputed());
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
    }

    @Test
    void whereTheOtherBranchIsNotRecordedWhatRestsOnAGuardThatTurnsCannotBeTold() {
        FlatGraph graph = turned(() -> span.over(0));
        Reevaluation again = Reevaluation.of(graph, List.of());
        Finding guard = again.all(Outcome.DIFFERS).get(0);
        assertTrue(Double.isNaN(guard.recomputed()));
        assertEquals(1, again.count(Outcome.CANNOT_TELL));
        assertTrue(again.all(Outcome.CANNOT_TELL).get(0).reason().contains("node " + guard.node()));
    }

    @Test
    void aRecordedOutcomeThatWasNotTheOutcomeIsFound() {
        Quantity chosen =
                Quantity.choose(load.moreThan(Quantity.of(1, "kN/m")), () -> span, () -> rise);
        FlatGraph graph = flat(chosen);
        int last = graph.nodes().size() - 1;
        FlatNode lying = detailed(graph.nodes().get(last), "> did not hold");
        assertFalse(Reevaluation.of(with(graph, last, lying), List.of()).isConsistent());
    }

    @Test
    void anotherOperationExponentOrDimensionIsFound() {
        FlatGraph graph = flat(span.squared());
        int last = graph.nodes().size() - 1;
        FlatNode node = graph.nodes().get(last);
        FlatGraph cubed = with(graph, last, detailed(node, "3"));
        assertEquals(
                "recorded as an area, worked out as a volume",
                Reevaluation.of(cubed, List.of()).all(Outcome.DIFFERS).get(0).reason());
        FlatNode root =
                new FlatNode(
                        "ln",
                        node.arguments(),
                        node.value(),
                        node.dimension(),
                        null,
                        null,
                        "",
                        null,
                        "",
                        -1);
        assertTrue(
                Reevaluation.of(with(graph, last, root), List.of())
                        .all(Outcome.DIFFERS)
                        .get(0)
                        .reason()
                        .contains("cannot take ln of L = 336"));
    }

    @Test
    void aResultThatCannotBeHadAnyMoreDiffers() {
        Quantity quotient = rise.over(span.minus(rise));
        FlatGraph graph = flat(quotient.times(2));
        int at = position(graph, "f");
        Reevaluation again =
                Reevaluation.of(with(graph, at, valued(graph.nodes().get(at), 336)), List.of());
        List<Finding> differing = again.all(Outcome.DIFFERS);
        assertTrue(differing.get(1).reason().startsWith("division by zero"));
        assertTrue(Double.isNaN(differing.get(1).recomputed()));
        assertEquals(1, again.count(Outcome.CANNOT_TELL));
    }

    private static int position(FlatGraph graph, String symbol) {
        for (int i = 0; i < graph.nodes().size(); i++) {
            if (symbol.equals(graph.nodes().get(i).symbol())) {
                return i;
            }
        }
        throw new AssertionError(symbol);
    }
}
