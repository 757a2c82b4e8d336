package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.skewback.data.CsvTable;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.Lane;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Passage;
import org.skewback.frame.Response;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;
import org.skewback.train.TrainLoad;

/**
 * What permanent load, temperature, wind and passing trains do to the chords of a deck arch, each by
 * itself, as a routine; see {@link DeckArchFrame} for the frame and {@link TrainLoad#over} for the train.
 *
 * <p>Where the springings are {@code pinned, then fixed}, permanent load meets the hinged arch and all else
 * the fixed one. The sections are those at the springing and at an eighth, a quarter, three eighths and a half of
 * the span: first of the upper chord, then of the lower one, of the rib on the side from which the wind blows.
 */
public final class DeckArchActionsRoutine
        implements Routine<DeckArchActionsRoutine.Input, DeckArchActionsRoutine.Output> {

    private static final int EIGHTHS = 4;

    /** Makes the routine. */
    public DeckArchActionsRoutine() {}

    /**
     * The arch and its actions.
     *
     * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular
     *     arc}
     * @param span level distance between the springings, greater than 0
     * @param rise height of the crown above the springings, greater than 0
     * @param hinges {@code fixed}, {@code two-hinged} or {@code pinned, then fixed}
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
     * @param weightFactor weight of the members over that of their bare sections, greater than 0
     * @param onDeck permanent load along the deck, at least 0
     * @param warming rise of temperature of ribs, bracing and columns, at least 0
     * @param cooling fall of their temperature, at least 0
     * @param deckHeating temperature difference over the deck with the top warmer, at least 0
     * @param deckCooling temperature difference over the deck with the bottom warmer, at least 0
     * @param deckDepth depth of the deck, greater than 0
     * @param windOnRibs wind across per length of axis, both ribs together, without a train
     * @param windOnDeck wind across per length of deck, without a train
     * @param windArm height of the latter above the axis of the deck
     * @param trainWindOnRibs wind on the ribs that goes with a train
     * @param trainWindOnDeck wind on deck and train
     * @param trainWindArm height of the latter above the axis of the deck
     * @param trains trains as a table, CSV, of which the worst counts at each section; see {@link org.skewback.train.TrainLoad#read}
     * @param trainFactor factor on it, such as that of the classification of the line
     * @param step step in which it passes, greater than 0
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
            Quantity warming,
            Quantity cooling,
            Quantity deckHeating,
            Quantity deckCooling,
            Quantity deckDepth,
            Quantity windOnRibs,
            Quantity windOnDeck,
            Quantity windArm,
            Quantity trainWindOnRibs,
            Quantity trainWindOnDeck,
            Quantity trainWindArm,
            String trains,
            Quantity trainFactor,
            Quantity step)
            implements DeckArchInput {

        /**
         * Copies the list.
         *
         * @param axis kind of axis: {@code parabola}, {@code catenary} or {@code circular
         *     arc}
         * @param span level distance between the springings, greater than 0
         * @param rise height of the crown above the springings, greater than 0
         * @param hinges {@code fixed}, {@code two-hinged} or {@code pinned, then fixed}
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
         * @param weightFactor weight of the members over that of their bare sections, greater than 0
         * @param onDeck permanent load along the deck, at least 0
         * @param warming rise of temperature of ribs, bracing and columns, at least 0
         * @param cooling fall of their temperature, at least 0
         * @param deckHeating temperature difference over the deck with the top warmer, at least 0
         * @param deckCooling temperature difference over the deck with the bottom warmer, at least 0
         * @param deckDepth depth of the deck, greater than 0
         * @param windOnRibs wind across per length of axis, both ribs together, without a train
         * @param windOnDeck wind across per length of deck, without a train
         * @param windArm height of the latter above the axis of the deck
         * @param trainWindOnRibs wind on the ribs that goes with a train
         * @param trainWindOnDeck wind on deck and train
         * @param trainWindArm height of the latter above the axis of the deck
         * @param trains trains as a table, CSV, of which the worst counts at each section; see {@link org.skewback.train.TrainLoad#read}
         * @param trainFactor factor on it, such as that of the classification of the line
         * @param step step in which it passes, greater than 0
         */
        public Input {
            columns = List.copyOf(columns);
        }
    }

    /**
     * Effects.
     *
     * @param positions distance of each section from the left springing
     * @param permanent axial force of the chord there from permanent load, tension positive
     * @param warm that from warming
     * @param cold that from cooling
     * @param deckWarm that from the deck with its top warmer
     * @param deckCold that from the deck with its bottom warmer
     * @param wind that from wind toward the other rib, without a train; the other way it changes its sign
     * @param windWithTrain that from the wind that goes with a train
     * @param trainLargest largest force from the train, at least 0
     * @param trainSmallest smallest force from the train, at most 0
     * @param permanentThrust thrust of both ribs from permanent load, inward positive
     * @param warmThrust thrust of both ribs from warming
     * @param trainSinking largest sinking of the deck at the column nearest to the left quarter point, from the train
     * @param trainRising largest rising there, at least 0
     * @param windSway sideways movement of the deck at the column nearest to midspan, without a train
     */
    public record Output(
            List<Quantity> positions,
            List<Quantity> permanent,
            List<Quantity> warm,
            List<Quantity> cold,
            List<Quantity> deckWarm,
            List<Quantity> deckCold,
            List<Quantity> wind,
            List<Quantity> windWithTrain,
            List<Quantity> trainLargest,
            List<Quantity> trainSmallest,
            Quantity permanentThrust,
            Quantity warmThrust,
            Quantity trainSinking,
            Quantity trainRising,
            Quantity windSway) {

        /**
         * Copies the lists.
         *
         * @param positions distance of each section from the left springing
         * @param permanent axial force of the chord there from permanent load, tension positive
         * @param warm that from warming
         * @param cold that from cooling
         * @param deckWarm that from the deck with its top warmer
         * @param deckCold that from the deck with its bottom warmer
         * @param wind that from wind toward the other rib, without a train; the other way it changes its sign
         * @param windWithTrain that from the wind that goes with a train
         * @param trainLargest largest force from the train, at least 0
         * @param trainSmallest smallest force from the train, at most 0
         * @param permanentThrust thrust of both ribs from permanent load, inward positive
         * @param warmThrust thrust of both ribs from warming
         * @param trainSinking largest sinking of the deck at the column nearest to the left quarter point, from the train
         * @param trainRising largest rising there, at least 0
         * @param windSway sideways movement of the deck at the column nearest to midspan, without a train
         */
        public Output {
            positions = List.copyOf(positions);
            permanent = List.copyOf(permanent);
            warm = List.copyOf(warm);
            cold = List.copyOf(cold);
            deckWarm = List.copyOf(deckWarm);
            deckCold = List.copyOf(deckCold);
            wind = List.copyOf(wind);
            windWithTrain = List.copyOf(windWithTrain);
            trainLargest = List.copyOf(trainLargest);
            trainSmallest = List.copyOf(trainSmallest);
        }
    }

    @Override
    public String name() {
        return "arch.deckarchactions";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        RaisedArch raised =
                RaisedArch.of(input, input.hinges(), input.weightFactor(), input.onDeck());
        DeckArchFrame frame = raised.frame();
        LinearAnalysis analysis = raised.analysis();
        stop.check();
        double depth = input.deckDepth().in("m");
        List<FrameSolution> solutions =
                analysis.solve(
                        List.of(
                                frame.warming("warm", notNegative("warming", input.warming()), 0),
                                frame.warming("cold", -notNegative("cooling", input.cooling()), 0),
                                frame.deckDifference(
                                        "deck warm",
                                        notNegative("heating of the deck", input.deckHeating()),
                                        depth),
                                frame.deckDifference(
                                        "deck cold",
                                        -notNegative("cooling of the deck", input.deckCooling()),
                                        depth),
                                frame.wind(
                                        "wind",
                                        input.windOnRibs().in("N/m"),
                                        input.windOnDeck().in("N/m"),
                                        input.windArm().in("m")),
                                frame.wind(
                                        "wind with train",
                                        input.trainWindOnRibs().in("N/m"),
                                        input.trainWindOnDeck().in("N/m"),
                                        input.trainWindArm().in("m"))));
        stop.check();
        List<ChordSection> sections = ChordSection.of(frame, EIGHTHS);
        List<TrainLoad> trains = trains(input);
        double step = Require.positive("step of the train", input.step().in("m"), "m");
        Lane lane = frame.lane();
        List<Quantity> largest = new ArrayList<>();
        List<Quantity> smallest = new ArrayList<>();
        for (ChordSection section : sections) {
            Passage passage =
                    worst(
                            trains,
                            InfluenceLine.of(
                                    analysis,
                                    Response.force(section.member(), 0, ForceComponent.AXIAL),
                                    lane),
                            step);
            largest.add(Quantity.of(passage.largest(), "N"));
            smallest.add(Quantity.of(passage.smallest(), "N"));
            stop.check();
        }
        double span = frame.arch().axis().span();
        Passage sinking =
                worst(
                        trains,
                        InfluenceLine.of(
                                analysis,
                                Response.displacement(frame.deckNode(span / 4), Vector.Z.times(-1)),
                                lane),
                        step);
        return new Output(
                sections.stream().map(s -> Quantity.of(s.position(), "m")).toList(),
                forces(raised.permanent(), sections),
                forces(solutions.get(0), sections),
                forces(solutions.get(1), sections),
                forces(solutions.get(2), sections),
                forces(solutions.get(3), sections),
                forces(solutions.get(4), sections),
                forces(solutions.get(5), sections),
                largest,
                smallest,
                Quantity.of(raised.first().thrust(raised.permanent()), "N"),
                Quantity.of(frame.thrust(solutions.get(0)), "N"),
                Quantity.of(sinking.largest(), "m"),
                Quantity.of(-sinking.smallest(), "m"),
                Quantity.of(
                        solutions.get(4).movement(frame.deckNode(span / 2)).translation().y(),
                        "m"));
    }

    private static List<TrainLoad> trains(Input input) {
        Map<String, TrainLoad> trains = TrainLoad.read(CsvTable.parse("trains", input.trains()));
        if (trains.isEmpty()) {
            throw Require.refused("number of trains", 0, "", "at least 1");
        }
        double factor = input.trainFactor().in("");
        return trains.values().stream().map(train -> train.times(factor)).toList();
    }

    /** The worst that any of the trains does. */
    private static Passage worst(List<TrainLoad> trains, InfluenceLine line, double step) {
        Passage worst = new Passage(0, 0, 0, 0);
        for (TrainLoad train : trains) {
            Passage next = train.over(line, step);
            boolean high = next.largest() > worst.largest();
            boolean low = next.smallest() < worst.smallest();
            worst =
                    new Passage(
                            high ? next.largest() : worst.largest(),
                            high ? next.largestAt() : worst.largestAt(),
                            low ? next.smallest() : worst.smallest(),
                            low ? next.smallestAt() : worst.smallestAt());
        }
        return worst;
    }

    private static double notNegative(String quantity, Quantity kelvin) {
        return Require.within(quantity, kelvin.in("K"), 0, 1000, "K");
    }

    private static List<Quantity> forces(FrameSolution solution, List<ChordSection> sections) {
        return sections.stream()
                .map(s -> Quantity.of(solution.member(s.member()).at(0).axial(), "N"))
                .toList();
    }
}
