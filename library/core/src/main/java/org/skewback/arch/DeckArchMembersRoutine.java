package org.skewback.arch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.skewback.data.CsvTable;
import org.skewback.frame.CombinationRule;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.Load;
import org.skewback.frame.LoadCase;
import org.skewback.frame.SectionForces;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Worst combinations of actions over the whole frame of a deck arch, each force with those that act beside it in
 * the same combination, and the chords of the ribs under axial force and bending (EN 1993-1-1:2005, 6.3.3 with
 * annex B, class 3), as a routine; see {@link org.skewback.frame.Envelope} and {@link ColumnStrength}.
 *
 * <p>Permanent load is carried with the springings hinged where the input says {@code pinned, then fixed};
 * everything else meets the fixed arch. The train is a line load on any set of quarter bays, those that make the
 * force in question worst, and one group of axles in the middle of any of them. Of the temperatures at most one
 * acts, warm or cold; wind blows from either side. A chord buckles between panel points in both planes alike.
 */
public final class DeckArchMembersRoutine
        implements Routine<DeckArchMembersRoutine.Input, DeckArchMembersRoutine.Output> {

    private static final String PERMANENT = "permanent load";
    private static final String TRAIN = "rail traffic";
    private static final int CELLS_OF_A_BAY = 4;
    private static final int STATIONS = 3;

    /** Makes the routine. */
    public DeckArchMembersRoutine() {}

    /**
     * The arch, its actions, what may act together, and the strength of the chords.
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
     * @param trainLine line load of the train, on as much of the deck as makes it worst, at least 0
     * @param trainAxles what the axles of the train weigh beyond the line load on the same length, at least 0
     * @param axleLength that length, greater than 0
     * @param uniformBesideDifference uniform temperature that acts beside the difference over the deck, as a
     *     share, 0 to 1
     * @param differenceBesideUniform difference over the deck that acts beside the uniform temperature, as a
     *     share, 0 to 1
     * @param yieldStrength yield strength of the chords, greater than 0
     * @param partialFactor partial factor on buckling, at least 1
     * @param imperfectionFactor imperfection factor of the column curve, at least 0
     * @param momentFactor factor on moments between the ends of a member, C_m, 0.4 to 1
     * @param situations what may act together, CSV with its name, an action, and the low and high factor of
     *     that ({@code situation,action,low,high}), a line for each action of each of them; the actions are {@code
     *     permanent load}, {@code rail traffic}, {@code wind}, {@code wind with train} and {@code temperature}
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
            Quantity trainLine,
            Quantity trainAxles,
            Quantity axleLength,
            Quantity uniformBesideDifference,
            Quantity differenceBesideUniform,
            Quantity yieldStrength,
            Quantity partialFactor,
            Quantity imperfectionFactor,
            Quantity momentFactor,
            String situations)
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
         * @param trainLine line load of the train, on as much of the deck as makes it worst, at least 0
         * @param trainAxles what the axles of the train weigh beyond the line load on the same length, at least 0
         * @param axleLength that length, greater than 0
         * @param uniformBesideDifference uniform temperature that acts beside the difference over the deck,
         *     as a share, 0 to 1
         * @param differenceBesideUniform difference over the deck that acts beside the uniform temperature,
         *     as a share, 0 to 1
         * @param yieldStrength yield strength of the chords, greater than 0
         * @param partialFactor partial factor on buckling, at least 1
         * @param imperfectionFactor imperfection factor of the column curve, at least 0
         * @param momentFactor factor on moments between the ends of a member, C_m, 0.4 to 1
         * @param situations what may act together, CSV with its name, an action, and the low and high factor
         *     of that ({@code situation,action,low,high}), a line for each action of each of them; the actions are
         *     {@code permanent load}, {@code rail traffic}, {@code wind}, {@code wind with train} and {@code
         *     temperature}
         */
        public Input {
            columns = List.copyOf(columns);
        }
    }

    /**
     * What was found, for the chords of the left rib: first the upper one from the left springing to the right,
     * then the lower one.
     *
     * @param positions middle of each member, from the left springing
     * @param compression largest compression, at least 0
     * @param pull largest tension, at least 0
     * @param governingCompression compression that acts with the moments which use the member most; tension is
     *     negative
     * @param momentInPlane moment in the plane of the rib beside it, without sign
     * @param momentAcross moment out of that plane beside it, without sign
     * @param utilisation how far the member is used, the worst of all situations
     * @param length length of the member between panel points
     * @param posts largest compression in a post of either rib
     * @param diagonals largest compression in a diagonal of either rib
     * @param bracing largest compression in a strut or brace between the ribs
     * @param legs largest compression in a leg of a column
     */
    public record Output(
            List<Quantity> positions,
            List<Quantity> compression,
            List<Quantity> pull,
            List<Quantity> governingCompression,
            List<Quantity> momentInPlane,
            List<Quantity> momentAcross,
            List<Quantity> utilisation,
            List<Quantity> length,
            Quantity posts,
            Quantity diagonals,
            Quantity bracing,
            Quantity legs) {

        /**
         * Copies the lists.
         *
         * @param positions middle of each member
         * @param compression largest compression
         * @param pull largest tension
         * @param governingCompression compression that acts with the moments which use the member most
         * @param momentInPlane moment in the plane of the rib beside it
         * @param momentAcross moment out of that plane beside it
         * @param utilisation how far the member is used
         * @param length length of the member between panel points
         * @param posts largest compression in a post
         * @param diagonals largest compression in a diagonal
         * @param bracing largest compression between the ribs
         * @param legs largest compression in a leg
         */
        public Output {
            positions = List.copyOf(positions);
            compression = List.copyOf(compression);
            pull = List.copyOf(pull);
            governingCompression = List.copyOf(governingCompression);
            momentInPlane = List.copyOf(momentInPlane);
            momentAcross = List.copyOf(momentAcross);
            utilisation = List.copyOf(utilisation);
            length = List.copyOf(length);
        }
    }

    @Override
    public String name() {
        return "arch.deckarchmembers";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        RaisedArch raised =
                RaisedArch.of(input, input.hinges(), input.weightFactor(), input.onDeck());
        stop.check();
        Map<String, List<LoadCase>> cases = cases(input, raised.frame());
        List<FrameSolution> solutions =
                raised.analysis().solve(cases.values().stream().flatMap(List::stream).toList());
        List<Envelope> envelopes = new ArrayList<>();
        for (Map<String, double[]> situation : situations(input.situations()).values()) {
            stop.check();
            envelopes.add(envelope(situation, raised.permanent(), cases, solutions));
        }
        return output(input, raised.frame(), envelopes);
    }

    /** Load cases by action; of the train first all quarter bays, then the axles in each of them. */
    private static Map<String, List<LoadCase>> cases(Input input, DeckArchFrame frame) {
        Map<String, List<LoadCase>> cases = new LinkedHashMap<>();
        List<LoadCase> train = new ArrayList<>();
        List<Double> ends = cells(frame);
        double line = notNegative("line load of the train", input.trainLine(), "N/m");
        for (int i = 1; i < ends.size(); i++) {
            train.add(frame.onDeck("line " + i, line, ends.get(i - 1), ends.get(i)));
        }
        double axles = notNegative("axles beyond the line load", input.trainAxles(), "N");
        double length = Require.positive("length of the axles", input.axleLength().in("m"), "m");
        double span = frame.arch().axis().span();
        for (int i = 1; i < ends.size(); i++) {
            double middle = (ends.get(i - 1) + ends.get(i)) / 2;
            double from = Math.max(0, middle - length / 2);
            double to = Math.min(span, middle + length / 2);
            train.add(frame.onDeck("axles " + i, axles / length, from, to));
        }
        cases.put(TRAIN, train);
        cases.put(
                "wind",
                bothWays(frame, "wind", input.windOnRibs(), input.windOnDeck(), input.windArm()));
        cases.put(
                "wind with train",
                bothWays(
                        frame,
                        "wind with train",
                        input.trainWindOnRibs(),
                        input.trainWindOnDeck(),
                        input.trainWindArm()));
        cases.put("temperature", temperatures(input, frame));
        return cases;
    }

    private static List<Double> cells(DeckArchFrame frame) {
        List<Double> points = DeckArchBuilder.deckPoints(frame.arch());
        List<Double> ends = new ArrayList<>();
        for (int bay = 1; bay < points.size(); bay++) {
            for (int i = 0; i < CELLS_OF_A_BAY; i++) {
                double share = (double) i / CELLS_OF_A_BAY;
                ends.add(points.get(bay - 1) * (1 - share) + points.get(bay) * share);
            }
        }
        ends.add(points.get(points.size() - 1));
        return ends;
    }

    private static List<LoadCase> bothWays(
            DeckArchFrame frame, String name, Quantity ribs, Quantity deck, Quantity arm) {
        List<LoadCase> both = new ArrayList<>();
        for (int way : new int[] {1, -1}) {
            both.add(
                    frame.wind(
                            name + (way > 0 ? " from the left rib" : " from the right rib"),
                            way * ribs.in("N/m"),
                            way * deck.in("N/m"),
                            arm.in("m")));
        }
        return both;
    }

    private static List<LoadCase> temperatures(Input input, DeckArchFrame frame) {
        double depth = input.deckDepth().in("m");
        double ofUniform = share("uniform temperature", input.uniformBesideDifference());
        double ofDifference = share("difference of temperature", input.differenceBesideUniform());
        List<LoadCase> all = new ArrayList<>();
        for (boolean warm : new boolean[] {true, false}) {
            double uniform =
                    warm
                            ? notNegative("warming", input.warming(), "K")
                            : -notNegative("cooling", input.cooling(), "K");
            double difference =
                    warm
                            ? notNegative("heating of the deck", input.deckHeating(), "K")
                            : -notNegative("cooling of the deck", input.deckCooling(), "K");
            String way = warm ? "warm" : "cold";
            all.add(
                    both(
                            way + ", uniform leading",
                            frame.warming(way, uniform, 0),
                            frame.deckDifference(way, ofDifference * difference, depth)));
            all.add(
                    both(
                            way + ", difference leading",
                            frame.warming(way, ofUniform * uniform, 0),
                            frame.deckDifference(way, difference, depth)));
        }
        return all;
    }

    private static LoadCase both(String name, LoadCase one, LoadCase other) {
        List<Load> loads = new ArrayList<>(one.loads());
        loads.addAll(other.loads());
        return new LoadCase(name, loads);
    }

    /** Factors by action of each situation, low and high. */
    private static Map<String, Map<String, double[]>> situations(String text) {
        CsvTable table = CsvTable.parse("situations", text);
        Map<String, Map<String, double[]>> situations = new LinkedHashMap<>();
        double[] low = table.numbers("low", "");
        double[] high = table.numbers("high", "");
        for (int i = 0; i < table.size(); i++) {
            String name = table.texts("situation").get(i);
            String action = table.texts("action").get(i);
            double[] former =
                    situations
                            .computeIfAbsent(name, first -> new LinkedHashMap<>())
                            .put(action, new double[] {low[i], high[i]});
            if (former != null) {
                throw new IllegalArgumentException(
                        "situation \""
                                + name
                                + "\" has the action \""
                                + action
                                + "\" twice; allowed is once.");
            }
        }
        if (situations.isEmpty()) {
            throw Require.refused("number of situations", 0, "", "at least 1");
        }
        return situations;
    }

    private static Envelope envelope(
            Map<String, double[]> factors,
            FrameSolution permanent,
            Map<String, List<LoadCase>> cases,
            List<FrameSolution> solutions) {
        List<CombinationRule.Term> terms = new ArrayList<>();
        Envelope always = null;
        for (Map.Entry<String, double[]> entry : factors.entrySet()) {
            double low = entry.getValue()[0];
            double high = entry.getValue()[1];
            List<LoadCase> own = cases.get(entry.getKey());
            if (entry.getKey().equals(PERMANENT)) {
                always =
                        Envelope.of(
                                List.of(permanent),
                                new CombinationRule(
                                        PERMANENT,
                                        List.of(
                                                CombinationRule.Term.of(
                                                        permanent.name(), low, high))),
                                STATIONS);
            } else if (own == null) {
                throw new IllegalArgumentException(
                        "action is \""
                                + entry.getKey()
                                + "\"; allowed are "
                                + PERMANENT
                                + " and "
                                + cases.keySet()
                                + ".");
            } else if (entry.getKey().equals(TRAIN)) {
                List<String> names = own.stream().map(LoadCase::name).toList();
                int lines = names.size() / 2;
                for (String line : names.subList(0, lines)) {
                    terms.add(CombinationRule.Term.of(line, 0, high));
                }
                terms.add(new CombinationRule.Term(names.subList(lines, names.size()), 0, high));
            } else {
                terms.add(
                        new CombinationRule.Term(
                                own.stream().map(LoadCase::name).toList(), 0, high));
            }
        }
        if (always == null) {
            throw new IllegalArgumentException(
                    "actions of a situation are "
                            + factors.keySet()
                            + "; allowed are such with "
                            + PERMANENT
                            + ".");
        }
        return terms.isEmpty()
                ? always
                : Envelope.of(solutions, new CombinationRule("variable", terms), STATIONS)
                        .plus(1, always);
    }

    private static Output output(Input input, DeckArchFrame frame, List<Envelope> envelopes) {
        List<Chord> chords = new ArrayList<>();
        for (List<String> row : frame.leftRib()) {
            for (int i = 0; i < row.size(); i++) {
                double middle = (frame.panelPoints().get(i) + frame.panelPoints().get(i + 1)) / 2;
                chords.add(chord(input, row.get(i), middle, envelopes));
            }
        }
        return new Output(
                chords.stream().map(chord -> Quantity.of(chord.position, "m")).toList(),
                chords.stream().map(chord -> Quantity.of(chord.compression, "N")).toList(),
                chords.stream().map(chord -> Quantity.of(chord.pull, "N")).toList(),
                chords.stream().map(chord -> Quantity.of(chord.governing, "N")).toList(),
                chords.stream().map(chord -> Quantity.of(chord.inPlane, "N·m")).toList(),
                chords.stream().map(chord -> Quantity.of(chord.across, "N·m")).toList(),
                chords.stream().map(chord -> Quantity.of(chord.utilisation)).toList(),
                chords.stream().map(chord -> Quantity.of(chord.length, "m")).toList(),
                largest(envelopes, "post "),
                largest(envelopes, "diagonal "),
                largest(envelopes, "strut ", "brace "),
                largest(envelopes, "leg "));
    }

    private record Chord(
            double position,
            double length,
            double compression,
            double pull,
            double governing,
            double inPlane,
            double across,
            double utilisation) {}

    private static Chord chord(
            Input input, String member, double position, List<Envelope> envelopes) {
        double[] stations = envelopes.get(0).stations(member);
        double length = stations[stations.length - 1];
        ChordStrength strength = ChordStrength.of(input, length);
        double compression = 0;
        double pull = 0;
        double most = -1;
        SectionForces governing = null;
        for (SectionForces forces : together(member, stations.length, envelopes)) {
            compression = Math.max(compression, -forces.axial());
            pull = Math.max(pull, forces.axial());
            double used =
                    strength.utilisation(
                            -forces.axial(),
                            Math.abs(forces.momentY()),
                            Math.abs(forces.momentZ()));
            if (used > most) {
                most = used;
                governing = forces;
            }
        }
        Objects.requireNonNull(governing, "forces of a chord");
        return new Chord(
                position,
                length,
                compression,
                pull,
                -governing.axial(),
                Math.abs(governing.momentY()),
                Math.abs(governing.momentZ()),
                most);
    }

    /** All forces of a member that act together where one of them is largest or smallest. */
    private static List<SectionForces> together(
            String member, int stations, List<Envelope> envelopes) {
        List<SectionForces> all = new ArrayList<>();
        for (Envelope envelope : envelopes) {
            for (int station = 0; station < stations; station++) {
                for (ForceComponent component : ForceComponent.values()) {
                    all.add(envelope.largest(member, station, component).concurrent());
                    all.add(envelope.smallest(member, station, component).concurrent());
                }
            }
        }
        return all;
    }

    private static Quantity largest(List<Envelope> envelopes, String... beginnings) {
        double largest = 0;
        for (Envelope envelope : envelopes) {
            for (String member : envelope.members()) {
                for (String beginning : beginnings) {
                    if (member.startsWith(beginning)) {
                        for (int station = 0; station < STATIONS; station++) {
                            largest =
                                    Math.max(
                                            largest,
                                            -envelope.smallest(
                                                            member, station, ForceComponent.AXIAL)
                                                    .value());
                        }
                    }
                }
            }
        }
        return Quantity.of(largest, "N");
    }

    private static double share(String quantity, Quantity value) {
        return Require.within(quantity, value.in(""), 0, 1, "");
    }

    private static double notNegative(String quantity, Quantity value, String unit) {
        return Require.within(quantity, value.in(unit), 0, 1e9, unit);
    }
}
