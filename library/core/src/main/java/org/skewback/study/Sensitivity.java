package org.skewback.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Tape;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;

/**
 * How much a result changes with each of some givens, the one that matters most first.
 *
 * <pre>{@code
 * Sensitivity study = Sensitivity.of(F, List.of(c, φ, z_w));
 * study.effects().get(0).perPercent();               // change of F for 1 % more of the first
 * sheet.table(study.table());
 * }</pre>
 *
 * @param result the result, at the present values of the givens
 * @param effects what each given does, the largest effect first
 */
public record Sensitivity(Quantity result, List<Effect> effects) implements Displayable {

    private static final double PERCENT = 0.01;

    /**
     * Keeps a copy of the list.
     *
     * @param result the result
     * @param effects what each given does, the largest effect first
     */
    public Sensitivity {
        effects = List.copyOf(effects);
    }

    /**
     * What one given does to the result.
     *
     * @param given the given
     * @param derivative derivative of the result by the given, exact to rounding, in the unit of the
     *     result over that of the given
     * @param perPercent derivative times 1 % of the given's size: change of the result for 1 % more;
     *     null for a reading in °C, whose zero is a convention
     * @param perDeviation derivative times the standard deviation of the given, or null where it has
     *     no distribution
     * @param step by how much the given is moved for the two values that follow: one standard
     *     deviation, or 1 % of its size where it has no distribution; 1 K for a reading in °C
     * @param lower the result, worked out again with the given less one step
     * @param higher the result, worked out again with the given one step more
     */
    public record Effect(
            Quantity given,
            Quantity derivative,
            @Nullable Quantity perPercent,
            @Nullable Quantity perDeviation,
            Quantity step,
            Quantity lower,
            Quantity higher) {

        /**
         * Gives the size by which effects are sorted, in SI base units.
         *
         * @return the larger change of the result by one step either way
         */
        private double size(Quantity result) {
            return Math.max(
                    Math.abs(lower.si() - result.si()), Math.abs(higher.si() - result.si()));
        }
    }

    /**
     * Works out the effect of 1 % of each given.
     *
     * @param result the result
     * @param givens at least one node on which it rests
     * @return the study
     * @throws IllegalArgumentException when there is no given, one is named twice, or the result
     *     does not rest on it
     * @throws ArithmeticException when the formula has no value one step away
     */
    public static Sensitivity of(Quantity result, List<Quantity> givens) {
        return of(result, givens, Uncertainty.none());
    }

    /**
     * Works out the effect of one standard deviation of each uncertain given.
     *
     * @param result the result
     * @param uncertainty at least one uncertain given on which the result rests; its correlations do
     *     not count here, where one given moves at a time
     * @return the study
     * @throws IllegalArgumentException when there is no given or the result does not rest on one
     * @throws ArithmeticException when the formula has no value one step away
     */
    public static Sensitivity of(Quantity result, Uncertainty uncertainty) {
        return of(result, uncertainty.givens(), uncertainty);
    }

    /**
     * Works out the effect of each given: one standard deviation where it has a distribution, else 1
     * %.
     *
     * @param result the result
     * @param givens at least one node on which it rests
     * @param uncertainty distributions of some of them
     * @return the study
     * @throws IllegalArgumentException when there is no given, one is named twice, or the result
     *     does not rest on it
     * @throws ArithmeticException when the formula has no value one step away
     */
    public static Sensitivity of(Quantity result, List<Quantity> givens, Uncertainty uncertainty) {
        String what = "the result " + result;
        if (givens.isEmpty()) {
            throw new IllegalArgumentException(
                    "the sensitivity of " + what + " has no givens; allowed are one or more");
        }
        Margin.requireReached(List.of(result), givens, what);
        Tape tape = Tape.of(List.of(result), givens);
        double[] present = givens.stream().mapToDouble(Quantity::si).toArray();
        double[] slopes = tape.gradient(present)[0];
        List<Effect> effects = new ArrayList<>();
        for (int i = 0; i < slopes.length; i++) {
            Quantity given = givens.get(i);
            boolean spreads = uncertainty.has(given);
            boolean reading = given.unit().isReading();
            double percent = reading ? 1 : PERCENT * Math.abs(present[i]);
            Unit ofSteps = Require.ofDifferences(given.unit());
            double step = spreads ? uncertainty.distribution(given).shape().deviation() : percent;
            Unit unit = result.unit();
            Unit ofChange = Require.ofDifferences(unit);
            effects.add(
                    new Effect(
                            given,
                            slope(slopes[i], ofChange, ofSteps),
                            reading ? null : Require.quantity(slopes[i] * percent, ofChange),
                            spreads ? Require.quantity(slopes[i] * step, ofChange) : null,
                            Require.quantity(step, ofSteps),
                            moved(tape, present, i, -step, unit),
                            moved(tape, present, i, step, unit)));
        }
        effects.sort(Comparator.comparingDouble((Effect e) -> e.size(result)).reversed());
        return new Sensitivity(result, effects);
    }

    private static Quantity moved(Tape tape, double[] present, int i, double step, Unit unit) {
        double[] values = present.clone();
        values[i] += step;
        return Require.quantity(tape.evaluate(values)[0], unit);
    }

    private static Quantity slope(double si, Unit result, Unit given) {
        if (given.symbol().isEmpty()) {
            return Require.quantity(si, result);
        }
        String above = result.symbol().isEmpty() ? "1" : bracketed(result.symbol());
        return Require.quantity(si, Unit.of(above + "/" + bracketed(given.symbol())));
    }

    private static String bracketed(String unit) {
        boolean simple = unit.codePoints().allMatch(c -> Character.isLetter(c) || c == '°');
        return simple ? unit : "(" + unit + ")";
    }

    /**
     * Gives the effects as a table.
     *
     * @return given, present value, derivative, change per 1 %, and, where any given has a
     *     distribution, its standard deviation and the change by it
     */
    public Table table() {
        List<Column> columns = new ArrayList<>();
        columns.add(
                Column.texts("given", effects.stream().map(e -> Require.name(e.given())).toList()));
        columns.add(Column.texts("value", effects.stream().map(e -> Words.of(e.given())).toList()));
        columns.add(
                Column.texts(
                        "derivative",
                        effects.stream().map(e -> Words.of(e.derivative())).toList()));
        columns.add(
                Column.texts(
                        "change per 1 % more",
                        effects.stream().map(e -> signed(e.perPercent())).toList()));
        if (effects.stream().anyMatch(e -> e.perDeviation() != null)) {
            columns.add(
                    Column.texts(
                            "standard deviation",
                            effects.stream()
                                    .map(e -> e.perDeviation() == null ? "–" : Words.of(e.step()))
                                    .toList()));
            columns.add(
                    Column.texts(
                            "change per standard deviation",
                            effects.stream().map(e -> signed(e.perDeviation())).toList()));
        }
        return new Table("Sensitivity of " + Require.name(result), columns);
    }

    private StudyView view() {
        return StudyView.titled("Sensitivity of " + Require.name(result))
                .table(table(), effects.stream().map(Effect::given).toList());
    }

    @Override
    public Map<String, String> display() {
        return view().figures(this).bundle();
    }

    /**
     * Writes the effects.
     *
     * @return a title and one line for each given
     */
    @Override
    public String toString() {
        return view().text();
    }

    static String signed(@Nullable Quantity change) {
        return change == null ? "–" : Words.signed(change);
    }
}
