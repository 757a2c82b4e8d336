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
        FrameModelBuilder upright =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, 5)
                        .add(new CableMember("c", "A", "B", new Cable(4.9, 10, 1e6)));
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () -> LinearAnalysis.of(upright.build()))
                        .getMessage()
                        .startsWith("level distance of the ends of cable c is 0.0 m"));
        assertThrows(
                IllegalArgumentException.class,
                () -> analysis.solve(LoadCase.of("P", new CablePull(List.of("mast")))));
    }
}
