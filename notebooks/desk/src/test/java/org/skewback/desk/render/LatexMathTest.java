package org.skewback.desk.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The meaning of each command is that of LaTeX and amsmath; the markup is MathML Core. */
final class LatexMathTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\\frac{a}{b} | <mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi></mrow></mfrac>",
                "\\frac12 | <mfrac><mn>1</mn><mn>2</mn></mfrac>",
                "x_i^2 | <msubsup><mi>x</mi><mi>i</mi><mn>2</mn></msubsup>",
                "x^2_i | <msubsup><mi>x</mi><mi>i</mi><mn>2</mn></msubsup>",
                "f'(x) | <msup><mi>f</mi><mo>′</mo></msup><mo stretchy=\"false\">(</mo>"
                        + "<mi>x</mi><mo stretchy=\"false\">)</mo>",
                "\\sqrt[3]{V} | <mroot><mrow><mi>V</mi></mrow><mrow><mn>3</mn></mrow></mroot>",
                "3.14 r | <mn>3.14</mn><mi>r</mi>",
                "N_{\\mathrm{Ed}} | <msub><mi>N</mi><mrow><mi>Ed</mi></mrow></msub>",
                "\\mathrm{d}x | <mi mathvariant=\"normal\">d</mi><mi>x</mi>",
                "\\sigma \\le f_y | <mi>σ</mi><mo>≤</mo><msub><mi>f</mi><mi>y</mi></msub>",
                "a - b | <mi>a</mi><mo>−</mo><mi>b</mi>",
                "a < b | <mi>a</mi><mo>&lt;</mo><mi>b</mi>",
                "\\sin\\alpha | <mi>sin</mi><mo>&#x2061;</mo><mi>α</mi>",
                "5\\,\\text{kN/m} | <mn>5</mn><mspace width=\"0.17em\"></mspace>"
                        + "<mtext>kN/m</mtext>",
            })
    void writesWhatTheLatexMeans(String latex, String markup) {
        assertEquals(
                Optional.of("<math><mrow>" + markup.strip() + "</mrow></math>"),
                LatexMath.mathml(latex.strip(), false));
    }

    @Test
    void setsLimitsAboveAndBelowOnlyInDisplay() {
        assertTrue(LatexMath.mathml("\\sum_i^n x", true).orElseThrow().contains("<munderover>"));
        assertTrue(LatexMath.mathml("\\sum_i^n x", false).orElseThrow().contains("<msubsup>"));
        assertTrue(LatexMath.mathml("\\int_0^L x", true).orElseThrow().contains("<msubsup>"));
    }

    @Test
    void alignsRows() {
        String set =
                LatexMath.mathml("\\begin{aligned} a &= b \\\\ &= c \\end{aligned}", true)
                        .orElseThrow();
        assertEquals(2, set.split("<mtr>", -1).length - 1);
        assertNotNull(Xml.parse(set));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\\newcommand{\\a}{\\a}\\a",
                "\\def\\a{\\a}\\a",
                "\\input{/etc/passwd}",
                "\\href{javascript:alert(1)}{x}",
                "\\frac{a}{b",
                "a}",
                "a_b_c",
                "\\left( a",
                "\\begin{evil}\\end{evil}",
                "\\",
                "a & b"
            })
    void leavesToOthersWhatItDoesNotKnow(String latex) {
        assertEquals(Optional.empty(), LatexMath.mathml(latex, true));
    }

    @Test
    void refusesDeepNestingInsteadOfOverflowing() {
        String deep = "{".repeat(3_900) + "a" + "}".repeat(3_900);
        assertEquals(Optional.empty(), LatexMath.mathml(deep, true));
        assertEquals(Optional.empty(), LatexMath.mathml("\\sqrt".repeat(1_500) + "a", true));
        assertEquals(Optional.empty(), LatexMath.mathml("a".repeat(10_000), true));
    }

    @Test
    void whateverIsTypedGivesWellFormedMarkupOrNone() {
        String[] pieces = {
            "\\frac",
            "{",
            "}",
            "^",
            "_",
            "a",
            "<",
            "&",
            "\\\\",
            "\\left(",
            "\\right)",
            "\"",
            "]",
            "\\sqrt[",
            "1.5",
            "'",
            "\\text{<b>}",
            "\\mathrm{m^2}",
            "\\begin{cases}",
            "\\end{cases}",
            "\\bar",
            "\\sum",
            " ",
            "\uD83D",
            "\u0001",
            "é"
        };
        Random random = new Random(42);
        int set = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder latex = new StringBuilder();
            int length = 1 + random.nextInt(9);
            for (int j = 0; j < length; j++) {
                latex.append(pieces[random.nextInt(pieces.length)]);
            }
            Optional<String> markup = LatexMath.mathml(latex.toString(), i % 2 == 0);
            if (markup.isPresent()) {
                set++;
                assertNotNull(Xml.parse(markup.get()), () -> latex + " gives " + markup.get());
            }
        }
        assertTrue(set > 1_000, "set: " + set);
    }
}
