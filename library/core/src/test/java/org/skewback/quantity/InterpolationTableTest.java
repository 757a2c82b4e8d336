package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.skewback.quantity.InterpolationTable.Axis;

class InterpolationTableTest {

    private static final Source BOOK = Source.book("A book", "table 3");

    private static InterpolationTable table(Axis x, Axis y) {
        return new InterpolationTable("k_c", "factor", x, y, BOOK);
    }

    @Property
    void betweenRowsItIsTheLineThatCommonsMathDraws(
            @ForAll @DoubleRange(min = 1, max = 6) double at) {
        double[] xs = {1, 1.5, 2, 4, 6};
        double[] ys = {0.141, 0.196, 0.229, 0.281, 0.299};
        double expected = new LinearInterpolator().interpolate(xs, ys).value(at);
        Quantity value = table(Axis.linear("", xs), Axis.linear("", ys)).at(Quantity.of(at));
        // Two roundings each way of numbers below one.
        assertEquals(expected, value.si(), 4 * Math.ulp(1.0));
    }

    @Property
    void onLogarithmicAxesAPowerLawIsAStraightLine(
            @ForAll @DoubleRange(min = 0.01, max = 1000) double at) {
        InterpolationTable law =
                table(Axis.logarithmic("m", 0.01, 1, 1000), Axis.logarithmic("m²", 1e-4, 1, 1e6));
        // exp(2 ln x): the relative error is the absolute error of logarithms up to 14.
        assertEquals(1, law.at(Quantity.of(at, "m")).si() / (at * at), 4 * Math.ulp(14.0));
    }

    @Example
    void rowsAreExactAndUnitsAreTheTables() {
        InterpolationTable mixed =
                table(Axis.logarithmic("mm", 1, 10, 100), Axis.linear("kN", 5, 7, 6.1));
        Quantity x = Quantity.given("x", 0.1, "m", "", BOOK);
        assertEquals(Quantity.of(6.1, "kN"), mixed.at(x));
        assertEquals("kN", mixed.at(x).unit().symbol());
        assertEquals("k_c(x)", TextWriter.write(Formula.symbolic(mixed.at(x))));
        assertEquals("k_{c}\\left(x\\right)", LatexWriter.write(Formula.symbolic(mixed.at(x))));
        assertEquals(
                "<mrow><msub><mi>k</mi><mi>c</mi></msub><mo>&#x2061;</mo><mo>(</mo>"
                        + "<mrow><mi>x</mi></mrow><mo>)</mo></mrow>",
                MathmlWriter.write(Formula.symbolic(mixed.at(x))));
        assertEquals(
                "k = k_c(x) = k_c(0.1 m) = 6.1 kN",
                mixed.at(x).named("k", "kN", "").worked().text().replace('\u00A0', ' '));
        assertEquals(List.of(x), mixed.at(x).operands());
    }

    @Example
    void outsideTheTableThereIsAnErrorThatNamesTheRange() {
        InterpolationTable rows = table(Axis.linear("m", 1, 2), Axis.linear("", 5, 7));
        Exception e =
                assertThrows(IllegalArgumentException.class, () -> rows.at(Quantity.of(3, "m")));
        assertEquals(
                "3 m is outside the table k_c; allowed are 1 m to 2 m",
                e.getMessage().replace('\u00A0', ' '));
        assertThrows(DimensionException.class, () -> rows.at(Quantity.of(1.5)));
        Quantity x = Quantity.given("x", 1.5, "m", "", BOOK);
        Tape tape = Tape.of(List.of(rows.at(x)), List.of(x));
        e = assertThrows(ArithmeticException.class, () -> tape.evaluate(new double[] {0.5}));
        assertEquals(
                "output 0 has no finite value: x = 0.5 m is outside the table k_c; allowed are 1 m"
                        + " to 2 m (with x = 0.5 m)",
                e.getMessage().replace('\u00A0', ' '));
    }

    @Example
    void theDerivativeIsTheSlopeAndTheMeanAtARow() {
        Quantity x = Quantity.given("x", 1.5, "", "", BOOK);
        Quantity y = table(Axis.linear("", 1, 2, 4), Axis.linear("", 0, 3, 5)).at(x);
        Tape tape = Tape.of(List.of(y), List.of(x));
        assertEquals(3, tape.gradient(new double[] {1.5})[0][0]);
        assertEquals(2, tape.gradient(new double[] {2})[0][0]);
        assertEquals(1, tape.gradient(new double[] {4})[0][0]);
        // y = x³ on logarithmic axes, y' = 3 x²; logarithms of numbers below 7 lose some digits.
        Quantity cube = table(Axis.logarithmic("", 1, 8), Axis.logarithmic("", 1, 512)).at(x);
        assertEquals(
                12, Tape.of(List.of(cube), List.of(x)).gradient(new double[] {2})[0][0], 1e-13);
    }

    @Example
    void tablesThatCannotBeReadAreRefused() {
        Axis y = Axis.linear("", 1, 2);
        assertThrows(IllegalArgumentException.class, () -> Axis.linear("", 1));
        assertThrows(IllegalArgumentException.class, () -> Axis.logarithmic("", 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Axis.linear("", 0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> table(Axis.linear("", 2, 2), y));
        assertThrows(IllegalArgumentException.class, () -> table(Axis.linear("", 1, 2, 3), y));
    }
}
