package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.cable.Cable;
import org.skewback.cable.HangingCable;
import org.skewback.steel.Section;

/** Proves that cables act as members of frames as they should, in all analyses that take them. */
class CableMemberTest {

    private static final Material STEEL = Material.steel();
    private static final Section MAST = Section.slender("mast", 0.05, 1e-3, 1e-3, 1e-3);
    private static final Cable STAY = new Cable(49.95, 250, 3e8);

    /** A mast in space with four stays, turned about the vertical. */
    private static FrameModel mast(double angle) {
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("F", 0, 0, 0)
                        .node("H", 0, 0, 40)
                        .add(
                                BeamColumn.of("mast", "F", "H", STEEL, MAST)
                                        .oriented(
                                                new Orientation(
                                                        new Vector(
                                                                Math.cos(angle),
                                                                Math.sin(angle),
                                                                0),
                                                        0)))
                        .pin("F")
                        .hold("F", Motion.ABOUT_Z);
        for (int k = 0; k < 4; k++) {
            double at = angle + k * Math.PI / 2;
            String foot = "A" + k;
            builder.node(foot, 30 * Math.cos(at), 30 * Math.sin(at), 0)
                    .pin(foot)
                    .add(new CableMember("s" + k, foot, "H", STAY));
        }
        return builder.build();
    }

    private static LoadCase wind(double angle, double size) {
        return LoadCase.of(
                "wind", NodalLoad.force("H", size * Math.cos(angle), size * Math.sin(angle), 0));
    }

    private static Vector head(FrameModel model, LoadCase load) {
        List<LargeState> path = LargeDisplacementAnalysis.of(model).divided(2).load(load, 2);
        return path.get(path.size() - 1).movement("H").translation();
    }

    @Property(tries = 6)
    void turningTheWholeAboutTheVerticalTurnsTheAnswer(
            @ForAll @DoubleRange(min = 0.2, max = 3) double angle) {
        Vector straight = head(mast(0), wind(0, 4e4));
        Vector turned = head(mast(angle), wind(angle, 4e4));
        Vector expected =
                new Vector(
                        straight.x() * Math.cos(angle),
                        straight.x() * Math.sin(angle),
                        straight.z());
        assertEquals(0, expected.minus(turned).length(), 1e-6 * straight.length());
    }

    @Test
    void smallLoadsMoveItAsTheTangentSays() {
        Vector still = head(mast(0), wind(0, 0));
        Vector loaded = head(mast(0), wind(0, 100));
        LinearAnalysis linear = LinearAnalysis.of(mast(0));
        double expected = linear.solve(wind(0, 100)).movement("H").translation().x();
        // The mast shortens under the pull, which the tangent at the drawn shape does not know.
        assertEquals(expected, loaded.x() - still.x(), 0.05 * expected);
    }

    @Test
    void stagesReachWhatLargeDisplacementsReachWhereOnlyCablesAreNonlinear() {
        List<Stage> stages = new ArrayList<>();
        stages.add(
                Stage.of(
                        "all",
                        new StageAction.Install(
                                List.of("mast", "s0", "s1", "s2", "s3"), StageAction.Fit.DESIGNED),
                        new StageAction.Apply(wind(0, 2e3))));
        StageResult result = StageAnalysis.of(mast(0)).run(stages).get(0);
        Vector staged = result.solution().movement("H").translation();
        Vector large = head(mast(0), wind(0, 2e3));
        // Equilibrium on the mast's turned axis makes the difference: it leans by 1e-4.
        assertEquals(large.x(), staged.x(), 0.05 * Math.abs(large.x()));
        assertEquals(STAY.unstressedLength(), result.unstressedLengths().get("s0"), 1e-12);
        assertTrue(result.solution().equilibrium().residual() < 1e-9);
    }

    @Test
    void tensioningAndSlackeningBackLeavesNothingBehind() {
        List<Stage> stages = new ArrayList<>();
        stages.add(
                Stage.of(
                        "all",
                        new StageAction.Install(
                                List.of("mast", "s0", "s1", "s2", "s3"),
                                StageAction.Fit.DESIGNED)));
        stages.add(Stage.of("tension", new StageAction.Tension("s0", 6e5)));
        StageAnalysis analysis = StageAnalysis.of(mast(0));
        List<StageResult> results = analysis.run(stages);
        assertEquals(6e5, results.get(1).solution().member("s0").start().axial(), 1e-3);
        double drawn = results.get(1).unstressedLengths().get("s0") - STAY.unstressedLength();
        assertTrue(drawn < 0);
        stages.add(Stage.of("slacken", new StageAction.Jack("s0", -drawn)));
        results = analysis.run(stages);
        Vector before = results.get(0).solution().movement("H").translation();
        Vector after = results.get(2).solution().movement("H").translation();
        assertEquals(0, before.minus(after).length(), 1e-9);
        assertEquals(STAY.unstressedLength(), results.get(2).unstressedLengths().get("s0"), 1e-12);
    }

    @Test
    void energyAndEquilibriumHoldForItsTangent() {
        FrameSolution solution =
                LinearAnalysis.of(mast(0))
                        .solve(
                                LoadCase.of(
                                        "all",
                                        CablePull.ofAll(),
                                        NodalLoad.force("H", 1e4, 2e3, -1e3)));
        assertTrue(solution.equilibrium().residual() < 1e-9);
        Energy energy = solution.energy();
        assertEquals(energy.strain(), energy.work(), 1e-9 * energy.strain());
    }

