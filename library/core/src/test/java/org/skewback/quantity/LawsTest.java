package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws that hold for every formula, whatever it calculates. */
class LawsTest {

    /** As in {@link PrintedFormulaTest}: a few units in the last place an operation. */
    private static final double ROUNDING = 1e-11;

    /** A formula that says something about nature holds in every set of units. */
    @Property(tries = 1000)
    void scalingTheBaseUnitsScalesTheResultByItsDimension(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int size,
            @ForAll @DoubleRange(min = 0.5, max = 2) double length,
            @ForAll @DoubleRange(min = 0.5, max = 2) double mass,
            @ForAll @DoubleRange(min = 0.5, max = 2) double time) {
        RandomGraph graph = new RandomGraph(seed);
        Quantity result = graph.grow(size);
        List<Quantity> givens = List.copyOf(graph.givens().values());
        double[] scaled = new double[givens.size()];
        for (int i = 0; i < scaled.length; i++) {
            Quantity given = givens.get(i);
            scaled[i] = given.si() * scale(given.dimension(), length, mass, time);
        }
        double found = Tape.of(List.of(result), givens).evaluate(scaled)[0];
        double expected = result.si() * scale(result.dimension(), length, mass, time);
        assertEquals(1, found / expected, ROUNDING, result.worked().text());
    }

    private static double scale(Dimension dimension, double length, double mass, double time) {
        double[] bases = {length, mass, time, 1};
        double scale = 1;
        for (int i = 0; i < bases.length; i++) {
            Rational power = dimension.powers().get(i);
            scale *= StrictMath.pow(bases[i], (double) power.numerator() / power.denominator());
        }
        return scale;
    }

    @Property(tries = 500)
    void orderDoesNotMatterWhereItMustNot(@ForAll long seed, @ForAll @IntRange(max = 10) int size) {
        RandomGraph graph = new RandomGraph(seed);
        Quantity x = graph.grow(size);
        Quantity y = graph.grow(size);
        assertEquals(x.times(y), y.times(x));
        Quantity alike = y.over(y).times(3).times(x);
        assertEquals(x.plus(alike), alike.plus(x));
        assertEquals(Quantity.min(x, alike), Quantity.min(alike, x));
        assertEquals(Quantity.max(x, alike), Quantity.max(alike, x));
        assertEquals(x.minus(alike), alike.minus(x).negated());
        assertEquals(Quantity.sum(List.of(x, alike)), Quantity.sum(List.of(alike, x)));
    }

    /** Two roundings, of the product and of the quotient: two units in the last place at most. */
    @Property(tries = 200)
    void everyUnitThereAndBackKeepsTheNumber(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
        assertTrue(UnitTable.symbols().size() > 150);
        for (String symbol : UnitTable.symbols()) {
            if (!Unit.of(symbol).isReading()) {
                double back = Quantity.of(value, symbol).in(symbol);
                assertEquals(value, back, 2 * Math.ulp(value), symbol);
            }
        }
    }

    @Property(tries = 500)
    void anotherUnitIsTheSameQuantity(@ForAll long seed, @ForAll @IntRange(max = 10) int size) {
        Quantity x = new RandomGraph(seed).grow(size);
        String base = x.dimension().isNone() ? "%" : x.dimension().toString();
        assertEquals(x, x.inUnit(base));
        assertEquals(base, x.inUnit(base).unit().symbol());
        assertEquals(x, x.inUnit(base).inUnit(x.unit().symbol()));
    }
}
