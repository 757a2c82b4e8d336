package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Motions with sliding bearings and stops: closed forms, order, balance of energy. */
class LocalMotionTest {

    private static final double TWO_PI = 2 * StrictMath.PI;

    /** One mass free in two directions, with a spring in each. */
    private static ReducedModel mass(double mass, double kx, double ky) {
        return ReducedModel.of(
                SymmetricMatrix.ofDiagonal(new double[] {kx, ky}),
                SymmetricMatrix.ofDiagonal(new double[] {mass, mass}),
                new double[][] {{1, 0}, {0, 1}});
    }

    private static LocalMotion.Attachment attached(LocalElement element) {
        return new LocalMotion.Attachment(
                element, List.of(new double[] {1, 0}, new double[] {0, 1}));
    }

    private static double[] history(double step, double length, double amplitude, double period) {
        double[] history = new double[(int) Math.round(length / step) + 1];
        Arrays.setAll(history, n -> amplitude * StrictMath.sin(TWO_PI * n * step / period));
        return history;
    }

    private static LocalHistory shaken(double step, double stick, double damping) {
        LocalMotion motion =
                new LocalMotion(
                        mass(1000, 2000, 3000),
                        new double[] {damping, damping},
                        List.of(attached(new SlidingBearing(500, stick, 1500))),
                        step);
        return motion.run(
                List.of(new double[] {-1000, 0}, new double[] {0, -1000}),
                List.of(history(step, 6, 2.0, 1.3), history(step, 6, 1.5, 0.9)),
                Monitor.quiet());
    }

    @Test
    void slidingInTwoDirectionsIsOfSecondOrder() {
        LocalHistory fine = shaken(0.00025, 1e5, 0.02);
        double[] errors = new double[3];
        double[] steps = {0.008, 0.004, 0.002};
        for (int k = 0; k < 3; k++) {
            LocalHistory history = shaken(steps[k], 1e5, 0.02);
            int every = (int) Math.round(steps[k] / 0.00025);
            for (int d = 0; d < 2; d++) {
                double[] rough = history.displacement(0, d);
                double[] exact = fine.displacement(0, d);
                for (int n = 0; n < rough.length; n++) {
                    errors[k] = Math.max(errors[k], Math.abs(rough[n] - exact[n * every]));
                }
            }
        }
        double order = StrictMath.log(errors[0] / errors[2]) / StrictMath.log(4);
        assertTrue(order > 1.75 && order < 2.6, () -> order + " " + Arrays.toString(errors));
    }

    @Property(tries = 60)
    void energyBalances(
            @ForAll @DoubleRange(min = 1e4, max = 1e7) double stick,
            @ForAll @DoubleRange(min = 0, max = 0.2) double damping) {
        LocalHistory.Energy energy = shaken(0.005, stick, damping).energy();
        assertTrue(energy.imbalance() < 1e-3, energy::toString);
        assertTrue(energy.dissipated() > 0);
        assertTrue(energy.damped() >= 0);
    }

    /** What a bearing answers to a movement: its state then, its mean force, its force, its energy. */
    private static double[] answer(
            SlidingBearing bearing, double[] state, double[] from, double[] to) {
        double[] all = new double[7];
        double[] next = new double[2];
        double[] two = new double[2];
        bearing.follow(state, 0, from, to, 0, next, two);
        System.arraycopy(next, 0, all, 0, 2);
        System.arraycopy(two, 0, all, 2, 2);
        bearing.force(next, 0, to, 0, two);
        System.arraycopy(two, 0, all, 4, 2);
        all[6] = bearing.stored(next, 0, to, 0);
        return all;
    }

    private static double[] turned(double angle, double[] v) {
        double[] turned = v.clone();
        for (int i = 0; i + 1 < v.length; i += 2) {
            turned[i] = StrictMath.cos(angle) * v[i] - StrictMath.sin(angle) * v[i + 1];
            turned[i + 1] = StrictMath.sin(angle) * v[i] + StrictMath.cos(angle) * v[i + 1];
        }
        return turned;
    }

