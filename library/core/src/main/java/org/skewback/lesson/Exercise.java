package org.skewback.lesson;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.quantity.Unit;

/**
 * An exercise whose numbers are drawn from a seed and whose answer is judged step by step.
 *
 * <pre>{@code
 * Exercise exercise = Exercise.titled("Thrust of an even load")
 *     .task("A parabolic arch carries the load w, even on plan. What does it push with?")
 *     .draw("L", 80, 200, 10, "m", "span")
 *     .draw("f", 15, 40, 5, "m", "rise")
 *     .draw("w", 60, 120, 5, "kN/m", "load on plan")
 *     .step("H", "kN", "thrust",
 *         of -> Parabola.thrust(of.get("w"), of.get("L"), of.get("f")), 0.005,
 *         "The thrust is the moment of a beam in mid-span over the rise.");
 * ExercisePaper mine = exercise.forSeed(2107);
 * mine.judge("12 500 kN");
 * }</pre>
 */
public final class Exercise {

    private static final int MOST_VALUES = 100_000;

    private final String title;
    private final String task;
    private final List<Drawn> drawn;
    private final List<Step> steps;

    /** A number to be drawn: from + k · spacing. */
    private record Drawn(
            String symbol,
            BigDecimal from,
            BigDecimal spacing,
            int count,
            String unit,
            String note) {}

    private Exercise(String title, String task, List<Drawn> drawn, List<Step> steps) {
        this.title = title;
        this.task = task;
        this.drawn = List.copyOf(drawn);
        this.steps = List.copyOf(steps);
    }

    /**
     * Starts an exercise.
     *
     * @param title its title
     * @return an exercise that draws nothing and asks for nothing yet
     * @throws IllegalArgumentException if the title is blank
     */
    public static Exercise titled(String title) {
        return new Exercise(words("title of the exercise", title), "", List.of(), List.of());
    }

    /**
     * Says what is to be done.
     *
     * @param text in words; an empty line parts two paragraphs
     * @return the exercise with this task
     * @throws IllegalArgumentException if the text is blank
     */
    public Exercise task(String text) {
        return new Exercise(title, words("task of the exercise", text), drawn, steps);
    }

    /**
     * Draws a number, {@code from + k · spacing}, each k alike.
     *
     * @param symbol its symbol; no other number of the exercise may have it
     * @param from least value in that unit
     * @param to greatest value in that unit, more than {@code from}; where the spacing does not fall
     *     on it, the last value below it is the greatest
     * @param spacing distance of two values, greater than 0
     * @param unit such as {@code kN/m}; empty for plain numbers
     * @param note what it is, in words
     * @return the exercise that draws it too
     * @throws IllegalArgumentException if the symbol is taken, a step was asked for already, the unit
     *     is not known or a reading in °C, or the range has fewer than 2 or more than 100 000 values
     */
    public Exercise draw(
            String symbol, double from, double to, double spacing, String unit, String note) {
        requireFree(symbol);
        requireDifference(symbol, unit);
        if (!steps.isEmpty()) {
            throw new IllegalArgumentException(
                    "number \"" + symbol + "\" is drawn after a step; draw all numbers first");
        }
        if (!(Double.isFinite(from) && Double.isFinite(to) && spacing > 0 && from + spacing <= to)
                || (to - from) / spacing >= MOST_VALUES) {
            throw new IllegalArgumentException(
                    "number \""
                            + symbol
                            + "\" is drawn from "
                            + from
                            + " to "
                            + to
                            + " every "
                            + spacing
                            + "; allowed is a range of 2 to "
                            + MOST_VALUES
                            + " values");
        }
        BigDecimal low = BigDecimal.valueOf(from);
        BigDecimal distance = BigDecimal.valueOf(spacing);
        int count =
                BigDecimal.valueOf(to)
                                .subtract(low)
                                .divide(distance, 0, RoundingMode.FLOOR)
                                .intValueExact()
                        + 1;
        List<Drawn> more = new ArrayList<>(drawn);
        more.add(new Drawn(symbol, low, distance, count, unit, note));
        return new Exercise(title, task, more, steps);
    }

