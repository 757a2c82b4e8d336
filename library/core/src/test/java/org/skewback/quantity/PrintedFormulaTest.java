package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The formula printed is the formula run: whoever evaluates the print gets the value. */
class PrintedFormulaTest {

    /**
     * Reordered sums and products and another library's functions differ by a few units in the last
     * place an operation; thirty operations without cancellation stay far below this.
     */
    private static final double ROUNDING = 1e-11;

    @Property(tries = 2000)
    void symbolsAsTextEvaluateToTheValue(@ForAll long seed, @ForAll @IntRange(max = 30) int size) {
        RandomGraph graph = new RandomGraph(seed);
        Quantity quantity = graph.grow(size);
        String text = TextWriter.write(Formula.symbolic(quantity));
        if (!text.contains("a formula of more")) {
            assertAgrees(quantity, PrintedText.evaluate(text, values(graph)), text);
        }
    }

    @Property(tries = 2000)
    void numbersAsTextEvaluateToTheValue(@ForAll long seed, @ForAll @IntRange(max = 30) int size) {
        Quantity quantity = new RandomGraph(seed).grow(size);
        String text = TextWriter.write(Formula.numeric(quantity));
        if (!text.contains("a formula of more")) {
            assertAgrees(quantity, PrintedText.evaluate(text, Map.of()), text);
        }
    }

    @Property(tries = 1000)
    void mathmlEvaluatesToTheValue(@ForAll long seed, @ForAll @IntRange(max = 30) int size)
            throws Exception {
        RandomGraph graph = new RandomGraph(seed);
        Quantity quantity = graph.grow(size);
        String text = PrintedMathml.asText(MathmlWriter.write(Formula.symbolic(quantity)));
        if (!text.contains("a formula of more")) {
            assertAgrees(quantity, PrintedText.evaluate(text, values(graph)), text);
        }
    }

    @Property(tries = 500)
    void latexBracesAndDelimitersBalance(@ForAll long seed, @ForAll @IntRange(max = 30) int size) {
        String latex = new RandomGraph(seed).grow(size).worked().latex();
        int depth = 0;
        for (int i = 0; i < latex.length(); i++) {
            depth += latex.charAt(i) == '{' ? 1 : latex.charAt(i) == '}' ? -1 : 0;
            assertEquals(true, depth >= 0, latex);
        }
        assertEquals(0, depth, latex);
        assertEquals(latex.split("\\\\left", -1).length, latex.split("\\\\right", -1).length);
    }

    @Example
    void theThrustOfAParabolaIsPrintedAsTheTradeWritesIt() {
        Source source = Source.assumption("an example");
        Quantity g = Quantity.given("g", 148, "kN/m", "", source);
        Quantity span = Quantity.given("L", 336, "m", "", source);
        Quantity rise = Quantity.given("f", 72, "m", "", source);
        Quantity thrust = g.times(span.squared()).over(rise.times(8)).named("H", "kN", "thrust");

        assertEquals(
                """
                H = g · L² / (8 · f)
                  = 148 kN/m · (336 m)² / (8 · 72 m)
                  = 29 008 kN\
                """,
                spaced(thrust.worked().text()));
        assertEquals(
                "H = \\frac{g \\cdot L^{2}}{8 \\cdot f}"
                        + " = \\frac{148\\ \\mathrm{kN/m} \\cdot"
                        + " \\left(336\\ \\mathrm{m}\\right)^{2}}{8 \\cdot 72\\ \\mathrm{m}}"
                        + " = 29\\,008\\ \\mathrm{kN}",
                thrust.worked().latex());
    }

    @Example
    void aChoiceIsPrintedWithItsCondition() {
        Source source = Source.assumption("an example");
        Quantity n = Quantity.given("N", -3, "kN", "", source);
        Quantity zero = Quantity.of(0, "kN");
        Quantity chosen = Quantity.choose(n.atLeast(zero), () -> n, () -> n.negated());

        assertEquals(
                "−N since N < 0 kN = −(−3 kN) since −3 kN < 0 kN = 3 kN",
                spaced(chosen.worked().text()));
    }

    private static String spaced(String text) {
        return text.replace(Numerals.BEFORE_UNIT, ' ').replace(Numerals.GROUP, ' ');
    }

    private static Map<String, Double> values(RandomGraph graph) {
        return graph.givens().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().si()));
    }

    private static void assertAgrees(Quantity quantity, double evaluated, String text) {
        assertEquals(1, evaluated / quantity.si(), ROUNDING, text);
    }
}
