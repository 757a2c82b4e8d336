package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Proves combinations, envelopes with what acts at the same time, and one-way bars. */
class CombinationTest {

    private final FrameModel model = Bridges.arch(6);
    private final List<FrameSolution> cases =
            LinearAnalysis.of(model)
                    .solve(
                            List.of(
                                    LoadCase.of("G", SelfWeight.standard()),
                                    LoadCase.of("W1", NodalLoad.force("d0.3", 0, 2e5, 0)),
                                    LoadCase.of("W2", NodalLoad.force("d0.3", 0, -3e5, 0)),
                                    LoadCase.of(
                                            "Q",
                                            PointLoad.of("deck0.2", 7, new Vector(0, 0, -1e6)),
                                            new Warming("rib0.1", 20, 0, 5))));

    @Test
    void combinedSolutionIsTheSumEverywhere() {
        Combination combination = new Combination("ULS", Map.of("G", 1.35, "Q", 1.5));
        FrameSolution sum = Superposition.of(cases, combination);
        SectionForces expected =
                cases.get(0)
                        .member("deck0.2")
                        .at(9)
                        .plus(0.35, cases.get(0).member("deck0.2").at(9))
                        .plus(1.5, cases.get(3).member("deck0.2").at(9));
        assertEquals(expected.momentY(), sum.member("deck0.2").at(9).momentY(), 1e-3);
        assertTrue(sum.equilibrium().residual() < 1e-9);
        assertEquals(1, sum.energy().work() / sum.energy().strain(), 1e-9);
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        Superposition.of(
                                                cases, new Combination("x", Map.of("S", 1.0))))
                        .getMessage()
                        .contains("load case S"));
    }

    @Test
    void ruleFindsTheWorstOfAllItsCombinations() {
        CombinationRule rule =
                new CombinationRule(
                        "ULS",
                        List.of(
                                CombinationRule.Term.of("G", 1.0, 1.35),
                                CombinationRule.Term.oneOf(1.5, "W1", "W2"),
                                CombinationRule.Term.of("Q", 0, 1.45)));
        Envelope envelope = Envelope.of(cases, rule, 3);
        for (String member : List.of("rib0.2", "deck0.2", "tie3")) {
            for (ForceComponent component : ForceComponent.values()) {
                double best = Double.NEGATIVE_INFINITY;
                for (double g : new double[] {1, 1.35}) {
                    for (double[] w : new double[][] {{0, 0}, {1.5, 0}, {0, 1.5}}) {
                        for (double q : new double[] {0, 1.45}) {
                            double[] factors = {g, w[0], w[1], q};
                            double sum = 0;
                            for (int c = 0; c < 4; c++) {
                                sum +=
                                        factors[c]
                                                * cases.get(c).member(member).end().get(component);
                            }
                            best = Math.max(best, sum);
                        }
                    }
                }
                Envelope.Governing governing = envelope.largest(member, 2, component);
                assertEquals(best, governing.value(), 1e-9 * Math.abs(best) + 1e-6);
                assertTrue(governing.cause().startsWith("ULS: "), governing.cause());
            }
        }
    }

    @Test
    void envelopeOfGivenCombinationsNamesTheOneThatGoverns() {
        Envelope envelope =
                Envelope.of(
                        cases,
                        List.of(
                                new Combination("calm", Map.of("G", 1.0)),
                                new Combination("storm", Map.of("G", 1.0, "W2", 1.5))),
                        2);
        Envelope.Governing governing = envelope.largest("tie3", 0, ForceComponent.SHEAR_Y);
        Envelope.Governing other = envelope.smallest("tie3", 0, ForceComponent.SHEAR_Y);
        assertFalse(governing.cause().equals(other.cause()));
        Envelope twice = envelope.plus(2, envelope);
        // The cause of the sum says with which factor the other envelope counts.
        assertEquals(
                governing.cause() + " + 2.0·" + governing.cause(),
                twice.largest("tie3", 0, ForceComponent.SHEAR_Y).cause());
        assertEquals(
                3 * governing.value(),
                twice.largest("tie3", 0, ForceComponent.SHEAR_Y).value(),
                1e-9 * Math.abs(governing.value()));
    }

    @Test
    void diagonalThatCarriesTensionOnlyGoesSlack() {
        FrameModelBuilder b =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 4, 0, 0)
                        .node("C", 0, 0, 3)
                        .node("D", 4, 0, 3)
                        .pin("A")
                        .pin("B")
                        .inPlane();
        for (String name : List.of("AC", "BD", "CD")) {
            b.add(
                    Bar.of(
                            name,
                            name.substring(0, 1),
                            name.substring(1),
                            Bridges.STEEL,
                            Bridges.COLUMN));
        }
        for (String name : List.of("AD", "BC")) {
            b.add(
                    Bar.of(
                                    name,
                                    name.substring(0, 1),
                                    name.substring(1),
                                    Bridges.STEEL,
                                    Bridges.COLUMN)
                            .carrying(Bar.Carries.TENSION));
        }
        OneWayAnalysis analysis = OneWayAnalysis.of(b.build());
        FrameSolution solution = analysis.solve(LoadCase.of("H", NodalLoad.force("C", 8e4, 0, 0)));
        assertEquals(List.of("BC"), OneWayAnalysis.idle(solution));
        // Joint D: the diagonal of slope 3 : 4 brings the 80 kN down.
        assertEquals(1e5, solution.member("AD").start().axial(), 1e-6);
        assertEquals(-8e4, solution.member("CD").start().axial(), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> solution.member("BC"));
        FrameSolution back = analysis.solve(LoadCase.of("H", NodalLoad.force("C", -8e4, 0, 0)));
        assertEquals(List.of("AD"), OneWayAnalysis.idle(back));
    }
}
