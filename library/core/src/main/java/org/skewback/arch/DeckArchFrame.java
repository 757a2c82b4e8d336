package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Lane;
import org.skewback.frame.LineLoad;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Vector;

/**
 * A deck arch as a frame, with what was assumed in making it.
 *
 * <p>Global axes as in {@link org.skewback.frame}: x along the bridge from the left springing, y across, z
 * up from the springings. Names: ribs {@code L} (y &lt; 0) and {@code R}; panel points {@code rib L 3}, or
 * {@code upper L 3} and {@code lower L 3} for two chords; column heads {@code head L 0}; deck {@code deck
 * 0}.
 *
 * @param arch what it was made from
 * @param model the frame
 * @param panelPoints positions of the panel points of the ribs, from springing to springing, m
 * @param leftRib members of the left rib, chord by chord, from springing to springing
 * @param deck members of the deck, from left to right
 * @param assumptions what was assumed, in sentences for a sheet
 */
public record DeckArchFrame(
        DeckArch arch,
        FrameModel model,
        List<Double> panelPoints,
        List<List<String>> leftRib,
        List<String> deck,
        List<String> assumptions) {

    /**
     * Copies the lists.
     *
     * @param arch what it was made from
     * @param model the frame
     * @param panelPoints positions of the panel points of the ribs, m
     * @param leftRib members of the left rib, chord by chord
     * @param deck members of the deck
     * @param assumptions what was assumed
     */
    public DeckArchFrame {
        panelPoints = List.copyOf(panelPoints);
        leftRib = List.copyOf(leftRib);
        deck = List.copyOf(deck);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Makes the frame.
     *
     * @param arch the arch
     * @return the frame
     * @throws IllegalArgumentException if members of it would have no length
     */
    public static DeckArchFrame of(DeckArch arch) {
        return new DeckArchBuilder(arch).build();
    }

    /**
     * Gives the path of trains over the deck.
     *
     * @return the lane along the deck's axis
     */
    public Lane lane() {
        return Lane.along("track", model, deck, Vector.ZERO);
    }

    /**
     * Gives the weight of all members as a load case.
     *
     * @return the case, named {@code weight of the members}
     */
    public LoadCase weight() {
        return LoadCase.of("weight of the members", SelfWeight.standard());
    }

    /**
     * Gives a load uniform along the deck, over all of it or a part.
     *
     * @param name name of the case
     * @param intensity load per length, N/m, positive downward
     * @param from where it begins, from the left springing, m
     * @param to where it ends, m
     * @return the case
     * @throws IllegalArgumentException if the range is empty or reaches off the deck
     */
    public LoadCase onDeck(String name, double intensity, double from, double to) {
        double span = arch.axis().span();
        Require.within("begin of the load on the deck", from, 0, span, "m");
        Require.within("end of the load on the deck", to, 0, span, "m");
        if (!(to > from)) {
            throw Require.refused(
                    "end of the load on the deck", to, "m", "more than " + from + " m");
        }
        Vector down = new Vector(0, 0, -intensity);
        List<Double> ends = DeckArchBuilder.deckPoints(arch);
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < deck.size(); i++) {
            double begin = Math.max(from, ends.get(i));
            double end = Math.min(to, ends.get(i + 1));
            if (end > begin) {
                loads.add(
                        new LineLoad(
                                deck.get(i),
                                begin - ends.get(i),
                                end - ends.get(i),
                                down,
                                down,
                                LoadAxes.GLOBAL));
            }
        }
        return new LoadCase(name, loads);
    }
}
