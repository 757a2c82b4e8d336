package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
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

    @Property(tries = 2000)
    void brokenTextJoinedIsTheFormulaAgain(
            @ForAll long seed, @ForAll @IntRange(max = 60) int size) {
        RandomGraph graph = new RandomGraph(seed);
        Quantity quantity = graph.grow(size);
        String text = TextWriter.write(Formula.symbolic(quantity));
        String broken = TextLines.broken(text, 7);
        assertEquals(text, broken.replaceAll("\n +", " "));
        broken.lines()
                .forEach(line -> assertEquals(true, line.length() <= TextLines.WIDTH, broken));
    }

    @Property(tries = 1000)
    void aStepBrokenOverLinesSaysTheSame(@ForAll long seed, @ForAll @IntRange(max = 60) int size) {
        Quantity quantity = new RandomGraph(seed).grow(size);
        quantity = quantity.named("H", quantity.unit().symbol(), "");
        String text = quantity.worked().text();
        String line =
                quantity.worked().sides().stream()
                        .map(TextWriter::write)
                        .collect(Collectors.joining(" = "));
        assertEquals(line, text.replaceAll("\n +", " "));
    }

    /** The oracle counts brackets; it shares nothing with the code that breaks. */
    @Property(tries = 1000)
    void latexBreaksAtTheTopAndLosesNothing(
            @ForAll long seed, @ForAll @IntRange(max = 60) int size) {
        Expression formula = Formula.symbolic(new RandomGraph(seed).grow(size));
        List<String> lines = LatexWriter.lines(formula);
        assertEquals(LatexWriter.write(formula), String.join("", lines));
        for (String line : lines) {
            assertEquals(
                    line.split("\\\\left", -1).length, line.split("\\\\right", -1).length, line);
            assertEquals(
                    line.chars().filter(c -> c == '{').count(),
                    line.chars().filter(c -> c == '}').count(),
                    line);
        }
        for (String line : lines.subList(1, lines.size())) {
            assertEquals(
                    true,
                    line.startsWith(" + ") || line.startsWith(" - ") || line.startsWith(" \\cdot "),
                    line);
        }
    }

    /** By hand: Σ (1000 + i)(20 + i) over i = 1 … 12 is 240 000 + 1020 · 78 + 650 = 320 210. */
    @Example
    void aLongSumIsBrokenBeforeItsSigns() {
        Source source = Source.assumption("an example");
        Quantity total = Quantity.of(0, "kN");
        for (int i = 1; i <= 12; i++) {
            Quantity load = Quantity.given("q_" + i, 1000 + i, "kN/m", "", source);
            Quantity length = Quantity.given("l_" + i, 20 + i, "m", "", source);
            total = i == 1 ? load.times(length) : total.plus(load.times(length));
        }
        Quantity named = total.named("V_Ed", "kN", "shear force");
        assertEquals(
                """
                V_Ed = q_1 · l_1 + q_2 · l_2 + q_3 · l_3 + q_4 · l_4 + q_5 · l_5 + q_6 · l_6 + q_7 · l_7
                         + q_8 · l_8 + q_9 · l_9 + q_10 · l_10 + q_11 · l_11 + q_12 · l_12
                     = 1 001 kN/m · 21 m + 1 002 kN/m · 22 m + 1 003 kN/m · 23 m + 1 004 kN/m · 24 m
                         + 1 005 kN/m · 25 m + 1 006 kN/m · 26 m + 1 007 kN/m · 27 m + 1 008 kN/m · 28 m
                         + 1 009 kN/m · 29 m + 1 010 kN/m · 30 m + 1 011 kN/m · 31 m + 1 012 kN/m · 32 m
                     = 320 210 kN\
                """,
                spaced(named.worked().text()));
        String latex = named.worked().latex();
        assertEquals(true, latex.startsWith("\\begin{aligned}V_{\\mathrm{Ed}} &= q_{1}"), latex);
        assertEquals(true, latex.contains(" \\\\ &\\quad {} + "), latex);
        assertEquals("V_Ed = 320 210 kN", spaced(named.toString()));
        assertEquals(
                true, spaced(named.worked(3).text()).endsWith("= 320 000 kN"), named.toString());
    }

    @Example
    void aLongBracketIsBrokenInsideOnlyWhereNothingLooserFits() {
        String long1 = "a_1 · (" + "b_22 + ".repeat(14) + "c) + d";
        assertEquals(
                """
                a_1
                  · (b_22 + b_22 + b_22 + b_22 + b_22 + b_22 + b_22 + b_22 + b_22 + b_22 + b_22 + b_22
                  + b_22 + b_22 + c) + d\
                """,
                TextLines.broken(long1, 0));
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

    /** Broken for a page, a formula still evaluates to its value, and no line is wide without need. */
    @Property
    void brokenMathmlEvaluatesToTheValue(@ForAll long seed, @ForAll @IntRange(max = 30) int size)
            throws Exception {
        Quantity quantity = new RandomGraph(seed).grow(size);
        List<String> lines = MathmlWriter.lines(Formula.symbolic(quantity), 24);
        String whole = PrintedMathml.asText(String.join("", lines));
        for (String line : lines) {
            PrintedMathml.asText(line); // Each is well-formed by itself.
        }
        assertEquals(
                PrintedMathml.asText(MathmlWriter.write(Formula.symbolic(quantity)))
                        .replaceAll("\\s", ""),
                whole.replaceAll("\\s", ""));
    }

    @Example
    void aWideSumIsBrokenBeforeItsSigns() throws Exception {
        Quantity sum = Quantity.given("x_1", 1.5, "kN", "", Source.assumption("an example"));
        for (int i = 2; i < 12; i++) {
            sum = sum.minus(Quantity.given("x_" + i, 0.1, "kN", "", Source.assumption("also")));
        }
        WorkedStep step = sum.named("R", "kN", "rest").worked();
        String wide = step.mathml();
        String narrow = step.mathml(30);
        assertEquals(3, wide.split("<mtr>", -1).length - 1);
        assertTrue(narrow.split("<mtr>", -1).length - 1 > 6, narrow);
        assertTrue(narrow.contains("<mspace width=\"1.5em\"/><mo form=\"infix\">−</mo>"), narrow);
        assertEquals(
                PrintedMathml.asText(content(wide)).replaceAll("\\s", ""),
                PrintedMathml.asText(content(narrow)).replaceAll("\\s", ""));
        assertThrows(IllegalArgumentException.class, () -> step.mathml(19));
    }

    /** A reader of a telephone turns no page: what is wide goes on below, wherever it stands. */
    @Example
    void whatIsWideIsBrokenInsideBracketsFunctionsFractionsAndRoots() throws Exception {
        List<Quantity> loads = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            loads.add(Quantity.given("q_" + i, i, "kN", "", Source.assumption("an example")));
        }
        Quantity sum = Quantity.sum(loads);
        for (Quantity wide :
                List.of(
                        Quantity.max(loads.get(0), sum),
                        sum.times(sum),
                        sum.squared(),
                        sum.over(3),
                        sum.over(sum),
                        sum.times(loads.get(1)).root(),
                        sum.negated().abs(),
                        Quantity.choose(
                                sum.moreThan(loads.get(0)), () -> sum, () -> sum.times(2)))) {
            Expression formula = Formula.symbolic(wide);
            List<String> lines = MathmlWriter.lines(formula, 24);
            String rows = String.join("</mtr>", lines);
            for (String row : rows.split("</mtr>")) {
                int symbols = row.split("<msub>", -1).length - 1;
                assertTrue(symbols <= 4, row);
            }
            assertEquals(
                    PrintedMathml.asText(MathmlWriter.write(formula)).replaceAll("\\s", ""),
                    PrintedMathml.asText(String.join("", lines)).replaceAll("\\s", ""));
        }
    }

    @Example
    void aRoutineOfManyWordsIsBrokenBetweenThem() {
        Expression formula =
                new Expression.Outcome(
                        "greatest moment at the quarter point",
                        "arch.envelope",
                        List.of(new Expression.Symbol("q_k"), new Expression.Symbol("L")));
        List<String> lines = MathmlWriter.lines(formula, 30);
        assertEquals(3, lines.size(), lines.toString());
        assertEquals(
                " greatest moment at the ",
                lines.get(0).replaceAll("<[^>]*>", "").replace(Numerals.BEFORE_UNIT, ' '));
    }

    /** An engineer writes −M and π where a program wrote −1 · M and sixteen digits. */
    @Example
    void aChangeOfSignAndTheCircleAreWrittenAsTheTradeWritesThem() {
        Source source = Source.assumption("an example");
        Quantity m = Quantity.given("M", -24.5, "kN·m", "", source);
        Quantity n = Quantity.given("N", 3, "kN·m", "", source);
        assertEquals("−M", TextWriter.write(Formula.symbolic(m.times(-1))));
        assertEquals("−(−24.5 kN·m)", spaced(TextWriter.write(Formula.numeric(m.times(-1)))));
        assertEquals("−M / N", TextWriter.write(Formula.symbolic(m.times(-1).over(n))));
        assertEquals("N − M", TextWriter.write(Formula.symbolic(n.plus(m.times(-1)))));
        assertEquals("−M − N", TextWriter.write(Formula.symbolic(m.times(-1).minus(n))));

        Quantity d = Quantity.given("d", 2, "m", "", source);
        assertEquals("π · d", TextWriter.write(Formula.symbolic(d.times(Math.PI))));
        assertEquals("2 · π · d", TextWriter.write(Formula.symbolic(d.times(2 * Math.PI))));
        assertEquals(
                "π² · d / 4",
                TextWriter.write(Formula.symbolic(d.times(Math.PI * Math.PI).over(4))));
        assertEquals("π · 2 m", spaced(TextWriter.write(Formula.numeric(d.times(Math.PI)))));
        assertEquals(
                "0.6667 · d", TextWriter.write(Formula.symbolic(d.times(2.0 / 3))), "of a result");
        assertEquals(
                "0.123456789012 · d", TextWriter.write(Formula.symbolic(d.times(0.123456789012))));
    }

    @Example
    void theLeastOfManyIsWrittenOnce() {
        List<Quantity> all = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            all.add(Quantity.given("F_" + i, i, "kN", "", Source.assumption("an example")));
        }
        Quantity least = Quantity.min(Quantity.min(all.get(0), all.get(1)), all.get(2));
        assertEquals("min(F_1, F_2, F_3)", TextWriter.write(Formula.symbolic(least)));
        Quantity mixed = Quantity.max(least, all.get(0));
        assertEquals("max(min(F_1, F_2, F_3), F_1)", TextWriter.write(Formula.symbolic(mixed)));
    }

    private static String content(String math) {
        return math.replaceAll("</?(math|mtable|mtr|mtd|mspace)[^>]*>", "");
    }
}
