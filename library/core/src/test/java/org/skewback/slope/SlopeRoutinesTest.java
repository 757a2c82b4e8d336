package org.skewback.slope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.slope.Refused.refused;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Reevaluation;
import org.skewback.quantity.Reevaluation.Outcome;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;

/** The routines of slopes are found by name in a record and give the same bits again. */
class SlopeRoutinesTest {

    private static final Quantity COHESION =
            Quantity.given("c", 12, "kPa", "cohesion", Source.assumption("for this test"));

    private static List<Quantity> metres(double... values) {
        List<Quantity> list = new ArrayList<>();
        for (double value : values) {
            list.add(Quantity.of(value, "m"));
        }
        return list;
    }

    private static Quantity degrees(double value) {
        return Quantity.of(value, "°");
    }

    private static SectionInput section() {
        Quantity weight = Quantity.of(19, "kN/m³");
        Quantity none = Quantity.of(0);
        return SectionInput.ground(metres(0, 12, 20, 12, 44, 0, 80, 0))
                .layer(weight, weight, COHESION, degrees(20), none, metres(0, 4, 80, -4))
                .layer(weight, COHESION, degrees(25), none)
                .water(metres(0, 8, 20, 8, 44, 0, 80, 0))
                .earthquake(Quantity.of(0.05), none)
                .crack(Quantity.of(1, "m"), Quantity.of(0.5, "m"))
                .surcharge(Quantity.of(10, "m"), Quantity.of(18, "m"), Quantity.of(20, "kPa"))
                .force(
                        Quantity.of(24, "m"),
                        Quantity.of(10, "m"),
                        Quantity.of(10, "kN/m"),
                        Quantity.of(30, "kN/m"))
                .anchor(
                        Quantity.of(34, "m"),
                        Quantity.of(5, "m"),
                        degrees(10),
                        Quantity.of(80, "kN/m"),
                        Quantity.of(20, "m"),
                        Quantity.of(6, "m"));
    }

    private static void sameAgain(Quantity... results) {
        Reevaluation again = Reevaluation.of(FlatGraph.lay(List.of(results)).graph());
        assertTrue(again.isConsistent(), again.toString());
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
    }

    @Test
    void slicesAndSearchGiveTheSameAgain() {
        SlicesRoutine.Output slices =
                Routines.call(
                        new SlicesRoutine(),
                        section().at(metres(38, 22, 23), SliceMethod.SPENCER, 30));
        CriticalCircleRoutine.Output found =
                Routines.call(
                        new CriticalCircleRoutine(),
                        section().at(metres(5, 25, 35, 60), SliceMethod.BISHOP, 20));
        assertTrue(found.factor().si() < slices.factor().si() * 1.05);
        sameAgain(slices.factor(), slices.lambda(), found.factor(), found.radius());
    }

    @Test
    void anchorDemandAndSurfaceOfAnyShapeGiveTheSameAgain() {
        Quantity weight = Quantity.of(19, "kN/m³");
        SectionInput weak =
                SectionInput.ground(metres(0, 12, 20, 12, 44, 0, 80, 0))
                        .layer(weight, COHESION.over(2), degrees(20), Quantity.of(0))
                        .at(metres(5, 25, 35, 60), SliceMethod.SPENCER, 20);
        SectionInput held =
                weak.anchor(
                        Quantity.of(40, "m"),
                        Quantity.of(2, "m"),
                        degrees(6),
                        Quantity.of(50, "kN/m"),
                        Quantity.of(30, "m"),
                        Quantity.of(6, "m"));
        AnchorDemandRoutine.Output demand =
                Routines.call(new AnchorDemandRoutine(), held.wanted(Quantity.of(1.15)));
        assertEquals(1.15, demand.factor().si(), 1e-5);
        assertEquals(1, demand.bondsBehind().si());
        CriticalPolygonRoutine.Output free = Routines.call(new CriticalPolygonRoutine(), weak);
        assertTrue(free.factor().si() < free.circleFactor().si() * 1.005);
        assertEquals(89, free.x().size());
        sameAgain(demand.multiplier(), demand.radius(), free.factor(), free.y().get(5));
    }

