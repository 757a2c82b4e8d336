package org.skewback.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
}