    /**
     * Asks for a number. Its formula may use whatever was drawn, and the steps before; when an
     * earlier answer is wrong and this one follows from it rightly, the judgement says so.
     *
     * @param symbol its symbol; no other number of the exercise may have it
     * @param unit unit in which it is asked for; an answer may come in any of its dimension
     * @param note what it is, in words
     * @param solution formula that gives it from the numbers known so far
     * @param tolerance how far an answer may lie off, as a part of the right one, greater than 0 and
     *     at most 0.1; 0.005 lets three figures pass
     * @param hint what to look at when the answer differs
     * @return the exercise that asks for it too
     * @throws IllegalArgumentException if the symbol is taken, a text is blank, the unit is not known
     *     or a reading in °C, or the tolerance out of range
     */
    public Exercise step(
            String symbol,
            String unit,
            String note,
            Function<Numbers, Quantity> solution,
            double tolerance,
            String hint) {
        requireFree(symbol);
        requireDifference(symbol, unit);
        if (!(tolerance > 0 && tolerance <= 0.1)) {
            throw new IllegalArgumentException(
                    "tolerance of step "
                            + symbol
                            + " is "
                            + tolerance
                            + "; allowed is greater than 0 and at most 0.1");
        }
        List<Step> more = new ArrayList<>(steps);
        more.add(
                new Step(
                        symbol,
                        unit,
                        words("note of step " + symbol, note),
                        solution,
                        tolerance,
                        words("hint of step " + symbol, hint),
                        List.of()));
        return new Exercise(title, task, drawn, more);
    }

    /**
     * Names a slip that is often made in the last step, so that whoever makes it is told.
     *
     * @param result formula that gives what comes out of the slip
     * @param hint what to say then
     * @return the exercise that knows the slip too
     * @throws IllegalArgumentException if there is no step yet or the hint is blank
     */
    public Exercise slip(Function<Numbers, Quantity> result, String hint) {
        if (steps.isEmpty()) {
            throw new IllegalArgumentException(
                    "a slip is named before any step of \"" + title + "\"");
        }
        int last = steps.size() - 1;
        List<Step> more = new ArrayList<>(steps);
        more.set(last, steps.get(last).with(new Step.Slip(result, words("hint of a slip", hint))));
        return new Exercise(title, task, drawn, more);
    }

    /**
     * Draws the numbers.
     *
     * @param seed any whole number; each gives a paper of its own, as far as the ranges reach
     * @return the exercise with its numbers
     * @throws IllegalArgumentException if there is no task or no step, or a formula gives a quantity
     *     of another dimension than its step asks for
     */
    public ExercisePaper forSeed(long seed) {
        words("task of exercise \"" + title + "\"", task);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("exercise \"" + title + "\" asks for nothing");
        }
        SeededNumbers numbers = new SeededNumbers(seed);
        Source source = Source.assumption("drawn for seed " + seed);
        Map<String, Quantity> known = new LinkedHashMap<>();
        for (Drawn one : drawn) {
            double value = numbers.within(one.from(), one.spacing(), one.count());
            known.put(
                    one.symbol(),
                    Quantity.given(one.symbol(), value, one.unit(), one.note(), source));
        }
        return ExercisePaper.of(title, task, seed, new Numbers(known), steps);
    }

    private void requireFree(String symbol) {
        Set<String> taken = new HashSet<>();
        Stream.concat(drawn.stream().map(Drawn::symbol), steps.stream().map(Step::symbol))
                .forEach(taken::add);
        if (symbol.isBlank() || taken.contains(symbol)) {
            throw new IllegalArgumentException(
                    "symbol \"" + symbol + "\" is blank or taken in exercise \"" + title + "\"");
        }
    }

    /** A reading in °C has no part of itself by which an answer could differ. */
    private static void requireDifference(String symbol, String unit) {
        if (Unit.of(unit).isReading()) {
            throw new IllegalArgumentException(
                    "number \"" + symbol + "\" is in °C; allowed is a difference in K");
        }
    }

    private static String words(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is blank");
        }
        return text;
    }

    @Override
    public String toString() {
        return title + ", " + steps.size() + (steps.size() == 1 ? " step" : " steps");
    }
}
