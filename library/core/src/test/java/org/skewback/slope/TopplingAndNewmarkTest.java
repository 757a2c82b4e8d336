package org.skewback.slope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.slope.Refused.refused;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;

/** Laws of toppling and of sliding in an earthquake. */
class TopplingAndNewmarkTest {

    private static final TopplingSlope ROW =
            TopplingSlope.regular(10, StrictMath.toRadians(30), 25e3, 10, 16, 5, 5, 1);

    @Property
    void waterAndEarthquakeNeverRaiseSafety(
            @ForAll @DoubleRange(max = 0.2) double shaking,
            @ForAll @DoubleRange(max = 1) double part) {
        double needed = ROW.withEarthquake(shaking * part).frictionNeeded();
        assertTrue(ROW.withEarthquake(shaking).frictionNeeded() >= needed - 1e-12);
        List<Double> low = new ArrayList<>(Collections.nCopies(16, 0.0));
        List<Double> high = new ArrayList<>(Collections.nCopies(16, 0.0));
        for (int i = 4; i < 12; i++) {
            high.set(i, 2 * (0.2 + part));
            low.set(i, 2 * part * (0.2 + part));
        }
        double friction = StrictMath.toRadians(36);
        assertTrue(
                ROW.withWater(high).forces(friction, friction).needed()
                        >= ROW.withWater(low).forces(friction, friction).needed() - 1e-6);
    }

    @Property
    void sizeChangesNoFactorAndForcesGrowWithItsSquare(
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        TopplingSlope scaled =
                TopplingSlope.regular(
                        10 * scale,
                        StrictMath.toRadians(30),
                        25e3,
                        10,
                        16,
                        5 * scale,
                        5 * scale,
                        scale);
        assertEquals(ROW.frictionNeeded(), scaled.frictionNeeded(), 1e-9);
        double friction = StrictMath.atan(0.65);
        double force = ROW.anchorForce(friction, friction, 0.2, 3) * scale * scale;
        assertEquals(force, scaled.anchorForce(friction, friction, 0.2, 3 * scale), 1e-9 * force);
    }

    @Test
    void theForcesOfEachBlockBalance() {
        double tangent = 0.7;
        double friction = StrictMath.atan(tangent);
        TopplingSlope.Forces forces = ROW.forces(friction, friction);
        double sine = 0.5;
        double cosine = Math.sqrt(0.75);
        double from = 0;
        for (int i = 15; i >= 0; i--) {
            TopplingSlope.Block block = forces.blocks().get(i);
            double weight = 25e3 * ROW.heights().get(i) * 10;
            assertEquals(weight * sine + from - block.passedOn(), block.shear(), 1e-6);
            assertEquals(
                    weight * cosine + (from - block.passedOn()) * tangent, block.normal(), 1e-6);
            if (block.mode() == TopplingSlope.Mode.SLIDING) {
                assertEquals(block.normal() * tangent, block.shear(), 1e-6 * block.normal());
            } else {
                assertTrue(block.shear() <= block.normal() * tangent * (1 + 1e-12));
            }
            from = block.passedOn();
        }
    }

    @Test
    void theAnchorFoundLeavesNothingToBePassedOn() {
        double friction = StrictMath.atan(0.65);
        double force = ROW.anchorForce(friction, friction, 0, 4);
        assertTrue(force > 0);
        assertTrue(ROW.anchorForce(StrictMath.atan(0.8), StrictMath.atan(0.8), 0, 4) == 0);
        refused("height of the anchor", () -> ROW.anchorForce(friction, friction, 0, 5));
        refused(
                "product of the tangents",
                () -> ROW.forces(StrictMath.toRadians(46), StrictMath.toRadians(46)));
    }

    @Property
    void displacementScalesWithAccelerationAndTimeSquared(
            @ForAll @DoubleRange(min = 0.1, max = 10) double strength,
            @ForAll @DoubleRange(min = 0.1, max = 10) double time) {
        double plain = wave(1, 1);
        double scaled = wave(strength, time);
        assertEquals(plain * strength * time * time, scaled, 1e-9 * scaled);
    }

    private static double wave(double strength, double time) {
        List<Double> times = new ArrayList<>();
        List<Double> accelerations = new ArrayList<>();
        for (int i = 0; i <= 400; i++) {
            times.add(0.01 * i * time);
            double fade = i < 300 ? 1 : 0;
            accelerations.add(fade * 4 * strength * StrictMath.sin(0.1 * i));
        }
        return NewmarkSliding.of(times, accelerations, 1.5 * strength).displacement();
    }

    @Property
    void aHigherYieldNeverSlidesFurther(
            @ForAll @DoubleRange(min = 0.1, max = 4) double low,
            @ForAll @DoubleRange(min = 0, max = 2) double more) {
        List<Double> times = new ArrayList<>();
        List<Double> accelerations = new ArrayList<>();
        for (int i = 0; i <= 400; i++) {
            times.add(0.01 * i);
            accelerations.add(i < 300 ? 4 * StrictMath.sin(0.1 * i + 0.3 * StrictMath.sin(i)) : 0);
        }
        assertTrue(
                NewmarkSliding.of(times, accelerations, low + more).displacement()
                        <= NewmarkSliding.of(times, accelerations, low).displacement());
    }

    @Test
    void splittingStepsChangesNothing() {
        List<Double> times = List.of(0.0, 0.1, 0.3, 0.6, 3.0);
        List<Double> accelerations = List.of(0.0, 5.0, -2.0, 4.0, 0.0);
        List<Double> fineTimes = new ArrayList<>();
        List<Double> fine = new ArrayList<>();
        for (int i = 0; i + 1 < times.size(); i++) {
            for (int k = 0; k < 7; k++) {
                double part = k / 7.0;
                fineTimes.add(times.get(i) + part * (times.get(i + 1) - times.get(i)));
                fine.add(
                        accelerations.get(i)
                                + part * (accelerations.get(i + 1) - accelerations.get(i)));
            }
        }
        fineTimes.add(3.0);
        fine.add(0.0);
        NewmarkSliding coarse = NewmarkSliding.of(times, accelerations, 1);
        NewmarkSliding split = NewmarkSliding.of(fineTimes, fine, 1);
        assertEquals(coarse.displacement(), split.displacement(), 1e-12);
        assertEquals(coarse.end(), split.end(), 1e-12);
    }

    @Test
    void aRecordIsReadFromATableAndABadOneRefusedByRow() {
        String good = "time [s],acceleration [m/s²]\n0,0\n0.5,4\n1,0\n9,0\n";
        assertTrue(NewmarkSliding.of(CsvTable.parse("record", good), 1).displacement() > 0);
        refused(
                "record, line 4: column time",
                () ->
                        NewmarkSliding.of(
                                CsvTable.parse("record", good.replace("\n1,", "\n0.4,")), 1));
        refused(
                "record, line 3: column acceleration",
                () -> NewmarkSliding.of(CsvTable.parse("record", good.replace("4\n", "4g\n")), 1));
        refused(
                "yield acceleration is 0.0",
                () -> NewmarkSliding.of(CsvTable.parse("record", good), 0));
    }
}
