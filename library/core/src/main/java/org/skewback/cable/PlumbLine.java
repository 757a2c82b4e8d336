package org.skewback.cable;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A cable whose ends lie above each other, or all but: how it hangs without horizontal force. How far it
 * drops grows with the force at its start, in straight pieces: L₀/EA per force where it is pulled
 * straight, and 2/w more where it is folded, which moves the fold. So the force is found by a formula,
 * piece by piece: for a bar hung by its upper end and pulled by P at the lower, h = L₀ + (P L₀ + wL₀²/2)/EA.
 */
final class PlumbLine {

    private PlumbLine() {}

    /**
     * Finds the force at the start.
     *
     * @param cable the cable
     * @param loads loads on it, from the start to the end
     * @param rise height of the end above the start, m
     * @return V, N, positive where the support at the start holds the cable up
     * @throws IllegalArgumentException if a part without weight is slack, so that nothing says where it
     *     is
     */
    static double startVertical(Cable cable, List<CableLoad> loads, double rise) {
        double[] turns = turns(cable, loads);
        double range = turns[turns.length - 1] - turns[0];
        double beyond = range == 0 ? 1 : range;
        for (int piece = 0; piece <= turns.length; piece++) {
            double from = piece == 0 ? Double.NEGATIVE_INFINITY : turns[piece - 1];
            double to = piece == turns.length ? Double.POSITIVE_INFINITY : turns[piece];
            if (from == to) {
                continue;
            }
            double inside =
                    piece == 0
                            ? to - beyond
                            : piece == turns.length ? from + beyond : (from + to) / 2;
            Catenary there = HangingCable.follow(cable, loads, 0, inside);
            double force = inside + (-rise - there.drop()) / there.dropByVertical();
            if (force <= to) {
                if (force < from && cable.weightPerLength() == 0) {
                    break;
                }
                return Math.max(from, force);
            }
        }
        throw Require.refused(
                "unstressed length of an upright cable without weight",
                cable.unstressedLength(),
                "m",
                "one that leaves no part of it slack over a height of " + Math.abs(rise) + " m");
    }

    /** Forces at the start with which the force is 0 at a load or an end, in rising order. */
    private static double[] turns(Cable cable, List<CableLoad> loads) {
        DoubleStream.Builder turns = DoubleStream.builder().add(0);
        double sum = 0;
        double at = 0;
        for (CableLoad load : loads) {
            sum += cable.weightPerLength() * (load.at() - at);
            at = load.at();
            turns.add(sum);
            sum += load.force();
            turns.add(sum);
        }
        return turns.add(sum + cable.weightPerLength() * (cable.unstressedLength() - at))
                .build()
                .sorted()
                .toArray();
    }
}
