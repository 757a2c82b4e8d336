package org.skewback.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Proves laws of hanging cables over slack and taut ones, and the messages for bad questions. */
class HangingCableTest {

    private static Cable cable(double span, double rise, double excess, double weight) {
        return new Cable(Math.hypot(span, rise) * (1 + excess), weight, 2e8);
    }

    @Property(tries = 300)
    void theEndIsWhereItShouldBeAndForcesBalance(
            @ForAll @DoubleRange(min = 0.5, max = 500) double span,
            @ForAll @DoubleRange(min = -300, max = 300) double rise,
            @ForAll @DoubleRange(min = -0.01, max = 1) double excess,
            @ForAll @DoubleRange(min = 1, max = 2000) double weight,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Cable cable = cable(span, rise, excess, weight);
        double length = cable.unstressedLength();
        List<CableLoad> loads =
                List.of(new CableLoad(share * length, 3e4), new CableLoad(0.3 * length, 1e4));
        HangingCable hanging = HangingCable.between(cable, loads, span, rise);
        CablePoint end = hanging.at(length);
        assertEquals(span, end.x(), 1e-9 * length);
        assertEquals(rise, end.z(), 1e-9 * length);
        assertEquals(
                weight * length + 4e4,
                hanging.startVertical() + hanging.endVertical(),
                1e-9 * (weight * length + 4e4 + Math.abs(hanging.startVertical())));
    }

    @Property(tries = 200)
    void seenFromTheOtherSideItHangsTheSame(
            @ForAll @DoubleRange(min = 1, max = 500) double span,
            @ForAll @DoubleRange(min = -300, max = 300) double rise,
            @ForAll @DoubleRange(min = -0.01, max = 0.5) double excess) {
        Cable cable = cable(span, rise, excess, 300);
        HangingCable one = HangingCable.between(cable, span, rise);
        HangingCable other = HangingCable.between(cable, span, -rise);
        double force = one.largestTension();
        assertEquals(one.horizontalForce(), other.horizontalForce(), 1e-7 * force);
        assertEquals(one.startVertical(), other.endVertical(), 1e-7 * force);
        assertEquals(one.sag(), other.sag(), 1e-7 * span);
    }

    @Property(tries = 100)
    void stiffnessIsTheChangeOfForce(
            @ForAll @DoubleRange(min = 10, max = 200) double span,
            @ForAll @DoubleRange(min = -100, max = 100) double rise,
            @ForAll @DoubleRange(min = -0.01, max = 0.1) double excess) {
        Cable cable = cable(span, rise, excess, 300);
        double[][] k = HangingCable.between(cable, span, rise).stiffness();
        double step = 1e-6 * span;
        HangingCable left = HangingCable.between(cable, span - step, rise);
        HangingCable right = HangingCable.between(cable, span + step, rise);
        HangingCable low = HangingCable.between(cable, span, rise - step);
        HangingCable high = HangingCable.between(cable, span, rise + step);
        double size = Math.max(Math.abs(k[0][0]), Math.abs(k[1][1]));
        double tolerance = 1e-4 * size;
        assertEquals(
                (right.horizontalForce() - left.horizontalForce()) / (2 * step),
                k[0][0],
                tolerance);
        assertEquals(
                (high.horizontalForce() - low.horizontalForce()) / (2 * step), k[0][1], tolerance);
        assertEquals((high.endVertical() - low.endVertical()) / (2 * step), k[1][1], tolerance);
    }

    @Test
    void ofAForceAndBackAgain() {
        HangingCable found = HangingCable.ofHorizontalForce(400, 2e8, 250, 90, 6e5);
        HangingCable hung = HangingCable.between(found.cable(), 250, 90);
        assertEquals(6e5, hung.horizontalForce(), 1e-4);
    }

    @Test
    void aWeightlessTautCableIsASpring() {
        HangingCable hanging = HangingCable.between(new Cable(4.9, 0, 1e6), 3, 4);
        double tension = 1e6 * 0.1 / 4.9;
        assertEquals(tension, hanging.largestTension(), 1e-9 * tension);
        assertEquals(tension * 3 / 5, hanging.horizontalForce(), 1e-9 * tension);
    }

