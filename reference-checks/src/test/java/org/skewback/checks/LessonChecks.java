package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.lesson.Exercise;
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
        return Map.of("Exercise", LessonChecks::drawn);
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
}
