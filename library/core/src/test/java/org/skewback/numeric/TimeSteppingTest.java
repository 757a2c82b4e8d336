package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** Stepping in time against closed forms and its own order, energy and spectral radius. */
class TimeSteppingTest {

    private static SymmetricMatrix diagonal(double... values) {
        return SymmetricMatrix.ofDiagonal(values);
    }

    /** The recurrence as published, for an underdamped oscillator of unit mass. */
    @Property
    void exactSteppingIsThePublishedRecurrence(
            @ForAll @DoubleRange(min = 0.5, max = 200) double w,
            @ForAll @DoubleRange(min = 0, max = 0.9) double z,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double h) {
        double root = Math.sqrt(1 - z * z);
        double wd = w * root;
        double k = w * w;
        double e = StrictMath.exp(-z * w * h);
        double sin = StrictMath.sin(wd * h);
        double cos = StrictMath.cos(wd * h);
        double a = e * (z / root * sin + cos);
        double b = e * sin / wd;
        double c =
                (2 * z / (w * h)
                                + e
                                        * (((1 - 2 * z * z) / (wd * h) - z / root) * sin
                                                - (1 + 2 * z / (w * h)) * cos))
                        / k;
        double d =
                (1
                                - 2 * z / (w * h)
                                + e * ((2 * z * z - 1) / (wd * h) * sin + 2 * z / (w * h) * cos))
                        / k;
        PiecewiseLinearStepping stepping = PiecewiseLinearStepping.ofRatio(w, z, h);
        double round = 1e-11;
        assertEquals(a, stepping.displacement(1, 0, 0, 0), round);
        assertEquals(b * w, stepping.displacement(0, w, 0, 0), round);
        assertEquals(c * k, stepping.displacement(0, 0, k, 0), 20 * round / (w * h));
        assertEquals(d * k, stepping.displacement(0, 0, 0, k), 20 * round / (w * h));
        assertEquals(-b * k / w, stepping.velocity(1 / w, 0, 0, 0), round);
        assertEquals(e * (cos - z / root * sin), stepping.velocity(0, 1, 0, 0), round);
    }

    @Test
    void theEquationOfMotionHoldsAtEveryStep() {
        double[] load = {3, -1, 4, 1, -5, 9};
        OscillatorResponse response =
                PiecewiseLinearStepping.of(2.5, 0.8, 30, 0.2).respond(load, 0.4, -1.1);
        assertEquals(0.4, response.displacement()[0]);
        assertEquals(-1.1, response.velocity()[0]);
        assertEquals(0.2, response.step());
        for (int n = 0; n < load.length; n++) {
            double left =
                    2.5 * response.acceleration()[n]
                            + 0.8 * response.velocity()[n]
                            + 30 * response.displacement()[n];
            assertEquals(load[n], left, 1e-12);
        }
    }

    @Test
    void overdampedCriticalAndFreeMotionsAreExact() {
        double h = 0.3;
        double[] none = new double[11];
        double w = 2;
        double[] critical =
                PiecewiseLinearStepping.ofRatio(w, 1, h).respond(none, 1, 0).displacement();
        double[] over = PiecewiseLinearStepping.ofRatio(w, 2, h).respond(none, 1, 0).displacement();
        double fast = -w * (2 + Math.sqrt(3));
        double slow = -w * (2 - Math.sqrt(3));
        double[] ramp = new double[11];
        Arrays.setAll(ramp, n -> 6 * n * h);
        OscillatorResponse free = PiecewiseLinearStepping.of(2, 0, 0, h).respond(ramp, 1, -2);
        for (int n = 0; n <= 10; n++) {
            double t = n * h;
            assertEquals((1 + w * t) * StrictMath.exp(-w * t), critical[n], 1e-13);
            double wanted =
                    (fast * StrictMath.exp(slow * t) - slow * StrictMath.exp(fast * t))
                            / (fast - slow);
            assertEquals(wanted, over[n], 1e-13);
            assertEquals(
                    1 - 2 * t + t * t * t / 2, free.displacement()[n], 1e-12 * (1 + t * t * t));
            assertEquals(-2 + 1.5 * t * t, free.velocity()[n], 1e-12 * (1 + t * t));
        }
        assertEquals(0, free.acceleration()[0]);
    }

