package org.skewback.desk.render;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TypesetterTest {

    private static final double WIDEST = 40;

    private final MathGlyphs glyphs = new MathGlyphs();
    private final Typesetter typesetter = new Typesetter(glyphs, WIDEST);

    private Box set(String latex) {
        Box box = typesetter.set(LatexMath.mathml(latex, true).orElseThrow());
        assertNotNull(box, latex);
        return box;
    }

    /** The font's own table hmtx, read with fontTools: 495 of 1000 units for the digit 7. */
    @Test
    void aNumberIsAsWideAsItsDigits() {
        assertEquals(3 * 0.495, set("777").width(), 1e-9);
    }

    /** On a line that goes on, the sign joins it to the line before and keeps its gap. */
    @Test
    void aSignThatLeadsALineIsSpacedAsOneThatJoins() {
        String sign = "<math><mrow><mo>−</mo><mn>7</mn></mrow></math>";
        Box prefix = Objects.requireNonNull(typesetter.set(sign));
        Box infix =
                Objects.requireNonNull(typesetter.set(sign.replace("<mo>", "<mo form=\"infix\">")));
        assertTrue(infix.width() > prefix.width() + 0.2);
    }

    @Test
    void bracketsStretchTogetherOrNotAtAll() {
        String tall = "<mfrac><mn>1</mn><mn>2</mn></mfrac>";
        String one = "<mrow><mo>(</mo>" + tall + "<mo>)</mo></mrow>";
        assertEquals(one, FlatBrackets.in(one));
        String rows =
                "<mtr><mtd><mo>(</mo>1</mtd></mtr><mtr><mtd>" + tall + "<mo>)</mo></mtd></mtr>";
        String flat = rows.replace("<mo>", "<mo stretchy=\"false\">");
        assertEquals(flat, FlatBrackets.in(rows));
        assertEquals(flat, FlatBrackets.acrossRows(rows));
        String inner = "<mo>(</mo><mtable>" + rows + "</mtable><mo>)</mo>";
        assertEquals(inner.replace(rows, flat), FlatBrackets.acrossRows(inner));
    }

    @Test
    void aFractionStandsOnTheAxisAndIsTallerThanItsParts() {
        Box fraction = set("\\frac{7}{7}");
        Box digit = set("7");
        assertTrue(fraction.height() > 2 * digit.height());
        assertTrue(fraction.descent() > 0.3);
    }

    @Test
    void anExponentRisesAndAnIndexSinks() {
        Box plain = set("x");
        assertTrue(set("x^2").ascent() > plain.ascent());
        assertTrue(set("x_2").descent() > plain.descent());
    }

    @Test
    void bracketsAndRootsGrowWithWhatTheyHold() {
        double flat = set("\\left(x\\right)").height();
        assertTrue(set("\\left(\\frac{x}{\\frac{y}{z}}\\right)").height() > 1.5 * flat);
        Box under = set("\\frac{x}{y}");
        Box root = set("\\sqrt{\\frac{x}{y}}");
        assertTrue(root.ascent() > under.ascent());
        assertTrue(root.width() > under.width());
    }

    @Test
    void nothingReachesOutOfItsBox() {
        for (String latex :
                new String[] {
                    "\\frac{g L^2}{8 f}",
                    "\\sqrt[3]{x}",
                    "\\sum_{i=1}^n x_i",
                    "\\int_0^L f(x)",
                    "\\bar{x}",
                    "\\begin{aligned} a &= b \\\\ &= \\frac{c}{d} \\end{aligned}"
                }) {
            Box box = set(latex);
            var extent = box.outline().path().getBounds2D();
            assertTrue(extent.getMaxY() <= box.ascent() + 1e-6, latex);
            assertTrue(-extent.getMinY() <= box.descent() + 1e-6, latex);
            assertTrue(extent.getMaxX() <= box.width() + 0.2, latex);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"%s", "\\frac{%s}{12}"})
    void aLongSumBreaksBeforeAnOperator(String form) {
        String sum = "1234567" + " + 1234567".repeat(30);
        Box box = set(String.format(form, sum));
        assertTrue(box.width() <= WIDEST, "width " + box.width());
        assertTrue(box.height() > 3, "height " + box.height());
    }

    @Test
    void whatTheFontLacksIsLeftToWords() {
        assertNull(typesetter.set("<math><mi>漢</mi></math>"));
        assertNull(typesetter.set("<math><menclose/></math>"));
    }

    /** Every sign that numbers, units and formulas of a sheet are written with. */
    @Test
    void textAndMathematicsHaveEverySignOfASheet() {
        Coverage coverage = new Coverage();
        String signs =
                "0123456789.\u202F\u00A0\u2212×·/()|⁰¹²³⁴⁵⁶⁷⁸⁹⁻√∛°′″‰%≤≥<>=→±µμ…–—“”‘’½−"
                        + "αβγδεζηθικλμνξπρστυφχψωΓΔΘΛΞΠΣΥΦΨΩabcxyzABCXYZ²³,;:'*+-";
        signs.codePoints()
                .forEach(
                        c -> {
                            String name = String.format("U+%04X", c);
                            assertTrue(coverage.has(c), "text lacks " + name);
                            boolean inFormulas = "“”‘’".indexOf(c) < 0 && c != 0x202F;
                            assertTrue(!inFormulas || glyphs.has(c), "mathematics lacks " + name);
                        });
        assertTrue(glyphs.has(0x2009), "the space between groups of digits");
    }

    @Test
    void whatNoFontHasIsSeenToBeMissingAndAllElseStays() {
        String ascii = IntStream.range(' ', 0x7F).mapToObj(Character::toString).collect(joining());
        Coverage coverage = new Coverage();
        ascii.chars().forEach(c -> assertTrue(coverage.has(c), Character.toString(c)));
        assertEquals(ascii + "\n\tα\uFFFD–\uFFFD.", coverage.printable(ascii + "\n\tα漢–😀."));
    }
}