    @Property(tries = 200)
    void aBearingSlidesAlikeInAllDirections(
            @ForAll @DoubleRange(min = 0, max = 6.28) double angle,
            @ForAll @DoubleRange(min = -1, max = 1) double tx,
            @ForAll @DoubleRange(min = -0.02, max = 0.02) double dx,
            @ForAll @DoubleRange(min = -0.02, max = 0.02) double dy) {
        SlidingBearing bearing = new SlidingBearing(500, 1e5, 1500);
        double[] state = {400 * tx, 250};
        double[] from = {0.03, -0.05};
        double[] to = {0.03 + dx, -0.05 + dy};
        double[] expected = turned(angle, answer(bearing, state, from, to));
        double[] found =
                answer(bearing, turned(angle, state), turned(angle, from), turned(angle, to));
        for (int i = 0; i < 7; i++) {
            assertEquals(expected[i], found[i], 1e-9 * (i < 6 ? 500 : Math.abs(expected[6])));
        }
    }

    @Test
    void aStuckBearingIsASpringBesideThePull() {
        SlidingBearing bearing = new SlidingBearing(500, 1e5, 1500);
        double[] found =
                answer(
                        bearing,
                        new double[] {100, -50},
                        new double[] {0.03, -0.05},
                        new double[] {0.031, -0.052});
        // t − k₀Δd; its mean less N/R times the mean place; with N/R d; t²/2k₀ + (N/R) d²/2.
        double[] expected = {
            0,
            150,
            50 - 1500 * 0.0305,
            50 + 1500 * 0.051,
            -1500 * 0.031,
            150 + 1500 * 0.052,
            150 * 150 / 2e5 + 750 * (0.031 * 0.031 + 0.052 * 0.052)
        };
        for (int i = 0; i < 7; i++) {
            assertEquals(expected[i], found[i], 1e-9);
        }
    }

    @Test
    void whatDoesNotBalanceIsMeasuredAgainstTheLargestPart() {
        // 5 + 20 − 8 − 3 − 40 − 1 = −27, against 40.
        assertEquals(27.0 / 40, new LocalHistory.Energy(5, 20, 8, 3, 40, 1).imbalance(), 1e-15);
        // 2 − 30 − 1 − 4 − 5 + 6 = −32, against 30.
        assertEquals(32.0 / 30, new LocalHistory.Energy(2, -30, 1, 4, 5, -6).imbalance(), 1e-15);
        // Each of the others as the largest.
        assertEquals(44.0 / 50, new LocalHistory.Energy(50, 0, 1, 2, 3, 0).imbalance(), 1e-15);
        assertEquals(44.0 / 50, new LocalHistory.Energy(7, 0, 50, 1, 0, 0).imbalance(), 1e-15);
        assertEquals(44.0 / 50, new LocalHistory.Energy(7, 0, 1, 50, 0, 0).imbalance(), 1e-15);
        assertEquals(44.0 / 50, new LocalHistory.Energy(7, 0, 1, 0, 0, 50).imbalance(), 1e-15);
        assertEquals(0, new LocalHistory.Energy(0, 0, 0, 0, 0, 0).imbalance());
    }

