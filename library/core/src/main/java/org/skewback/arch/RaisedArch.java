package org.skewback.arch;

import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.quantity.Quantity;

/**
 * A deck arch with its permanent load on it, ready for whatever else comes. Where its springings were
 * hinged at first and fixed later, the permanent load is carried by the hinged arch and all else meets the
 * fixed one.
 *
 * @param frame the arch that other loads meet
 * @param analysis the analysis of that
 * @param first the arch that carries the permanent load
 * @param permanent what the permanent load does to it
 */
record RaisedArch(
        DeckArchFrame frame,
        LinearAnalysis analysis,
        DeckArchFrame first,
        FrameSolution permanent) {

    private static final String PINNED_THEN_FIXED = "pinned, then fixed";

    /** Raises the arch of an input whose hinges may also be {@code pinned, then fixed}. */
    static RaisedArch of(
            DeckArchInput input, String hinges, Quantity weightFactor, Quantity onDeck) {
        boolean later = hinges.equals(PINNED_THEN_FIXED);
        DeckArchRoutine.Input raised =
                loaded(input, later ? "two-hinged" : hinges, weightFactor, onDeck);
        DeckArchFrame first = DeckArchFrame.of(InputDeckArch.of(raised));
        LinearAnalysis firstAnalysis = LinearAnalysis.of(first.model());
        FrameSolution permanent = firstAnalysis.solve(InputDeckArch.load(raised, first));
        if (!later) {
            return new RaisedArch(first, firstAnalysis, first, permanent);
        }
        DeckArchFrame fixed =
                DeckArchFrame.of(InputDeckArch.of(loaded(input, "fixed", weightFactor, onDeck)));
        return new RaisedArch(fixed, LinearAnalysis.of(fixed.model()), first, permanent);
    }

    private static DeckArchRoutine.Input loaded(
            DeckArchInput input, String springings, Quantity weightFactor, Quantity onDeck) {
        return input.arch(springings, weightFactor, onDeck, Quantity.of(0, "m"), input.span());
    }
}
