package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.BucklingMode;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadCase;
import org.skewback.frame.SecondOrderAnalysis;
import org.skewback.numeric.Monitor;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Second-order forces of a deck arch with imperfections shaped like its own buckling (EN 1993-1-1:2005,
 * 5.3.2(11)), as a routine; see {@link org.skewback.frame.SecondOrderAnalysis} and {@link DeckArchFrame#moved}.
 *
 * <p>All loads of the input grow together to find the shapes. Each imperfection is put in by itself, both
 * ways.
 */
public final class DeckArchSecondOrderRoutine
        implements Routine<DeckArchSecondOrderRoutine.Input, DeckArchSecondOrderRoutine.Output> {

    private static final int SHAPES = 24;
    private static final double HALF = 0.5;

    /** Makes the routine. */
    public DeckArchSecondOrderRoutine() {}

    /**
     * The arch, its design loads and its imperfections.
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
     * @param weightFactor weight of the members over that of their bare sections, times its partial factor; greater than 0
     * @param onDeck load along the whole deck, design value
     * @param train load along a part of the deck, design value
     * @param from where that begins, from the left springing
     * @param to where it ends
     * @param bowInPlane largest ordinate of the imperfection shaped like the first buckling of the ribs in their plane, at least 0
     * @param bowAcross largest ordinate of that shaped like their first buckling sideways, at least 0
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
            Quantity train,
            Quantity from,
            Quantity to,
            Quantity bowInPlane,
            Quantity bowAcross)
            implements DeckArchInput {

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
         * @param weightFactor weight of the members over that of their bare sections, times its partial factor; greater than 0
         * @param onDeck load along the whole deck, design value
         * @param train load along a part of the deck, design value
         * @param from where that begins, from the left springing
         * @param to where it ends
         * @param bowInPlane largest ordinate of the imperfection shaped like the first buckling of the ribs in their plane, at least 0
         * @param bowAcross largest ordinate of that shaped like their first buckling sideways, at least 0
         */
        public Input {
            columns = List.copyOf(columns);
        }
    }

    /**
     * What was found.
     *
     * @param inPlaneFactor factor on the loads at which the ribs first buckle in their plane
     * @param acrossFactor factor at which they first buckle sideways
     * @param inPlaneForce axial force of one rib at its left springing, both chords, as it buckles in its plane
     * @param acrossForce that as it buckles sideways
     * @param firstOrder largest compression in a chord by first order, without imperfection
     * @param secondOrder that by second order, without imperfection
     * @param bentInPlane that by second order with the imperfection in the plane, the worse way
     * @param bentAcross that by second order with the imperfection sideways, the worse way
     * @param firstSinking sinking of the deck at the column nearest to the left quarter point, first order
     * @param secondSinking that by second order, without imperfection
     */
    public record Output(
            Quantity inPlaneFactor,
            Quantity acrossFactor,
            Quantity inPlaneForce,
            Quantity acrossForce,
            Quantity firstOrder,
            Quantity secondOrder,
            Quantity bentInPlane,
            Quantity bentAcross,
            Quantity firstSinking,
            Quantity secondSinking) {}

    @Override
    public String name() {
        return "arch.deckarchsecondorder";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        DeckArchRoutine.Input arch =
                input.arch(
                        input.hinges(),
                        input.weightFactor(),
                        input.onDeck(),
                        Quantity.of(0, "m"),
                        input.span());
        DeckArchFrame frame = DeckArchFrame.of(InputDeckArch.of(arch));
        LoadCase load = load(input, arch, frame);
        Monitor monitor = Monitor.of(stop);
        FrameSolution first = LinearAnalysis.of(frame.model()).solve(load);
        List<BucklingMode> modes =
                BucklingAnalysis.of(frame.model()).factors(load, SHAPES).modes().stream()
                        .filter(mode -> mode.factor() > 0)
                        .filter(mode -> RibMotion.ofRibs(frame.model(), mode.shape()) >= HALF)
                        .toList();
        BucklingMode inPlane = lowest(frame, modes, false);
        BucklingMode across = lowest(frame, modes, true);
        stop.check();
        FrameSolution second = SecondOrderAnalysis.of(frame.model()).solve(load, monitor);
        String node = frame.deckNode(frame.arch().axis().span() / 4);
        return new Output(
                Quantity.of(inPlane.factor()),
                Quantity.of(across.factor()),
                Quantity.of(ribForce(frame, inPlane), "N"),
                Quantity.of(ribForce(frame, across), "N"),
                Quantity.of(compression(frame, first), "N"),
                Quantity.of(compression(frame, second), "N"),
                bent(frame, load, inPlane, input.bowInPlane(), monitor),
                bent(frame, load, across, input.bowAcross(), monitor),
                Quantity.of(-first.movement(node).translation().z(), "m"),
                Quantity.of(-second.movement(node).translation().z(), "m"));
    }

    private static LoadCase load(Input input, DeckArchRoutine.Input arch, DeckArchFrame frame) {
        LoadCase load = InputDeckArch.load(arch, frame);
        double train = input.train().in("N/m");
        if (train == 0) {
            return load;
        }
        List<Load> both = new ArrayList<>(load.loads());
        both.addAll(frame.onDeck("train", train, input.from().in("m"), input.to().in("m")).loads());
        return new LoadCase(load.name(), both);
    }

    private static BucklingMode lowest(
            DeckArchFrame frame, List<BucklingMode> modes, boolean across) {
        return modes.stream()
                .filter(mode -> RibMotion.across(frame.model(), mode.shape()) >= HALF == across)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "number of shapes in which the ribs buckle "
                                                + (across ? "sideways" : "in their plane")
                                                + " is 0 among the first "
                                                + SHAPES
                                                + "; allowed is an arch whose ribs go before"
                                                + " so many other shapes."));
    }

    /** Both chords of the left rib at the left springing as it buckles, compression positive. */
    private static double ribForce(DeckArchFrame frame, BucklingMode mode) {
        double force = 0;
        for (List<String> chord : frame.leftRib()) {
            force -= mode.axialForce(chord.get(0), 0);
        }
        return force;
    }

    private static Quantity bent(
            DeckArchFrame frame, LoadCase load, BucklingMode mode, Quantity bow, Monitor monitor) {
        double size = Require.within("bow", bow.in("m"), 0, 100, "m");
        double worst = 0;
        for (double way : new double[] {size, -size}) {
            worst =
                    Math.max(
                            worst,
                            compression(
                                    frame,
                                    SecondOrderAnalysis.of(frame.moved(mode.shape(), way))
                                            .solve(load, monitor)));
        }
        return Quantity.of(worst, "N");
    }

    /** Largest compression in a chord of either rib. */
    private static double compression(DeckArchFrame frame, FrameSolution solution) {
        double least = 0;
        for (List<String> chord : frame.leftRib()) {
            for (String member : chord) {
                for (String one : List.of(member, member.replace(" L ", " R "))) {
                    least =
                            Math.min(
                                    least,
                                    solution.member(one)
                                            .smallest(ForceComponent.AXIAL)
                                            .forces()
                                            .axial());
                }
            }
        }
        return -least;
    }
}
