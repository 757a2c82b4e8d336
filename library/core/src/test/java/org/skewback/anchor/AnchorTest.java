package org.skewback.anchor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.anchor.Refused.refused;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;

/** Laws of anchors; stressing records and readings are judged or refused by row. */
class AnchorTest {

    private static final Tendon TENDON =
            new Tendon(
                    12, Quantity.of(150, "mm²"), Quantity.of(1860, "MPa"), Quantity.of(195, "GPa"));

    private static final String RECORD =
            """
            load [kN],time [min],displacement [mm]
            167.4,0,0
            837,0,28
            1674,0,65
            2226.42,1,92
            2226.42,10,92.7
            2226.42,60,93.4
            167.4,0,4
            """;

    /** A jack that never pulled. */
    private static final String FLAT =
            """
            load [kN],time [min],displacement [mm]
            167.4,0,0
            167.4,1,0
            167.4,10,0
            """;

    private static final AcceptanceTest.Anchor ANCHOR =
            new AcceptanceTest.Anchor(351e6, 15, 0, 5, 2226.42e3);

    private static AcceptanceTest judged(String record, AcceptanceTest.Rules rules) {
        return AcceptanceTest.of(
                StressingRecord.of(CsvTable.parse("stressing", record)), ANCHOR, rules);
    }

    @Test
    void aGoodAnchorIsAcceptedByBothRules() {
        for (AcceptanceTest.Rules rules : AcceptanceTest.Rules.values()) {
            assertTrue(judged(RECORD, rules).accepted(), () -> judged(RECORD, rules).toString());
        }
    }

    @Test
    void aShortFreeLengthCreepOrALowLoadIsFound() {
        String stiff =
                RECORD.replace("0,65", "0,45")
                        .replace("1,92\n", "1,60\n")
                        .replace("92.7", "60.7")
                        .replace("93.4", "61.4");
        String slow = RECORD.replace("92.7", "94.7").replace("93.4", "98.4");
        String low = RECORD.replace("2226.42", "2100");
        for (AcceptanceTest.Rules rules : AcceptanceTest.Rules.values()) {
            assertFalse(judged(stiff, rules).findings().get(1).met());
            assertFalse(judged(slow, rules).findings().get(2).met());
            assertFalse(judged(low, rules).findings().get(0).met());
            assertFalse(judged(low, rules).accepted());
        }
    }

    @Test
    void aHoldThatWasNotReadIsNotMet() {
        String brief = RECORD.replace("2226.42,10,92.7\n2226.42,60,93.4\n", "");
        assertFalse(judged(brief, AcceptanceTest.Rules.EN_1537).accepted());
        assertFalse(judged(brief, AcceptanceTest.Rules.GEC_4).accepted());
    }

    @Test
    void withoutGoingBackNothingIsKnownToBeElastic() {
        String stopped = RECORD.replace("167.4,0,4\n", "");
        for (AcceptanceTest.Rules rules : AcceptanceTest.Rules.values()) {
            AcceptanceTest test = judged(stopped, rules);
            assertTrue(Double.isNaN(test.findings().get(1).value()), test::toString);
            assertFalse(test.accepted());
        }
    }

    private static void refusedRecord(String part, String good, String bad) {
        refused(
                part,
                () -> StressingRecord.of(CsvTable.parse("stressing", RECORD.replace(good, bad))));
    }

    @Test
    void aBadRecordIsRefusedByRow() {
        refusedRecord("stressing, line 3: column load is \"-837\"", "837,", "-837,");
        refusedRecord("stressing, line 3: column load", "837,0,28", "120,0,28");
        refusedRecord("stressing, line 6: column time", "2226.42,10,", "2226.42,0.5,");
        refusedRecord("stressing, line 4: column displacement", "1674,0,65", "1674,0,20");
        refusedRecord("stressing, line 3: column time", "837,0,", "837,-1,");
        refusedRecord("stressing, line 2: column load", RECORD, FLAT);
        refusedRecord("no column load", "load [kN]", "force [kN]");
        refusedRecord("column load: the unit is [m]", "load [kN]", "load [m]");
        refused(
                "stressing has 2 rows",
                () ->
                        StressingRecord.of(
                                CsvTable.parse(
                                        "stressing",
                                        "load [kN],time [s],displacement [m]\n1,0,0\n2,0,0\n")));
    }

