package org.skewback.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.study.Refused.refused;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.skewback.quantity.Quantity;

/** Distributions: laws that hold for each, closed forms, and what is refused. */
class DistributionTest {

    private static Quantity q(double value, String unit) {
        return Quantity.of(value, unit);
    }

    static Stream<Distribution> all() {
        return Stream.of(
                Distribution.normal(q(25, "kPa"), q(5, "kPa")),
                Distribution.normal(q(10, "°C"), q(8, "K")),
                Distribution.lognormal(q(25, "kPa"), q(0.4, "")),
                Distribution.truncatedNormal(q(35, "°"), q(5, "°"), q(15, "°"), q(70, "°")),
                Distribution.truncatedNormal(q(0, "m"), q(1, "m"), q(1.5, "m"), q(4, "m")),
                Distribution.truncatedNormal(q(0, "m"), q(1, "m"), q(-6, "m"), q(-2, "m")),
                Distribution.uniform(q(1, "m"), q(4, "m")),
                Distribution.triangular(q(1, "m"), q(1.5, "m"), q(4, "m")),
                Distribution.triangular(q(1, "m"), q(1, "m"), q(4, "m")),
                Distribution.triangular(q(1, "m"), q(4, "m"), q(4, "m")),
                Distribution.truncatedExponential(q(0.5, ""), q(0, ""), q(1, "")),
                Distribution.truncatedExponential(q(50, ""), q(0, ""), q(1, "")),
                Distribution.truncatedExponential(q(0.1, "m"), q(2, "m"), q(9, "m")),
                Distribution.gumbel(q(28, "m/s"), q(4, "m/s")));
    }

    @ParameterizedTest
    @MethodSource("all")
    void theInverseUndoesTheCumulative(Distribution distribution) {
        for (double p : List.of(1e-6, 0.01, 0.2, 0.5, 0.77, 0.99, 1 - 1e-6)) {
            assertEquals(p, distribution.cumulative(distribution.inverse(p)), 1e-12 + 1e-9 * p);
        }
    }

    /** Mean and variance are integrals of the inverse over all probabilities. */
    @ParameterizedTest
    @MethodSource("all")
    void meanAndDeviationAreThoseOfTheInverse(Distribution distribution) {
        Shape shape = distribution.shape();
        double first = 0;
        double second = 0;
        double step = 1.0 / 256;
        for (double z = -10 + step / 2; z < 10; z += step) {
            double x = shape.ofNormal(z) - shape.mean();
            first += x * StandardNormal.density(z) * step;
            second += x * x * StandardNormal.density(z) * step;
        }
        assertEquals(0, first, 2e-5 * shape.deviation());
        assertEquals(shape.deviation(), Math.sqrt(second), 2e-5 * shape.deviation());
    }

