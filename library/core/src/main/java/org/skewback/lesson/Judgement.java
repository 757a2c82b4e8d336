package org.skewback.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.skewback.display.Displayable;

/**
 * What answers to an exercise are worth, step by step, with a hint at the first that differs.
 *
 * @param title title of the exercise
 * @param seed seed that its numbers were drawn from
 * @param marks one for each step, in order
 */
public record Judgement(String title, long seed, List<Mark> marks) implements Displayable {

    /** What one answer is worth. */
    public enum Verdict {
        /** Within the tolerance of the right one. */
        RIGHT("right"),
        /** Not the right one, but what follows from an earlier answer that differs. */
        FOLLOWS("follows from the answer before"),
        /** Another number. */
        DIFFERS("differs"),
        /** A quantity of another dimension. */
        OTHER_KIND("another kind of quantity"),
        /** No quantity. */
        UNREADABLE("not readable"),
        /** Nothing was answered yet. */
        OPEN("still open");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /**
         * Says it in words.
         *
         * @return such as {@code right}
         */
        public String inWords() {
            return words;
        }

        boolean isNumber() {
            return this == RIGHT || this == FOLLOWS || this == DIFFERS;
        }
    }

    /**
     * The judgement of one step.
     *
     * @param symbol symbol of the step
     * @param note what was asked for, in words
     * @param verdict what the answer is worth
     * @param answer the answer as it was understood; empty where there is none
     * @param hint what to look at; empty where nothing is to be said
     */
    public record Mark(String symbol, String note, Verdict verdict, String answer, String hint) {}

    /**
     * Keeps a copy.
     *
     * @param title title of the exercise
     * @param seed seed that its numbers were drawn from
     * @param marks one for each step, in order
     */
    public Judgement {
        marks = List.copyOf(marks);
    }

    /**
     * Tells whether every step is right.
     *
     * @return whether nothing differs and nothing is open
     */
    public boolean isRight() {
        return marks.stream().allMatch(mark -> mark.verdict() == Verdict.RIGHT);
    }

    /**
     * Gives the first step that is not right though it was answered.
     *
     * @return its mark, or empty where no answer is wrong
     */
    public Optional<Mark> firstToLookAt() {
        return marks.stream()
                .filter(
                        mark ->
                                mark.verdict() != Verdict.RIGHT
                                        && mark.verdict() != Verdict.OPEN
                                        && mark.verdict() != Verdict.FOLLOWS)
                .findFirst();
    }

    private String summary() {
        if (isRight()) {
            return "All " + marks.size() + " right.";
        }
        Optional<Mark> wrong = firstToLookAt();
        if (wrong.isPresent()) {
            return "Look first at step " + step(wrong.get()) + ". " + wrong.get().hint();
        }
        return marks.stream()
                .filter(mark -> mark.verdict() == Verdict.OPEN)
                .findFirst()
                .map(mark -> "Next is step " + step(mark) + ".")
                .orElse("");
    }

    private String step(Mark mark) {
        return (marks.indexOf(mark) + 1) + ", " + mark.note();
    }

    /** Only the first that differs gets its hint: what comes after may mend itself. */
    private String line(Mark mark) {
        String shown = mark.answer().isEmpty() ? "" : mark.answer() + ", ";
        String hint = mark.verdict() == Verdict.FOLLOWS ? ". " + mark.hint() : "";
        return shown + mark.verdict().inWords() + hint;
    }

    @Override
    public Map<String, String> display() {
        StringBuilder text = new StringBuilder("**Judged: ");
        text.append(Prose.escaped(title)).append("** (seed ").append(seed).append(")\n\n");
        for (Mark mark : marks) {
            text.append("1. ")
                    .append(Prose.escaped(mark.note()))
                    .append(": ")
                    .append(Prose.escaped(line(mark)))
                    .append('\n');
        }
        text.append('\n').append(Prose.escaped(summary()));
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put("text/markdown", text.toString());
        bundle.put("text/plain", toString());
        return bundle;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("Judged: " + title + " (seed " + seed + ")");
        for (Mark mark : marks) {
            text.append("\n  ").append(mark.symbol()).append(": ").append(line(mark));
        }
        return text.append('\n').append(summary()).toString();
    }
}
