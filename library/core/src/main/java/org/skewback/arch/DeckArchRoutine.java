package org.skewback.arch;

import java.util.List;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.MemberForces;
import org.skewback.frame.Reaction;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Forces and movements of a deck arch of two ribs with two chords each, as a routine; see {@link
 * DeckArchFrame} for the frame and {@link org.skewback.frame.LinearAnalysis} for the analysis.
 */
public final class DeckArchRoutine
        implements Routine<DeckArchRoutine.Input, DeckArchRoutine.Output> {

    /** Makes the routine. */
    public DeckArchRoutine() {}

    /**
     * The arch and its load.
     *
     * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular
     *     arc}
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     * @param hinges {@code fixed} or {@code two-hinged}
     * @param ribsAtCrown distance of the ribs at the crown, centre to centre
     * @param ribsAtSpringings distance of the ribs at the springings
     * @param chordSide outer side of the square box chords
     * @param chordPlate plate thickness of the chords
     * @param depthAtCrown distance of the chords at the crown, square to the axis
     * @param depthAtSpringings distance of the chords at the springings
     * @param postSide outer side of the square box posts and diagonals of a rib
     * @param postPlate plate thickness of posts and diagonals
     * @param braceDiameter outer diameter of the tubes between the ribs
     * @param braceWall wall of those tubes
     * @param legSide outer side of the square box legs of the columns
     * @param legPlate plate thickness of the legs
     * @param beamWidth outer width of the box beams across the column heads
     * @param beamHeight outer height of those beams
     * @param beamPlate plate thickness of those beams
     * @param deckArea area of the whole deck, as steel
     * @param deckSecondMoment second moment of the deck for bending in elevation, as
     *     steel
     * @param deckSecondMomentAcross second moment of the deck for bending on plan, as
     *     steel
     * @param deckTorsion torsion constant of the deck, as steel
     * @param deckLevel level of the deck's axis above the springings
     * @param columns positions of the columns from the left springing
     * @param heldBy which column holds the deck along the bridge, from 0
     * @param longestPanel longest panel of a rib on plan
     * @param weightFactor weight of all members over that of their bare sections; 0 for a
     *     load on the deck alone
     * @param onDeck load per length of deck, positive downward
     * @param from where that load begins, from the left springing
     * @param to where it ends
     */
    public record Input(
            String axis,
            Quantity span,
            Quantity rise,
            String hinges,
            Quantity ribsAtCrown,
            Quantity ribsAtSpringings,
            Quantity chordSide,
            Quantity chordPlate,
            Quantity depthAtCrown,
            Quantity depthAtSpringings,
            Quantity postSide,
            Quantity postPlate,
            Quantity braceDiameter,
            Quantity braceWall,
            Quantity legSide,
            Quantity legPlate,
            Quantity beamWidth,
            Quantity beamHeight,
            Quantity beamPlate,
            Quantity deckArea,
            Quantity deckSecondMoment,
            Quantity deckSecondMomentAcross,
            Quantity deckTorsion,
            Quantity deckLevel,
            List<Quantity> columns,
            int heldBy,
            Quantity longestPanel,
            Quantity weightFactor,
            Quantity onDeck,
            Quantity from,
            Quantity to) {

        /**
         * Copies the list.
         *
         * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular
         *     arc}
         * @param span level distance between the springings, greater than 0
         * @param rise height of the crown above the springings, greater than 0
         * @param hinges {@code fixed} or {@code two-hinged}
         * @param ribsAtCrown distance of the ribs at the crown, centre to centre
         * @param ribsAtSpringings distance of the ribs at the springings
         * @param chordSide outer side of the square box chords
         * @param chordPlate plate thickness of the chords
         * @param depthAtCrown distance of the chords at the crown, square to the axis
         * @param depthAtSpringings distance of the chords at the springings
         * @param postSide outer side of the square box posts and diagonals of a rib
         * @param postPlate plate thickness of posts and diagonals
         * @param braceDiameter outer diameter of the tubes between the ribs
         * @param braceWall wall of those tubes
         * @param legSide outer side of the square box legs of the columns
         * @param legPlate plate thickness of the legs
         * @param beamWidth outer width of the box beams across the column heads
         * @param beamHeight outer height of those beams
         * @param beamPlate plate thickness of those beams
         * @param deckArea area of the whole deck, as steel
         * @param deckSecondMoment second moment of the deck for bending in elevation, as
         *     steel
         * @param deckSecondMomentAcross second moment of the deck for bending on plan, as
         *     steel
         * @param deckTorsion torsion constant of the deck, as steel
         * @param deckLevel level of the deck's axis above the springings
         * @param columns positions of the columns from the left springing
         * @param heldBy which column holds the deck along the bridge, from 0
         * @param longestPanel longest panel of a rib on plan
         * @param weightFactor weight of all members over that of their bare sections; 0
         *     for a load on the deck alone
         * @param onDeck load per length of deck, positive downward
         * @param from where that load begins, from the left springing
         * @param to where it ends
         */
        public Input {
            columns = List.copyOf(columns);
        }
    }

    /**
     * Forces and movements.
     *
     * @param thrust thrust of both ribs at the left springing, inward positive
     * @param leftVertical vertical reaction of both ribs at the left springing, upward positive
     * @param rightVertical vertical reaction of both ribs at the right springing
     * @param compression largest compression in a chord of a rib
     * @param compressionAt position of the panel point where its member starts
     * @param tension largest tension in a chord; 0 where there is none
     * @param crownSinking how far the deck sinks at midspan
     * @param quarterSinking how far the deck sinks at the column nearest the left quarter point
     * @param residual residual of equilibrium, without unit
     */
    public record Output(
            Quantity thrust,
            Quantity leftVertical,
            Quantity rightVertical,
            Quantity compression,
            Quantity compressionAt,
            Quantity tension,
            Quantity crownSinking,
            Quantity quarterSinking,
            Quantity residual) {}

    @Override
    public String name() {
        return "arch.deckarch";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        DeckArchFrame frame = DeckArchFrame.of(InputDeckArch.of(input));
        FrameSolution solution =
                LinearAnalysis.of(frame.model()).solve(InputDeckArch.load(input, frame));
        double thrust = 0;
        double left = 0;
        double right = 0;
        double middle = frame.arch().axis().span() / 2;
        for (Reaction reaction : solution.reactions()) {
            if (reaction.node().startsWith("deck")) {
                continue;
            }
            if (frame.model().node(reaction.node()).place().x() < middle) {
                thrust += reaction.force().x();
                left += reaction.force().z();
            } else {
                right += reaction.force().z();
            }
        }
        double compression = 0;
        double tension = 0;
        double at = 0;
        for (List<String> chord : frame.leftRib()) {
            for (int i = 0; i < chord.size(); i++) {
                MemberForces forces = solution.member(chord.get(i));
                double least = forces.smallest(ForceComponent.AXIAL).forces().axial();
                if (-least > compression) {
                    compression = -least;
                    at = frame.panelPoints().get(i);
                }
                tension = Math.max(tension, forces.largest(ForceComponent.AXIAL).forces().axial());
            }
        }
        return new Output(
                Quantity.of(thrust, "N"),
                Quantity.of(left, "N"),
                Quantity.of(right, "N"),
                Quantity.of(compression, "N"),
                Quantity.of(at, "m"),
                Quantity.of(tension, "N"),
                Quantity.of(-sinking(solution, frame, middle), "m"),
                Quantity.of(-sinking(solution, frame, middle / 2), "m"),
                Quantity.of(solution.equilibrium().residual()));
    }

    private static double sinking(FrameSolution solution, DeckArchFrame frame, double x) {
        return solution.movement(frame.deckNode(x)).translation().z();
    }
}