    @Test
    void wedgeTopplingAndSlidingGiveTheSameAgain() {
        Quantity none = Quantity.of(0, "kPa");
        WedgeRoutine.Output wedge =
                Routines.call(
                        new WedgeRoutine(),
                        new WedgeRoutine.Input(
                                degrees(45),
                                degrees(105),
                                degrees(70),
                                degrees(235),
                                degrees(65),
                                degrees(185),
                                degrees(12),
                                degrees(195),
                                Quantity.of(40, "m"),
                                Quantity.of(25, "kN/m³"),
                                COHESION,
                                degrees(30),
                                COHESION,
                                degrees(20),
                                none,
                                none,
                                Quantity.of(0),
                                Quantity.of(100, "kN"),
                                degrees(5),
                                degrees(10),
                                true));
        TopplingRoutine.Output toppling =
                Routines.call(
                        new TopplingRoutine(),
                        new TopplingRoutine.Input(
                                Quantity.of(10, "m"),
                                degrees(30),
                                Quantity.of(25, "kN/m³"),
                                10,
                                16,
                                Quantity.of(5, "m"),
                                Quantity.of(5, "m"),
                                Quantity.of(1, "m"),
                                degrees(36),
                                Quantity.of(0),
                                degrees(0)));
        List<Quantity> times =
                List.of(Quantity.of(0, "s"), Quantity.of(1, "s"), Quantity.of(9, "s"));
        List<Quantity> accelerations =
                List.of(Quantity.of(5, "m/s²"), Quantity.of(0, "m/s²"), Quantity.of(0, "m/s²"));
        NewmarkRoutine.Output sliding =
                Routines.call(
                        new NewmarkRoutine(),
                        new NewmarkRoutine.Input(times, accelerations, Quantity.of(1, "m/s²")));
        sameAgain(
                wedge.factor(), toppling.factor(), toppling.anchorForce(), sliding.displacement());
    }

    @Test
    void badInputIsRefusedByName() {
        refused(
                "method is \"GUESS\"",
                () -> {
                    SectionInput in = section();
                    new SlicesRoutine()
                            .run(
                                    new SectionInput(
                                            in.ground(),
                                            in.layers(),
                                            in.bottoms(),
                                            in.bottomPoints(),
                                            in.water(),
                                            in.earthquake(),
                                            in.crack(),
                                            in.surcharges(),
                                            in.forces(),
                                            in.anchors(),
                                            false,
                                            metres(38, 22, 23),
                                            "GUESS",
                                            30,
                                            List.of()),
                                    () -> false);
                });
        refused(
                "number of wanted factors of safety is 0",
                () ->
                        new AnchorDemandRoutine()
                                .run(
                                        section().at(metres(5, 25, 35, 60), SliceMethod.BISHOP, 20),
                                        () -> false));
        refused(
                "number of values that say where is 2",
                () ->
                        new SlicesRoutine()
                                .run(
                                        section().at(metres(1, 2), SliceMethod.BISHOP, 30),
                                        () -> false));
        refused(
                "number of bottoms is 0",
                () ->
                        new SlicesRoutine()
                                .run(
                                        SectionInput.ground(metres(0, 1, 1, 0))
                                                .layer(
                                                        Quantity.of(1, "kN/m³"),
                                                        COHESION,
                                                        degrees(1),
                                                        Quantity.of(0))
                                                .layer(
                                                        Quantity.of(1, "kN/m³"),
                                                        COHESION,
                                                        degrees(1),
                                                        Quantity.of(0))
                                                .at(metres(1, 2, 3), SliceMethod.BISHOP, 9),
                                        () -> false));
    }
}