    @ParameterizedTest
    @MethodSource("all")
    void densityAndSlopeAreDerivatives(Distribution distribution) {
        Shape shape = distribution.shape();
        for (double p : List.of(0.03, 0.4, 0.9)) {
            double x = shape.inverse(p, 1 - p);
            double h = 1e-5 * shape.deviation();
            double slope = (shape.below(x + h) - shape.below(x - h)) / (2 * h);
            assertEquals(slope, shape.density(x), 1e-6 * slope);
            double z = StandardNormal.inverse(p);
            double byNormal = (shape.ofNormal(z + 1e-5) - shape.ofNormal(z - 1e-5)) / 2e-5;
            assertEquals(byNormal, shape.slopeOfNormal(z, x), 1e-6 * byNormal);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void drawsHaveTheMeanAndTheDeviation(Distribution distribution) {
        Shape shape = distribution.shape();
        int count = 400_000;
        double[] values = new double[count];
        shape.fill(
                new Draws(
                        RandomGeneratorFactory.<RandomGenerator>of("Xoshiro256PlusPlus")
                                .create(11)),
                values,
                count);
        double sum = 0;
        double squares = 0;
        for (double value : values) {
            double off = (value - shape.mean()) / shape.deviation();
            sum += off;
            squares += off * off;
        }
        assertEquals(0, sum / count, 5 / Math.sqrt(count));
        assertEquals(1, squares / count, 0.025);
    }

    /** mpmath 1.4.1: m − 1/(e^(1/m) − 1) and its deviation with m = 0.5. */
    @Test
    void theParameterOfACutExponentialIsNotItsMean() {
        Distribution cut = Distribution.truncatedExponential(q(0.5, ""), q(0, ""), q(1, ""));
        assertEquals(0.343482357250334, cut.mean().si(), 1e-14);
        assertEquals(0.262649166681378, cut.standardDeviation().si(), 1e-14);
    }

    @Test
    void momentsOfTheLognormalAreThoseGiven() {
        Distribution lognormal = Distribution.lognormal(q(25, "kPa"), q(0.4, ""));
        assertEquals(25, lognormal.mean().in("kPa"), 1e-12);
        assertEquals(10, lognormal.standardDeviation().in("kPa"), 1e-12);
    }

    @Test
    void theLongTailSeriesMeetsTheClosedForm() {
        for (String side : List.of("0.0999999", "0.1000001")) {
            double w = Double.parseDouble(side);
            Shape shape = new Shape.TruncatedExponential(1 / w, 0, 1);
            assertEquals(0.5 - w / 12 + w * w * w / 720, shape.mean(), 1e-9);
            assertEquals(1 / Math.sqrt(12) * (1 - w * w / 40), shape.deviation(), 1e-6);
        }
    }

    @Test
    void unitsAreKept() {
        Distribution air = Distribution.normal(q(10, "°C"), q(8, "K"));
        assertEquals(10, air.mean().in("°C"), 1e-12);
        assertEquals("K", air.standardDeviation().unit().symbol());
        assertEquals(10, air.inverse(0.5).in("°C"), 1e-9);
        assertEquals(
                "lognormal, mean 25\u00A0kPa, standard deviation 10\u00A0kPa",
                Distribution.lognormal(q(25, "kPa"), q(0.4, "")).toString());
        assertTrue(Distribution.deterministic(q(3, "m")).standardDeviation().si() == 0);
    }

    @Test
    void badParametersAreRefusedByName() {
        refused(
                "standard deviation is −5\u00A0kPa; allowed is more than 0",
                () -> Distribution.normal(q(25, "kPa"), q(-5, "kPa")));
        refused("standard deviation is 0", () -> Distribution.gumbel(q(2, "m"), q(0, "m")));
        refused(
                "the dimension of the mean, 25",
                () -> Distribution.normal(q(25, "kPa"), q(5, "m")));
        refused("a reading", () -> Distribution.normal(q(10, "°C"), q(8, "°C")));
        refused("coefficient of variation", () -> Distribution.lognormal(q(2, "m"), q(1, "m")));
        refused(
                "mean of a lognormal distribution is −2",
                () -> Distribution.lognormal(q(-2, "m"), q(1, "")));
        refused("greatest value is 1", () -> Distribution.uniform(q(1, "m"), q(1, "m")));
        refused(
                "most likely value is 5",
                () -> Distribution.triangular(q(1, "m"), q(5, "m"), q(4, "m")));
        refused(
                "parameter is 0",
                () -> Distribution.truncatedExponential(q(0, "m"), q(1, "m"), q(4, "m")));
        refused(
                "share of the normal distribution",
                () -> Distribution.truncatedNormal(q(0, "m"), q(1, "m"), q(20, "m"), q(21, "m")));
        refused("probability is 1.0", () -> Distribution.uniform(q(0, "m"), q(1, "m")).inverse(1));
        refused(
                "probability is NaN",
                () -> Distribution.uniform(q(0, "m"), q(1, "m")).inverse(Double.NaN));
    }
}