    private static double[] direct(TimeScheme scheme, double h, int steps) {
        // Two masses on springs, pulled by a load that grows as t².
        SymmetricMatrix k = SymmetricMatrix.ofDense(new double[][] {{30, -10}, {-10, 10}});
        SymmetricMatrix c = SymmetricMatrix.ofDense(new double[][] {{0.6, -0.2}, {-0.2, 0.2}});
        DirectIntegration motion =
                new DirectIntegration(
                        k,
                        diagonal(2, 1),
                        c,
                        scheme,
                        h,
                        new double[] {0.1, -0.2},
                        new double[] {0, 1},
                        new double[2],
                        Monitor.quiet());
        for (int n = 1; n <= steps; n++) {
            double t = n * h;
            motion.advance(new double[] {t * t, 3 * t});
        }
        return motion.displacement();
    }

    @Property(tries = 30)
    void everySchemeIsOfSecondOrder(@ForAll @DoubleRange(min = -0.33, max = 0) double alpha) {
        for (TimeScheme scheme :
                new TimeScheme[] {
                    TimeScheme.averageAcceleration(),
                    TimeScheme.linearAcceleration(),
                    TimeScheme.hilberHughesTaylor(alpha)
                }) {
            double[] fine = direct(scheme, 1e-4, 20000);
            double[] half = direct(scheme, 0.002, 1000);
            double[] whole = direct(scheme, 0.004, 500);
            double ratio = Math.abs(whole[1] - fine[1]) / Math.abs(half[1] - fine[1]);
            assertEquals(4, ratio, 0.15, scheme.toString());
        }
    }

    @Test
    void averageAccelerationKeepsEnergyAndMasslessUnknownsFollow() {
        SymmetricMatrix k =
                SymmetricMatrix.ofDense(new double[][] {{8, -4, 0}, {-4, 6, -2}, {0, -2, 2}});
        // The middle unknown has no mass: it starts where the others hold it.
        double[] start = {1, (4 * 1 + 2 * 0.5) / 6, 0.5};
        DirectIntegration motion =
                new DirectIntegration(
                        k,
                        diagonal(1, 0, 2),
                        diagonal(0, 0, 0),
                        TimeScheme.averageAcceleration(),
                        0.05,
                        start,
                        new double[3],
                        new double[3],
                        Monitor.quiet());
        double energy = motion.energy();
        for (int n = 0; n < 500; n++) {
            motion.advance(new double[3]);
            double[] u = motion.displacement();
            assertEquals((4 * u[0] + 2 * u[2]) / 6, u[1], 1e-12);
        }
        assertEquals(energy, motion.energy(), 1e-11 * energy);
    }

    @Property(tries = 50)
    void fastModesAreDampedByThePublishedRadius(
            @ForAll @DoubleRange(min = -0.33, max = 0) double alpha) {
        // J. Chung and G. M. Hulbert, Journal of Applied Mechanics 60 (1993), 371–375: in this
        // family
        // −α = (1 − ρ)/(1 + ρ) for the radius ρ of infinitely fast modes.
        assertEquals(
                (1 + alpha) / (1 - alpha), radius(TimeScheme.hilberHughesTaylor(alpha), 1e5), 1e-4);
    }

