package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.skewback.form.CatenaryRoutine;
import org.skewback.quantity.InterpolationTable.Axis;

class TapeTest {

    private static final Quantity ZERO = Quantity.of(0);

    private static Quantity given(String symbol, double value, String unit) {
        return Quantity.given(symbol, value, unit, "", Source.assumption("an example"));
    }

    private static List<Quantity> point(Random random, int count) {
        List<Quantity> point = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            point.add(given("x_" + i, random.nextDouble() * 6 - 3, ""));
        }
        return point;
    }

    private static double[] si(List<Quantity> quantities) {
        return quantities.stream().mapToDouble(Quantity::si).toArray();
    }

    private static @Nullable List<Quantity> buildOrNull(
            long seed, int operations, List<Quantity> inputs, boolean routines) {
        try {
            return RandomFormula.build(seed, operations, inputs, routines);
        } catch (ArithmeticException e) {
            return null;
        }
    }

    private static void assertSameBits(List<Quantity> expected, double[] actual) {
        for (int i = 0; i < actual.length; i++) {
            assertEquals(
                    Double.doubleToRawLongBits(expected.get(i).si()),
                    Double.doubleToRawLongBits(actual[i]),
                    expected.get(i).operation() + ": " + expected.get(i).si() + " " + actual[i]);
        }
    }

    @Property(tries = 2000)
    void theTapeGivesWhatTheGraphGivesAndRefusesWhatTheGraphRefuses(@ForAll long seed) {
        Random random = new Random(seed);
        int operations = 1 + random.nextInt(60);
        List<Quantity> here = point(random, 3);
        List<Quantity> graph = buildOrNull(seed, operations, here, true);
        if (graph == null) {
            return;
        }
        Tape tape = Tape.of(graph, here);
        assertSameBits(graph, tape.evaluate(si(here)));
        for (int i = 0; i < 4; i++) {
            List<Quantity> there = point(random, 3);
            List<Quantity> other = buildOrNull(seed, operations, there, true);
            if (other != null) {
                try {
                    assertSameBits(other, tape.evaluate(si(there)));
                } catch (GuardTurnedException e) {
                    // True only if some branch cannot be had at the values of the graph.
                    assertTrue(e.getMessage().contains("the other branch is not known"));
                }
            } else {
                Exception e = assertThrows(RuntimeException.class, () -> tape.evaluate(si(there)));
                assertTrue(
                        e instanceof ArithmeticException || e instanceof GuardTurnedException,
                        e::toString);
            }
        }
    }

    @Property(tries = 300)
    void aRestoredGraphHasTheSameTape(@ForAll long seed) {
        Random random = new Random(seed);
        List<Quantity> here = point(random, 3);
        List<Quantity> graph = buildOrNull(seed, 1 + random.nextInt(40), here, false);
        if (graph == null) {
            return;
        }
        FlatGraph.Positions laid = FlatGraph.lay(graph);
        List<Quantity> restored = laid.graph().restore();
        List<Quantity> again = graph.stream().map(q -> restored.get(laid.of(q))).toList();
        assertEquals(laid.graph(), FlatGraph.lay(again).graph());
        Tape live = Tape.of(graph, here);
        Tape read = Tape.of(again, again.subList(0, 3));
        assertEquals(live.operations(), read.operations());
        double[] there = si(point(random, 3));
        double[] expected;
        try {
            expected = live.evaluate(there);
        } catch (ArithmeticException | GuardTurnedException e) {
            assertThrows(e.getClass(), () -> read.evaluate(there));
            return;
        }
        assertArrayEquals(expected, read.evaluate(there));
    }

    @Property(tries = 300)
    void blocksGiveWhatSinglesGive(@ForAll long seed, @ForAll @IntRange(max = 1300) int count) {
        Random random = new Random(seed);
        RandomGraph random1 = new RandomGraph(seed);
        Quantity grown = random1.grow(30);
        List<Quantity> inputs = List.copyOf(random1.givens().values());
        Tape tape = Tape.of(List.of(grown, inputs.get(0)), inputs);
        double[][] samples = new double[inputs.size()][count];
        for (int i = 0; i < samples.length; i++) {
            for (int s = 0; s < count; s++) {
                samples[i][s] = inputs.get(i).si() * (1 + 1e-3 * random.nextDouble());
            }
        }
        double[][] results = new double[2][count];
        double[][] again = new double[2][count];
        double[][][] slopes = new double[2][inputs.size()][count];
        tape.evaluate(samples, count, results);
        tape.evaluateWithGradient(samples, count, again, slopes);
        assertArrayEquals(results, again);
        for (int s = 0; s < count; s += 97) {
            double[] one = new double[inputs.size()];
            for (int i = 0; i < one.length; i++) {
                one[i] = samples[i][s];
            }
            double[] result = tape.evaluate(one);
            double[][] gradient = tape.gradient(one);
            for (int k = 0; k < 2; k++) {
                assertEquals(result[k], results[k][s]);
                for (int i = 0; i < one.length; i++) {
                    assertEquals(gradient[k][i], slopes[k][i][s]);
                }
            }
        }
    }

    @Property(tries = 500)
    void samplesOfOneBlockTakeTheirOwnBranches(@ForAll long seed) {
        Random random = new Random(seed);
        List<Quantity> here = point(random, 3);
        List<Quantity> graph = buildOrNull(seed, 1 + random.nextInt(40), here, true);
        if (graph == null) {
            return;
        }
        Quantity last = last(graph);
        Tape tape = Tape.of(List.of(last), here);
        double[][] samples = new double[3][8];
        double[][] expected = new double[1][8];
        double[][][] slopes = new double[1][3][8];
        int count = 0;
        for (int tries = 0; tries < 8; tries++) {
            double[] one = si(point(random, 3));
            try {
                double[] gradient = tape.gradient(one)[0];
                expected[0][count] = tape.evaluate(one)[0];
                for (int i = 0; i < 3; i++) {
                    samples[i][count] = one[i];
                    slopes[0][i][count] = gradient[i];
                }
                count++;
            } catch (ArithmeticException | GuardTurnedException refused) {
                // What is refused alone is refused in a block; another property holds that.
                assertFalse(refused.getMessage().isBlank());
            }
        }
        double[][] results = new double[1][8];
        double[][][] gradients = new double[1][3][8];
        tape.evaluateWithGradient(samples, count, results, gradients);
        assertArrayEquals(expected, results);
        assertArrayEquals(slopes, gradients);
    }

    /**
     * Against central differences D(h) and D(h/2): the extrapolated value (4 D(h/2) − D(h))/3 is in
     * error by less than |D(h) − D(h/2)|, as long as h² terms lead, and by rounding of the values, of
     * some units in the last place for each operation, over h.
     */
    @Property(tries = 500)
    void theGradientAgreesWithCentralDifferences(@ForAll long seed) {
        RandomGraph random = new RandomGraph(seed);
        int operations = 25;
        Quantity grown = random.grow(operations);
        List<Quantity> inputs = List.copyOf(random.givens().values());
        Tape tape = Tape.of(List.of(grown), inputs);
        double[] at = si(inputs);
        double[] gradient = tape.gradient(at)[0];
        double relative = 0x1p-12;
        for (int i = 0; i < at.length; i++) {
            double wide = difference(tape, at, i, relative);
            double narrow = difference(tape, at, i, relative / 2);
            double rounding =
                    4 * operations * Math.ulp(grown.si()) / Math.abs(at[i] * relative / 2);
            double expected = (4 * narrow - wide) / 3;
            assertEquals(
                    expected, gradient[i], Math.abs(wide - narrow) + rounding, grown + " by " + i);
        }
    }

    private static double difference(Tape tape, double[] at, int i, double relative) {
        double[] high = at.clone();
        double[] low = at.clone();
        high[i] = at[i] * (1 + relative);
        low[i] = at[i] * (1 - relative);
        return (tape.evaluate(high)[0] - tape.evaluate(low)[0]) / (high[i] - low[i]);
    }

    @Example
    void everyFunctionHasTheDerivativeOfTheTextbooks() {
        // From the definitions: each derivative written in another way than the tape's.
        double v = 0.3;
        Quantity x = given("x", v, "");
        Tape tape =
                Tape.of(
                        List.of(
                                x.exp(),
                                x.ln(),
                                x.log10(),
                                x.sin(),
                                x.cos(),
                                x.tan(),
                                x.asin(),
                                x.acos(),
                                x.atan(),
                                x.sinh(),
                                x.cosh(),
                                x.tanh(),
                                x.asinh(),
                                x.plus(1).acosh(),
                                x.power(-2),
                                x.power(2, 3),
                                x.cubeRoot(),
                                x.root(),
                                x.power(9),
                                x.power(0),
                                x.negated().abs()),
                        List.of(x));
        double[] expected = {
            Math.exp(v),
            1 / v,
            1 / (v * Math.log(10)),
            Math.cos(v),
            -Math.sin(v),
            1 / Math.pow(Math.cos(v), 2),
            1 / Math.sqrt(1 - v * v),
            -1 / Math.sqrt(1 - v * v),
            1 / (1 + v * v),
            Math.cosh(v),
            Math.sinh(v),
            1 / Math.pow(Math.cosh(v), 2),
            1 / Math.sqrt(1 + v * v),
            1 / Math.sqrt(Math.pow(v + 1, 2) - 1),
            -2 / (v * v * v),
            2.0 / 3 * Math.pow(v, -1.0 / 3),
            1.0 / 3 * Math.pow(v, -2.0 / 3),
            0.5 * Math.pow(v, -0.5),
            9 * Math.pow(v, 8),
            0,
            1
        };
        double[][] gradient = tape.gradient(new double[] {v});
        for (int k = 0; k < expected.length; k++) {
            // Two functions and a few products, each within 2 units in the last place.
            assertEquals(expected[k], gradient[k][0], 16 * Math.ulp(expected[k]), "function " + k);
        }
    }

    @Example
    void aGuardTurnsBothWaysAndTheDerivativeGoesWithIt() {
        Quantity x = given("x", 4, "");
        Quantity y = Quantity.choose(x.moreThan(ZERO), x::root, () -> x.times(-3));
        double[][] results = new double[1][4];
        double[][][] slopes = new double[1][1][4];
        // At zero the root, not taken, has an infinite derivative; below, no value at all.
        Tape.of(List.of(y), List.of(x))
                .evaluateWithGradient(new double[][] {{4, -1, 0, 16}}, 4, results, slopes);
        assertArrayEquals(new double[] {2, 3, -0.0, 4}, results[0]);
        assertArrayEquals(new double[] {0.25, -3, -3, 0.125}, slopes[0][0]);
        Quantity below = given("x", -1, "");
        Quantity z = Quantity.choose(below.moreThan(ZERO), () -> below.times(7), below::negated);
        assertEquals(14, Tape.of(List.of(z), List.of(below)).evaluate(new double[] {2})[0]);
    }

    @Example
    void aGuardWithoutItsOtherBranchIsRefusedByName() {
        Quantity b = given("b", 0, "m");
        Quantity a = given("a", 3, "m");
        Quantity ratio =
                Quantity.choose(
                        b.moreThan(Quantity.of(0, "m")), () -> a.over(b), () -> Quantity.of(1));
        Tape tape = Tape.of(List.of(ratio.named("r", "", "")), List.of(b));
        assertEquals(1, tape.evaluate(new double[] {-2})[0]);
        double[][] results = new double[1][3];
        GuardTurnedException e =
                assertThrows(
                        GuardTurnedException.class,
                        () -> tape.evaluate(new double[][] {{-1, 2, 3}}, 3, results));
        String message = e.getMessage().replace('\u00A0', ' ');
        assertTrue(
                message.startsWith(
                        "r of sample 1 turns the condition b = 0 m > 0 m, which did not hold; now"
                                + " it is b = 2 m and 0 m"),
                message);
        assertTrue(message.contains("division by zero"), message);
    }

    @Example
    void branchesOfAnotherDimensionOrThatReferToThemselvesAreAbsent() {
        Quantity x = given("x", 1, "");
        Quantity wrong =
                Quantity.choose(x.moreThan(ZERO), () -> x, () -> x.times(Quantity.of(1, "m")));
        assertThrows(
                GuardTurnedException.class,
                () -> Tape.of(List.of(wrong), List.of(x)).evaluate(new double[] {-1}));
        Quantity[] later = new Quantity[1];
        later[0] = Quantity.choose(x.moreThan(ZERO), () -> x, () -> later[0].times(2));
        Tape tape = Tape.of(List.of(later[0]), List.of(x));
        assertEquals(5, tape.evaluate(new double[] {5})[0]);
        assertThrows(GuardTurnedException.class, () -> tape.evaluate(new double[] {-1}));
        assertEquals(x, FlatGraph.lay(List.of(later[0])).graph().restore().get(0));
        Tape endless = Tape.of(List.of(halved(x)), List.of(x));
        assertEquals(1, endless.evaluate(new double[] {1})[0]);
        assertEquals(0.75, endless.evaluate(new double[] {6})[0]);
        assertThrows(GuardTurnedException.class, () -> endless.evaluate(new double[] {1e9}));
    }

    /** Halves until at most one: a formula without an end to its branches. */
    private static Quantity halved(Quantity x) {
        return Quantity.choose(x.atMost(Quantity.of(1)), () -> x, () -> halved(x.over(2)));
    }

    @Example
    void aLoopWithManyBranchesInsideBranchesEnds() {
        Quantity x = given("x", 1, "");
        Quantity y = bushy(x);
        assertEquals(1, Tape.of(List.of(y), List.of(x)).evaluate(new double[] {1})[0]);
    }

    private static Quantity bushy(Quantity x) {
        return Quantity.choose(
                x.atMost(Quantity.of(1)),
                () -> x,
                () -> bushy(x.over(2)).plus(bushy(x.over(3))).plus(bushy(x.over(4))));
    }

    @Example
    void nothingThatIsNotFiniteIsSwallowed() {
        Quantity x = given("x", 1, "m");
        Quantity one = Quantity.of(1);
        Quantity inverse = Quantity.of(1, "m").over(x);
        for (Quantity hidden :
                List.of(
                        one.over(inverse),
                        inverse.atan(),
                        inverse.tanh(),
                        inverse.negated().exp(),
                        Quantity.min(one, inverse),
                        Quantity.max(one, inverse.negated()),
                        inverse.power(-2),
                        inverse.power(0),
                        Quantity.choose(inverse.moreThan(ZERO), () -> one, () -> one.times(2)))) {
            Tape tape = Tape.of(List.of(x, hidden.named("F", "", "")), List.of(x));
            ArithmeticException e =
                    assertThrows(
                            ArithmeticException.class,
                            () -> tape.evaluate(new double[][] {{1, 2, 0}}, 3, new double[2][3]));
            assertTrue(
                    e.getMessage()
                            .startsWith("F of sample 2 has no finite value: division by zero: 1.0"),
                    e.getMessage());
        }
        Quantity root = x.root();
        ArithmeticException e =
                assertThrows(
                        ArithmeticException.class,
                        () -> Tape.of(List.of(root), List.of(x)).gradient(new double[] {0}));
        assertEquals("the derivative of output 0 by x is not finite", e.getMessage());
    }

    @Example
    void minimumMaximumAndAbsoluteValueHaveTheMeanAtTheirKinks() {
        Quantity x = given("x", 2, "");
        Quantity y = given("y", 2, "");
        Tape tape =
                Tape.of(
                        List.of(Quantity.min(x, y), Quantity.max(x, y), x.minus(y).abs()),
                        List.of(x, y));
        assertArrayEquals(
                new double[][] {{0.5, 0.5}, {0.5, 0.5}, {0, 0}},
                tape.gradient(new double[] {2, 2}));
        assertArrayEquals(
                new double[][] {{1, 0}, {0, 1}, {-1, 1}}, tape.gradient(new double[] {2, 3}));
    }

    @Example
    void namedResultsCanBeCutOffAsInputs() {
        Quantity b = given("b", 2, "m");
        Quantity area = b.squared().named("A", "m²", "area");
        Quantity load = area.times(Quantity.of(3, "kN/m²")).plus(b.times(Quantity.of(1, "kN/m")));
        Quantity apart = given("c", 1, "");
        Tape tape = Tape.of(List.of(load, area), List.of(area, apart));
        assertArrayEquals(new double[] {32_000, 10}, tape.evaluate(new double[] {10, 5}));
        assertArrayEquals(new double[][] {{3000, 0}, {1, 0}}, tape.gradient(new double[] {10, 5}));
        Tape both = Tape.of(List.of(load), List.of(area, b));
        assertArrayEquals(new double[] {3000, 1000}, both.gradient(new double[] {10, 2})[0]);
    }

    @Example
    void equalExpressionsAreNumberedOnceAndConstantsFolded() {
        Quantity x = given("x", 2, "");
        Quantity y = given("y", 3, "");
        Quantity formula =
                x.times(y).plus(y.times(x)).times(Quantity.of(7).sin().exp()).times(1).over(4);
        // One product, one sum, by the constant, by a quarter.
        assertEquals(4, Tape.of(List.of(formula), List.of(x, y)).operations());
        assertEquals(0, Tape.of(List.of(formula), List.of()).operations());
    }

    /** A change of a reading is in kelvin, so a derivative by it means what it says. */
    @Example
    void aReadingIsAnInputInKelvin() {
        Quantity built = given("T_0", 10, "°C");
        Quantity summer = given("T_1", 38, "°C");
        Quantity length = given("L", 40, "m");
        Quantity growth = length.times(summer.minus(built)).times(Quantity.of(1.2e-5, "1/K"));
        Tape tape = Tape.of(List.of(growth, summer), List.of(built, summer));
        double[] present = {built.si(), summer.si()};
        assertEquals(311.15, summer.si(), 1e-12);
        assertEquals(growth.si(), tape.evaluate(present)[0]);
        assertEquals(-4.8e-4, tape.gradient(present)[0][0], 1e-18);
        assertEquals(4.8e-4, tape.gradient(present)[0][1], 1e-18);
        assertEquals(1, tape.gradient(present)[1][1]);
        double[] hotter = {built.si(), summer.si() + 10};
        assertEquals(growth.si() + 4.8e-3, tape.evaluate(hotter)[0], 1e-15);
    }

    @Example
    void badInputsAreRefusedByName() {
        Quantity x = given("x", 2, "m");
        assertThrows(IllegalArgumentException.class, () -> Tape.of(List.of(), List.of(x)));
        Exception e =
                assertThrows(
                        IllegalArgumentException.class, () -> Tape.of(List.of(x), List.of(x, x)));
        assertEquals("the input x = 2\u00A0m is named twice", e.getMessage());
        Tape tape = Tape.of(List.of(x.squared()), List.of(x));
        double[][] wrong = {{1, Double.NaN}};
        e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> tape.evaluate(wrong, 2, new double[1][2]));
        assertEquals("x of sample 1 is NaN; allowed are finite numbers", e.getMessage());
        assertThrows(
                IllegalArgumentException.class, () -> tape.evaluate(wrong, 3, new double[1][3]));
        assertThrows(IllegalArgumentException.class, () -> tape.evaluate(new double[2]));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        tape.evaluateWithGradient(
                                new double[1][1], 1, new double[1][1], new double[1][0][1]));
        tape.evaluate(new double[1][0], 0, new double[1][0]);
    }

    @Example
    void aDeepGraphIsNoTrouble() {
        Quantity x = given("x", 1, "");
        Quantity sum = x;
        for (int i = 0; i < 100_000; i++) {
            Quantity last = sum;
            sum = i % 2 == 0 ? last.plus(x.times(i)) : Quantity.max(last.minus(x), ZERO);
        }
        Tape tape = Tape.of(List.of(sum), List.of(x));
        assertTrue(tape.operations() >= 100_000);
        assertEquals(sum.si(), tape.evaluate(new double[] {1})[0]);
        // A sum of multiples of x: the derivative is the value at one.
        double[][] results = new double[1][200];
        double[][][] slopes = new double[1][1][200];
        double[][] twos = new double[1][200];
        java.util.Arrays.fill(twos[0], 2);
        tape.evaluateWithGradient(twos, 200, results, slopes);
        assertEquals(2 * sum.si(), results[0][199]);
        assertEquals(sum.si(), slopes[0][0][199]);
        assertEquals(sum, last(FlatGraph.lay(List.of(sum)).graph().restore()));
    }

    private static Quantity last(List<Quantity> quantities) {
        return quantities.get(quantities.size() - 1);
    }

    record In(Quantity a, List<Quantity> more, int times, String kind) {}

    record Out(Quantity total, List<Quantity> each) {}

    /** Multiplies a by each of more, a number of times; counts its runs. */
    static final class Product implements Routine<In, Out> {
        private int runs;

        @Override
        public String name() {
            return "test.product";
        }

        @Override
        public int edition() {
            return 3;
        }

        @Override
        public Out run(In input, Stop stop) {
            runs++;
            List<Quantity> each = new ArrayList<>();
            double total = 0;
            for (Quantity one : input.more()) {
                double a = input.a().in("kN");
                if (a < 0) {
                    throw new IllegalArgumentException("a is " + a);
                }
                double product = a * a * one.in("m") * input.times();
                each.add(Quantity.of(product, "kN·m"));
                total += product;
            }
            return new Out(Quantity.of(total, "kN·m"), each);
        }
    }

    @Example
    void aRoutineRunsAgainOnceForEachSample() {
        Quantity a = given("a", 2, "kN");
        Quantity b = given("b", 3, "m");
        Product routine = new Product();
        Out out = Routines.call(routine, new In(a, List.of(b, Quantity.of(1, "m")), 5, "x"));
        Tape tape = Tape.of(List.of(out.total(), out.each().get(0)), List.of(a, b));
        assertTrue(tape.hasRoutines());
        routine.runs = 0;
        assertArrayEquals(new double[] {135_000, 90_000}, tape.evaluate(new double[] {3000, 2}));
        assertEquals(1, routine.runs);
        // d(5 a² (b + 1)) = 10 a (b + 1) da + 5 a² db, a in kN: quadratic, so that a central
        // difference is exact but for rounding, of a few units in the last place over the step.
        double[][] gradient = tape.gradient(new double[] {3000, 2});
        assertEquals(90, gradient[0][0], 90 * 0x1p-34);
        assertEquals(45_000, gradient[0][1], 45_000 * 0x1p-34);
        assertEquals(60, gradient[1][0], 60 * 0x1p-34);
        Exception e =
                assertThrows(
                        ArithmeticException.class, () -> tape.evaluate(new double[] {-1000, 2}));
        assertTrue(e.getMessage().contains("a is -1.0"), e.getMessage());
        Quantity safe =
                Quantity.choose(
                        a.moreThan(Quantity.of(0, "kN")),
                        out::total,
                        () -> a.times(Quantity.of(1, "m")));
        routine.runs = 0;
        double[][] results = new double[1][4];
        Tape.of(List.of(safe), List.of(a))
                .evaluate(new double[][] {{-7, 1000, -8, 2000}}, 4, results);
        assertArrayEquals(new double[] {-7, 20_000, -8, 80_000}, results[0]);
        assertEquals(2, routine.runs);
        Quantity inside =
                Quantity.choose(
                        a.atMost(Quantity.of(9, "kN")), () -> safe, () -> out.each().get(0));
        routine.runs = 0;
        Tape.of(List.of(inside, a.times(b)), List.of(a))
                .evaluate(new double[][] {{-7, 1000, -8, 10_000}}, 4, new double[2][4]);
        // The call is in both branches of a choice, so that no condition spares it.
        assertEquals(4, routine.runs);
        routine.runs = 0;
        Quantity nested =
                Quantity.choose(a.atMost(Quantity.of(9, "kN")), () -> safe, () -> safe.negated());
        Tape.of(List.of(nested), List.of(a))
                .evaluate(new double[][] {{-7, 1000, -8, 10_000}}, 4, new double[1][4]);
        assertEquals(2, routine.runs);
        assertFalse(Tape.of(List.of(out.total()), List.of()).hasRoutines());
    }

    @Example
    void aRestoredRoutineIsFoundByNameAndEditionOrRefused() {
        Quantity span = given("L", 100, "m");
        Quantity rise = given("f", 20, "m");
        Quantity parameter =
                Routines.call(new CatenaryRoutine(), new CatenaryRoutine.Input(span, rise))
                        .parameter();
        FlatGraph flat = FlatGraph.lay(List.of(parameter)).graph();
        List<Quantity> restored = flat.restore();
        Tape live = Tape.of(List.of(parameter), List.of(span, rise));
        Tape read = Tape.of(List.of(last(restored)), restored.subList(0, 2));
        double[] other = {120, 25};
        assertArrayEquals(live.evaluate(other), read.evaluate(other));
        assertArrayEquals(live.gradient(other), read.gradient(other));
        FlatCall call = flat.calls().get(0);
        FlatGraph old =
                new FlatGraph(
                        flat.nodes(),
                        List.of(new FlatCall(call.name(), 77, call.inputs(), call.components())),
                        List.of());
        List<Quantity> older = old.restore();
        Tape refused = Tape.of(List.of(last(older)), older.subList(0, 2));
        Exception e = assertThrows(IllegalStateException.class, () -> refused.evaluate(other));
        assertTrue(
                e.getMessage().contains("cannot tell: routine form.catenary of edition 77"),
                e.getMessage());
    }

    @Example
    void aRecordKeepsBothBranchesAndTables() {
        InterpolationTable table =
                new InterpolationTable(
                        "k_c",
                        "factor",
                        Axis.logarithmic("m", 1, 10, 100),
                        Axis.linear("kN", 5, 7, 6),
                        Source.book("A book", "table 3"));
        Quantity x = given("x", 2, "m");
        Quantity looked = table.at(x);
        Quantity y =
                Quantity.choose(
                        x.moreThan(Quantity.of(1.5, "m")), () -> looked, () -> looked.negated());
        FlatGraph flat = FlatGraph.lay(List.of(y)).graph();
        List<Quantity> restored = flat.restore();
        assertEquals(
                flat,
                FlatGraph.lay(restored.subList(restored.size() - 1, restored.size())).graph());
        Quantity again = last(restored);
        assertEquals(y.worked().text(), again.worked().text());
        Tape tape = Tape.of(List.of(again), List.of(restored.get(0)));
        assertEquals("x", tape.inputs().get(0).symbol());
        assertEquals(y.si(), tape.evaluate(new double[] {2})[0]);
        assertEquals(-table.at(Quantity.of(1.2, "m")).si(), tape.evaluate(new double[] {1.2})[0]);
    }

    @Example
    void tapesWorkOnSeveralThreadsAtOnce() {
        Quantity x = given("x", 2, "");
        Tape tape = Tape.of(List.of(x.sin().times(x).plus(x.squared())), List.of(x));
        double[] alone = new double[64];
        for (int i = 0; i < alone.length; i++) {
            alone[i] = tape.evaluate(new double[] {i})[0];
        }
        double[] together =
                java.util.stream.IntStream.range(0, 64)
                        .parallel()
                        .mapToDouble(i -> tape.evaluate(new double[] {i})[0])
                        .toArray();
        assertArrayEquals(alone, together);
    }
}
