package org.skewback.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.arch.Refused.assertRefused;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.skewback.form.Catenary;
import org.skewback.form.Parabola;
import org.skewback.form.SimpleBeam;
import org.skewback.form.VerticalLoad;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Member;
import org.skewback.frame.ModeShape;
import org.skewback.frame.Reaction;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

class DeckArchLoadsTest {

    private static final double SPAN = 336;
    private static final double RISE = 72;
    private static final List<Double> COLUMNS =
            IntStream.rangeClosed(1, 13).mapToObj(i -> 24.0 * i).toList();
    private static final String MODEL =
            """
            train,part,from [m],to [m],force [kN],line [kN/m]
            m,axle,0,0,250,0
            m,axle,1.6,1.6,250,0
            m,elsewhere,-0.8,2.4,0,80
            """;

    /** On its funicular a three-hinged rib has no moment in any panel point, and on a parabola it has. */
    @Test
    void onItsFunicularTheRibIsInThrustAlone() {
        DeckArchForm form = DeckArchForm.of(arch(Springings.PINNED), 88e3, 1.06);
        DeckArchFrame frame = DeckArchFrame.of(form.arch());
        VerticalLoad load = DeckArchForm.load(frame, 88e3, 1.06);
        SimpleBeam beam = SimpleBeam.under(load, SPAN);
        double thrust = beam.moment(SPAN / 2) / RISE;

        assertEquals(form.line().thrust(), thrust, 1e-6 * thrust);
        assertTrue(form.rounds() > 2);
        double onParabola = 0;
        for (double x : frame.panelPoints()) {
            assertEquals(0, beam.moment(x) / thrust - form.arch().axis().y(x), 1e-6);
            onParabola =
                    Math.max(
                            onParabola,
                            Math.abs(beam.moment(x) / thrust - new Parabola(SPAN, RISE).y(x)));
        }
        assertTrue(onParabola > 0.3, () -> "the parabola should be off the line");
    }

    /** What the form puts on the ribs, with what stands on the springings, is all there is. */
    @Test
    void theLoadOnTheRibsIsTheWeightOfTheFrame() {
        DeckArchFrame frame = DeckArchFrame.of(arch(Springings.PINNED));
        double members = 0;
        FrameSolution weight = LinearAnalysis.of(frame.model()).solve(frame.weight());
        for (Reaction reaction : weight.reactions()) {
            members += reaction.force().z();
        }
        double deck = 0.62 * 7850 * 9.80665 * SPAN;
        double onRibs = total(DeckArchForm.load(frame, 0, 1));
        double onSpringings = 0;
        for (Member member : frame.model().members()) {
            Vector start = frame.model().node(member.start()).place();
            Vector end = frame.model().node(member.end()).place();
            double area =
                    member instanceof Bar bar
                            ? bar.section().area()
                            : ((BeamColumn) member).profile().at(0).area();
            for (Vector place : List.of(start, end)) {
                if (!member.name().startsWith("deck ")
                        && Math.abs(place.x() - SPAN / 2) > SPAN / 2 - 1e-9) {
                    onSpringings += 7850 * 9.80665 * area * end.minus(start).length() / 2;
                }
            }
        }

        assertEquals(members - deck, onRibs + onSpringings, 1e-6 * members);
        assertEquals(
                88e3 * 13 * 24, total(DeckArchForm.load(frame, 88e3, 1)) - onRibs, 1e-3 * 88e3);
    }

    private static double total(VerticalLoad load) {
        SimpleBeam beam = SimpleBeam.under(load, SPAN);
        return beam.shear(0) - beam.shear(SPAN);
    }

    /** Pinned first and fixed later: the first load leaves no moment at the springings, the second does. */
    @Test
    void whatComesBeforeFixingMeetsHinges() {
        DeckArchFrame frame = DeckArchFrame.of(arch(Springings.PINNED));
        LoadCase before = frame.onDeck("deck", 88e3, 0, SPAN);
        LoadCase after = frame.onDeck("train", 97e3, 0, SPAN / 2);
        List<StageResult> stages =
                StageAnalysis.of(frame.model()).run(frame.pinnedThenFixed(before, after));
        FrameModelBuilder fixed = frame.model().toBuilder();
        frame.fixing().forEach(fixed::support);
        FrameSolution first = LinearAnalysis.of(frame.model()).solve(before);
        FrameSolution second = LinearAnalysis.of(fixed.build()).solve(after);

        for (String member : frame.leftRib().get(0)) {
            assertEquals(
                    first.member(member).at(0).axial(),
                    stages.get(1).solution().member(member).at(0).axial(),
                    1);
            assertEquals(
                    first.member(member).at(0).axial() + second.member(member).at(0).axial(),
                    stages.get(2).solution().member(member).at(0).axial(),
                    10);
        }
        assertEquals(0, stages.get(1).solution().reaction("hinge L 0").moment().y(), 1e-3 * 1e6);
        assertTrue(Math.abs(stages.get(2).solution().reaction("hinge L 0").moment().y()) > 1e6);
        assertRefused(
                () -> DeckArchFrame.of(arch(Springings.FIXED)).fixing(), "springings are FIXED");
    }

