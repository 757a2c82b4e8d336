package org.skewback.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.skewback.lesson.Judgement.Verdict;
import org.skewback.quantity.Quantity;

class ExerciseTest {

    /** Three steps that follow from each other: R_v = wL/2, M = wL²/8, H = M/f. */
    private static final Exercise BEAM_TO_ARCH =
            Exercise.titled("From beam to arch")
                    .task("An even load stands on a parabolic arch.")
                    .draw("L", 40, 100, 5, "m", "span")
                    .draw("f", 8, 12, 0.5, "m", "rise")
                    .draw("w", 10, 30, 1, "kN/m", "load on plan")
                    .step(
                            "V",
                            "kN",
                            "upward force at a springing",
                            of -> of.get("w").times(of.get("L")).over(2),
                            0.005,
                            "Each springing carries half of the load.")
                    .slip(
                            of -> of.get("w").times(of.get("L")),
                            "This is the whole load; two springings share it.")
                    .step(
                            "M",
                            "kN·m",
                            "moment of a beam at mid-span",
                            of -> of.get("V").times(of.get("L")).over(4),
                            0.005,
                            "Half the load stands at a quarter of the span on average.")
                    .step(
                            "H",
                            "kN",
                            "thrust",
                            of -> of.get("M").over(of.get("f")),
                            0.005,
                            "The thrust is the moment of the beam over the rise.");

    private static List<Verdict> verdicts(Judgement judgement) {
        return judgement.marks().stream().map(Judgement.Mark::verdict).toList();
    }

    /** An answer in its unit with a number of figures that a pocket calculator gives. */
    private static String written(Quantity quantity, double factor) {
        double value = quantity.in(quantity.unit().symbol()) * factor;
        return String.format(java.util.Locale.ROOT, "%.6g", value) + " " + quantity.unit().symbol();
    }

    @Test
    @DisplayName("The generator gives the numbers of SplitMix64, worked out apart in Python")
    void generator() {
        SeededNumbers zero = new SeededNumbers(0);
        assertEquals(0xe220a8397b1dcdafL, zero.next());
        assertEquals(0x6e789e6aa1b965f4L, zero.next());
        assertEquals(0x06c45d188009454fL, zero.next());
        SeededNumbers other = new SeededNumbers(1234567);
        assertEquals("6457827717110365317", Long.toUnsignedString(other.next()));
        assertEquals("3203168211198807973", Long.toUnsignedString(other.next()));
        assertEquals("9817491932198370423", Long.toUnsignedString(other.next()));
    }

    @Test
    @DisplayName("Seed 1234567 draws the numbers that the generator says, on any machine")
    void drawn() {
        Numbers numbers = BEAM_TO_ARCH.forSeed(1234567).drawn();
        // Of 13, 9 and 21 values: the unsigned numbers above modulo the counts, by Python.
        assertEquals(40 + 5 * 7, numbers.get("L").in("m"));
        assertEquals(8 + 0.5 * 7, numbers.get("f").in("m"));
        assertEquals(10 + 3, numbers.get("w").in("kN/m"));
    }

