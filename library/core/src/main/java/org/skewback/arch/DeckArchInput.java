package org.skewback.arch;

import java.util.List;
import org.skewback.quantity.Quantity;

/** The arch in the input of a routine that puts more on it than one load of the deck. */
interface DeckArchInput {

    String axis();

    Quantity span();

    Quantity rise();

    Quantity ribsAtCrown();

    Quantity ribsAtSpringings();

    Quantity chordSide();

    Quantity chordPlate();

    Quantity depthAtCrown();

    Quantity depthAtSpringings();

    Quantity postSide();

    Quantity postPlate();

    Quantity braceDiameter();

    Quantity braceWall();

    Quantity legSide();

    Quantity legPlate();

    Quantity beamWidth();

    Quantity beamHeight();

    Quantity beamPlate();

    Quantity deckArea();

    Quantity deckSecondMoment();

    Quantity deckSecondMomentAcross();

    Quantity deckTorsion();

    Quantity deckLevel();

    List<Quantity> columns();

    int heldBy();

    Quantity longestPanel();

    /**
     * Gives the arch with one load on its deck, as the routine of its forces takes it.
     *
     * @param springings {@code fixed} or {@code two-hinged}
     * @param weight weight of the members over that of their bare sections, at least 0
     * @param load load along a part of the deck
     * @param begin where that begins, from the left springing
     * @param end where it ends
     * @return the input of {@link DeckArchRoutine}
     */
    default DeckArchRoutine.Input arch(
            String springings, Quantity weight, Quantity load, Quantity begin, Quantity end) {
        return new DeckArchRoutine.Input(
                axis(),
                span(),
                rise(),
                springings,
                ribsAtCrown(),
                ribsAtSpringings(),
                chordSide(),
                chordPlate(),
                depthAtCrown(),
                depthAtSpringings(),
                postSide(),
                postPlate(),
                braceDiameter(),
                braceWall(),
                legSide(),
                legPlate(),
                beamWidth(),
                beamHeight(),
                beamPlate(),
                deckArea(),
                deckSecondMoment(),
                deckSecondMomentAcross(),
                deckTorsion(),
                deckLevel(),
                columns(),
                heldBy(),
                longestPanel(),
                weight,
                load,
                begin,
                end);
    }
}
