package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.numeric.Gap;
import org.skewback.numeric.LocalHistory;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.SlidingBearing;
import org.skewback.numeric.TimeScheme;
import org.skewback.steel.Section;

/** Proves laws of motion of frames under earthquakes, with and without bearings. */
class TimeHistoryAnalysisTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section SECTION = Section.of("s", 0.02, 0.01, 0.012, 3e-4, 2e-4, 1e-4);

    /** Two piers, and a deck that lies on them by springs or floats. */
    private static FrameModel bridge(boolean floating) {
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i < 2; i++) {
            double x = 30 * i;
            builder.node("f" + i, x, 0, 0)
                    .node("p" + i, x, 0, 8)
                    .node("d" + i, x, 0, 8)
                    .add(BeamColumn.of("pier" + i, "f" + i, "p" + i, STEEL, SECTION))
                    .fix("f" + i);
            // The deck is held up and level; bearings carry what runs level.
            double level = floating ? 0 : 4e6;
            builder.add(
                    SpringLink.of(
                            "bearing" + i,
                            "p" + i,
                            "d" + i,
                            new EndConnection(level, level, 1e9, 1e7, 0, 0)));
        }
        return builder.add(BeamColumn.of("deck", "d0", "d1", STEEL, SECTION)).build();
    }

    private static ModalAnalysis masses(boolean floating) {
        return ModalAnalysis.of(bridge(floating)).divided(2).with(new LineMass("deck", 2000));
    }

    private static double[] record(int size, double step, double size0, double rate) {
        double[] a = new double[size];
        for (int n = 0; n < size; n++) {
            double t = n * step;
            a[n] = size0 * Math.sin(rate * t) * Math.exp(-0.2 * t);
        }
        return a;
    }

    @Test
    void theOrderOfChoicesIsIndifferent() {
        GroundMotion motion = GroundMotion.along(0.01, Motion.ALONG_X, record(300, 0.01, 2, 5));
        NonlinearLink link =
                NonlinearLink.sliding("slide", "p0", "d0", new SlidingBearing(2e3, 1e6, 1e4));
        TimeHistoryAnalysis plain = TimeHistoryAnalysis.of(masses(false));
        FrameHistory one = plain.damped(0.2).with(link).modal(10, motion);
        FrameHistory other = plain.with(link).damped(0.2).modal(10, motion);
        assertArrayEquals(one.movement("p0", Motion.ALONG_X), other.movement("p0", Motion.ALONG_X));
        assertEquals(0.01, one.step());
    }

    @Test
    void allModesGiveWhatDirectSteppingGives() {
        double step = 0.002;
        GroundMotion motion =
                new GroundMotion(
                        step,
                        Map.of(
                                Motion.ALONG_X, record(1500, step, 2, 5),
                                Motion.ALONG_Y, record(1500, step, 1, 9)));
        TimeHistoryAnalysis analysis = TimeHistoryAnalysis.of(masses(false)).damped(0);
        FrameHistory modal = analysis.modal(40, motion);
        FrameHistory direct =
                analysis.direct(
                        motion,
                        TimeScheme.averageAcceleration(),
                        new RayleighDamping(0, 1, 10),
                        Monitor.quiet());
        double[] a = modal.movement("deck", 15, Motion.ALONG_Y);
        double[] b = direct.movement("deck", 15, Motion.ALONG_Y);
        assertArrayEquals(a, b, 0.02 * FrameHistory.largest(a));
        double[] m = modal.force("pier0", 0, ForceComponent.MOMENT_Y);
        double[] k = direct.force("pier0", 0, ForceComponent.MOMENT_Y);
        assertArrayEquals(m, k, 0.04 * FrameHistory.largest(m));
        double[] r = modal.reaction("f0", Motion.ALONG_X);
        double[] q = direct.reaction("f0", Motion.ALONG_X);
        assertArrayEquals(r, q, 0.04 * FrameHistory.largest(r));
        assertEquals(1500, direct.size());
    }

    /** Two masses on a mast without mass: F = m a of the lower, which goes with the ground. */
    @Test
    void onlyDirectSteppingCountsTheMassAtTheSupport() {
        double step = 0.001;
        double[] shaking = record(400, step, 3, 15);
        GroundMotion motion = GroundMotion.along(step, Motion.ALONG_X, shaking);
        double foot = 7e3;
        FrameModel mast =
                FrameModel.builder()
                        .inPlane()
                        .node("F", 0, 0, 0)
                        .node("H", 0, 0, 8)
                        .add(
                                BeamColumn.of(
                                        "mast",
                                        "F",
                                        "H",
                                        new Material("m", 200e9, 80e9, 0, 0),
                                        SECTION))
                        .fix("F")
                        .build();
        TimeHistoryAnalysis analysis =
                TimeHistoryAnalysis.of(
                                ModalAnalysis.of(mast)
                                        .divided(1)
                                        .with(NodalMass.of("H", 5e3), NodalMass.of("F", foot)))
                        .damped(0);
        double[] byModes = analysis.modal(2, motion).reaction("F", Motion.ALONG_X);
        double[] directly =
                analysis.direct(
                                motion,
                                TimeScheme.averageAcceleration(),
                                new RayleighDamping(0, 10, 100),
                                Monitor.quiet())
                        .reaction("F", Motion.ALONG_X);
        double largest = Arrays.stream(directly).map(Math::abs).max().orElseThrow();
        double[] sum = new double[byModes.length];
        for (int n = 0; n < sum.length; n++) {
            sum[n] = byModes[n] + foot * shaking[n];
        }
        assertArrayEquals(directly, sum, 1e-3 * largest);
        assertTrue(foot * Arrays.stream(shaking).max().orElseThrow() > 0.1 * largest);
    }

    @Test
    void inertiaDoesNotJumpWhereAMemberIsDivided() {
        double step = 0.01;
        GroundMotion motion =
                new GroundMotion(
                        step,
                        Map.of(
                                Motion.ALONG_X, record(300, step, 2, 5),
                                Motion.ALONG_Y, record(300, step, 1, 9),
                                Motion.ALONG_Z, record(300, step, 1, 7)));
        TimeHistoryAnalysis analysis = TimeHistoryAnalysis.of(masses(false)).damped(0);
        FrameHistory modal = analysis.modal(40, motion);
        FrameHistory direct =
                analysis.direct(
                        motion,
                        TimeScheme.averageAcceleration(),
                        new RayleighDamping(0, 1, 10),
                        Monitor.quiet());
        for (FrameHistory history : List.of(modal, direct)) {
            for (ForceComponent component : ForceComponent.values()) {
                double[] before = history.force("pier0", 4 - 1e-9, component);
                double[] after = history.force("pier0", 4, component);
                double allowed = 1e-6 * FrameHistory.largest(after) + 1e-3;
                assertArrayEquals(before, after, allowed, component.name());
            }
        }
    }

    @Test
    void supportsThatMoveTogetherMoveAsTheGround() {
        double step = 0.01;
        double[] shaking = record(600, step, 2, 4);
        TimeHistoryAnalysis analysis = TimeHistoryAnalysis.of(masses(false));
        double[] against =
                analysis.modal(20, GroundMotion.along(step, Motion.ALONG_X, shaking))
                        .movement("d1", Motion.ALONG_X);
        FrameHistory together =
                analysis.modal(
                        20,
                        step,
                        List.of(new SupportMotion(List.of("f0", "f1"), Motion.ALONG_X, shaking)),
                        Monitor.quiet());
        double[] absolute = together.movement("d1", Motion.ALONG_X);
        double[] ground = together.movement("f0", Motion.ALONG_X);
        for (int n = 0; n < absolute.length; n++) {
            assertEquals(absolute[n], against[n] + ground[n], 1e-9);
        }
    }

    @Test
    void aSupportThatMovesSlowlyBendsAsItsSettlementDoes() {
        double step = 0.02;
        int size = 2001;
        // Moves by 1 mm and stops: accelerated for half of the time, braked for the other.
        double[] record = new double[size];
        double time = (size - 1) * step;
        double peak = 0.001 * 2 * Math.PI / (time * time);
        for (int n = 0; n < size; n++) {
            record[n] = peak * Math.sin(2 * Math.PI * n / (size - 1));
        }
        FrameHistory history =
                TimeHistoryAnalysis.of(masses(false))
                        .damped(0.1)
                        .modal(
                                20,
                                step,
                                List.of(new SupportMotion(List.of("f1"), Motion.ALONG_X, record)),
                                Monitor.quiet());
        double[] moved = history.movement("f1", Motion.ALONG_X);
        double end = moved[size - 1];
        assertEquals(0.001, end, 1e-6);
        double expected =
                LinearAnalysis.of(bridge(false))
                        .solve(
                                LoadCase.of(
                                        "settle",
                                        new GroundMovement(
                                                "f1", new Vector(end, 0, 0), Vector.ZERO)))
                        .member("pier0")
                        .at(0)
                        .momentY();
        double[] moment = history.force("pier0", 0, ForceComponent.MOMENT_Y);
        assertEquals(expected, moment[size - 1], 0.01 * Math.abs(expected));
    }

    @Property(tries = 5)
    void energyIsAccountedForWhereBearingsSlideAndStopsHit(
            @ForAll @DoubleRange(min = 0.5, max = 4) double size,
            @ForAll @DoubleRange(min = 2, max = 9) double rate,
            @ForAll @DoubleRange(min = 0.02, max = 0.1) double friction) {
        double weight = 30 * 2000 * 9.81 / 2;
        SlidingBearing bearing = new SlidingBearing(friction * weight, 2e7, weight / 2.5);
        TimeHistoryAnalysis analysis =
                TimeHistoryAnalysis.of(masses(true))
                        .damped(0.02)
                        .with(
                                NonlinearLink.sliding("b0", "p0", "d0", bearing),
                                NonlinearLink.sliding("b1", "p1", "d1", bearing),
                                NonlinearLink.stop(
                                        "stop", "p1", "d1", Vector.X, new Gap(0.02, 5e6)));
        FrameHistory history =
                analysis.modal(
                        10,
                        new GroundMotion(
                                0.001,
                                Map.of(
                                        Motion.ALONG_X, record(4000, 0.001, size, rate),
                                        Motion.ALONG_Y,
                                                record(4000, 0.001, 0.6 * size, 1.3 * rate))));
        LocalHistory.Energy energy = history.energy();
        assertTrue(energy.imbalance() < 1e-3, energy.toString());
        assertTrue(energy.dissipated() >= -1e-9 * energy.input(), energy.toString());
        // Friction and pull stay within what the bearing can do, and the deck is what they hold.
        double[] x = history.linkForce("b0", 0);
        double[] d = history.linkMovement("b0", 0);
        for (int n = 0; n < x.length; n += 50) {
            assertTrue(
                    Math.abs(x[n] + weight / 2.5 * d[n]) <= friction * weight * (1 + 1e-6),
                    "at " + n);
        }
        double[] deck = history.movement("d0", Motion.ALONG_X);
        double[] pier = history.movement("p0", Motion.ALONG_X);
        for (int n = 0; n < x.length; n += 50) {
            assertEquals(d[n], deck[n] - pier[n], 1e-9);
        }
    }

    @Test
    void aDeckThatFloatsSlidesWhenTheGroundPullsHarderThanFriction() {
        double weight = 30 * (2000 + 160.0) * 9.81 / 2;
        SlidingBearing bearing = new SlidingBearing(0.05 * weight, 1e8, 0);
        double step = 0.001;
        double[] record = new double[1001];
        Arrays.fill(record, 1.5);
        FrameModelBuilder rigid = FrameModel.builder();
        for (int i = 0; i < 2; i++) {
            rigid.node("g" + i, 30 * i, 0, 0)
                    .node("d" + i, 30 * i, 0, 1)
                    .hold("d" + i, Motion.ALONG_Z, Motion.ABOUT_X)
                    .fix("g" + i);
        }
        Section deck = Section.slender("s", 0.02, 3e-2, 2e-2, 1e-1);
        rigid.add(BeamColumn.of("deck", "d0", "d1", STEEL, deck));
        FrameHistory history =
                TimeHistoryAnalysis.of(
                                ModalAnalysis.of(rigid.build())
                                        .divided(2)
                                        .with(new LineMass("deck", 2000)))
                        .damped(0.2)
                        .with(
                                NonlinearLink.sliding("b0", "g0", "d0", bearing),
                                NonlinearLink.sliding("b1", "g1", "d1", bearing))
                        .modal(4, GroundMotion.along(step, Motion.ALONG_X, record));
        // A rigid body, first on springs until friction is reached, then on friction: a − μg is
        // constant.
        double mass = weight * 2 / 9.81;
        double omega = Math.sqrt(2e8 / mass);
        double yield = 0.05 * weight / 1e8;
        double begin = Math.acos(1 - omega * omega * yield / 1.5) / omega;
        double speed = 1.5 / omega * Math.sin(omega * begin);
        double time = 1000 * step - begin;
        double expected = -(yield + speed * time + (1.5 - 0.05 * 9.81) * time * time / 2);
        double[] moved = history.movement("d0", Motion.ALONG_X);
        assertEquals(expected, moved[1000], 1e-3 * Math.abs(expected));
    }

    @Test
    void badQuestionsAreRefused() {
        TimeHistoryAnalysis analysis = TimeHistoryAnalysis.of(masses(false));
        NonlinearLink held = NonlinearLink.stop("s", "f0", "f1", Vector.X, new Gap(0.01, 1e6));
        GroundMotion motion = GroundMotion.along(0.01, Motion.ALONG_X, 0, 1, 0);
        assertEquals(
                "link s follows what supports hold; allowed are nodes that move.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> analysis.with(held).modal(2, motion))
                        .getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> new GroundMotion(0.01, Map.of(Motion.ABOUT_X, new double[] {0, 1})));
        assertThrows(
                IllegalArgumentException.class, () -> GroundMotion.along(0.01, Motion.ALONG_X, 1));
        FrameHistory history = analysis.modal(3, motion);
        assertThrows(IllegalArgumentException.class, () -> history.linkForce("none", 0));
        assertThrows(IllegalArgumentException.class, () -> history.reaction("d0", Motion.ALONG_X));
    }
}
