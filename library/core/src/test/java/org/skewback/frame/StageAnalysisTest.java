package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.frame.StageAction.Fit.DESIGNED;
import static org.skewback.frame.StageAction.Fit.FITTED;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.steel.Section;

/** Proves that stages lock in what they should and leave nothing behind when undone. */
class StageAnalysisTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section BEAM = Section.slender("b", 0.02, 3e-4, 2e-4, 1e-4);
    private static final double EI = 200e9 * 2e-4;

    private static FrameModel twoSpans() {
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", 5, 0, 0)
                .node("C", 10, 0, 0)
                .add(BeamColumn.of("ab", "A", "B", STEEL, BEAM))
                .add(BeamColumn.of("bc", "B", "C", STEEL, BEAM))
                .hold("A", Motion.ALONG_X, Motion.ALONG_Z)
                .hold("C", Motion.ALONG_Z)
                .inPlane()
                .build();
    }

    private static LoadCase uniform(String name, double w) {
        Vector down = new Vector(0, 0, -w);
        return LoadCase.of(
                name,
                LineLoad.uniform("ab", down, LoadAxes.GLOBAL),
                LineLoad.uniform("bc", down, LoadAxes.GLOBAL));
    }

    @Test
    void aSupportAddedLaterCarriesOnlyWhatComesLater() {
        Support middle = Support.of("B", Motion.ALONG_Z);
        List<StageResult> stages =
                StageAnalysis.of(twoSpans())
                        .run(
                                List.of(
                                        Stage.of(
                                                "beam",
                                                new StageAction.Install(
                                                        List.of("ab", "bc"), DESIGNED),
                                                new StageAction.Apply(uniform("g", 1000))),
                                        Stage.of("prop", new StageAction.Hold(middle)),
                                        Stage.of("more", new StageAction.Apply(uniform("q", 400))),
                                        Stage.of("unprop", new StageAction.LetGo(middle))));
        double sag = 5 * 1000 * 1e4 / (384 * EI);
        assertEquals(-sag, stages.get(1).solution().movement("B").translation().z(), 1e-12);
        assertEquals(0, stages.get(1).solution().reaction("B").force().z(), 1e-8);
        // Two equal spans: the middle support carries 5/4 wl.
        assertEquals(1.25 * 400 * 5, stages.get(2).solution().reaction("B").force().z(), 1e-8);
        assertEquals(
                1000.0 * 100 / 8 - 400.0 * 25 / 8,
                stages.get(2).solution().member("ab").end().momentY(),
                1e-8);
        assertEquals(-sag * 1.4, stages.get(3).solution().movement("B").translation().z(), 1e-12);
        for (StageResult stage : stages) {
            Energy energy = stage.solution().energy();
            assertEquals(1, energy.work() / energy.strain(), 1e-9, stage.name());
            assertTrue(stage.solution().equilibrium().residual() < 1e-10);
        }
    }

    private static FrameModel halves() {
        return twoSpans().toBuilder()
                .hold("A", Motion.ABOUT_Y)
                .hold("C", Motion.ALONG_X, Motion.ABOUT_Y)
                .build();
    }

    @Test
    void fittedPieceJoinsTwoCantileversWithoutForce() {
        List<StageResult> stages =
                StageAnalysis.of(halves())
                        .run(
                                List.of(
                                        Stage.of(
                                                "left",
                                                new StageAction.Install(List.of("ab"), DESIGNED),
                                                new StageAction.Apply(
                                                        LoadCase.of(
                                                                "P",
                                                                NodalLoad.force(
                                                                        "B", 0, 0, -1000)))),
                                        Stage.of(
                                                "close",
                                                new StageAction.Install(List.of("bc"), FITTED)),
                                        Stage.of("free", new StageAction.Withdraw("P"))));
        double sag = 1000 * 125 / (3 * EI);
        assertEquals(-sag, stages.get(1).solution().movement("B").translation().z(), 1e-12);
        assertEquals(0, stages.get(1).solution().member("bc").end().momentY(), 1e-7);
        assertEquals(-5000, stages.get(1).solution().member("ab").start().momentY(), 1e-8);
        // What is left is the effect of −P on the fixed beam of 10 m: PL/8 at its end, PL³/192EI.
        assertEquals(
                -5000 + 1000 * 10 / 8.0,
                stages.get(2).solution().member("ab").start().momentY(),
                1e-8);
        assertEquals(
                -sag + 1000 * 1000 / (192 * EI),
                stages.get(2).solution().movement("B").translation().z(),
                1e-12);
        assertEquals(
                1,
                stages.get(2).solution().energy().work()
                        / stages.get(2).solution().energy().strain(),
                1e-8);
    }

    /** Two cantilevers from walls along no axis, with a gap between their ends. */
    private static FrameModelBuilder gap() {
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", 4, 1, 0.5)
                .node("C", 7, 2.5, 1.5)
                .node("D", 11, 2, 3)
                .add(BeamColumn.of("ab", "A", "B", Bridges.STEEL, Bridges.DECK))
                .add(BeamColumn.of("dc", "D", "C", Bridges.STEEL, Bridges.COLUMN))
                .fix("A")
                .fix("D");
    }

    @Test
    void aFittedPieceIsWithoutForceWhereverItsNodesHaveGone() {
        List<Member> pieces =
                List.of(
                        BeamColumn.of("bc", "B", "C", Bridges.STEEL, Bridges.RIB),
                        BeamColumn.of("bc", "B", "C", Bridges.STEEL, Bridges.RIB)
                                .offset(new Vector(0.2, 0.1, -0.3), new Vector(-0.1, 0.3, 0.2)),
                        Bar.of("bc", "B", "C", Bridges.STEEL, Bridges.RIB));
        for (Member piece : pieces) {
            List<StageResult> stages =
                    StageAnalysis.of(gap().add(piece).build())
                            .run(
                                    List.of(
                                            Stage.of(
                                                    "arms",
                                                    new StageAction.Install(
                                                            List.of("ab", "dc"), DESIGNED),
                                                    new StageAction.Apply(
                                                            LoadCase.of(
                                                                    "P",
                                                                    new NodalLoad(
                                                                            "B",
                                                                            new Vector(
                                                                                    3e4, 5e4, -8e4),
                                                                            new Vector(
                                                                                    2e4, 1e4, 3e4)),
                                                                    new NodalLoad(
                                                                            "C",
                                                                            new Vector(
                                                                                    -2e4, 4e4, 6e4),
                                                                            new Vector(
                                                                                    1e4, -2e4,
                                                                                    1e4))))),
                                            Stage.of(
                                                    "close",
                                                    new StageAction.Install(
                                                            List.of("bc"), FITTED))));
            FrameSolution closed = stages.get(1).solution();
            for (ForceComponent component : ForceComponent.values()) {
                assertEquals(0, closed.member("bc").start().get(component), 1e-3, piece + "");
                assertEquals(0, closed.member("bc").end().get(component), 1e-3, piece + "");
            }
            Vector before = stages.get(0).solution().movement("C").translation();
            assertEquals(0, closed.movement("C").translation().minus(before).length(), 1e-12);
        }
    }

    @Test
    void designedPieceIsForcedIn() {
        List<StageResult> stages =
                StageAnalysis.of(halves())
                        .run(
                                List.of(
                                        Stage.of(
                                                "left",
                                                new StageAction.Install(List.of("ab"), DESIGNED),
                                                new StageAction.Apply(
                                                        LoadCase.of(
                                                                "P",
                                                                NodalLoad.force(
                                                                        "B", 0, 0, -1000)))),
                                        Stage.of(
                                                "close",
                                                new StageAction.Install(List.of("bc"), DESIGNED))));
        assertEquals(
                -1000 * 1000 / (192 * EI),
                stages.get(1).solution().movement("B").translation().z(),
                1e-12);
    }

    @Test
    void tensionedBarsReachTheirForcesTogether() {
        FrameModel model =
                twoSpans().toBuilder()
                        .node("T", 5, 0, 8)
                        .pin("T")
                        .node("S", 3, 0, 8)
                        .pin("S")
                        .add(Bar.of("t", "T", "B", STEEL, BEAM))
                        .add(Bar.of("s", "S", "B", STEEL, BEAM))
                        .build();
        List<StageResult> stages =
                StageAnalysis.of(model)
                        .run(
                                List.of(
                                        Stage.of(
                                                "all",
                                                new StageAction.Install(
                                                        List.of("ab", "bc"), DESIGNED),
                                                new StageAction.Apply(uniform("g", 1000)),
                                                new StageAction.Install(List.of("t", "s"), FITTED)),
                                        Stage.of(
                                                "pull",
                                                new StageAction.Tension("t", 4e3),
                                                new StageAction.Tension("s", 1e3)),
                                        Stage.of("slacken", new StageAction.Jack("t", 1e-3))));
        FrameSolution pulled = stages.get(1).solution();
        assertEquals(4e3, pulled.member("t").start().axial(), 1e-6);
        assertEquals(1e3, pulled.member("s").start().axial(), 1e-6);
        // Length between the nodes = unstressed length + elongation.
        double between =
                pulled.model().node("T").place().z() - pulled.movement("B").translation().z();
        assertEquals(
                between,
                stages.get(1).unstressedLengths().get("t") + 4e3 * 8 / (200e9 * 0.02),
                1e-12);
        assertEquals(
                1e-3,
                stages.get(2).unstressedLengths().get("t")
                        - stages.get(1).unstressedLengths().get("t"),
                1e-15);
        assertTrue(stages.get(2).solution().member("t").start().axial() < 4e3);
    }

    @Test
    void hingeReleasedAndLockedKeepsItsAngle() {
        List<StageResult> stages =
                StageAnalysis.of(halves())
                        .run(
                                List.of(
                                        Stage.of(
                                                "built",
                                                new StageAction.Install(
                                                        List.of("ab", "bc"), DESIGNED),
                                                new StageAction.Apply(uniform("g", 1000))),
                                        Stage.of(
                                                "hinge",
                                                new StageAction.Release(
                                                        "ab", true, Motion.ABOUT_Y)),
                                        Stage.of(
                                                "lock",
                                                new StageAction.Lock("ab", true, Motion.ABOUT_Y)),
                                        Stage.of(
                                                "more", new StageAction.Apply(uniform("q", 240)))));
        assertEquals(
                1000.0 * 100 / 24, stages.get(0).solution().member("ab").end().momentY(), 1e-7);
        assertEquals(0, stages.get(1).solution().member("ab").end().momentY(), 1e-7);
        assertEquals(
                -1000.0 * 25 / 2, stages.get(1).solution().member("ab").start().momentY(), 1e-7);
        assertEquals(
                stages.get(1).solution().movement("B").translation().z(),
                stages.get(2).solution().movement("B").translation().z(),
                1e-12);
        assertEquals(240.0 * 100 / 24, stages.get(3).solution().member("ab").end().momentY(), 1e-7);
    }

    @Test
    void stagesUndoneInReverseOrderReturnToZero() {
        int panels = 8;
        FrameModel model = Bridges.arch(panels);
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        List<String> deck = new ArrayList<>();
        for (Member member : model.members()) {
            String name = member.name();
            if (name.startsWith("rib") || name.startsWith("brace")) {
                double x =
                        model.node(member.start()).place().x()
                                + model.node(member.end()).place().x();
                (x < 120 || name.equals("brace4") ? left : right).add(name);
            } else {
                deck.add(name);
            }
        }
        Support prop = Support.along("r0.3", new Vector(0.3, 0.2, 1));
        LoadCase weight = LoadCase.of("g", SelfWeight.standard());
        LoadCase traffic = LoadCase.of("q", PointLoad.of("deck0.3", 4, new Vector(1e5, 0, -1e6)));
        List<Stage> forth =
                List.of(
                        Stage.of("1", new StageAction.Install(left, DESIGNED)),
                        Stage.of("2", new StageAction.Install(right, DESIGNED)),
                        Stage.of("3", new StageAction.Apply(weight)),
                        Stage.of("4", new StageAction.Hold(prop)),
                        Stage.of("5", new StageAction.Install(deck, FITTED)),
                        Stage.of("6", new StageAction.Apply(traffic)),
                        Stage.of("7", new StageAction.Jack("rib0.2", 0.002)));
        List<Stage> back =
                List.of(
                        Stage.of("7′", new StageAction.Jack("rib0.2", -0.002)),
                        Stage.of("6′", new StageAction.Withdraw("q")),
                        Stage.of("5′", new StageAction.Dismantle(deck)),
                        Stage.of("4′", new StageAction.LetGo(prop)),
                        Stage.of("3′", new StageAction.Withdraw("g")),
                        Stage.of("2′", new StageAction.Dismantle(right)),
                        Stage.of("1′", new StageAction.Dismantle(left)));
        List<Stage> all = new ArrayList<>(forth);
        all.addAll(back);
        List<StageResult> results = StageAnalysis.of(model).run(all);
        int n = forth.size();
        double scale = results.get(n - 1).solution().movement("r0.3").translation().length();
        assertTrue(scale > 1e-3);
        for (int i = 0; i < n; i++) {
            // After undoing stage i the structure is as before it.
            FrameSolution after = results.get(2 * n - 1 - i).solution();
            for (Node node : model.nodes()) {
                Vector was =
                        i == 0
                                ? Vector.ZERO
                                : results.get(i - 1).solution().movement(node.name()).translation();
                assertEquals(
                        0,
                        after.movement(node.name()).translation().minus(was).length(),
                        1e-9 * scale,
                        "after undoing " + (i + 1) + " at " + node.name());
            }
        }
    }

    @Test
    void whatCannotBeDoneNamesItsStage() {
        StageAnalysis analysis = StageAnalysis.of(twoSpans());
        IllegalArgumentException absent =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                analysis.run(
                                        List.of(Stage.of("one", new StageAction.Jack("ab", 1)))));
        assertTrue(absent.getMessage().startsWith("in stage one: member ab is not there"));
        MechanismException loose =
                assertThrows(
                        MechanismException.class,
                        () ->
                                analysis.run(
                                        List.of(
                                                Stage.of(
                                                        "one",
                                                        new StageAction.Install(
                                                                List.of("ab"), DESIGNED)))));
        assertTrue(loose.getMessage().startsWith("in stage one the structure"), loose.getMessage());
        IllegalArgumentException fixed =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                analysis.run(
                                        List.of(
                                                Stage.of(
                                                        "one",
                                                        new StageAction.Install(
                                                                List.of("ab", "bc"), DESIGNED),
                                                        new StageAction.Tension("ab", 1e3)))));
        assertTrue(fixed.getMessage().contains("whatever their"), fixed.getMessage());
    }
}
