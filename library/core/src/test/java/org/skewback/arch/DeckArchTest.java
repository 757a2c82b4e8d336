package org.skewback.arch;

import static java.util.Comparator.comparing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.arch.Refused.assertRefused;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.skewback.form.Axis;
import org.skewback.form.Parabola;
import org.skewback.form.VerticalLoad;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Material;
import org.skewback.frame.Reaction;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Shape;
import org.skewback.steel.Tube;

class DeckArchTest {

    private static final double SPAN = 336;
    private static final double RISE = 72;
    private static final Axis AXIS = new Parabola(SPAN, RISE);
    private static final Box BOX = new Box(2, 4, 0.03, 0.05);
    private static final List<Double> COLUMNS =
            IntStream.rangeClosed(1, 13).mapToObj(i -> 24.0 * i).toList();

    /**
     * The frame and the force method agree on one box rib under column loads, with a deck too limp to
     * help. What is left: the ribs lean by 4 m in 72 m, are polygons, and have shear flexibility.
     */
    @Test
    void theFrameAgreesWithTheForceMethod() {
        for (Springings springings : Springings.values()) {
            DeckArchFrame frame = DeckArchFrame.of(single(springings, new RibPlanes(12, 14)));
            FrameSolution half =
                    LinearAnalysis.of(frame.model())
                            .solve(frame.onDeck("half", 100e3, 0, SPAN / 2));
            double area = BOX.section("s").area();
            double second = BOX.section("s").inertiaY();
            double modulus = Material.steel().youngModulus();
            ArchForces hand =
                    new ElasticArch(
                                    AXIS,
                                    RibStiffness.uniform(2 * modulus * second, 2 * modulus * area),
                                    springings)
                            .under(columnLoads());

            assertEquals(hand.thrust(), thrust(half), 0.01 * hand.thrust());
            double sinking = half.movement("deck 4").translation().z();
            assertEquals(-hand.deflection(COLUMNS.get(3)), sinking, 0.03 * Math.abs(sinking));
        }
    }

    /** What is symmetric stays so, and the springings hold the whole load. */
    @Test
    void aLoadAllOverIsHeldAlikeOnBothSides() {
        for (DeckArch arch :
                List.of(
                        single(Springings.PINNED, new RibPlanes(12, 20)),
                        chords(Springings.PINNED),
                        chords(Springings.FIXED))) {
            DeckArchFrame frame = DeckArchFrame.of(arch);
            FrameSolution solution =
                    LinearAnalysis.of(frame.model()).solve(frame.onDeck("g", 115e3, 0, SPAN));
            double held = 0;
            for (Reaction reaction : solution.reactions()) {
                held += reaction.force().z();
            }

            assertEquals(115e3 * SPAN, held, 1e-3);
            assertEquals(
                    solution.movement("deck 2").translation().z(),
                    solution.movement("deck 12").translation().z(),
                    1e-9);
            assertTrue(solution.equilibrium().residual() < 1e-9);
        }
    }

    @Test
    void panelPointsAreColumnsAndWhatKeepsPanelsShort() {
        DeckArchFrame frame = DeckArchFrame.of(chords(Springings.FIXED));

        assertEquals(14 * 3 + 1, frame.panelPoints().size());
        assertTrue(frame.panelPoints().containsAll(COLUMNS));
        assertEquals(42, frame.leftRib().get(0).size());
        assertEquals(14, frame.deck().size());
        assertTrue(frame.assumptions().stream().allMatch(sentence -> sentence.endsWith(".")));
    }

    /** The routine that a sheet calls gives what the frame gives, and its shapes are told apart. */
    @Test
    void theRoutinesGiveWhatTheFrameGives() {
        DeckArchRoutine.Input input = input();
        DeckArchRoutine.Output output = Routines.call(new DeckArchRoutine(), input);
        DeckArchStabilityRoutine.Output stability =
                Routines.call(new DeckArchStabilityRoutine(), input);

        assertEquals(115e3 * 312, 2 * output.leftVertical().in("N"), 0.05 * 115e3 * 312);
        assertEquals(
                output.leftVertical().in("N"), output.rightVertical().in("N"), 1e-6 * 115e3 * 312);
        assertEquals(115e3 * SPAN * SPAN / (8 * RISE), output.thrust().in("N"), 1e6);
        assertEquals(0, output.tension().in("N"));
        assertTrue(output.residual().si() < 1e-9);
        assertTrue(stability.factor().si() <= stability.ribsInPlane().si());
        assertTrue(stability.factor().si() <= stability.ribsAcross().si());
        assertEquals(
                stability.factors().stream().sorted(comparing(Quantity::si)).toList(),
                stability.factors());
    }

