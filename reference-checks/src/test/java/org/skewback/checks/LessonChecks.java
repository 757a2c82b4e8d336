package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.lesson.Exercise;
import org.skewback.lesson.ExercisePaper;
import org.skewback.lesson.Judgement;
import org.skewback.lesson.Numbers;
import org.skewback.quantity.Quantity;

/** Checks of {@code org.skewback.lesson}. */
public final class LessonChecks implements Subject {

    /** Makes the subject. */
    public LessonChecks() {}

    @Override
    public String topic() {
        return "lesson";
    }

    @Override
    public Map<String, Checked> routines() {
        return Map.of("Exercise", LessonChecks::drawn, "Exercise: judged", LessonChecks::judged);
    }

    /** Draws three numbers, each of so many values from 0 up. */
    private static Map<String, Quantity> drawn(Inputs in) {
        List<Quantity> counts = in.quantities("counts");
        Exercise exercise = Exercise.titled("Draw").task("Draw.");
        for (int i = 0; i < counts.size(); i++) {
            exercise = exercise.draw("n_" + i, 0, counts.get(i).si() - 1, 1, "", "number");
        }
        exercise = exercise.step("s", "", "sum", of -> of.get("n_0"), 0.01, "None.");
        Numbers numbers = exercise.forSeed(Long.parseLong(in.text("seed"))).drawn();
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < counts.size(); i++) {
            results.put("number " + (i + 1), numbers.get("n_" + i));
        }
        return results;
    }

    /** A simple beam of 8 m under 12 kN/m: its reaction, then its moment from the reaction. */
    private static Map<String, Quantity> judged(Inputs in) {
        Quantity load = Quantity.of(12, "kN/m").times(Quantity.of(8, "m"));
        ExercisePaper paper =
                Exercise.titled("Beam")
                        .task("Find reaction and moment.")
                        .draw("n", 0, 1, 1, "", "number that no step uses")
                        .step("V", "kN", "reaction", of -> load.over(2), 0.005, "Half the load.")
                        .slip(of -> load.times(0.75), "A slip.")
                        .step(
                                "M",
                                "kN·m",
                                "moment",
                                of -> of.get("V").times(Quantity.of(2, "m")),
                                0.005,
                                "A quarter.")
                        .forSeed(1);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("reaction", paper.answers().get(0));
        results.put("moment", paper.answers().get(1));
        if (in.has("answers")) {
            Judgement judgement = paper.judge(in.text("answers").split(",", -1));
            for (Judgement.Verdict verdict : Judgement.Verdict.values()) {
                results.put(
                        verdict.inWords(),
                        Quantity.of(
                                (double)
                                        judgement.marks().stream()
                                                .filter(mark -> mark.verdict() == verdict)
                                                .count()));
            }
            results.put("kind of hint", Quantity.of(kind(judgement.marks().get(0).hint())));
        }
        return results;
    }

    /** 0 none, 1 what to look at, 2 a slip, 3 a sign, 4 a power of ten, 5 a factor. */
    private static int kind(String hint) {
        if (hint.isEmpty()) {
            return 0;
        }
        if (hint.equals("A slip.")) {
            return 2;
        }
        if (hint.contains("the sign is not")) {
            return 3;
        }
        if (hint.contains("power of ten")) {
            return 4;
        }
        return hint.contains("look for a factor") ? 5 : 1;
    }
}