    /** Supports hold the wind, and its arm turns the deck about the bridge's axis. */
    @Test
    void theSupportsHoldTheWind() {
        DeckArchFrame frame = DeckArchFrame.of(arch(Springings.FIXED));
        LinearAnalysis analysis = LinearAnalysis.of(frame.model());
        double length = 0;
        for (List<String> chord : frame.leftRib()) {
            for (String member : chord) {
                length += analysis.solve(frame.weight()).member(member).length() / 2;
            }
        }
        FrameSolution low = analysis.solve(frame.wind("w", 10e3, 12e3, 0));
        FrameSolution high = analysis.solve(frame.wind("w", 10e3, 12e3, 3));
        double across = 0;
        double moment = 0;
        for (Reaction reaction : high.reactions()) {
            across -= reaction.force().y();
        }
        for (FrameSolution solution : List.of(high, low)) {
            double about = 0;
            for (Reaction reaction : solution.reactions()) {
                Vector at = frame.model().node(reaction.node()).place();
                about += at.cross(reaction.force()).x() + reaction.moment().x();
            }
            moment += solution == high ? about : -about;
        }

        assertEquals(10e3 * length + 12e3 * SPAN, across, 1);
        assertEquals(12e3 * 3 * SPAN, moment, 1);
    }

    /** A rib free to move along at one end grows without force; held, it pushes as the closed form says. */
    @Test
    void warmthPushesAHeldArch() {
        DeckArchFrame frame = DeckArchFrame.of(arch(Springings.PINNED));
        FrameSolution warm = LinearAnalysis.of(frame.model()).solve(frame.warming("warm", 30, 0));
        double area = 4 * new Box(1.2, 1.2, 0.038, 0.038).section("c").area();
        double depth = 7.5;
        double hand =
                TwoHingedArch.warmingThrust(
                                Quantity.of(Material.steel().youngModulus(), "Pa"),
                                Quantity.of(area * depth * depth / 4, "m⁴"),
                                Quantity.of(Material.steel().expansion(), "1/K"),
                                Quantity.of(30, "K"),
                                Quantity.of(RISE, "m"))
                        .in("N");

        // Shear of the posts and diagonals softens the frame; the mean depth is too much at the
        // crown.
        assertEquals(hand, frame.thrust(warm), 0.25 * hand);
        assertTrue(frame.thrust(warm) < hand);
        FrameSolution gradient =
                LinearAnalysis.of(frame.model()).solve(frame.deckDifference("top warmer", 15, 3.8));
        assertTrue(gradient.movement("deck 7").rotation().length() < 1e-4);
        assertTrue(Math.abs(gradient.member("deck 6–7").at(0).momentY()) > 1e6);
    }

    /** Ribs are moved as far as is asked, heads and deck stay. */
    @Test
    void anImperfectionMovesTheRibsAlone() {
        DeckArchFrame frame = DeckArchFrame.of(arch(Springings.FIXED));
        ModeShape shape =
                BucklingAnalysis.of(frame.model())
                        .factors(frame.onDeck("q", 100e3, 0, SPAN), 4)
                        .modes()
                        .get(3)
                        .shape();
        var moved = frame.moved(shape, 0.3);
        double largest = 0;
        for (var node : moved.nodes()) {
            double by = node.place().minus(frame.model().node(node.name()).place()).length();
            if (node.name().startsWith("deck") || node.name().startsWith("head")) {
                assertEquals(0, by);
            }
            largest = Math.max(largest, by);
        }

        assertEquals(0.3, largest, 1e-12);
        assertEquals(frame.model().members(), moved.members());
    }

    /** The routine's effects: signs, symmetry of cause and effect, and hinges that permanent load meets. */
    @Test
    void theRoutineGivesEachActionByItself() {
        DeckArchActionsRoutine.Output staged =
                Routines.call(new DeckArchActionsRoutine(), actions("pinned, then fixed", 30));
        DeckArchActionsRoutine.Output fixed =
                Routines.call(new DeckArchActionsRoutine(), actions("fixed", 60));

        assertEquals(10, staged.positions().size());
        for (int i = 0; i < 10; i++) {
            assertTrue(staged.permanent().get(i).si() < 0);
            assertTrue(staged.trainSmallest().get(i).si() < 0);
            assertTrue(staged.trainLargest().get(i).si() >= 0);
            assertEquals(2 * staged.warm().get(i).si(), fixed.warm().get(i).si(), 1);
            assertEquals(-staged.warm().get(i).si(), staged.cold().get(i).si() * 2, 1);
        }
        // Hinges share the load among the chords at the springing more evenly than clamps do.
        assertTrue(
                Math.abs(staged.permanent().get(0).si() - staged.permanent().get(5).si())
                        < Math.abs(fixed.permanent().get(0).si() - fixed.permanent().get(5).si()));
        assertTrue(staged.trainSinking().in("mm") > 10);
        assertTrue(staged.trainRising().in("mm") > 0);
        assertTrue(staged.windSway().in("mm") > 0);
    }