    /** Spectral radius of one step of an oscillator of frequency 1, its states scaled by the step. */
    static double radius(TimeScheme scheme, double h) {
        double[][] amplification = new double[3][3];
        double alpha = scheme.alpha();
        for (int column = 0; column < 3; column++) {
            double u = column == 0 ? 1 : 0;
            double v = column == 1 ? 1 / h : 0;
            double a = column == 2 ? 1 / (h * h) : 0;
            // A load that gives the acceleration wanted at the start, then one that undoes it.
            double load = a + u;
            DirectIntegration motion =
                    new DirectIntegration(
                            diagonal(1),
                            diagonal(1),
                            diagonal(0),
                            scheme,
                            h,
                            new double[] {u},
                            new double[] {v},
                            new double[] {load},
                            Monitor.quiet());
            motion.advance(new double[] {alpha * load / (1 + alpha)});
            amplification[0][column] = motion.displacement()[0];
            amplification[1][column] = motion.velocity()[0] * h;
            amplification[2][column] = motion.acceleration()[0] * h * h;
        }
        EigenDecomposition found = new EigenDecomposition(new Array2DRowRealMatrix(amplification));
        double most = 0;
        for (int i = 0; i < 3; i++) {
            double re = found.getRealEigenvalue(i);
            double im = found.getImagEigenvalue(i);
            most = Math.max(most, Math.sqrt(re * re + im * im));
        }
        return most;
    }

    @Property(tries = 100)
    void condensedStructuresMoveAsWholeOnes(
            @ForAll long seed, @ForAll @IntRange(min = 4, max = 40) int order) {
        SymmetricMatrix k = RandomMatrices.definite(seed, order);
        double[] load = RandomMatrices.vector(seed, order);
        int[] kept = {order - 1, 1, 2};
        StaticCondensation condensed = StaticCondensation.of(k, kept, Monitor.quiet());
        double[] own =
                new LUDecomposition(new Array2DRowRealMatrix(condensed.stiffness()))
                        .getSolver()
                        .solve(
                                new org.apache.commons.math3.linear.ArrayRealVector(
                                        condensed.reduce(load)))
                        .toArray();
        double[] whole = Factorization.of(k).solve(load);
        assertArrayEquals(whole, condensed.expand(own, load), 1e-9 * Vectors.largest(whole));
        double[][] same = condensed.reduce(k);
        for (int a = 0; a < 3; a++) {
            assertArrayEquals(condensed.stiffness()[a], same[a], 1e-9 * k.norm());
        }
    }

    @Property(tries = 60)
    void aFullBasisGivesTheWholeStructureBack(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 15) int order) {
        SymmetricMatrix k = RandomMatrices.definite(seed, order);
        double[] masses = new double[order];
        Arrays.setAll(masses, i -> 1 + i % 3);
        SymmetricMatrix m = diagonal(masses);
        double[][] basis = new double[order][order];
        for (int i = 0; i < order; i++) {
            basis[i][i] = 2;
            basis[i][(i + 1) % order] += 0.5;
        }
        ReducedModel model = ReducedModel.of(k, m, basis);
        Eigenpairs modes = Eigenproblem.vibration(k, m, order, Monitor.quiet());
        for (int i = 0; i < order; i++) {
            double w = model.circularFrequencies()[i];
            assertEquals(modes.value(i), w * w, 1e-9 * k.norm());
            for (int j = 0; j < order; j++) {
                assertEquals(i == j ? 1 : 0, m.form(model.shape(i), model.shape(j)), 1e-10);
            }
        }
        double[] load = RandomMatrices.vector(seed, order);
        double[] q = model.reduce(load);
        for (int i = 0; i < order; i++) {
            q[i] /= model.circularFrequencies()[i] * model.circularFrequencies()[i];
        }
        double[] wanted = Factorization.of(k).solve(load);
        assertArrayEquals(wanted, model.expand(q), 1e-8 * Vectors.largest(wanted));
    }

    @Test
    void badStepsAreRefused() {
        IllegalArgumentException refused =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> PiecewiseLinearStepping.of(1, 0, 1, -0.1));
        assertTrue(refused.getMessage().contains("-0.1"));
        assertThrows(IllegalArgumentException.class, () -> TimeScheme.hilberHughesTaylor(-0.5));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        ReducedModel.of(
                                diagonal(1, 1), diagonal(1, 1), new double[][] {{1, 1}, {2, 2}}));
    }
}
