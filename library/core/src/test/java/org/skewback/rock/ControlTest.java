package org.skewback.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.rock.Refused.refused;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;

/** Vibration, water tests, grout and shotcrete. */
class ControlTest {

    @Property
    void theFitFindsTheLineItWasMadeFrom(
            @ForAll @DoubleRange(min = 0.1, max = 3) double constant,
            @ForAll @DoubleRange(min = 1, max = 2.2) double exponent) {
        List<BlastVibration.Shot> shots = new ArrayList<>();
        for (double distance : new double[] {10, 20, 40, 80, 160, 320}) {
            shots.add(
                    new BlastVibration.Shot(
                            distance, 4, constant * StrictMath.pow(distance / 2, -exponent)));
        }
        BlastVibration line = BlastVibration.fit(shots);
        assertEquals(constant, line.constant(), 1e-9 * constant);
        assertEquals(exponent, line.exponent(), 1e-9);
        assertEquals(60, line.distance(line.mean(60, 4), 4), 1e-6);
        assertTrue(line.limit(60, 4, 0.95) >= line.mean(60, 4));
    }

    @Property
    void theLimitForHousesNeverFallsAsFrequencyRises(
            @ForAll @DoubleRange(min = 1, max = 100) double frequency,
            @ForAll @DoubleRange(max = 50) double more) {
        assertTrue(VibrationLimit.house(frequency + more) >= VibrationLimit.house(frequency));
    }

    @Test
    void recordsAreCheckedAgainstTheLowerLimit() {
        String records = "speed [mm/s],frequency [Hz]\n10,5\n18,5\n40,50\n60,50\n";
        List<VibrationLimit.Checked> free =
                VibrationLimit.check(CsvTable.parse("r", records), Double.POSITIVE_INFINITY);
        assertEquals(
                List.of(true, true, true, false),
                free.stream().map(VibrationLimit.Checked::kept).toList());
        List<VibrationLimit.Checked> strict =
                VibrationLimit.check(CsvTable.parse("r", records), 0.015);
        assertEquals(
                List.of(true, false, false, false),
                strict.stream().map(VibrationLimit.Checked::kept).toList());
        refused(
                "r, line 2: column frequency",
                () ->
                        VibrationLimit.check(
                                CsvTable.parse("r", records.replace("10,5", "10,0")), 1));
        refused(
                "r, line 2: column charge",
                () ->
                        BlastVibration.shots(
                                CsvTable.parse(
                                        "r", "distance [m],charge [kg],speed [mm/s]\n10,-1,5\n")));
        refused("number of records is 0", () -> BlastVibration.fit(List.of()));
    }

    private static LugeonTest test(double... flows) {
        double[] pressures = {2e5, 4e5, 6e5, 4e5, 2e5};
        List<LugeonTest.Stage> stages = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            stages.add(new LugeonTest.Stage(pressures[i], flows[i] / 60_000));
        }
        return new LugeonTest(5, stages);
    }

    @Test
    void thePatternOfTheStagesIsRead() {
        assertEquals(LugeonTest.Pattern.LAMINAR, test(10, 20, 30, 20, 10).pattern());
        assertEquals(LugeonTest.Pattern.TURBULENT, test(10, 16, 18, 16, 10).pattern());
        assertEquals(LugeonTest.Pattern.DILATION, test(10, 22, 45, 22, 10).pattern());
        assertEquals(LugeonTest.Pattern.WASH_OUT, test(10, 24, 42, 36, 20).pattern());
        assertEquals(LugeonTest.Pattern.VOID_FILLING, test(10, 16, 18, 8, 3).pattern());
        assertEquals(LugeonTest.Pattern.UNCLEAR, test(10, 40, 10, 40, 20).pattern());
        assertTrue(Grout.accepted(test(1, 2, 3, 2, 1), 3));
        assertFalse(Grout.accepted(test(10, 20, 30, 20, 10), 3));
        String table = "pressure [bar],flow [l/min]\n2,10\n4,20\n6,30\n4,20\n2,10\n";
        assertEquals(10, LugeonTest.of(CsvTable.parse("t", table), 5).value(0), 1e-9);
        refused(
                "t, line 3: column pressure",
                () -> LugeonTest.of(CsvTable.parse("t", table.replace("4,20\n6", "0,20\n6")), 5));
        refused(
                "t: The greatest pressure is in stage 1",
                () ->
                        LugeonTest.of(
                                CsvTable.parse(
                                        "t", table.replace("2,10\n4,20\n6", "9,10\n4,20\n6")),
                                5));
    }

    @Property
    void theFullApertureInPlaceOfItsHalfDoublesTheReachAndTakesEightfold(
            @ForAll @DoubleRange(min = 0.05, max = 2) double aperture) {
        Quantity pressure = Quantity.of(1, "MPa");
        Quantity full = Quantity.of(aperture, "mm");
        Quantity cohesion = Quantity.of(3, "Pa");
        assertEquals(
                2,
                Grout.reach(pressure, full, cohesion)
                        .over(Grout.reach(pressure, Grout.halfOf(full), cohesion))
                        .si(),
                1e-12);
        assertEquals(
                8,
                Grout.take(pressure, full, cohesion)
                        .over(Grout.take(pressure, Grout.halfOf(full), cohesion))
                        .si(),
                1e-12);
    }

    @Test
    void whatIsUsualIsToldFromWhatIsNot() {
        double steep = StrictMath.toRadians(50);
        assertFalse(CommonPractice.foundingOnSide(steep, false).usual());
        assertTrue(CommonPractice.foundingOnSide(steep, true).usual());
        assertTrue(CommonPractice.foundingOnSide(StrictMath.toRadians(30), false).usual());
        assertFalse(CommonPractice.weakRock(38, true, true, false).usual());
        assertTrue(CommonPractice.weakRock(38, true, true, true).usual());
        assertTrue(CommonPractice.pressedBlock(1350e3, 1350e3).usual());
        assertFalse(CommonPractice.pressedBlock(1350e3, 900e3).usual());
        assertTrue(CommonPractice.perimeterHoles(0.7, 0.076).usual());
        assertFalse(CommonPractice.perimeterHoles(1.2, 0.076).usual());
        assertTrue(CommonPractice.perimeterHoles(1.2, 0.076).remark().contains("no source"));
    }

    @Test
    void badInputIsRefusedByName() {
        Quantity metre = Quantity.of(1, "m");
        refused(
                "cohesion of the grout",
                () -> Grout.reach(Quantity.of(1, "MPa"), metre, Quantity.of(0, "Pa")));
        refused(
                "apex angle is 190",
                () ->
                        Shotcrete.blockWeight(
                                metre, Quantity.of(190, "°"), Quantity.of(25, "kN/m³")));
        refused(
                "thickness of the shotcrete",
                () -> Shotcrete.bending(Quantity.of(4, "MPa"), Quantity.of(-5, "mm")));
        refused("frequency is 0.0 Hz", () -> VibrationLimit.house(0));
    }
}
