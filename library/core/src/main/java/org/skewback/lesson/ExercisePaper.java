package org.skewback.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.skewback.display.Displayable;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/** An exercise with its numbers drawn: shows the task, judges answers, and keeps the solution. */
public final class ExercisePaper implements Displayable {

    private final String title;
    private final String task;
    private final long seed;
    private final Numbers drawn;
    private final List<Step> steps;
    private final Numbers solved;

    private ExercisePaper(
            String title, String task, long seed, Numbers drawn, List<Step> steps, Numbers solved) {
        this.title = title;
        this.task = task;
        this.seed = seed;
        this.drawn = drawn;
        this.steps = steps;
        this.solved = solved;
    }

    static ExercisePaper of(String title, String task, long seed, Numbers drawn, List<Step> steps) {
        Numbers solved = drawn;
        for (Step step : steps) {
            solved = solved.with(step.symbol(), step.solve(solved));
        }
        return new ExercisePaper(title, task, seed, drawn, List.copyOf(steps), solved);
    }

    /**
     * Gives the title of the exercise.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * Gives the seed that the numbers were drawn from.
     *
     * @return the seed
     */
    public long seed() {
        return seed;
    }

    /**
     * Gives the numbers drawn.
     *
     * @return the quantities by symbol
     */
    public Numbers drawn() {
        return drawn;
    }

    /**
     * Gives the right answers.
     *
     * @return the quantities of the steps, in order
     */
    public List<Quantity> answers() {
        return steps.stream().map(step -> solved.get(step.symbol())).toList();
    }

    /**
     * Judges answers written as text, such as {@code "12 500 kN"}. What cannot be read, or is of
     * another kind, is judged too and not thrown.
     *
     * @param answers one for each step, in order; those that are missing or blank are still open
     * @return the judgement
     * @throws IllegalArgumentException if there are more answers than steps
     */
    public Judgement judge(String... answers) {
        requireRoom(answers.length);
        List<Given> given = new ArrayList<>();
        for (int i = 0; i < answers.length; i++) {
            given.add(read(steps.get(i), answers[i]));
        }
        return judged(given);
    }

    /**
     * Judges answers.
     *
     * @param answers one for each step, in order; those that are missing are still open
     * @return the judgement
     * @throws IllegalArgumentException if there are more answers than steps
     */
    public Judgement judge(Quantity... answers) {
        requireRoom(answers.length);
        return judged(Arrays.stream(answers).map(Given::of).toList());
    }

    /**
     * Judges no answer at all, and so says what is asked first.
     *
     * @return the judgement, with every step open
     */
    public Judgement judge() {
        return judged(List.of());
    }

    private void requireRoom(int answers) {
        if (answers > steps.size()) {
            throw new IllegalArgumentException(
                    answers
                            + " answers are given; exercise \""
                            + title
                            + "\" asks for "
                            + steps.size());
        }
    }

    /** What somebody answered: a quantity, or why it is none, or nothing. */
    private record Given(List<Quantity> quantity, String trouble) {
        static Given of(Quantity quantity) {
            return new Given(List.of(quantity), "");
        }

        static Given trouble(String why) {
            return new Given(List.of(), why);
        }
    }

    private static Given read(Step step, String text) {
        if (text.isBlank()) {
            return Given.trouble("");
        }
        try {
            Quantity answer = Quantity.parse(text.strip());
            boolean bare = answer.dimension().isNone() && answer.unit().symbol().isEmpty();
            if (bare && !Unit.of(step.unit()).dimension().isNone()) {
                return Given.trouble(
                        "The answer "
                                + text.strip()
                                + " has no unit. Write it with one, such as "
                                + step.unit()
                                + ": half of all slips show in the unit.");
            }
            return Given.of(answer);
        } catch (IllegalArgumentException e) {
            return Given.trouble(
                    "This could not be read: "
                            + e.getMessage()
                            + ". Write a number and a unit, such as 12.5 "
                            + step.unit()
                            + ".");
        }
    }

