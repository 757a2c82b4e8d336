package org.skewback.foundation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.foundation.Refused.refused;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Reevaluation;
import org.skewback.quantity.Routines;

/** Laws of footings on rock. */
class FoundationTest {

    private static final Footing FOOTING = new Footing(Quantity.of(4, "m"), Quantity.of(6, "m"));
    private static final Quantity NORMAL = Quantity.of(4800, "kN");

    private static Quantity moment(double eccentricity) {
        return NORMAL.times(Quantity.of(eccentricity, "m"));
    }

    @Property
    void thePressureBalancesTheLoadWhereverItStands(
            @ForAll @DoubleRange(max = 1.9) double eccentricity) {
        Quantity moment = moment(eccentricity);
        double greatest = FOOTING.greatestPressure(NORMAL, moment).in("kPa");
        double least = FOOTING.leastPressure(NORMAL, moment).in("kPa");
        double contact = FOOTING.contact(NORMAL, moment).in("m");
        // The pressure is a trapezium or a triangle over the contact.
        double force = (greatest + least) / 2 * contact * 6;
        assertEquals(4800, force, 1e-8);
        double fromEdge = contact * (greatest + 2 * least) / (3 * (greatest + least));
        assertEquals(eccentricity, 2 - fromEdge, 1e-9);
    }

    @Property
    void bothWaysAgreeWithOneWayAndMirrorImages(
            @ForAll @DoubleRange(min = -1.8, max = 1.8) double x,
            @ForAll @DoubleRange(min = -2.4, max = 2.4) double y) {
        ContactPressure both = ContactPressure.of(4, 6, 4.8e6, x, y);
        assertEquals(both.greatest(), ContactPressure.of(4, 6, 4.8e6, -x, y).greatest(), 1e-3);
        assertEquals(both.greatest(), ContactPressure.of(6, 4, 4.8e6, y, x).greatest(), 1e-3);
        ContactPressure one = ContactPressure.of(4, 6, 4.8e6, x, 0);
        assertEquals(FOOTING.greatestPressure(NORMAL, moment(x)).in("Pa"), one.greatest(), 1e-3);
        assertTrue(both.greatest() >= one.greatest() * (1 - 1e-9));
        assertTrue(both.contactPart() > 0 && both.contactPart() <= 1);
    }

    @Property
    void aSteeperSlopeNeverCarriesMore(
            @ForAll @DoubleRange(min = 5, max = 44) double friction,
            @ForAll @DoubleRange(max = 80) double slope) {
        Quantity phi = Quantity.of(friction, "°");
        assertTrue(
                RockBearing.cohesionFactor(phi, Quantity.of(slope + 5, "°")).si()
                        < RockBearing.cohesionFactor(phi, Quantity.of(slope, "°")).si());
    }

    @Property
    void aLoadInclinedMoreNeverCarriesMore(@ForAll @DoubleRange(max = 2500) double along) {
        double less = inclined(along);
        assertTrue(inclined(along + 100) < less && less <= 1);
    }

    private static double inclined(double along) {
        return RockBearing.inclinationFactor(
                        Quantity.of(along, "kN"),
                        NORMAL,
                        Quantity.of(24, "m²"),
                        Quantity.of(50, "kPa"),
                        Quantity.of(35, "°"),
                        Quantity.of(0.7))
                .si();
    }

    @Property
    void fourCornersMakeAMiddleAndSidesMayBeExchanged(
            @ForAll @DoubleRange(min = 0.2, max = 10) double width,
            @ForAll @DoubleRange(min = 0.2, max = 10) double length) {
        Quantity b = Quantity.of(width, "m");
        Quantity l = Quantity.of(length, "m");
        Quantity q = Quantity.of(100, "kPa");
        Quantity z = Quantity.of(3, "m");
        assertEquals(
                StressBelow.corner(q, b, l, z).si(), StressBelow.corner(q, l, b, z).si(), 1e-6);
        assertEquals(
                Settlement.cornerShape(b, l).times(b).si(),
                Settlement.cornerShape(l, b).times(l).si(),
                1e-9);
        // A wide load has a quarter of its pressure below each corner.
        Quantity wide = Quantity.of(10_000, "m");
        assertEquals(25_000, StressBelow.corner(q, wide, wide, z).si(), 1);
    }

    @Test
    void aBaseSquareToTheThrustHasNoForceAlong() {
        Quantity angle = Quantity.of(40, "°");
        Quantity thrust = Quantity.of(30, "MN");
        Quantity zero = Quantity.of(0, "m");
        SpringingBlock block =
                SpringingBlock.on(angle)
                        .with(thrust.times(angle.sin()), thrust.times(angle.cos()), zero, zero);
        assertEquals(0, block.along().in("MN"), 1e-9);
        assertEquals(30, block.normal().in("MN"), 1e-9);
        assertEquals(0, block.obliquity().in("°"), 1e-9);
    }

    @Test
    void theRoutineGivesTheSameAgainFromARecord() {
        ContactPressureRoutine.Output found =
                Routines.call(
                        new ContactPressureRoutine(),
                        new ContactPressureRoutine.Input(
                                Quantity.of(4, "m"),
                                Quantity.of(6, "m"),
                                NORMAL,
                                moment(0.9),
                                moment(1.1)));
        Reevaluation again =
                Reevaluation.of(
                        FlatGraph.lay(List.of(found.greatest(), found.contactPart())).graph());
        assertTrue(again.isConsistent(), again.toString());
        assertEquals(0, again.count(Reevaluation.Outcome.CANNOT_TELL));
    }

    @Test
    void badInputIsRefusedByName() {
        refused("eccentricity of the load", () -> FOOTING.greatestPressure(NORMAL, moment(2)));
        refused(
                "force square to the base",
                () -> FOOTING.greatestPressure(NORMAL.negated(), moment(0)));
        refused("eccentricity along the length", () -> ContactPressure.of(4, 6, 1e6, 0, 3));
        refused(
                "width of the footing",
                () -> new Footing(Quantity.of(0, "m"), Quantity.of(6, "m")));
        refused("1 − H/(V + A c cot φ)", () -> inclined(1e5));
        refused("inclination of the ground", () -> RockBearing.groundFactor(Quantity.of(50, "°")));
        refused(
                "Poisson's ratio is 0.7",
                () ->
                        Settlement.stiffCircle(
                                NORMAL,
                                Quantity.of(1, "m"),
                                Quantity.of(1, "GPa"),
                                Quantity.of(0.7)));
        refused("carries no force", () -> SpringingBlock.on(Quantity.of(10, "°")).normal());
        refused("outside", () -> RockBearing.allowableByQuality(Quantity.of(0.05)));
    }
}
