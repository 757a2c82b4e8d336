package org.skewback.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The normal distribution and its random numbers, against mpmath 1.4.1 and against laws. */
class StandardNormalTest {

    private static final int MANY = 4_000_000;

    /** Values of mpmath 1.4.1, erfc(−z/√2)/2 with 30 digits. */
    @ParameterizedTest
    @CsvSource({
        "-1, 0.15865525393145707",
        "-3.68552, 0.00011411807853517201",
        "-8, 6.2209605742717841e-16",
        "-20, 2.7536241186062337e-89"
    })
    void shareBelow(double z, double expected) {
        assertEquals(expected, StandardNormal.below(z), 2e-13 * expected);
    }

    /** Values of mpmath 1.4.1, findroot of ln Φ(z) = ln p with 30 digits. */
    @ParameterizedTest
    @CsvSource({
        "0.3, -0.52440051270804078",
        "0.05, -1.6448536269514727",
        "1e-4, -3.7190164854556806",
        "1e-10, -6.3613409024040562",
        "1e-40, -13.310921371425171",
        "1e-300, -37.047096299361199"
    })
    void inverse(double p, double expected) {
        assertEquals(expected, StandardNormal.inverse(p), 5e-16 * Math.abs(expected) * 4);
        assertEquals(-expected, StandardNormal.inverse(1, p), 5e-16 * Math.abs(expected) * 4);
    }

    @Test
    void theInverseUndoesTheShareOnBothSides() {
        for (double z = -9; z <= 9; z += 0.0625) {
            double back = StandardNormal.inverse(StandardNormal.below(z), StandardNormal.below(-z));
            assertEquals(z, back, 1e-12 * Math.max(1, Math.abs(z)));
        }
    }

    /** The last layer but one must meet the top of the density, 1, or the areas are not equal. */
    @Test
    void theLayersCloseAtTheTop() {
        double[] width = Draws.widths();
        double area = width[0] * StrictMath.exp(-0.5 * Draws.EDGE * Draws.EDGE);
        double last = width[width.length - 2];
        assertEquals(1, area / last + StrictMath.exp(-0.5 * last * last), 1e-12);
    }

    private static Draws draws(long seed) {
        return new Draws(
                RandomGeneratorFactory.<RandomGenerator>of("Xoshiro256PlusPlus").create(seed));
    }

    /** Shares of classes as wide as half a deviation, each within 5 standard errors. */
    @Test
    void normalNumbersSpreadAsTheyShould() {
        Draws draws = draws(3);
        int classes = 20;
        int middle = 10;
        double[] counts = new double[classes];
        double sum = 0;
        double fourth = 0;
        for (int i = 0; i < MANY; i++) {
            double z = draws.normal();
            counts[(int) Math.max(0, Math.min(classes - 1, Math.floor(2 * z) + middle))]++;
            sum += z;
            fourth += z * z * z * z;
        }
        for (int k = 0; k < classes; k++) {
            double from = k == 0 ? -40 : (k - middle) / 2.0;
            double to = k == classes - 1 ? 40 : (k + 1 - middle) / 2.0;
            double share = StandardNormal.below(to) - StandardNormal.below(from);
            double error = Math.sqrt(share * (1 - share) / MANY);
            assertEquals(share, counts[k] / MANY, 5 * error, "class " + k);
        }
        assertEquals(0, sum / MANY, 5 / Math.sqrt(MANY));
        assertEquals(3, fourth / MANY, 5 * Math.sqrt(96.0 / MANY));
    }

    /** The tail beyond the last layer has a method of its own. */
    @Test
    void theFarTailHasItsShare() {
        Draws draws = draws(5);
        int beyond = 0;
        int farther = 0;
        for (int i = 0; i < MANY; i++) {
            double z = draws.normal();
            beyond += z > Draws.EDGE ? 1 : 0;
            farther += z > 4 ? 1 : 0;
        }
        double share = MANY * StandardNormal.below(-Draws.EDGE);
        assertEquals(share, beyond, 5 * Math.sqrt(share));
        double far = MANY * StandardNormal.below(-4);
        assertEquals(far, farther, 5 * Math.sqrt(far));
    }

    /** What a study gave must come again on every edition of Java, so these are held fast. */
    @Test
    void aSeedGivesTheSameNumbersOnEveryEditionOfJava() {
        Draws draws = draws(1);
        double sum = 0;
        for (int i = 0; i < 100_000; i++) {
            sum += draws.normal() + draws.uniform();
        }
        assertEquals(GOLDEN, sum);
    }

    private static final double GOLDEN = 50303.73343514457;
}
