package org.skewback.wind;

import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.InterpolationTable.Axis;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/**
 * Static wind force on a bridge deck per length of bridge; EN 1991-1-4:2005, section 8 (from memory).
 *
 * <p>The deck does not swing in the wind here: where it is slender or light, its response is a matter of
 * its own (vortices, galloping, flutter).
 */
public final class DeckWind {

    /** How far above the rails a train adds to what meets the wind, m (8.3.1, from memory). */
    private static final double TRAIN = 4;

    private static final InterpolationTable ACROSS =
            new InterpolationTable(
                    "c_fx0",
                    "force coefficient of a deck across the bridge",
                    Axis.linear("", 0.5, 4),
                    Axis.linear("", 2.4, 1.3),
                    Source.standard("EN 1991-1-4:2005", "figure 8.3, from memory"));

    private DeckWind() {}

    /**
     * Gives the depth that meets the wind with a train on the bridge: that of the deck up to the rails, and
     * 4 m above them (8.3.1).
     *
     * @param belowRails depth of the deck up to the rails, greater than 0
     * @return d_tot
     * @throws IllegalArgumentException if the depth is not a positive length
     */
    public static Quantity depthWithTrain(Quantity belowRails) {
        Require.positive("depth of the deck up to the rails", belowRails, "m");
        return belowRails.plus(
                Quantity.given(
                        "h_v",
                        TRAIN,
                        "m",
                        "height of a train above the rails",
                        Source.standard("EN 1991-1-4:2005", "8.3.1, from memory")));
    }

    /**
     * Gives the basic velocity that goes with a train on the bridge, {@code min(v_b, 25 m/s)} (8.1, the
     * recommended value for railways).
     *
     * @param basicVelocity v_b, greater than 0
     * @return the velocity
     * @throws IllegalArgumentException if v_b is not positive or not a velocity
     */
    public static Quantity velocityWithTrain(Quantity basicVelocity) {
        Require.positive("basic wind velocity", basicVelocity, "m/s");
        return Quantity.min(
                basicVelocity,
                Quantity.given(
                        "v_b,v",
                        25,
                        "m/s",
                        "most basic velocity beside a train",
                        Source.standard("EN 1991-1-4:2005", "8.1, recommended, from memory")));
    }

    /**
     * Gives the force coefficient across the bridge, 2.4 up to b/d_tot = 0.5, 1.3 from 4 on, straight between
     * (figure 8.3, for decks with open parapets or being built, from memory).
     *
     * @param width b of the deck, greater than 0
     * @param depth d_tot that meets the wind, greater than 0
     * @return c_fx,0
     * @throws IllegalArgumentException if a length is not positive
     */
    public static Quantity acrossCoefficient(Quantity width, Quantity depth) {
        Require.positive("width of the deck", width, "m");
        Require.positive("depth that meets the wind", depth, "m");
        Quantity ratio = width.over(depth);
        return Quantity.max(Quantity.min(ratio, Quantity.of(4)), Quantity.of(0.5))
                .interpolated(ACROSS);
    }

    /**
     * Gives the force across per length, {@code f_x = q_p c_fx d_tot} (8.2 with 5.3).
     *
     * @param peakPressure q_p, greater than 0
     * @param coefficient c_fx, greater than 0
     * @param depth d_tot that meets the wind, greater than 0
     * @return the force per length of bridge
     * @throws IllegalArgumentException if an argument is not positive or has the wrong dimension
     */
    public static Quantity across(Quantity peakPressure, Quantity coefficient, Quantity depth) {
        Require.positive("peak pressure", peakPressure, "Pa");
        Require.positive("force coefficient", coefficient, "");
        Require.positive("depth that meets the wind", depth, "m");
        return peakPressure.times(coefficient).times(depth);
    }

    /**
     * Gives the force upward or downward per length, {@code f_z = ± 0.9 q_p b} (8.3.3, the simple rule), as
     * its magnitude; it stands b/4 off the middle of the deck.
     *
     * @param peakPressure q_p, greater than 0
     * @param width b of the deck, greater than 0
     * @return the force per length of bridge
     * @throws IllegalArgumentException if an argument is not positive or has the wrong dimension
     */
    public static Quantity upward(Quantity peakPressure, Quantity width) {
        Require.positive("peak pressure", peakPressure, "Pa");
        Require.positive("width of the deck", width, "m");
        return peakPressure.times(width).times(0.9);
    }
}
