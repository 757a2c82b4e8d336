package org.skewback.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.skewback.quantity.Quantity;

/**
 * A number that an exercise asks for.
 *
 * @param symbol its symbol
 * @param unit unit in which it is asked for; any of its dimension is taken
 * @param note what it is, in words
 * @param solution formula that gives it from the numbers drawn and the steps before
 * @param tolerance how far an answer may lie off, as a part of the right one; 0.005 lets three
 *     figures pass
 * @param hint what to look at when the answer differs
 * @param slips slips that are often made here
 */
record Step(
        String symbol,
        String unit,
        String note,
        Function<Numbers, Quantity> solution,
        double tolerance,
        String hint,
        List<Slip> slips) {

    /**
     * A slip that is often made.
     *
     * @param result formula that gives what comes out of it
     * @param hint what to say to whoever made it
     */
    record Slip(Function<Numbers, Quantity> result, String hint) {}

    Step {
        slips = List.copyOf(slips);
    }

    Step with(Slip slip) {
        List<Slip> more = new ArrayList<>(slips);
        more.add(slip);
        return new Step(symbol, unit, note, solution, tolerance, hint, more);
    }

    /** Works the step out and names it. */
    Quantity solve(Numbers known) {
        return solution.apply(known).named(symbol, unit, note);
    }

    Judgement.Mark mark(Judgement.Verdict verdict, String answer, String hint) {
        return new Judgement.Mark(symbol, note, verdict, answer, hint);
    }

    boolean agrees(Quantity answer, Quantity right) {
        return Math.abs(answer.si() - right.si()) <= tolerance * Math.abs(right.si());
    }
}