    @Test
    void warmthLengthensWithoutAddingWeight() {
        Cable warm = new Cable(100, 50, 1e8).warmed(40, 1.2e-5);
        assertEquals(100.048, warm.unstressedLength(), 1e-12);
        assertEquals(5000, warm.unstressedLength() * warm.weightPerLength(), 1e-9);
    }

    @Test
    void aSlackCableThatNothingActsOnIsRefused() {
        String message =
                assertThrows(
                                IllegalArgumentException.class,
                                () -> HangingCable.between(new Cable(6, 0, 1e6), 3, 4))
                        .getMessage();
        assertEquals(
                "unstressed length of a cable that nothing acts on is 6.0 m; allowed is less than"
                        + " the distance of its ends, 5.0 m.",
                message);
    }

    @Test
    void aLoadBeyondTheEndIsRefused() {
        String message =
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        HangingCable.between(
                                                new Cable(6, 10, 1e6),
                                                List.of(new CableLoad(7, 1)),
                                                3,
                                                4))
                        .getMessage();
        assertEquals(
                "place of a load on a cable is 7.0 m; allowed is at most its unstressed length, 6.0"
                        + " m.",
                message);
    }

    @Property(tries = 300)
    void anUprightCableIsTheLimitOfSteepOnes(
            @ForAll @DoubleRange(min = -200, max = 200) double rise,
            @ForAll @DoubleRange(min = -0.01, max = 0.5) double excess,
            @ForAll @DoubleRange(min = 1, max = 2000) double weight,
            @ForAll @DoubleRange(min = 6, max = 12) double steepness) {
        double height = Math.copySign(Math.abs(rise) + 1, rise);
        Cable cable = cable(0, height, excess, weight);
        double span = StrictMath.pow(10, -steepness) * Math.abs(height);
        HangingCable upright = HangingCable.between(cable, 0, height);
        HangingCable steep = HangingCable.between(cable, span, height);
        double force = upright.largestTension();
        // Where nothing pulls its lower end the limit is reached as 1/log only.
        boolean folded = upright.isFolded();
        assertEquals(upright.startVertical(), steep.startVertical(), 1e-4 * force);
        assertEquals(upright.endVertical(), steep.endVertical(), 1e-4 * force);
        double lower = height > 0 ? -upright.startVertical() : -upright.endVertical();
        if (!folded && lower > 0.01 * force) {
            assertEquals(
                    upright.stiffnessAcross(),
                    steep.horizontalForce() / span,
                    1e-6 * upright.stiffnessAcross());
            for (int i = 0; i < 2; i++) {
                assertEquals(
                        upright.stiffness()[i][i],
                        steep.stiffness()[i][i],
                        1e-5 * upright.stiffness()[i][i]);
            }
            assertEquals(0, steep.stiffness()[0][1], 1e-5 * upright.stiffness()[1][1]);
        } else if (folded) {
            assertEquals(0, upright.stiffnessAcross());
            assertEquals(0, steep.horizontalForce(), 1e-5 * force);
        }
    }

    @Property(tries = 300)
    void anUprightCableEndsWhereItShouldAndItsStiffnessIsTheChangeOfForce(
            @ForAll @DoubleRange(min = -200, max = 200) double rise,
            @ForAll @DoubleRange(min = -0.01, max = 1) double excess,
            @ForAll @DoubleRange(min = 1, max = 2000) double weight,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Cable cable = cable(0, Math.abs(rise) + 1, excess, weight);
        double length = cable.unstressedLength();
        List<CableLoad> loads =
                List.of(new CableLoad(share * length, 3e4), new CableLoad(0.3 * length, 1e4));
        HangingCable hanging = HangingCable.between(cable, loads, 0, rise);
        double force = weight * length + 4e4;
        double softness = 1 / hanging.stiffness()[1][1];
        assertEquals(rise, hanging.at(length).z(), 1e-12 * length + 1e-15 * force * softness);
        assertEquals(0, hanging.at(length).x());
        assertEquals(
                force,
                hanging.startVertical() + hanging.endVertical(),
                1e-12 * hanging.largestTension() + 1e-12 * force);
        double k = 1 / softness;
        double step = 1e-5 * length;
        HangingCable up = HangingCable.between(cable, loads, 0, rise + step);
        HangingCable down = HangingCable.between(cable, loads, 0, rise - step);
        // The force grows in straight pieces; where two meet the difference lies between them.
        double difference = (up.endVertical() - down.endVertical()) / (2 * step);
        double least = Math.min(k, Math.min(up.stiffness()[1][1], down.stiffness()[1][1]));
        double most = Math.max(k, Math.max(up.stiffness()[1][1], down.stiffness()[1][1]));
        double rounding = 1e-15 * most * length / step;
        assertTrue(difference > least * (1 - 1e-6) - rounding, () -> difference + " < " + least);
        assertTrue(difference < most * (1 + 1e-6) + rounding, () -> difference + " > " + most);
    }

    @Test
    void steepCablesAreFoundHoweverNearTheyComeToHangingFree() {
        double weight = 100;
        double free = 1 + weight * 50 / (2 * 2e8);
        for (double height : new double[] {50 * free, 50 * (1 + 1e-9), 50, 50 * (free - 1e-6)}) {
            Cable cable = new Cable(50, weight, 2e8);
            double last = Double.POSITIVE_INFINITY;
            for (double span = 1; span > 1e-10; span /= 10) {
                HangingCable hanging = HangingCable.between(cable, span, height);
                CablePoint end = hanging.at(50);
                // Rounding of the height moves the force by 3e-8 N, as much as pulls across.
                double rounding = 1e-14 * 2e8 / 50 / hanging.horizontalForce();
                assertEquals(1, end.x() / span, 1e-10 + rounding);
                assertEquals(height, end.z(), 1e-10);
                assertTrue(hanging.stiffnessAcross() < last);
                assertTrue(hanging.stiffnessAcross() > 0);
                last = hanging.stiffnessAcross();
            }
        }
    }

    @Test
    void aLoadHangsOnTwoStrandsOfWeightlessCable() {
        HangingCable hanging =
                HangingCable.between(new Cable(7, 0, 1e8), List.of(new CableLoad(4, 3e4)), 0, -1);
        // 4(1 + V/EA) − 3(1 + (P − V)/EA) = 1 m from the start down to the end.
        assertEquals(3.0 / 7 * 3e4, hanging.startVertical(), 1e-5);
        assertEquals(4.0 / 7 * 3e4, hanging.endVertical(), 1e-5);
        assertEquals(-4 * (1 + 3.0 / 7 * 3e4 / 1e8), hanging.at(4).z(), 1e-12);
        assertFalse(hanging.isFolded());
        // Each strand is a pendulum: the load moves aside as it is pulled.
        assertEquals(
                1 / (7 / 1e8 + 4 / (3.0 / 7 * 3e4) + 3 / (4.0 / 7 * 3e4)),
                hanging.stiffnessAcross(),
                1e-9 * hanging.stiffnessAcross());
    }

    @Test
    void anUprightCableWithoutWeightThatIsSlackIsRefused() {
        assertEquals(
                "unstressed length of a cable that nothing acts on is 6.0 m; allowed is less than"
                        + " the distance of its ends, 5.0 m.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> HangingCable.between(new Cable(6, 0, 1e6), 0, 5))
                        .getMessage());
        assertEquals(
                "unstressed length of an upright cable without weight is 6.0 m; allowed is one that"
                        + " leaves no part of it slack over a height of 5.0 m.",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        HangingCable.between(
                                                new Cable(6, 0, 1e6),
                                                List.of(new CableLoad(6, 10)),
                                                0,
                                                5))
                        .getMessage());
    }
}