    @Test
    void theWeightOfAStayIsInItsForces() {
        FrameSolution solution =
                LinearAnalysis.of(mast(0)).solve(LoadCase.of("G", CablePull.ofAll()));
        double up = 0;
        for (Reaction reaction : solution.reactions()) {
            up += reaction.force().z();
        }
        assertEquals(4 * STAY.unstressedLength() * STAY.weightPerLength(), up, 1e-3);
    }

    @Test
    void itsMassTakesPart() {
        double with = ModalAnalysis.of(mast(0)).modes(1).totalMass();
        double mast = 40 * 0.05 * STEEL.density();
        assertEquals(
                mast + 4 * STAY.unstressedLength() * STAY.weightPerLength() / 9.80665,
                with,
                1e-6 * with);
    }

    @Test
    void whatItCannotDoIsRefused() {
        FrameModel model = mast(0);
        LinearAnalysis analysis = LinearAnalysis.of(model);
        LoadCase line =
                LoadCase.of("q", LineLoad.uniform("s0", new Vector(0, 0, -1), LoadAxes.GLOBAL));
        String message =
                assertThrows(IllegalArgumentException.class, () -> analysis.solve(line))
                        .getMessage();
        assertTrue(message.startsWith("cable s0 is loaded along its length"), message);
        assertThrows(
                IllegalArgumentException.class,
                () -> analysis.solve(LoadCase.of("P", new CablePull(List.of("mast")))));
    }

    /** A weight on a hanger, which may swing. */
    private static FrameModel hanger(double aside, Cable cable) {
        return FrameModel.builder()
                .node("top", 0, 0, 0)
                .node("foot", aside, 0, -20)
                .add(new CableMember("h", "top", "foot", cable))
                .pin("top")
                .build();
    }

    @Test
    void anUprightHangerIsTheLimitOfOneThatLeans() {
        Cable cable = new Cable(19.99, 300, 2e8);
        LoadCase pushed = LoadCase.of("push", NodalLoad.force("foot", 10, 20, -500));
        Vector upright =
                LinearAnalysis.of(hanger(0, cable)).solve(pushed).movement("foot").translation();
        for (double aside : new double[] {1e-4, 1e-6, 1e-9, 1e-13}) {
            Vector leaning =
                    LinearAnalysis.of(hanger(aside, cable))
                            .solve(pushed)
                            .movement("foot")
                            .translation();
            assertEquals(
                    0, leaning.minus(upright).length(), 2 * aside / 20 + 1e-9 * upright.length());
        }
        // A pendulum: it is turned by the force over the pull.
        assertEquals(upright.y(), 2 * upright.x(), 1e-12 * upright.y());
    }

    @Test
    void aHangerUnderALoadMovesAsFarAsItStretchesAndSwings() {
        Cable cable = new Cable(19.99, 300, 2e8);
        FrameModel model = hanger(0, cable);
        List<LargeState> path =
                LargeDisplacementAnalysis.of(model)
                        .load(LoadCase.of("P", NodalLoad.force("foot", 3e4, 0, -4e4)), 4);
        LargeState last = path.get(path.size() - 1);
        Vector moved = last.movement("foot").translation();
        // The cable alone between where it hangs and where the load takes its foot.
        HangingCable hanging = HangingCable.between(cable, moved.x(), -20 + moved.z());
        assertEquals(3e4, hanging.horizontalForce(), 1e-3);
        assertEquals(-4e4, hanging.endVertical(), 1e-3);
    }

    @Test
    void aHangerTensionedInAStageHasTheTension() {
        Node top = new Node("top", new Vector(0, 0, 0));
        Node foot = new Node("foot", new Vector(0, 0, -20));
        CableMember hanger = CableMember.hanger("h", top, foot, 300, 2e8, 1e5);
        FrameModel model =
                FrameModel.builder()
                        .node(top)
                        .node(foot)
                        .node("wall", -8, 0, -20)
                        .add(BeamColumn.of("deck", "wall", "foot", STEEL, MAST))
                        .add(hanger)
                        .pin("top")
                        .fix("wall")
                        .build();
        List<StageResult> results =
                StageAnalysis.of(model)
                        .run(
                                List.of(
                                        Stage.of(
                                                "all",
                                                new StageAction.Install(
                                                        List.of("deck", "h"),
                                                        StageAction.Fit.FITTED)),
                                        Stage.of("pull", new StageAction.Tension("h", 2e5))));
        double length = results.get(1).unstressedLengths().get("h");
        FrameSolution pulled = results.get(1).solution();
        assertEquals(2e5, pulled.member("h").start().axial(), 1e-3);
        double rise = pulled.movement("foot").translation().z();
        double lower = 2e5 - 300 * length;
        assertEquals(20 - rise, length + (lower * length + 150 * length * length) / 2e8, 1e-9);
    }

    @Test
    void aSlackHangerHoldsNothingSideways() {
        FrameModel model = hanger(0, new Cable(21, 300, 2e8));
        String message =
                assertThrows(
                                MechanismException.class,
                                () ->
                                        LinearAnalysis.of(model)
                                                .solve(LoadCase.of("G", CablePull.ofAll())))
                        .getMessage();
        assertTrue(message.contains("foot"), message);
        String weightless =
                assertThrows(
                                IllegalArgumentException.class,
                                () -> LinearAnalysis.of(hanger(0, new Cable(21, 0, 2e8))))
                        .getMessage();
        assertEquals(
                "cable h: unstressed length of a cable that nothing acts on is 21.0 m; allowed is"
                        + " less than the distance of its ends, 20.0 m.",
                weightless);
    }
}
