package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Results are the same to the last bit on every machine and release of Java; these were kept once. */
class SameBitsTest {

    private static final long SOLUTION = -5756510152705520508L;
    private static final long MODES = 5373149025535421737L;
    private static final long MOTION = 4251412331339293159L;

    private final SymmetricMatrix stiffness = RandomMatrices.grid(40, 37);

    private static long bits(double[] values) {
        long hash = 1;
        for (double value : values) {
            hash = 31 * hash + Double.doubleToLongBits(value);
        }
        return hash;
    }

    private SymmetricMatrix mass() {
        double[] mass = new double[stiffness.order()];
        Arrays.setAll(mass, i -> i % 4 == 3 ? 0 : 1 + 0.1 * (i % 7));
        return SymmetricMatrix.ofDiagonal(mass);
    }

    @Test
    void solutionsAreTheSame() {
        double[] x = Factorization.of(stiffness).solve(RandomMatrices.vector(5, stiffness.order()));
        assertEquals(SOLUTION, bits(x));
    }

    @Test
    void modesAreTheSame() {
        Eigenpairs modes = Eigenproblem.vibration(stiffness, mass(), 6, Monitor.quiet());
        assertEquals(MODES, 31 * bits(modes.values()) + bits(modes.vector(5)));
    }

    @Test
    void motionsAreTheSame() {
        ReducedModel model =
                ReducedModel.of(Eigenproblem.vibration(stiffness, mass(), 6, Monitor.quiet()));
        double[] x = new double[stiffness.order()];
        double[] y = new double[stiffness.order()];
        x[200] = 1;
        y[720] = 1;
        double[] damping = new double[6];
        Arrays.fill(damping, 0.02);
        LocalMotion motion =
                new LocalMotion(
                        model,
                        damping,
                        List.of(
                                new LocalMotion.Attachment(
                                        new SlidingBearing(0.02, 5, 0.1), List.of(x, y))),
                        0.05);
        double[] push = new double[400];
        Arrays.setAll(push, n -> StrictMath.sin(0.03 * n) * StrictMath.sin(0.21 * n));
        LocalHistory history = motion.run(List.of(x), List.of(push), Monitor.quiet());
        assertEquals(MOTION, bits(history.displacement(0, 1)));
    }
}