    @Test
    @DisplayName("Every value of a range comes, its ends too, and none beyond")
    void range() {
        Exercise die =
                Exercise.titled("Die")
                        .task("Say it again.")
                        .draw("n", 0.1, 0.6, 0.1, "m", "points")
                        .step("m", "m", "the same", of -> of.get("n").times(1), 0.01, "As it is.");
        Set<Double> seen =
                IntStream.range(0, 200)
                        .mapToObj(seed -> die.forSeed(seed).drawn().get("n").in("m"))
                        .collect(Collectors.toCollection(HashSet::new));
        assertEquals(Set.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6), seen);
    }

    @Test
    @DisplayName("The same seed gives the same paper, another seed another one")
    void seeds() {
        assertEquals(BEAM_TO_ARCH.forSeed(5).toString(), BEAM_TO_ARCH.forSeed(5).toString());
        long papers =
                IntStream.range(0, 100)
                        .mapToObj(seed -> BEAM_TO_ARCH.forSeed(seed).drawn().values().toString())
                        .distinct()
                        .count();
        assertTrue(papers > 90, papers + " of 100");
    }

    @Test
    @DisplayName("Right answers are right in any unit and to three figures, not to two")
    void right() {
        ExercisePaper paper = BEAM_TO_ARCH.forSeed(3);
        List<Quantity> answers = paper.answers();
        assertTrue(paper.judge(answers.toArray(Quantity[]::new)).isRight());
        Quantity megas = answers.get(0).inUnit("MN");
        assertTrue(paper.judge(megas, answers.get(1), answers.get(2)).isRight());
        assertEquals(
                List.of(Verdict.RIGHT, Verdict.OPEN, Verdict.OPEN),
                verdicts(paper.judge(written(answers.get(0), 1.0049))));
        assertEquals(
                Verdict.DIFFERS, verdicts(paper.judge(written(answers.get(0), 1.0051))).get(0));
    }

    @Test
    @DisplayName("A known slip gets its own hint, and what follows from it rightly is not blamed")
    void slip() {
        ExercisePaper paper = BEAM_TO_ARCH.forSeed(8);
        List<String> doubled = paper.answers().stream().map(answer -> written(answer, 2)).toList();
        Judgement judgement = paper.judge(doubled.toArray(String[]::new));
        assertEquals(
                List.of(Verdict.DIFFERS, Verdict.FOLLOWS, Verdict.FOLLOWS), verdicts(judgement));
        assertEquals(
                "This is the whole load; two springings share it.",
                judgement.firstToLookAt().orElseThrow().hint());
        assertFalse(judgement.isRight());
    }

    @Test
    @DisplayName("The hint stands at the first step that differs, whatever comes after")
    void firstThatDiffers() {
        ExercisePaper paper = BEAM_TO_ARCH.forSeed(8);
        List<Quantity> right = paper.answers();
        Judgement judgement =
                paper.judge(
                        written(right.get(0), 1),
                        written(right.get(1), 1.37),
                        written(right.get(2), 1.9));
        assertEquals(List.of(Verdict.RIGHT, Verdict.DIFFERS, Verdict.DIFFERS), verdicts(judgement));
        assertEquals("M", judgement.firstToLookAt().orElseThrow().symbol());
        assertTrue(judgement.toString().contains("Half the load stands at a quarter"));
        assertFalse(judgement.toString().contains("over the rise"));
    }

    @Test
    @DisplayName("A sign, a power of ten and a factor are named")
    void looks() {
        ExercisePaper paper = BEAM_TO_ARCH.forSeed(2);
        Quantity v = paper.answers().get(0);
        assertTrue(paper.judge(v.negated()).marks().get(0).hint().startsWith("The size is right"));
        assertTrue(
                paper.judge(v.times(1000))
                        .marks()
                        .get(0)
                        .hint()
                        .startsWith("The digits are right"));
        assertTrue(paper.judge(v.over(4)).marks().get(0).hint().startsWith("This is a part"));
        assertEquals(
                "Each springing carries half of the load.",
                paper.judge(v.times(1.3)).marks().get(0).hint());
    }

    @Test
    @DisplayName("A wrong unit, a missing unit and what is no number are told kindly, not thrown")
    void kindly() {
        ExercisePaper paper = BEAM_TO_ARCH.forSeed(2);
        Judgement kind = paper.judge("12 m");
        assertEquals(Verdict.OTHER_KIND, kind.marks().get(0).verdict());
        assertTrue(kind.toString().contains("asked for in kN"));
        Judgement bare = paper.judge("1200");
        assertEquals(Verdict.UNREADABLE, bare.marks().get(0).verdict());
        assertTrue(bare.toString().contains("has no unit"));
        Judgement words = paper.judge("about half");
        assertEquals(Verdict.UNREADABLE, words.marks().get(0).verdict());
        assertTrue(words.toString().contains("could not be read"));
        assertEquals(Verdict.UNREADABLE, paper.judge("12 kilofoo").marks().get(0).verdict());
    }

    @Test
    @DisplayName("No answer asks for the first step; a blank one leaves its step open")
    void open() {
        ExercisePaper paper = BEAM_TO_ARCH.forSeed(2);
        assertTrue(
                paper.judge().toString().endsWith("Next is step 1, upward force at a springing."));
        String m = written(paper.answers().get(1), 1);
        assertEquals(
                List.of(Verdict.OPEN, Verdict.RIGHT, Verdict.OPEN), verdicts(paper.judge("", m)));
        assertThrows(
                IllegalArgumentException.class, () -> paper.judge("1 kN", "1 kN", "1 kN", "1 kN"));
    }

    @Test
    @DisplayName("The solution shows every step with its formula, folded, and escapes what is said")
    void solution() {
        HiddenAnswer solution = BEAM_TO_ARCH.forSeed(2).solution();
        String html = solution.display().get("text/html");
        assertTrue(html.startsWith("<details><summary>Solution of &quot;From beam to arch"));
        assertTrue(html.contains("H ="), html);
        String escaped =
                HiddenAnswer.under("a < b")
                        .saying("costs $5, <b>*really*</b>")
                        .display()
                        .get("text/html");
        assertEquals(
                "<details><summary>a &lt; b</summary><p>costs &#36;5,"
                        + " &lt;b&gt;*really*&lt;/b&gt;</p></details>",
                escaped);
        assertTrue(
                HiddenAnswer.under("a")
                        .saying("*b*")
                        .display()
                        .get(HiddenAnswer.TYPE)
                        .contains("\\\\*b"));
    }

    @Test
    @DisplayName("What makes no exercise is refused, by name")
    void refused() {
        Exercise started = Exercise.titled("t").task("do").draw("L", 1, 2, 1, "m", "span");
        for (Runnable wrong :
                Arrays.<Runnable>asList(
                        () -> Exercise.titled(" "),
                        () -> started.draw("L", 1, 2, 1, "m", "again"),
                        () -> started.draw("x", 1, 1, 1, "m", "one value"),
                        () -> started.draw("x", 1, Double.NaN, 1, "m", "no range"),
                        () -> started.draw("x", 0, 1, 1e-9, "m", "too many"),
                        () -> started.draw("T", 1, 2, 1, "°C", "a reading"),
                        () -> started.slip(of -> of.get("L"), "too early"),
                        () -> started.forSeed(1),
                        () -> started.step("y", "m", "n", of -> of.get("L"), 0, "h"),
                        () -> started.step("y", "m", "n", of -> of.get("q"), 0.1, "h").forSeed(1),
                        () ->
                                started.step("y", "kN", "n", of -> of.get("L"), 0.1, "h")
                                        .forSeed(1))) {
            RuntimeException refusal = assertThrows(RuntimeException.class, wrong::run);
            assertNotEquals("", String.valueOf(refusal.getMessage()));
        }
    }
}
