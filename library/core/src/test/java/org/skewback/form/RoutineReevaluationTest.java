package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.CallsAhead;
import org.skewback.quantity.FlatCall;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.FlatNode;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Reevaluation;
import org.skewback.quantity.Reevaluation.Finding;
import org.skewback.quantity.Reevaluation.Outcome;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;
import org.skewback.quantity.Stop;

/** Routines are called again by their published name. */
class RoutineReevaluationTest {

    private static final Source ASSUMED = Source.assumption("for this test");

    private final Quantity span = Quantity.given("L", 300, "m", "span", ASSUMED);
    private final Quantity rise = Quantity.given("f", 60, "m", "rise", ASSUMED);
    private final Quantity crown = span.over(2);
    private final List<Quantity> positions =
            List.of(span.over(4), span.over(2), span.times(3).over(4));
    private final List<Quantity> loads =
            List.of(
                    Quantity.of(4500, "kN"),
                    Quantity.given("P", 4200, "kN", "crown load", ASSUMED),
                    Quantity.of(4700, "kN"));

    private FlatGraph funicular() {
        FunicularRoutine.Output line =
                Routines.call(
                        new FunicularRoutine(),
                        FunicularRoutine.Input.ofPointLoads(positions, loads, span, crown, rise));
        List<Quantity> roots = new ArrayList<>(line.ordinates());
        roots.add(line.thrust().times(2));
        roots.add(line.leftVertical());
        roots.add(line.length());
        return FlatGraph.lay(roots).graph();
    }

    private static FlatGraph with(FlatGraph graph, int position, double value) {
        List<FlatNode> nodes = new ArrayList<>(graph.nodes());
        FlatNode n = nodes.get(position);
        nodes.set(
                position,
                new FlatNode(
                        n.operation(),
                        n.arguments(),
                        value,
                        n.dimension(),
                        n.unit(),
                        n.symbol(),
                        n.note(),
                        n.source(),
                        n.detail(),
                        n.call()));
        return new FlatGraph(nodes, graph.calls(), graph.tables());
    }

    @Test
    void theInstalledRoutineGivesTheSameBits() {
        Reevaluation again = Reevaluation.of(funicular());
        assertEquals(List.of(), again.all(Outcome.DIFFERS));
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
    }

    @Test
    void aRoutineThatTakesWordsAndListsIsCalledWithThem() {
        ThrustLineRoutine.Output line =
                Routines.call(
                        new ThrustLineRoutine(),
                        new ThrustLineRoutine.Input(
                                "catenary",
                                span,
                                rise,
                                crown,
                                positions,
                                loads,
                                Quantity.of(12, "kN/m"),
                                Quantity.of(80, "kN/m")));
        Reevaluation again =
                Reevaluation.of(FlatGraph.lay(List.of(line.eccentricity(), line.moment())).graph());
        assertTrue(again.isConsistent(), again.toString());
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
    }

    @Test
    void theLastBitOfAnyOutputIsFound() {
        FlatGraph graph = funicular();
        for (int i = 0; i < graph.nodes().size(); i++) {
            FlatNode node = graph.nodes().get(i);
            boolean leaf = node.arguments().isEmpty() && node.call() < 0;
            double tampered = leaf ? 3 * node.value() + 1 : Math.nextUp(node.value());
            Reevaluation again = Reevaluation.of(with(graph, i, tampered));
            assertFalse(again.isConsistent(), node.toString());
            if (!leaf) {
                assertEquals(
                        List.of(i),
                        again.all(Outcome.DIFFERS).stream().map(Finding::node).toList());
            }
        }
    }

    @Test
    void aRoutineThatIsNotInstalledCannotBeToldAndIsGoneOnWith() {
        Reevaluation again = Reevaluation.of(funicular(), List.of());
        assertTrue(again.isConsistent());
        assertEquals(6, again.count(Outcome.CANNOT_TELL));
        assertEquals(
                "no routine form.funicular is installed; it may be the author's own",
                again.all(Outcome.CANNOT_TELL).get(0).reason());
    }

    @Test
    void anotherEditionCannotBeTold() {
        FlatGraph graph = funicular();
        FlatCall call = graph.calls().get(0);
        FlatGraph older =
                new FlatGraph(
                        graph.nodes(),
                        List.of(new FlatCall(call.name(), 7, call.inputs(), call.components())),
                        graph.tables());
        Reevaluation again = Reevaluation.of(older);
        assertEquals(6, again.count(Outcome.CANNOT_TELL));
        assertEquals(
                "routine form.funicular was of edition 7; installed is edition 1",
                again.all(Outcome.CANNOT_TELL).get(0).reason());
    }

