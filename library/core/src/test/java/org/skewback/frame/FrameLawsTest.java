package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** The laws of linear statics, on random space frames with every kind of member, joint and load. */
class FrameLawsTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section SECTION = Section.of("s", 0.02, 0.01, 0.012, 3e-4, 2e-4, 1e-4);

    /** A random frame, turned by a rotation: nodes, axes, offsets, supports. */
    private static FrameModel frame(long seed, Turn turn) {
        Random random = new Random(seed);
        FrameModelBuilder b = FrameModel.builder();
        int n = 6;
        for (int i = 0; i < n; i++) {
            Vector place = new Vector(5 * i + random.nextDouble(), spread(random), spread(random));
            b.node(new Node("n" + i, turn.of(place)));
            if (i > 0) {
                b.add(member("c" + i, i - 1, i, random, turn));
            }
        }
        for (int i = 2; i < n; i++) {
            b.add(member("x" + i, i - 2, i, random, turn));
        }
        b.add(Bar.of("bar", "n0", "n4", STEEL, SECTION));
        b.node(new Node("base", turn.of(new Vector(30, 2, -3))));
        b.add(
                new SpringLink(
                        "link",
                        "n5",
                        "base",
                        new EndConnection(1e7, 2e7, 3e7, 1e6, 2e6, 3e6),
                        turn.of(Vector.X),
                        turn.of(Vector.Z)));
        for (Vector axis : List.of(Vector.X, Vector.Y, Vector.Z)) {
            b.support(Support.along("n0", turn.of(axis)));
            b.support(Support.about("base", turn.of(axis)));
            b.support(Support.along("base", turn.of(axis)));
        }
        b.support(Support.along("n3", turn.of(new Vector(0.3, -0.5, 1))));
        b.support(new Support("n2", true, turn.of(new Vector(1, 1, 0)), 4e6));
        return b.build();
    }

    private static double spread(Random random) {
        return 4 * random.nextDouble() - 2;
    }

    private static BeamColumn member(String name, int from, int to, Random random, Turn turn) {
        SectionProfile profile =
                random.nextInt(3) == 0
                        ? SectionProfile.tapered(
                                new Rectangle(0.2, 0.3).section("a"),
                                new Rectangle(0.3, 0.5).section("b"))
                        : SectionProfile.uniform(SECTION);
        EndConnection end =
                switch (random.nextInt(4)) {
                    case 0 -> EndConnection.RIGID.released(Motion.ABOUT_Y);
                    case 1 -> EndConnection.RIGID.with(Motion.ABOUT_Z, 3e6);
                    default -> EndConnection.RIGID;
                };
        Vector arm =
                random.nextBoolean()
                        ? turn.of(new Vector(0.1, spread(random) / 10, 0.2))
                        : Vector.ZERO;
        return BeamColumn.of(name, "n" + from, "n" + to, STEEL, profile)
                .oriented(
                        new Orientation(
                                turn.of(new Vector(0.1, 0.2 * random.nextDouble(), 1)),
                                random.nextDouble()))
                .offset(arm, Vector.ZERO)
                .connected(EndConnection.RIGID, end);
    }

    private static List<Load> loads(long seed, Turn turn) {
        Random random = new Random(~seed);
        List<Load> loads = new ArrayList<>();
        loads.add(new SelfWeight(turn.of(new Vector(0, 0, -9.81)), List.of()));
        loads.add(new NodalLoad("n4", turn.of(vector(random, 1e4)), turn.of(vector(random, 1e4))));
        loads.add(
                new PointLoad(
                        "c2",
                        2 * random.nextDouble(),
                        turn.of(vector(random, 1e4)),
                        turn.of(vector(random, 1e3)),
                        LoadAxes.GLOBAL));
        loads.add(
                new LineLoad(
                        "x3",
                        1,
                        1 + 4 * random.nextDouble(),
                        turn.of(vector(random, 1e3)),
                        turn.of(vector(random, 1e3)),
                        LoadAxes.GLOBAL));
        Vector moment = vector(random, 1e3);
        loads.add(new LineMoment("c1", 0, 2, moment, moment, LoadAxes.LOCAL));
        loads.add(new Warming("c3", 30 * random.nextDouble(), 5, -8));
        loads.add(new LackOfFit("bar", 1e-3 * random.nextDouble()));
        loads.add(new InitialForce("c4", 1e4));
        loads.add(new Tendon("x4", 1e4, 0, 0.05, 0.02, -0.1, 0, 0.05));
        loads.add(new GroundMovement("n0", turn.of(vector(random, 1e-3)), Vector.ZERO));
        return loads;
    }

    private static Vector vector(Random random, double size) {
        return new Vector(
                        random.nextDouble() - 0.5,
                        random.nextDouble() - 0.5,
                        random.nextDouble() - 0.5)
                .times(size);
    }

    /** A rotation about a random axis (Rodrigues). */
    private record Turn(Vector axis, double angle) {

        static final Turn NONE = new Turn(Vector.Z, 0);

        static Turn random(long seed) {
            Random random = new Random(seed + 17);
            return new Turn(vector(random, 1).unit(), 6 * random.nextDouble());
        }

        Vector of(Vector v) {
            double c = Math.cos(angle);
            double s = Math.sin(angle);
            return v.times(c).plus(axis.cross(v).times(s)).plus(axis.times(axis.dot(v) * (1 - c)));
        }
    }

    @Property(tries = 40)
    void equilibriumAndEnergyBalance(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        FrameSolution solution =
                LinearAnalysis.of(frame(seed, Turn.NONE))
                        .solve(new LoadCase("q", loads(seed, Turn.NONE)));
        Equilibrium equilibrium = solution.equilibrium();
        assertTrue(equilibrium.residual() < 1e-9, "residual " + equilibrium.residual());
        assertEquals(0, equilibrium.force().length(), 1e-4);
        assertEquals(0, equilibrium.moment().length(), 1e-3);
        Energy energy = solution.energy();
        assertEquals(energy.strain(), energy.work(), 1e-7 * Math.abs(energy.strain()));
    }

    @Property(tries = 40)
    void turningModelLoadsAndGravityLeavesResultsAlone(
            @ForAll @LongRange(min = 0, max = 100_000) long seed) {
        Turn turn = Turn.random(seed);
        FrameSolution plain =
                LinearAnalysis.of(frame(seed, Turn.NONE))
                        .solve(new LoadCase("q", loads(seed, Turn.NONE)));
        FrameSolution turned =
                LinearAnalysis.of(frame(seed, turn)).solve(new LoadCase("q", loads(seed, turn)));
        Vector expected = turn.of(plain.movement("n4").translation());
        assertEquals(
                0,
                expected.minus(turned.movement("n4").translation()).length(),
                1e-8 * expected.length());
        for (String member : List.of("c2", "x3", "bar", "link", "x5")) {
            double x = plain.member(member).length() / 3;
            double[] a = plain.member(member).at(x).toArray();
            double[] b = turned.member(member).at(x).toArray();
            double scale = 1;
            for (double force : a) {
                scale = Math.max(scale, Math.abs(force));
            }
            if (member.equals("bar")) {
                // A bar has no direction across of its own: its shear turns with the usual axes.
                assertEquals(Math.hypot(a[1], a[2]), Math.hypot(b[1], b[2]), 1e-7 * scale);
            }
            for (int k = 0; k < (member.equals("bar") ? 1 : 6); k++) {
                assertEquals(a[k], b[k], 1e-7 * scale, member + " " + ForceComponent.at(k));
            }
        }
    }

    @Property(tries = 40)
    void whatOneForceDoesAtAnotherItDoesBack(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        LinearAnalysis analysis = LinearAnalysis.of(frame(seed, Turn.NONE));
        Random random = new Random(seed);
        Vector first = vector(random, 1e4);
        Vector second = vector(random, 1e4);
        FrameSolution one = analysis.solve(LoadCase.of("1", PointLoad.of("c1", 1.3, first)));
        FrameSolution two =
                analysis.solve(LoadCase.of("2", new NodalLoad("n4", Vector.ZERO, second)));
        double there = second.dot(one.movement("n4").rotation());
        double back = first.dot(two.member("c1").movement(1.3).translation());
        double scale =
                first.length() * two.member("c1").movement(1.3).translation().length()
                        + second.length() * one.movement("n4").rotation().length();
        assertEquals(there, back, 1e-9 * scale);
    }

    @Property(tries = 20)
    void effectsOfSumsAreSumsOfEffects(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        LinearAnalysis analysis = LinearAnalysis.of(frame(seed, Turn.NONE));
        List<Load> loads = loads(seed, Turn.NONE);
        List<Load> first = loads.subList(0, 5);
        List<Load> second = loads.subList(5, loads.size());
        SectionForces sum =
                analysis.solve(new LoadCase("1", first))
                        .member("x3")
                        .at(1.7)
                        .plus(1, analysis.solve(new LoadCase("2", second)).member("x3").at(1.7));
        SectionForces both = analysis.solve(new LoadCase("b", loads)).member("x3").at(1.7);
        double scale = Math.max(1, Math.abs(both.axial()) + Math.abs(both.momentY()));
        for (ForceComponent component : ForceComponent.values()) {
            assertEquals(sum.get(component), both.get(component), 1e-8 * scale);
        }
    }

    @Property(tries = 20)
    void dividingAMemberChangesNothing(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        double cut = 1 + 4 * new Random(seed).nextDouble();
        Material material = STEEL;
        FrameModelBuilder whole =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("C", 6, 1, 2)
                        .add(BeamColumn.of("m", "A", "C", material, SECTION))
                        .fix("A")
                        .hold("C", Motion.ALONG_Y, Motion.ALONG_Z);
        double length = Math.sqrt(41);
        FrameModelBuilder parts =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 6 * cut / length, cut / length, 2 * cut / length)
                        .node("C", 6, 1, 2)
                        .add(BeamColumn.of("ab", "A", "B", material, SECTION))
                        .add(BeamColumn.of("bc", "B", "C", material, SECTION))
                        .fix("A")
                        .hold("C", Motion.ALONG_Y, Motion.ALONG_Z);
        LoadCase weight = LoadCase.of("g", new SelfWeight(new Vector(1, -2, -9.81), List.of()));
        FrameSolution one = LinearAnalysis.of(whole.build()).solve(weight);
        FrameSolution two = LinearAnalysis.of(parts.build()).solve(weight);
        Vector expected = one.member("m").movement(cut).translation();
        assertEquals(
                0,
                expected.minus(two.movement("B").translation()).length(),
                1e-9 * expected.length());
        assertEquals(one.member("m").at(cut).momentY(), two.member("bc").start().momentY(), 1e-6);
    }

    @Property(tries = 5)
    void polygonConvergesToTheArcWithTheSquare(
            @ForAll @LongRange(min = 0, max = 100_000) long seed) {
        double radius = 10 + new Random(seed).nextInt(20);
        double[] errors = new double[3];
        // Quadrant fixed at one end, tangential force at the other: PR³(3π/4 − 2)/EI.
        double exact = 1e4 * radius * radius * radius * (0.75 * Math.PI - 2) / (200e9 * 2e-4);
        for (int level = 0; level < 3; level++) {
            int count = 10 << level;
            FrameModelBuilder b = FrameModel.builder().inPlane().fix("0");
            for (int i = 0; i <= count; i++) {
                double angle = Math.PI / 2 * i / count;
                b.node("" + i, radius * Math.sin(angle), 0, radius * Math.cos(angle));
                if (i > 0) {
                    b.add(
                            BeamColumn.of(
                                    "m" + i,
                                    "" + (i - 1),
                                    "" + i,
                                    STEEL,
                                    Section.slender("s", 2, 1, 2e-4, 1)));
                }
            }
            double found =
                    LinearAnalysis.of(b.build())
                            .solve(LoadCase.of("P", NodalLoad.force("" + count, 0, 0, 1e4)))
                            .movement("" + count)
                            .translation()
                            .z();
            errors[level] = Math.abs(found - exact);
        }
        assertEquals(4, errors[0] / errors[1], 0.2);
        assertEquals(4, errors[1] / errors[2], 0.2);
    }
}
