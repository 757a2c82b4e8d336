package org.skewback.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;

class ChoiceTest {

    private static final Quantity STEEL = Quantity.of(77, "kN/m³");
    private static final Quantity STRESS = Quantity.of(150, "MPa");

    private static Quantity metres(double value) {
        return Quantity.of(value, "m");
    }

    private static Quantity rib(double span, double makeUp) {
        return RibEstimate.volume(
                Quantity.of(200, "kN/m"),
                Quantity.of(0, "m³"),
                metres(span),
                metres(span / 5),
                STRESS,
                STEEL,
                Quantity.of(makeUp));
    }

    @Test
    @DisplayName("A rib that could not carry itself is refused, one just short of it is enormous")
    void selfWeight() {
        double most =
                336
                        / RibEstimate.ownWeightShare(
                                        metres(336), metres(67.2), STRESS, STEEL, Quantity.of(1.7))
                                .si();
        assertTrue(rib(0.999 * most, 1.7).si() > 100 * rib(0.5 * most, 1.7).si());
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> rib(1.001 * most, 1.7));
        assertTrue(refusal.getMessage().startsWith("share of the rib's own weight is 1.001"));
    }

    @Test
    @DisplayName("A deck anywhere leaves hung area and columns that add up to the whole")
    void supports() {
        for (double height : new double[] {0, 10, 39, 40, 55}) {
            Quantity hung = DeckSupports.hungArea(metres(200), metres(40), metres(height));
            Quantity stood = DeckSupports.columnArea(metres(200), metres(40), metres(height));
            double between = 200 * height - 2.0 / 3 * 200 * 40;
            assertEquals(between, stood.si() - hung.si(), 1e-9);
            assertTrue(hung.si() >= 0 && stood.si() >= -1e-9);
        }
    }

    @Test
    @DisplayName("The places of a measure run from 0 to 1, and are 0 where all options are alike")
    void places() {
        Measure measure =
                new Measure("steel", Quantity.of(1), List.of(metres(4), metres(2), metres(3)));
        assertEquals(
                List.of(1.0, 0.0, 0.5),
                measure.places().stream().map(Quantity::si).collect(Collectors.toList()));
        Measure alike = new Measure("deck", Quantity.of(1), List.of(metres(4), metres(4)));
        assertEquals(0, alike.places().get(0).si());
    }

    @Test
    @DisplayName("At the weight of a turn two options are level, and beyond it the other is first")
    void turn() {
        Ranking.Turn turn = ranking(3, 1).turns().get(0);
        double v = turn.turning().si();
        List<Quantity> level = ranking(v, 1 - v).scores();
        assertEquals(level.get(0).si(), level.get(1).si(), 1e-12);
        assertEquals(0, ranking(v + 0.01, 0.99 - v).order().get(0));
        assertEquals(1, ranking(v - 0.01, 1.01 - v).order().get(0));
        assertEquals("option 2", turn.option());
    }

    private static Ranking ranking(double first, double second) {
        return new Ranking(
                List.of("option 1", "option 2", "option 3"),
                List.of(
                        new Measure(
                                "a", Quantity.of(first), List.of(metres(1), metres(2), metres(3))),
                        new Measure(
                                "b",
                                Quantity.of(second),
                                List.of(metres(30), metres(10), metres(20)))));
    }

    @Test
    @DisplayName("Options that are alike in all share first place, and the shares add up to one")
    void shares() {
        List<Quantity> alike = List.of(metres(1), metres(1), metres(2));
        List<Double> shares =
                new Ranking(
                                List.of("p", "q", "r"),
                                List.of(
                                        new Measure("a", Quantity.of(1), alike),
                                        new Measure("b", Quantity.of(1), alike)))
                        .firstShares(12);
        assertEquals(List.of(0.5, 0.5, 0.0), shares);
    }

    @Test
    @DisplayName("What cannot be compared is refused, by name")
    void refused() {
        Quantity one = Quantity.of(1);
        for (Runnable wrong :
                List.<Runnable>of(
                        () -> new Measure(" ", one, List.of(metres(1), metres(2))),
                        () -> new Measure("a", Quantity.of(-1), List.of(metres(1), metres(2))),
                        () -> new Measure("a", one, List.of(metres(1))),
                        () -> new Measure("a", one, List.of(metres(1), Quantity.of(1, "kN"))),
                        () -> new Ranking(List.of("p"), List.of()),
                        () ->
                                new Ranking(
                                        List.of("p", "p"),
                                        List.of(
                                                new Measure(
                                                        "a", one, List.of(metres(1), metres(2))))),
                        () ->
                                new Ranking(
                                        List.of("p", "q", "r"),
                                        List.of(
                                                new Measure(
                                                        "a", one, List.of(metres(1), metres(2))))),
                        () -> ranking(1, 1).firstShares(0),
                        () -> ranking(1, 1).firstShares(10_000_000),
                        () -> rib(100, 0.9),
                        () ->
                                BeamEstimate.hollowPier(
                                        metres(100), metres(1), Quantity.of(40), metres(0.5)),
                        () ->
                                BeamEstimate.flangeArea(
                                        Quantity.of(100, "kN/m"),
                                        metres(500),
                                        metres(5),
                                        Quantity.of(8),
                                        STRESS,
                                        Quantity.of(0, "m²"),
                                        STEEL,
                                        one),
                        () ->
                                RibEstimate.quarterDeflection(
                                        Quantity.of(100, "kN"),
                                        metres(100),
                                        Quantity.of(210, "GPa"),
                                        Quantity.of(1, "m⁴")))) {
            IllegalArgumentException refusal =
                    assertThrows(IllegalArgumentException.class, wrong::run);
            assertTrue(String.valueOf(refusal.getMessage()).length() > 10);
        }
    }
}
