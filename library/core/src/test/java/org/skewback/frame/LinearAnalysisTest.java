package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** Proves member stiffness, loads and supports against closed forms, and the messages for bad models. */
class LinearAnalysisTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section SECTION = Section.of("s", 0.02, 0.01, 0.012, 3e-4, 2e-4, 1e-4);
    private static final double EI = 200e9 * 2e-4;
    private static final double GA = 80e9 * 0.012;

    private static FrameModel cantilever(double length) {
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", length, 0, 0)
                .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                .fix("A")
                .build();
    }

    private static void near(double expected, double actual) {
        assertEquals(expected, actual, 1e-9 * Math.max(Math.abs(expected), 1e-9));
    }

    @Test
    void cantileverWithPointLoadAtItsTip() {
        FrameSolution solution =
                LinearAnalysis.of(cantilever(5))
                        .solve(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1000)));
        near(-1000 * 125 / (3 * EI) - 1000 * 5 / GA, solution.movement("B").translation().z());
        near(1000 * 25 / (2 * EI), solution.movement("B").rotation().y());
        near(-5000, solution.member("m").start().momentY());
        near(1000, solution.member("m").at(2).shearZ());
        near(1000, solution.reaction("A").force().z());
        near(-5000, solution.reaction("A").moment().y());
        assertTrue(solution.equilibrium().residual() < 1e-12);
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void fixedBeamUnderUniformLoad() {
        FrameModel model = cantilever(8).toBuilder().fix("B").build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "w",
                                        LineLoad.uniform(
                                                "m", new Vector(0, 0, -3000), LoadAxes.GLOBAL)));
        MemberForces forces = solution.member("m");
        near(-3000.0 * 64 / 12, forces.start().momentY());
        near(3000.0 * 64 / 24, forces.at(4).momentY());
        near(12000, forces.start().shearZ());
        near(
                -3000 * 4096 / (384 * EI) - 3000 * 64 / (8 * GA),
                forces.movement(4).translation().z());
        near(4, forces.largest(ForceComponent.MOMENT_Y).position());
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void hingedEndsGiveTheSimpleBeam() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 6, 0, 0)
                        .add(
                                BeamColumn.of("m", "A", "B", STEEL, SECTION)
                                        .connected(EndConnection.PINNED, EndConnection.PINNED))
                        .fix("A")
                        .fix("B")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("p", PointLoad.of("m", 2, new Vector(0, 100, -900))));
        MemberForces forces = solution.member("m");
        near(900.0 * 2 * 4 / 6, forces.at(2).momentY());
        near(-100.0 * 2 * 4 / 6, forces.at(2).momentZ());
        near(600, forces.at(2).shearZ());
        near(-300, forces.after(2).shearZ());
        assertEquals(0, forces.start().momentY(), 1e-9);
        double deflection = 900 * 4.0 * 16 / (3 * EI * 6) + 900 * 2 * 4 / 6.0 / GA;
        near(-deflection, forces.movement(2).translation().z());
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void aSpringPutIntoAJointLeavesTheOthersAlone() {
        EndConnection joint = new EndConnection(1, 2, 3, 4, 5, 6);
        double[] given = {1, 2, 3, 4, 5, 6};
        for (Motion motion : Motion.values()) {
            double[] all = given.clone();
            all[motion.index()] = 7;
            assertEquals(
                    new EndConnection(all[0], all[1], all[2], all[3], all[4], all[5]),
                    joint.with(motion, 7));
        }
    }

    @Test
    void springsAtTheEndsStandBetweenPinnedAndFixed() {
        double k = 2 * EI / 6 * 3;
        EndConnection spring = EndConnection.RIGID.with(Motion.ABOUT_Y, k);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 6, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION).connected(spring, spring))
                        .fix("A")
                        .fix("B")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "w",
                                        LineLoad.uniform(
                                                "m", new Vector(0, 0, -1000), LoadAxes.LOCAL)));
        // Slope of the simple beam wL³/24EI = M (L/2EI + 1/k).
        double moment = 1000 * 216 / (24 * EI) / (6 / (2 * EI) + 1 / k);
        near(-moment, solution.member("m").start().momentY());
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void warmingAndLackOfFitAndSettlementInAFixedBeam() {
        LinearAnalysis analysis = LinearAnalysis.of(cantilever(4).toBuilder().fix("B").build());
        FrameSolution warm = analysis.solve(LoadCase.of("T", new Warming("m", 30, 0, 50)));
        near(-200e9 * 0.02 * 1.2e-5 * 30, warm.member("m").start().axial());
        // A beam warmer on top and kept from rising is compressed on top: sagging moment.
        near(EI * 1.2e-5 * 50, warm.member("m").at(1).momentY());
        near(warm.energy().strain(), warm.energy().work());
        FrameSolution misfit = analysis.solve(LoadCase.of("d", new LackOfFit("m", 0.001)));
        near(-200e9 * 0.02 * 0.001 / 4, misfit.member("m").end().axial());
        FrameSolution drawn = analysis.solve(LoadCase.of("N", new InitialForce("m", 5e4)));
        near(5e4, drawn.member("m").end().axial());
        FrameSolution sunk =
                analysis.solve(
                        LoadCase.of(
                                "s",
                                new GroundMovement("B", new Vector(0, 0, -0.01), Vector.ZERO)));
        double shear = 12 * EI / (EI * 12 / GA * 4 + 64) * 0.01;
        near(shear, sunk.member("m").start().shearZ());
        near(-0.01, sunk.movement("B").translation().z());
        near(sunk.energy().strain(), sunk.energy().work());
    }

    @Test
    void aFreeBeamBendsUnderItsTendonByStaticsAlone() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 10, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                        .pin("A")
                        .hold("A", Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("P", new Tendon("m", 1e6, 0, 0, 0, -0.4, 0, 0)));
        near(-1e6, solution.member("m").at(3).axial());
        near(-0.4e6, solution.member("m").at(5).momentY());
        near(
                5 * 0.4e6 * 100 / (48 * EI) + 0.4e6 / GA,
                solution.member("m").movement(5).translation().z());
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void taperedCantileverOfRectangles() {
        // EI = E b h³/12, h from 2h₀ at the root to h₀ at the tip: w = (12P/Eb)∫ x²/h³ dx.
        Rectangle root = new Rectangle(0.3, 0.8);
        Rectangle tip = new Rectangle(0.3, 0.4);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 6, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        STEEL,
                                        SectionProfile.tapered(
                                                root.section("r"), tip.section("t"))))
                        .fix("A")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("B", 0, 0, -1e4),
                                        SelfWeight.standard()));
        FrameSolution tipOnly =
                LinearAnalysis.of(model).solve(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1e4)));
        double c = 0.4 / 6;
        // ∫₀ᴸ x²/(h₀ + cx)³ dx = [ln h + 2h₀/h − h₀²/2h²]/c³ between h₀ and 2h₀.
        double integral = (StrictMath.log(2) - 1 + 0.375) / (c * c * c);
        double shear = 1e4 * 6 / (5 * 80e9 * 0.3) * StrictMath.log(2) / c;
        near(-12e4 / (200e9 * 0.3) * integral - shear, tipOnly.movement("B").translation().z());
        double weight = 8000 * 9.80665 * 0.3 * 0.6 * 6;
        near(weight + 1e4, solution.reaction("A").force().z());
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void rigidArmsCarryTheLoadAround() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 5, 0, 0)
                        .add(
                                BeamColumn.of("m", "A", "B", STEEL, SECTION)
                                        .offset(new Vector(0.5, 0, 1), new Vector(-0.5, 0, 1)))
                        .fix("A")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model).solve(LoadCase.of("P", NodalLoad.force("B", 1e4, 0, 0)));
        near(4, solution.member("m").length());
        near(1e4, solution.member("m").start().axial());
        near(1e4, solution.member("m").start().momentY());
        near(1e4 * 16 / (2 * EI), solution.member("m").movement(4).translation().z());
    }

    @Test
    void skewSupportHoldsItsDirectionOnly() {
        Vector across = new Vector(-0.6, 0, 0.8);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 5, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                        .pin("A")
                        .support(Support.along("B", across))
                        .inPlane()
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("P", PointLoad.of("m", 2, new Vector(0, 0, -1000))));
        Vector reaction = solution.reaction("B").force();
        near(400, reaction.z());
        near(-300, reaction.x());
        assertEquals(0, solution.movement("B").translation().dot(across), 1e-15);
        assertEquals(0, solution.equilibrium().residual(), 1e-12);
        assertEquals(0, solution.equilibrium().force().length(), 1e-9);
        assertEquals(0, solution.equilibrium().moment().length(), 1e-9);
    }

    @Test
    void linkCarriesByItsSprings() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, 0)
                        .add(
                                SpringLink.of(
                                        "bearing",
                                        "A",
                                        "B",
                                        new EndConnection(1e6, 2e6, 4e8, 1e5, 2e5, 3e5)))
                        .fix("A")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("P", NodalLoad.force("B", 1000, 0, -4000)));
        near(1e-3, solution.movement("B").translation().x());
        near(-1e-5, solution.movement("B").translation().z());
        near(solution.energy().strain(), solution.energy().work());
    }

    @Test
    void mechanismNamesNodeAndDirection() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 10, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                        .hold("A", Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .build();
        MechanismException e =
                assertThrows(MechanismException.class, () -> LinearAnalysis.of(model));
        assertTrue(e.getMessage().contains("moves along x"), e.getMessage());
        assertEquals(Vector.X, e.motion().direction());
    }

    @Test
    void mechanismOfAHingeChainNamesTheNodeThatDrops() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 4, 0, 0)
                        .node("C", 9, 0, 0)
                        .add(Bar.of("ab", "A", "B", STEEL, SECTION))
                        .add(Bar.of("bc", "B", "C", STEEL, SECTION))
                        .pin("A")
                        .pin("C")
                        .inPlane()
                        .build();
        MechanismException e =
                assertThrows(MechanismException.class, () -> LinearAnalysis.of(model));
        assertEquals("B", e.motion().node());
        assertEquals(Vector.Z, e.motion().direction());
    }

    @Test
    void nearMechanismWarns() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 4, 0, 1e-5)
                        .node("C", 8, 0, 0)
                        .add(Bar.of("ab", "A", "B", STEEL, SECTION))
                        .add(Bar.of("bc", "B", "C", STEEL, SECTION))
                        .spring("B", Motion.ALONG_Z, 1e-3)
                        .hold("B", Motion.ALONG_Y)
                        .pin("A")
                        .pin("C")
                        .build();
        List<String> warnings = LinearAnalysis.of(model).warnings();
        assertEquals(1, warnings.size());
        assertTrue(warnings.get(0).contains("node B moves along z"), warnings.get(0));
    }

    /** A beam that nothing but a spring keeps from sliding away along its axis. */
    private static LinearAnalysis floating(double spring) {
        return LinearAnalysis.of(
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 10, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                        .hold("A", Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .spring("A", Motion.ALONG_X, spring)
                        .build());
    }

    @Test
    void aSoftHoldWarnsOfTheDigitsThatItCosts() {
        double member = STEEL.youngModulus() * SECTION.area() / 10;
        List<String> warnings = floating(1e-12 * member).warnings();
        assertEquals(
                List.of(
                        "the structure is nearly a mechanism: node B moves along x with a"
                            + " resistance of 1.0e-12 of what its members give there; about 12 of"
                            + " 16 digits are lost."),
                warnings);
        assertEquals(List.of(), floating(1e-6 * member).warnings());
    }

    @Test
    void badModelsAndLoadsAreRefusedByName() {
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        FrameModel.builder()
                                                .node("A", 0, 0, 0)
                                                .add(Bar.of("b", "A", "Q", STEEL, SECTION))
                                                .build())
                        .getMessage()
                        .contains("node Q"));
        LinearAnalysis analysis = LinearAnalysis.of(cantilever(4));
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        analysis.solve(
                                                LoadCase.of("p", PointLoad.of("m", 4.1, Vector.Z))))
                        .getMessage()
                        .contains("4.1 m"));
        EndConnection ball = EndConnection.PINNED.released(Motion.ABOUT_X);
        FrameModel loose =
                cantilever(3).toBuilder()
                        .add(BeamColumn.of("x", "A", "B", STEEL, SECTION).connected(ball, ball))
                        .build();
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> LinearAnalysis.of(loose))
                        .getMessage()
                        .contains("member x is loose"));
    }

    @Test
    void forcesRunSmoothlyBetweenTheBreaksListed() {
        FrameSolution solution =
                LinearAnalysis.of(cantilever(8))
                        .solve(
                                LoadCase.of(
                                        "P",
                                        PointLoad.of("m", 3, new Vector(0, 0, -1000)),
                                        new LineLoad(
                                                "m", 1, 5, Vector.Z, Vector.Z, LoadAxes.GLOBAL)));
        assertArrayEquals(new double[] {0, 1, 3, 5, 8}, solution.member("m").breaks(), 1e-12);
    }

    @Test
    void localAxesFollowTheRuleOfThePackage() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, 4)
                        .node("C", 0, 3, 4)
                        .add(BeamColumn.of("up", "A", "B", STEEL, SECTION))
                        .add(BeamColumn.of("across", "B", "C", STEEL, SECTION))
                        .add(Bar.of("down", "B", "A", STEEL, SECTION))
                        .add(
                                BeamColumn.of("turned", "B", "A", STEEL, SECTION)
                                        .oriented(new Orientation(Vector.X, 0)))
                        .fix("A")
                        .build();
        Vector left = Vector.X.times(-1);
        same(List.of(Vector.Z, Vector.Y, left), model.localAxes("up"));
        same(List.of(Vector.Y, left, Vector.Z), model.localAxes("across"));
        same(List.of(Vector.Z.times(-1), Vector.Y, Vector.X), model.localAxes("down"));
        same(List.of(Vector.Z.times(-1), Vector.Y, Vector.X), model.localAxes("turned"));
    }

    private static void same(List<Vector> expected, List<Vector> actual) {
        assertEquals(3, actual.size());
        for (int i = 0; i < 3; i++) {
            assertEquals(0, expected.get(i).minus(actual.get(i)).length(), 1e-15);
        }
    }
}
