package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import org.skewback.form.Axis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Vector;
import org.skewback.quantity.Gravity;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Shape;
import org.skewback.steel.Tube;

/** The arch and the load that the input of a routine describes. */
final class InputDeckArch {

    private InputDeckArch() {}

    static DeckArch of(DeckArchRoutine.Input input) {
        Axis axis = Axis.ofKind(input.axis(), input.span().in("m"), input.rise().in("m"));
        Shape post = square(input.postSide(), input.postPlate());
        double deckArea = input.deckArea().in("m²");
        Section girder =
                Section.of(
                        "deck",
                        deckArea,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        input.deckTorsion().in("m⁴"),
                        input.deckSecondMoment().in("m⁴"),
                        input.deckSecondMomentAcross().in("m⁴"));
        return new DeckArch(
                axis,
                Springings.ofWords(input.hinges()),
                new RibPlanes(input.ribsAtCrown().in("m"), input.ribsAtSpringings().in("m")),
                new RibMakeup.Chords(
                        square(input.chordSide(), input.chordPlate()),
                        input.depthAtCrown().in("m"),
                        input.depthAtSpringings().in("m"),
                        post,
                        post),
                new Tube(input.braceDiameter().in("m"), input.braceWall().in("m")),
                input.longestPanel().in("m"),
                new DeckOnColumns(
                        input.deckLevel().in("m"),
                        input.columns().stream().map(x -> x.in("m")).toList(),
                        square(input.legSide(), input.legPlate()),
                        new Box(
                                input.beamWidth().in("m"),
                                input.beamHeight().in("m"),
                                input.beamPlate().in("m"),
                                input.beamPlate().in("m")),
                        girder,
                        List.of(input.heldBy())),
                Material.steel());
    }

    /** The load on the deck, and the weight of all members but the deck, whose weight is on it. */
    static LoadCase load(DeckArchRoutine.Input input, DeckArchFrame frame) {
        List<Load> loads = new ArrayList<>();
        double onDeck = input.onDeck().in("N/m");
        if (onDeck != 0) {
            loads.addAll(
                    frame.onDeck("deck", onDeck, input.from().in("m"), input.to().in("m")).loads());
        }
        double factor = input.weightFactor().in("");
        if (factor != 0) {
            Require.positive("weight of the members over that of their sections", factor, "");
            List<String> members =
                    frame.model().members().stream()
                            .map(member -> member.name())
                            .filter(name -> !name.startsWith("deck "))
                            .toList();
            loads.add(
                    new SelfWeight(
                            new Vector(0, 0, -factor * Gravity.STANDARD.in("m/s²")), members));
        }
        return new LoadCase("load of the routine", loads);
    }

    static Box square(Quantity side, Quantity plate) {
        return new Box(side.in("m"), side.in("m"), plate.in("m"), plate.in("m"));
    }
}
