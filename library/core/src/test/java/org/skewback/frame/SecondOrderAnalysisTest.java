package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** Proves the laws of second-order statics, and the messages where there is no equilibrium. */
class SecondOrderAnalysisTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section SECTION = Section.of("s", 0.02, 0.01, 0.012, 3e-4, 2e-4, 1e-4);
    private static final double LENGTH = 9;

    private static Vector turned(Vector v, double angle) {
        Vector axis = new Vector(1, 2, -2).times(1 / 3.0);
        return v.times(Math.cos(angle))
                .plus(axis.cross(v).times(Math.sin(angle)))
                .plus(axis.times(axis.dot(v) * (1 - Math.cos(angle))));
    }

    /** A portal in space with a hinge, rigid arms and a stay, turned as a whole. */
    private static FrameModel portal(double angle) {
        Vector[] places = {
            Vector.ZERO,
            new Vector(0, 0, 8),
            new Vector(7, 1, 8.5),
            new Vector(8, 2, 0),
            new Vector(-5, -3, 0)
        };
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i < places.length; i++) {
            builder.node(new Node("" + i, turned(places[i], angle)));
        }
        Orientation[] axes = {
            new Orientation(turned(new Vector(1, 0, 0), angle), 0.2),
            new Orientation(turned(new Vector(0, 0, 1), angle), 0),
            new Orientation(turned(new Vector(0, 1, 0), angle), 0)
        };
        builder.add(BeamColumn.of("0", "0", "1", STEEL, SECTION).oriented(axes[0]));
        builder.add(
                BeamColumn.of("1", "1", "2", STEEL, SECTION)
                        .oriented(axes[1])
                        .offset(
                                turned(new Vector(0.2, 0, 0.5), angle),
                                turned(new Vector(-0.3, 0, 0.4), angle))
                        .connected(
                                EndConnection.RIGID, EndConnection.RIGID.released(Motion.ABOUT_Y)));
        builder.add(BeamColumn.of("2", "3", "2", STEEL, SECTION).oriented(axes[2]));
        builder.add(Bar.of("stay", "1", "4", STEEL, Section.slender("b", 1e-3, 1, 1, 1)));
        for (Vector axis : List.of(Vector.X, Vector.Y, Vector.Z)) {
            Vector direction = turned(axis, angle);
            builder.support(Support.along("0", direction));
            builder.support(Support.about("0", direction));
            builder.support(Support.along("3", direction));
            builder.support(Support.along("4", direction));
        }
        builder.support(Support.about("3", turned(Vector.Z, angle)));
        return builder.build();
    }

    private static LoadCase loads(double angle, double factor) {
        return LoadCase.of(
                "P",
                new NodalLoad(
                        "1", turned(new Vector(2e4, 3e3, -2e5), angle).times(factor), Vector.ZERO),
                new NodalLoad(
                        "2", turned(new Vector(1e4, -2e3, -1e5), angle).times(factor), Vector.ZERO),
                new Warming("0", 10 * factor, 0, 20 * factor),
                LineLoad.uniform(
                        "1", turned(new Vector(0, 0, -3e3), angle).times(factor), LoadAxes.GLOBAL));
    }

    @Property(tries = 10)
    void turningTheWholeTurnsTheAnswer(@ForAll @DoubleRange(min = 0.1, max = 3) double angle) {
        FrameSolution straight = SecondOrderAnalysis.of(portal(0)).solve(loads(0, 1));
        FrameSolution turned = SecondOrderAnalysis.of(portal(angle)).solve(loads(angle, 1));
        Vector expected = turned(straight.movement("2").translation(), angle);
        assertEquals(
                0,
                expected.minus(turned.movement("2").translation()).length(),
                1e-9 * expected.length());
        double moment = straight.largest(ForceComponent.MOMENT_Y).forces().momentY();
        assertEquals(
                moment, turned.largest(ForceComponent.MOMENT_Y).forces().momentY(), 1e-8 * moment);
    }

    @Property(tries = 15)
    void nodesAreInEquilibriumAndEnergyIsTheWorkDone(
            @ForAll @DoubleRange(min = -2, max = 1) double factor) {
        FrameSolution solution = SecondOrderAnalysis.of(portal(0)).solve(loads(0, factor));
        Equilibrium equilibrium = solution.equilibrium();
        assertTrue(equilibrium.residual() < 1e-9, equilibrium.toString());
        assertEquals(0, equilibrium.force().length(), 1e-4);
        Energy energy = solution.energy();
        assertEquals(energy.strain(), energy.work(), 1e-7 * energy.strain());
    }

    @Test
    void momentsBalanceWhereThingsAreAfterTheMovement() {
        // So stiff along its axis that nothing is left of changes of length.
        Section stiff = Section.slender("s", 1e4, 2e-4, 2e-4, 2e-4);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, LENGTH)
                        .add(BeamColumn.of("m", "A", "B", STEEL, stiff))
                        .fix("A")
                        .build();
        FrameSolution solution =
                SecondOrderAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("B", 1e4, 2e4, -8e5),
                                        LineLoad.uniform(
                                                "m", new Vector(1e3, 0, -1e4), LoadAxes.GLOBAL)));
        double base = Math.abs(solution.reaction("A").moment().length());
        // N is the mean over each of 16 spans: the balance is that of the theory within these.
        assertEquals(0, solution.equilibrium().moment().length(), 1e-3 * base);
        assertTrue(solution.movement("B").translation().y() > 0.05);
    }

    /** A member held at its ends in some ways, whole or cut into eight. */
    private static FrameModel member(int parts, boolean pinned) {
        FrameModelBuilder builder = FrameModel.builder().node("0", 0, 0, 0);
        for (int i = 1; i <= parts; i++) {
            builder.node("" + i, LENGTH * i / parts, 0, 0);
            builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, STEEL, SECTION));
        }
        builder.pin("0").hold("0", Motion.ABOUT_X, Motion.ABOUT_Z);
        String end = "" + parts;
        builder.hold(end, Motion.ALONG_Y, Motion.ABOUT_Z);
        if (pinned) {
            builder.hold(end, Motion.ALONG_Z);
        } else {
            builder.spring(end, Motion.ALONG_Z, 3e6);
            builder.hold("0", Motion.ABOUT_Y);
        }
        return builder.build();
    }

    private static List<Load> along(int parts, double axial) {
        List<Load> loads = new ArrayList<>();
        loads.add(NodalLoad.force("" + parts, axial, 0, 0));
        for (int i = 1; i <= parts; i++) {
            double length = LENGTH / parts;
            double from = (i - 1.0) / parts;
            double to = (double) i / parts;
            loads.add(
                    LineLoad.linear(
                            "m" + i,
                            new Vector(0, 1e4 * from, -2e4 * (1 - from)),
                            new Vector(0, 1e4 * to, -2e4 * (1 - to)),
                            LoadAxes.LOCAL));
            loads.add(new Warming("m" + i, 0, 15, -30));
            if (to == 0.5 || parts == 1) {
                double x = parts == 1 ? LENGTH / 2 - 0.3 : length - 0.3;
                loads.add(PointLoad.of("m" + i, x, new Vector(0, 3e4, -5e4)));
                loads.add(new Dislocation("m" + i, x, ForceComponent.MOMENT_Y, 0.003));
                loads.add(new Dislocation("m" + i, x - 0.1, ForceComponent.SHEAR_Z, 0.002));
            }
        }
        return loads;
    }

    @Property(tries = 20)
    void oneMemberGivesWhatEightGive(
            @ForAll @DoubleRange(min = -1.2e6, max = 3e7) double axial, @ForAll boolean pinned) {
        FrameSolution one =
                SecondOrderAnalysis.of(member(1, pinned)).solve(new LoadCase("q", along(1, axial)));
        FrameSolution eight =
                SecondOrderAnalysis.of(member(8, pinned)).solve(new LoadCase("q", along(8, axial)));
        // Under much tension all moments may hog.
        double size =
                Math.max(
                        one.largest(ForceComponent.MOMENT_Y).forces().momentY(),
                        -one.smallest(ForceComponent.MOMENT_Y).forces().momentY());
        for (double x : new double[] {0.4, 2.9, 4.0, 6.1, 8.8}) {
            int part = (int) (x / LENGTH * 8) + 1;
            double inside = x - (part - 1) * LENGTH / 8;
            SectionForces whole = one.member("m1").at(x);
            SectionForces pieces = eight.member("m" + part).at(inside);
            assertEquals(whole.momentY(), pieces.momentY(), 1e-8 * size);
            assertEquals(whole.momentZ(), pieces.momentZ(), 1e-8 * size);
            assertEquals(whole.shearZ(), pieces.shearZ(), 1e-8 * size);
            assertEquals(whole.shearY(), pieces.shearY(), 1e-8 * size);
            Vector moved = one.member("m1").movement(x).translation();
            Vector other = eight.member("m" + part).movement(inside).translation();
            assertEquals(0, moved.minus(other).length(), 1e-8 * (1e-3 + moved.length()));
        }
    }

    @Test
    void smallLoadsGiveLinearStatics() {
        FrameSolution linear = LinearAnalysis.of(portal(0)).solve(loads(0, 1));
        double last = Double.NaN;
        for (double factor : new double[] {1e-3, 1e-4}) {
            FrameSolution small = SecondOrderAnalysis.of(portal(0)).solve(loads(0, factor));
            Vector moved = small.movement("2").translation().times(1 / factor);
            double off = moved.minus(linear.movement("2").translation()).length();
            if (factor < 1e-3) {
                // What is left falls with the load.
                assertEquals(10, last / off, 0.2);
            }
            last = off;
        }
    }

    @Test
    void aRigidArmIsAVeryStiffMemberInItsPlane() {
        FrameModelBuilder armed = FrameModel.builder().node("A", 0, 0, 0).node("B", 0, 0, 10);
        Vector arm = new Vector(0.5, 0, -2);
        armed.add(BeamColumn.of("m", "A", "B", STEEL, SECTION).offset(Vector.ZERO, arm)).fix("A");
        FrameModelBuilder stiff =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("C", arm.x(), 0, 10 + arm.z())
                        .node("B", 0, 0, 10);
        stiff.add(BeamColumn.of("m", "A", "C", STEEL, SECTION)).fix("A");
        stiff.add(
                BeamColumn.of(
                        "arm", "C", "B", STEEL, Section.slender("stiff", 1e2, 1e4, 1e4, 1e4)));
        LoadCase loads = LoadCase.of("P", NodalLoad.force("B", 2e4, 0, -2e5));
        Vector a = SecondOrderAnalysis.of(armed.build()).solve(loads).movement("B").translation();
        Vector b = SecondOrderAnalysis.of(stiff.build()).solve(loads).movement("B").translation();
        Vector linear = LinearAnalysis.of(armed.build()).solve(loads).movement("B").translation();
        assertTrue(a.minus(linear).length() > 0.02 * linear.length());
        assertEquals(0, a.minus(b).length(), 1e-4 * a.length());
    }

    @Test
    void itRefusesAtTheFactorThatBucklingAnalysisFinds() {
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, 6)
                        .node("C", 9, 0, 7)
                        .node("D", 9, 0, 0)
                        .add(BeamColumn.of("ab", "A", "B", STEEL, SECTION))
                        .add(BeamColumn.of("bc", "B", "C", STEEL, SECTION))
                        .add(BeamColumn.of("dc", "D", "C", STEEL, SECTION))
                        .fix("A")
                        .pin("D")
                        .build();
        double factor =
                BucklingAnalysis.of(model)
                        .divided(32)
                        .factors(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("B", 0, 0, -1),
                                        NodalLoad.force("C", 0, 0, -1)),
                                1)
                        .governing()
                        .factor();
        SecondOrderAnalysis analysis = SecondOrderAnalysis.of(model);
        // Within 0.5 %: the buckling analysis takes the first-order forces of all kinds into
        // account.
        FrameSolution below = analysis.solve(both(0.995 * factor));
        assertTrue(below.movement("B").translation().length() > 0);
        UnstableException thrown =
                assertThrows(UnstableException.class, () -> analysis.solve(both(1.005 * factor)));
        assertTrue(
                thrown.getMessage().startsWith("the structure is unstable under P: node "),
                thrown.getMessage());
        assertTrue(thrown.getMessage().contains("moves along x"), thrown.getMessage());
    }

    private static LoadCase both(double force) {
        return LoadCase.of(
                "P", NodalLoad.force("B", 0, 0, -force), NodalLoad.force("C", 0, 0, -force));
    }

    @Test
    void aMemberThatBucklesBetweenItsEndsIsNamed() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", LENGTH, 0, 0)
                        .add(
                                BeamColumn.of("strut", "A", "B", STEEL, SECTION)
                                        .connected(EndConnection.PINNED, EndConnection.PINNED))
                        .fix("A")
                        .hold(
                                "B",
                                Motion.ALONG_Y,
                                Motion.ALONG_Z,
                                Motion.ABOUT_X,
                                Motion.ABOUT_Y,
                                Motion.ABOUT_Z)
                        .build();
        double euler = Math.PI * Math.PI * 200e9 * 1e-4 / (LENGTH * LENGTH);
        double critical = euler / (1 + euler / (80e9 * 0.01));
        SecondOrderAnalysis analysis = SecondOrderAnalysis.of(model);
        analysis.solve(LoadCase.of("P", NodalLoad.force("B", -0.9999 * critical, 0, 0)));
        String message =
                assertThrows(
                                UnstableException.class,
                                () ->
                                        analysis.solve(
                                                LoadCase.of(
                                                        "P",
                                                        NodalLoad.force(
                                                                "B", -1.0001 * critical, 0, 0))))
                        .getMessage();
        assertTrue(message.contains("member strut buckles between its ends"), message);
    }

    @Test
    void theErrorOfATaperFallsWithTheSquareOfTheSpans() {
        SectionProfile taper =
                SectionProfile.tapered(
                        new Rectangle(0.3, 0.3).section("a"),
                        new Rectangle(0.2, 0.15).section("b"));
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, LENGTH)
                        .add(
                                new BeamColumn(
                                        "m",
                                        "A",
                                        "B",
                                        STEEL,
                                        taper,
                                        Orientation.USUAL,
                                        Vector.ZERO,
                                        Vector.ZERO,
                                        EndConnection.RIGID,
                                        EndConnection.RIGID))
                        .fix("A")
                        .build();
        LoadCase loads =
                LoadCase.of(
                        "P",
                        new SelfWeight(new Vector(0, 0, -9.81), List.of()),
                        NodalLoad.force("B", 1e3, 2e3, -1e5));
        double[] found = new double[4];
        for (int k = 0; k < 4; k++) {
            found[k] =
                    SecondOrderAnalysis.of(model)
                            .divided(8 << k)
                            .solve(loads)
                            .movement("B")
                            .translation()
                            .y();
        }
        assertEquals(4, (found[0] - found[1]) / (found[1] - found[2]), 0.3);
        assertEquals(4, (found[1] - found[2]) / (found[2] - found[3]), 0.1);
    }

    @Test
    void aSlackStayIsLeftOut() {
        FrameModelBuilder builder =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, 10)
                        .node("C", -6, 0, 0)
                        .node("D", 6, 0, 0)
                        .add(BeamColumn.of("mast", "A", "B", STEEL, SECTION))
                        .pin("A")
                        .pin("C")
                        .pin("D");
        Section rope = Section.slender("rope", 1e-4, 1, 1, 1);
        for (String foot : List.of("C", "D")) {
            builder.add(
                    Bar.of("stay " + foot, foot, "B", STEEL, rope).carrying(Bar.Carries.TENSION));
        }
        FrameSolution solution =
                SecondOrderAnalysis.of(builder.build())
                        .solve(LoadCase.of("wind", NodalLoad.force("B", 1e4, 0, -1e4)));
        assertTrue(solution.carries("stay C"));
        assertFalse(solution.carries("stay D"));
        // Equilibrium on the turned chords, by hand: the stay pulls the head back.
        double moved = solution.movement("B").translation().x();
        double sink = solution.movement("B").translation().z();
        double tension = solution.member("stay C").at(0).axial();
        double mast = solution.member("mast").at(5).axial();
        double stay = Math.hypot(6, 10);
        Vector turn = new Vector(moved * 10 - sink * 6, 0, 0).times(1 / (stay * stay));
        double level = tension * (6 / stay + turn.x() * 10 / stay) + mast * moved / 10;
        assertEquals(1e4, level, 1e-3);
    }

    @Test
    void ratiosOutOfRangeAreRefused() {
        String message =
                assertThrows(IllegalArgumentException.class, () -> StabilityFunctions.of(4))
                        .getMessage();
        assertTrue(message.startsWith("ratio of axial force to Euler's is 4.0"), message);
    }

    @Test
    void solutionsCannotBeAddedUp() {
        SecondOrderAnalysis analysis = SecondOrderAnalysis.of(portal(0));
        FrameSolution one = analysis.solve(loads(0, 0.5));
        FrameSolution two = analysis.solve(new LoadCase("Q", loads(0, 0.1).loads()));
        assertThrows(
                IllegalArgumentException.class, () -> Superposition.requireSameModel(one, two));
    }
}