    /** Second order and imperfections add to compression, and the ribs buckle where they say. */
    @Test
    void imperfectionsAddToCompression() {
        DeckArchSecondOrderRoutine.Output output =
                Routines.call(new DeckArchSecondOrderRoutine(), bent());

        assertTrue(output.bentInPlane().si() > output.secondOrder().si());
        assertTrue(output.bentAcross().si() > output.secondOrder().si());
        assertTrue(output.secondOrder().si() > output.firstOrder().si());
        assertTrue(output.secondSinking().si() > output.firstSinking().si());
        assertTrue(output.inPlaneFactor().si() > 1);
        assertTrue(output.acrossForce().si() > 0);
    }

    @Test
    void badInputIsNamed() {
        DeckArchFrame frame = DeckArchFrame.of(arch(Springings.FIXED));

        assertRefused(() -> frame.deckDifference("d", 10, 0), "depth of the deck is 0.0 m");
        assertRefused(
                () -> DeckArchForm.of(arch(Springings.PINNED), -1, 1),
                "permanent load of the deck is -1.0 N/m");
        assertRefused(
                () -> Routines.call(new DeckArchActionsRoutine(), actions("fixed", -1)),
                "warming is -1.0 K");
    }

    private static DeckArch arch(Springings springings) {
        Box post = new Box(0.5, 0.5, 0.014, 0.014);
        return new DeckArch(
                Catenary.ofRise(SPAN, RISE),
                springings,
                new RibPlanes(12, 20),
                new RibMakeup.Chords(new Box(1.2, 1.2, 0.038, 0.038), 6, 9, post, post),
                new Tube(0.4, 0.01),
                12,
                new DeckOnColumns(
                        77,
                        COLUMNS,
                        new Box(1.6, 1.6, 0.024, 0.024),
                        new Box(1.2, 2, 0.024, 0.024),
                        Section.slender("deck", 0.62, 0.4, 0.55, 4),
                        List.of(6)),
                Material.steel());
    }

    private static DeckArchActionsRoutine.Input actions(String hinges, double warming) {
        return new DeckArchActionsRoutine.Input(
                "catenary",
                q(SPAN, "m"),
                q(RISE, "m"),
                hinges,
                q(12, "m"),
                q(20, "m"),
                q(1.2, "m"),
                q(38, "mm"),
                q(6, "m"),
                q(9, "m"),
                q(0.5, "m"),
                q(14, "mm"),
                q(0.4, "m"),
                q(10, "mm"),
                q(1.6, "m"),
                q(24, "mm"),
                q(1.2, "m"),
                q(2, "m"),
                q(24, "mm"),
                q(0.62, "m²"),
                q(0.55, "m⁴"),
                q(4, "m⁴"),
                q(0.4, "m⁴"),
                q(77, "m"),
                COLUMNS.stream().map(x -> q(x, "m")).toList(),
                6,
                q(12, "m"),
                q(1.06, ""),
                q(88, "kN/m"),
                q(warming, "K"),
                q(15, "K"),
                q(15, "K"),
                q(18, "K"),
                q(3.8, "m"),
                q(10, "kN/m"),
                q(12, "kN/m"),
                q(1, "m"),
                q(7, "kN/m"),
                q(15, "kN/m"),
                q(3, "m"),
                MODEL,
                q(1.21, ""),
                q(4, "m"));
    }

    private static DeckArchSecondOrderRoutine.Input bent() {
        return new DeckArchSecondOrderRoutine.Input(
                "catenary",
                q(SPAN, "m"),
                q(RISE, "m"),
                "fixed",
                q(12, "m"),
                q(20, "m"),
                q(1.2, "m"),
                q(38, "mm"),
                q(6, "m"),
                q(9, "m"),
                q(0.5, "m"),
                q(14, "mm"),
                q(0.4, "m"),
                q(10, "mm"),
                q(1.6, "m"),
                q(24, "mm"),
                q(1.2, "m"),
                q(2, "m"),
                q(24, "mm"),
                q(0.62, "m²"),
                q(0.55, "m⁴"),
                q(4, "m⁴"),
                q(0.4, "m⁴"),
                q(77, "m"),
                COLUMNS.stream().map(x -> q(x, "m")).toList(),
                6,
                q(12, "m"),
                q(1.4, ""),
                q(119, "kN/m"),
                q(140, "kN/m"),
                q(0, "m"),
                q(SPAN / 2, "m"),
                q(0.7, "m"),
                q(0.3, "m"));
    }

    private static Quantity q(double value, String unit) {
        return Quantity.of(value, unit);
    }
}