    @Test
    void bearingsOfMassesThatDoNotMeetMoveAsAlone() {
        int count = 3;
        double step = 0.01;
        double[] diagonal = new double[2 * count];
        double[] masses = new double[2 * count];
        double[][] shapes = new double[2 * count][2 * count];
        List<LocalMotion.Attachment> all = new ArrayList<>();
        double[][] loads = new double[2][2 * count];
        for (int i = 0; i < count; i++) {
            for (int d = 0; d < 2; d++) {
                int at = 2 * i + d;
                diagonal[at] = (d == 0 ? 2000 : 3000) * (i + 1);
                masses[at] = 1000;
                shapes[at][at] = 1;
                loads[d][at] = -1000;
            }
            all.add(
                    new LocalMotion.Attachment(
                            new SlidingBearing(500 - 100 * i, 1e5, 1500),
                            List.of(shapes[2 * i], shapes[2 * i + 1])));
        }
        double[] damping = new double[2 * count];
        Arrays.fill(damping, 0.02);
        List<double[]> records = List.of(history(step, 6, 2.0, 1.3), history(step, 6, 1.5, 0.9));
        LocalHistory together =
                new LocalMotion(
                                ReducedModel.of(
                                        SymmetricMatrix.ofDiagonal(diagonal),
                                        SymmetricMatrix.ofDiagonal(masses),
                                        shapes),
                                damping,
                                all,
                                step)
                        .run(List.of(loads), records, Monitor.quiet());
        for (int i = 0; i < count; i++) {
            LocalHistory alone =
                    new LocalMotion(
                                    mass(1000, 2000 * (i + 1), 3000 * (i + 1)),
                                    new double[] {0.02, 0.02},
                                    List.of(attached(new SlidingBearing(500 - 100 * i, 1e5, 1500))),
                                    step)
                            .run(
                                    List.of(new double[] {-1000, 0}, new double[] {0, -1000}),
                                    records,
                                    Monitor.quiet());
            for (int d = 0; d < 2; d++) {
                double[] expected = alone.displacement(0, d);
                double[] found = together.displacement(i, d);
                for (int n = 0; n < expected.length; n++) {
                    assertEquals(expected[n], found[n], 1e-8);
                }
            }
        }
    }

    @Test
    void frictionNeverExceedsItsLimit() {
        LocalHistory history = shaken(0.005, 1e6, 0);
        double most = 0;
        for (int n = 0; n < history.displacement(0, 0).length; n++) {
            double x = history.force(0, 0)[n] + 1500 * history.displacement(0, 0)[n];
            double y = history.force(0, 1)[n] + 1500 * history.displacement(0, 1)[n];
            most = Math.max(most, Math.sqrt(x * x + y * y));
        }
        assertEquals(500, most, 1e-9);
    }

    @Test
    void freeVibrationLosesFourTimesFrictionOverStiffnessACycle() {
        // Coulomb's friction: turning points at x − 2F/k, x − 4F/k … (J. P. Den Hartog, Mechanical
        // vibrations, 4th ed. 1956, section 8.6; recomputed).
        double friction = 10;
        double k = 1000;
        LocalMotion motion =
                new LocalMotion(
                        mass(10, k, k),
                        new double[2],
                        List.of(attached(new SlidingBearing(friction, 1e7, 0))),
                        0.001);
        double scale = Math.sqrt(10);
        LocalHistory history =
                motion.run(
                        List.of(new double[2]),
                        List.of(new double[1400]),
                        new double[] {0.1 * scale, 0},
                        new double[2],
                        Monitor.quiet());
        double[] x = history.displacement(0, 0);
        double[] turns = new double[4];
        int found = 0;
        for (int n = 1; n + 1 < x.length && found < 4; n++) {
            if ((x[n] - x[n - 1]) * (x[n + 1] - x[n]) < 0) {
                turns[found++] = x[n];
            }
        }
        assertEquals(4, found);
        double sign = Math.signum(x[0]);
        for (int i = 0; i < 4; i++) {
            double wanted = (0.1 - 2 * (i + 1) * friction / k) * (i % 2 == 0 ? -1 : 1);
            assertEquals(wanted, sign * turns[i], 2e-5);
        }
    }

    @Test
    void aPulledBlockSlidesByTheForceLeft() {
        LocalMotion motion =
                new LocalMotion(
                        mass(2, 0, 0),
                        new double[2],
                        List.of(attached(new SlidingBearing(3, 1e9, 0))),
                        0.01);
        double[] pull = new double[201];
        Arrays.fill(pull, 5);
        LocalHistory history =
                motion.run(List.of(new double[] {0.6, 0.8}), List.of(pull), Monitor.quiet());
        // (5 − 3)/2 along the pull for 2 s, less the elastic start of about 1e-9 m.
        assertEquals(0.6 * 2, history.displacement(0, 0)[200], 1e-6);
        assertEquals(0.8 * 2, history.displacement(0, 1)[200], 1e-6);
        assertEquals(5 * 2.0, history.energy().input(), 1e-5);
        assertEquals(3 * 2.0, history.energy().dissipated(), 1e-5);
        assertEquals(4.0, history.energy().mechanical(), 1e-5);
    }