    @Test
    void aRoutineThatRefusesItsInputsNowDiffersAndRunsOnce() {
        FlatGraph graph = funicular();
        Counted refusing =
                new Counted(0) {
                    @Override
                    public FunicularRoutine.Output run(FunicularRoutine.Input input, Stop stop) {
                        runs++;
                        throw new IllegalArgumentException("not today");
                    }
                };
        Reevaluation again = Reevaluation.of(graph, List.of(refusing));
        assertEquals(6, again.count(Outcome.DIFFERS));
        assertEquals(
                "the routine gives no result: not today",
                again.all(Outcome.DIFFERS).get(0).reason());
        assertEquals(1, refusing.runs);
        assertEquals(1, again.count(Outcome.CANNOT_TELL));
    }

    /** A funicular, and a line of thrust under loads that the funicular's own thrust feeds. */
    private FlatGraph twoCalls() {
        FunicularRoutine.Output first =
                Routines.call(
                        new FunicularRoutine(),
                        FunicularRoutine.Input.ofPointLoads(positions, loads, span, crown, rise));
        ThrustLineRoutine.Output second =
                Routines.call(
                        new ThrustLineRoutine(),
                        new ThrustLineRoutine.Input(
                                "catenary",
                                span,
                                rise,
                                crown,
                                positions,
                                loads.stream().map(load -> load.plus(first.thrust())).toList(),
                                Quantity.of(12, "kN/m"),
                                Quantity.of(80, "kN/m")));
        return FlatGraph.lay(List.of(first.length(), second.eccentricity(), second.moment()))
                .graph();
    }

    private static Reevaluation withCallsAhead(FlatGraph graph) {
        CallsAhead ahead = CallsAhead.of(graph);
        ahead.calls().forEach(CallsAhead.Call::run);
        return Reevaluation.of(ahead);
    }

    @Test
    void callsMadeAheadFindTheSameWhateverWasChanged() {
        FlatGraph graph = twoCalls();
        assertEquals(2, CallsAhead.of(graph).calls().size());
        assertEquals(Reevaluation.of(graph), withCallsAhead(graph));
        for (int i = 0; i < graph.nodes().size(); i++) {
            for (double value : List.of(Math.nextUp(graph.nodes().get(i).value()), 0.0, -1.0)) {
                FlatGraph changed = with(graph, i, value);
                assertEquals(
                        Reevaluation.of(changed),
                        withCallsAhead(changed),
                        graph.nodes().get(i) + " set to " + value);
            }
        }
    }

    /** Counts how often a routine runs, and is broken off as often as is said. */
    private static class Counted
            implements Routine<FunicularRoutine.Input, FunicularRoutine.Output> {

        private int breaks;
        int runs;

        Counted(int breaks) {
            this.breaks = breaks;
        }

        @Override
        public String name() {
            return "form.funicular";
        }

        @Override
        public int edition() {
            return 1;
        }

        @Override
        public FunicularRoutine.Output run(FunicularRoutine.Input input, Stop stop) {
            if (breaks-- > 0) {
                throw new CancellationException("broken off");
            }
            runs++;
            return new FunicularRoutine().run(input, stop);
        }
    }

    @Test
    void whatWasMadeAheadIsMadeAgainOnlyWhereItsInputsComeOutOtherwise() {
        FlatGraph graph = funicular();
        Counted once = new Counted(0);
        CallsAhead untouched = CallsAhead.of(graph, List.of(once));
        untouched.calls().forEach(CallsAhead.Call::run);
        untouched.calls().forEach(CallsAhead.Call::run);
        assertTrue(Reevaluation.of(untouched).isConsistent());
        assertEquals(1, once.runs);

        int crownAt = -1;
        for (int i = 0; i < graph.nodes().size(); i++) {
            if (graph.nodes().get(i).operation().equals("divide")) {
                crownAt = i;
            }
        }
        Counted twice = new Counted(0);
        CallsAhead changed = CallsAhead.of(with(graph, crownAt, 151), List.of(twice));
        changed.calls().forEach(CallsAhead.Call::run);
        assertEquals(
                List.of(crownAt),
                Reevaluation.of(changed).all(Outcome.DIFFERS).stream().map(Finding::node).toList(),
                "the numbers after it come out as recorded");
        assertEquals(2, twice.runs);
    }

    @Test
    void aCallThatWasBrokenOffIsMadeLater() {
        Counted broken = new Counted(1);
        CallsAhead ahead = CallsAhead.of(funicular(), List.of(broken));
        assertThrows(CancellationException.class, () -> ahead.calls().get(0).run());
        assertEquals("form.funicular", ahead.calls().get(0).routine());
        assertTrue(Reevaluation.of(ahead).isConsistent());
        assertEquals(1, broken.runs);
    }
}