    private static DeckArchRoutine.Input input() {
        return new DeckArchRoutine.Input(
                "parabola",
                Quantity.of(SPAN, "m"),
                Quantity.of(RISE, "m"),
                "fixed",
                Quantity.of(12, "m"),
                Quantity.of(20, "m"),
                Quantity.of(1.2, "m"),
                Quantity.of(38, "mm"),
                Quantity.of(6, "m"),
                Quantity.of(9, "m"),
                Quantity.of(0.5, "m"),
                Quantity.of(14, "mm"),
                Quantity.of(0.4, "m"),
                Quantity.of(10, "mm"),
                Quantity.of(1.6, "m"),
                Quantity.of(24, "mm"),
                Quantity.of(1.2, "m"),
                Quantity.of(2, "m"),
                Quantity.of(24, "mm"),
                Quantity.of(0.62, "m²"),
                Quantity.of(0.55, "m⁴"),
                Quantity.of(4, "m⁴"),
                Quantity.of(0.4, "m⁴"),
                Quantity.of(78, "m"),
                COLUMNS.stream().map(x -> Quantity.of(x, "m")).toList(),
                6,
                Quantity.of(12, "m"),
                Quantity.of(0),
                Quantity.of(115, "kN/m"),
                Quantity.of(0, "m"),
                Quantity.of(SPAN, "m"));
    }

    @Test
    void badInputIsNamed() {
        assertRefused(() -> new RibPlanes(-1, 20), "distance of the ribs at the crown is -1.0 m");
        assertRefused(
                () -> arch(AXIS, deck(70, List.of(6))),
                "level of the deck above the springings is 70.0 m");
        assertRefused(() -> deck(78, List.of()), "number of columns that hold the deck");
        assertRefused(() -> deck(78, List.of(13)), "index of a column that holds the deck is 13.0");
        assertRefused(
                () -> arch(new Parabola(300, 60), deck(78, List.of(6))),
                "position of a column is 312.0 m");
        assertRefused(
                () -> arch(new Parabola(SPAN, RISE, 3), deck(78, List.of(6))),
                "level of the right springing is 3.0 m");
        assertRefused(
                () -> DeckArchFrame.of(chords(Springings.FIXED)).onDeck("q", 1, 20, 400),
                "end of the load on the deck is 400.0 m");
    }

    private static VerticalLoad columnLoads() {
        // The limp deck is a row of simple beams: the sixth column holds one bay, the seventh half
        // one.
        return VerticalLoad.together(
                IntStream.range(0, 7)
                        .mapToObj(i -> VerticalLoad.point(i < 6 ? 2400e3 : 1200e3, COLUMNS.get(i)))
                        .toList());
    }

    private static double thrust(FrameSolution solution) {
        return solution.reaction("rib L 0").force().x() + solution.reaction("rib R 0").force().x();
    }

    private static DeckArch single(Springings springings, RibPlanes planes) {
        return new DeckArch(
                AXIS,
                springings,
                planes,
                new RibMakeup.Single(BOX, BOX),
                new Tube(0.6, 0.016),
                8,
                deck(78, List.of(6)),
                Material.steel());
    }

    private static DeckArch chords(Springings springings) {
        Shape post = new Box(0.8, 0.8, 0.02, 0.02);
        return new DeckArch(
                AXIS,
                springings,
                new RibPlanes(12, 20),
                new RibMakeup.Chords(new Box(1.2, 1.2, 0.038, 0.038), 6, 9, post, post),
                new Tube(0.6, 0.016),
                8,
                deck(78, List.of(6)),
                Material.steel());
    }

    private static DeckArch arch(Axis axis, DeckOnColumns deck) {
        return new DeckArch(
                axis,
                Springings.FIXED,
                new RibPlanes(12, 20),
                new RibMakeup.Single(BOX, BOX),
                new Tube(0.6, 0.016),
                12,
                deck,
                Material.steel());
    }

    private static DeckOnColumns deck(double level, List<Integer> held) {
        return new DeckOnColumns(
                level,
                COLUMNS,
                new Box(1.6, 1.6, 0.024, 0.024),
                new Box(1.2, 2, 0.024, 0.024),
                Section.of("deck", 0.01, 1, 1, 0.01, 1e-5, 0.1),
                held);
    }
}