    @Test
    void aBearingThatNeverSlidesIsASpring() {
        double step = 0.001;
        LocalMotion motion =
                new LocalMotion(
                        mass(4, 100, 100),
                        new double[2],
                        List.of(attached(new SlidingBearing(1e12, 200, 100))),
                        step);
        double[] pull = new double[2001];
        Arrays.fill(pull, 1);
        LocalHistory history =
                motion.run(List.of(new double[] {1, 0}), List.of(pull), Monitor.quiet());
        for (int n = 0; n <= 2000; n += 100) {
            double wanted = (1 - StrictMath.cos(10 * n * step)) / 400;
            assertEquals(wanted, history.displacement(0, 0)[n], 1e-5 / 400 * 20);
        }
    }

    @Test
    void aStopTakesNoEnergy() {
        ReducedModel model = mass(1, 40, 1);
        LocalMotion.Attachment stop =
                new LocalMotion.Attachment(new Gap(0.05, 4000), List.of(new double[] {1, 0}));
        LocalMotion motion = new LocalMotion(model, new double[2], List.of(stop), 0.002);
        double[] start = {0, 0};
        double[] velocity = {0, 0};
        int fast = model.circularFrequencies()[0] > 2 ? 0 : 1;
        velocity[fast] = model.shape(fast)[0] * 1.5;
        LocalHistory history =
                motion.run(
                        List.of(new double[2]),
                        List.of(new double[4001]),
                        start,
                        velocity,
                        Monitor.quiet());
        double[] d = history.displacement(0, 0);
        // Half a wave pressed in: ½v² = ½·40·d² + ½·4000(d − 0.05)², solved for d.
        double a = 4040;
        double b = -4000 * 0.05 * 2;
        double c = 4000 * 0.05 * 0.05 - 1.5 * 1.5;
        double deepest = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
        assertEquals(deepest, Arrays.stream(d).max().orElseThrow(), 1e-4);
        assertEquals(0, history.energy().dissipated(), 1e-9);
        assertTrue(history.energy().imbalance() < 1e-8, history.energy()::toString);
    }

    @Test
    void stiffElementsNeedNewtonAndStillBalance() {
        LocalHistory.Energy energy = shaken(0.02, 3e8, 0.05).energy();
        assertTrue(energy.imbalance() < 1e-3, energy::toString);
    }

    @Test
    void anElementWithoutAnAnswerThrows() {
        LocalElement broken =
                new LocalElement() {
                    @Override
                    public int directions() {
                        return 1;
                    }

                    @Override
                    public int stateSize() {
                        return 0;
                    }

                    @Override
                    public void follow(
                            double[] state,
                            int stateAt,
                            double[] from,
                            double[] to,
                            int at,
                            double[] next,
                            double[] mean) {
                        mean[at] = Double.NaN;
                    }

                    @Override
                    public void force(
                            double[] state, int stateAt, double[] d, int at, double[] force) {
                        force[at] = 0;
                    }

                    @Override
                    public double stored(double[] state, int stateAt, double[] d, int at) {
                        return 0;
                    }
                };
        LocalMotion motion =
                new LocalMotion(
                        mass(1, 1, 1),
                        new double[2],
                        List.of(new LocalMotion.Attachment(broken, List.of(new double[] {1, 0}))),
                        0.01);
        assertThrows(
                NotConvergedException.class,
                () ->
                        motion.run(
                                List.of(new double[] {1, 0}),
                                List.of(new double[] {0, 1}),
                                Monitor.quiet()));
    }
}