    @Property
    void theApparentLengthIsThatOfTheElongation(
            @ForAll @DoubleRange(min = 3, max = 60) double length) {
        Quantity from = Quantity.of(167.4, "kN");
        Quantity to = Quantity.of(2226, "kN");
        Quantity free = Quantity.of(length, "m");
        assertEquals(
                length,
                TENDON.apparentFreeLength(TENDON.elongation(from, to, free), to.minus(from))
                        .in("m"),
                1e-12 * length);
    }

    @Property
    void aShorterTendonLosesMoreByDrawIn(@ForAll @DoubleRange(min = 5, max = 50) double length) {
        Quantity drawIn = Quantity.of(6, "mm");
        assertTrue(
                TENDON.lossByDrawIn(drawIn, Quantity.of(length, "m")).si()
                        > TENDON.lossByDrawIn(drawIn, Quantity.of(length + 1, "m")).si());
    }

    @Property
    void theLowestResistanceGoverns(
            @ForAll @DoubleRange(min = 1, max = 9) double steel,
            @ForAll @DoubleRange(min = 1, max = 9) double bond,
            @ForAll @DoubleRange(min = 1, max = 9) double cone) {
        AnchorResistance all =
                new AnchorResistance(
                        List.of(
                                new AnchorResistance.Resistance("steel", Quantity.of(steel, "MN")),
                                new AnchorResistance.Resistance("bond", Quantity.of(bond, "MN")),
                                new AnchorResistance.Resistance("cone", Quantity.of(cone, "MN"))));
        double least = Math.min(steel, Math.min(bond, cone));
        assertEquals(least, all.least().in("MN"), 1e-12);
        assertEquals(
                least,
                switch (all.governing()) {
                    case "steel" -> steel;
                    case "bond" -> bond;
                    default -> cone;
                });
    }

    @Test
    void readingsOverYearsAreHeldAgainstLevels() {
        String table =
                """
                date,cell 7 [kN]
                2021-01-01,1350
                2022-01-01,1330
                2023-01-01,1310
                2024-01-01,1290
                """;
        Monitoring cell = Monitoring.of(CsvTable.parse("cells", table), "cell 7", "kN");
        Monitoring.Alarm alarm = new Monitoring.Alarm(1150, 1300, 1450, 1550);
        assertEquals(Monitoring.Level.AMBER, cell.worst(alarm));
        assertEquals(-20, cell.trend(), 0.05);
        LocalDate day = cell.reaches(1150).orElseThrow();
        assertEquals(2031, day.plusDays(5).getYear());
        assertEquals(Optional.empty(), cell.reaches(1500));
        assertEquals(3, Monitoring.triggers(alarm, "kN").size());
        refused(
                "cells, line 4: column date",
                () ->
                        Monitoring.of(
                                CsvTable.parse("cells", table.replace("2023-01", "2020-01")),
                                "cell 7",
                                "kN"));
        refused(
                "cells, line 3: column date is \"1.1.22\"",
                () ->
                        Monitoring.of(
                                CsvTable.parse("cells", table.replace("2022-01-01", "1.1.22")),
                                "cell 7",
                                "kN"));
        refused("alarm levels", () -> new Monitoring.Alarm(5, 4, 6, 7));
    }

    @Test
    void badInputIsRefusedByName() {
        refused(
                "number of strands is 0",
                () ->
                        new Tendon(
                                0,
                                Quantity.of(150, "mm²"),
                                Quantity.of(1860, "MPa"),
                                Quantity.of(195, "GPa")));
        refused("part of the characteristic strength", () -> TENDON.limit(Quantity.of(1.2)));
        refused(
                "number of anchors lost is 4",
                () -> AnchorForces.withLost(Quantity.of(1, "kN"), 4, 4));
        refused(
                "force through the perimeter",
                () ->
                        AnchorBlock.punching(
                                Quantity.of(100, "kN"),
                                Quantity.of(1, "MPa"),
                                Quantity.of(300, "mm"),
                                Quantity.of(500, "mm")));
        refused("number of ways of failing is 0", () -> new AnchorResistance(List.of()));
    }
}