    private Judgement judged(List<Given> given) {
        List<Judgement.Mark> marks = new ArrayList<>();
        Numbers answered = drawn;
        boolean astray = false;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Given one = i < given.size() ? given.get(i) : Given.trouble("");
            Judgement.Mark mark = mark(step, one, answered, astray);
            marks.add(mark);
            boolean usable = mark.verdict().isNumber();
            astray |= mark.verdict() == Judgement.Verdict.DIFFERS;
            answered =
                    answered.with(
                            step.symbol(),
                            usable ? one.quantity().get(0) : solved.get(step.symbol()));
        }
        return new Judgement(title, seed, marks);
    }

    private Judgement.Mark mark(Step step, Given given, Numbers answered, boolean astray) {
        if (given.quantity().isEmpty()) {
            return given.trouble().isEmpty()
                    ? step.mark(Judgement.Verdict.OPEN, "", "")
                    : step.mark(Judgement.Verdict.UNREADABLE, "", given.trouble());
        }
        Quantity answer = given.quantity().get(0);
        Quantity right = solved.get(step.symbol());
        String shown = Numerals.withUnit(answer);
        if (!answer.dimension().equals(right.dimension()) || answer.unit().isReading()) {
            return step.mark(
                    Judgement.Verdict.OTHER_KIND,
                    shown,
                    "This is another kind of quantity. "
                            + step.note()
                            + " is asked for in "
                            + (step.unit().isEmpty() ? "no unit" : step.unit())
                            + (step.unit().isEmpty() ? "." : ", or any other unit of that kind."));
        }
        if (step.agrees(answer, right)) {
            return step.mark(Judgement.Verdict.RIGHT, shown, "");
        }
        if (astray && step.agrees(answer, step.solution().apply(answered))) {
            return step.mark(
                    Judgement.Verdict.FOLLOWS,
                    shown,
                    "This follows rightly from an answer before it that differs.");
        }
        return step.mark(Judgement.Verdict.DIFFERS, shown, Hints.of(step, answer, right, answered));
    }

    /**
     * Gives the worked solution, hidden until asked for.
     *
     * @return the solution
     */
    public HiddenAnswer solution() {
        HiddenAnswer hidden = HiddenAnswer.under("Solution of \"" + title + "\", seed " + seed);
        for (Quantity answer : answers()) {
            hidden = hidden.saying(answer.note() + ":").showing(answer);
        }
        return hidden;
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        String numbers =
                drawn.values().values().stream()
                        .map(q -> "- " + Prose.escaped(q.note()) + ": $" + q.worked().latex() + "$")
                        .collect(Collectors.joining("\n"));
        String asked =
                steps.stream()
                        .map(
                                step ->
                                        "1. "
                                                + Prose.escaped(step.note())
                                                + ": $"
                                                + HiddenAnswer.symbol(solved.get(step.symbol()))
                                                + "$"
                                                + inUnit(step))
                        .collect(Collectors.joining("\n"));
        bundle.put(
                "text/markdown",
                "**Exercise: "
                        + Prose.escaped(title)
                        + "** (seed "
                        + seed
                        + ")\n\n"
                        + Prose.escaped(task)
                        + "\n\n"
                        + numbers
                        + "\n\nAsked for, in this order:\n\n"
                        + asked);
        bundle.put("text/plain", toString());
        return bundle;
    }

    private static String inUnit(Step step) {
        return step.unit().isEmpty() ? "" : ", in " + Prose.escaped(step.unit());
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("Exercise: " + title + " (seed " + seed + ")\n");
        text.append(task).append('\n');
        for (Quantity q : drawn.values().values()) {
            text.append("  ").append(q.worked().text()).append(", ").append(q.note()).append('\n');
        }
        text.append("Asked for, in this order:");
        for (Step step : steps) {
            text.append("\n  ")
                    .append(step.symbol())
                    .append(", ")
                    .append(step.note())
                    .append(step.unit().isEmpty() ? "" : ", in " + step.unit());
        }
        return text.toString();
    }
}
