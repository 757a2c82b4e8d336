package org.skewback.arch;

import org.skewback.frame.Material;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/**
 * What a square box chord carries between two panel points, alike in both planes (EN 1993-1-1:2005, 6.3.3
 * with annex B, class 3).
 *
 * @param slenderness slenderness of the chord as a column
 * @param axial axial force that a section carries
 * @param buckling compression that the chord carries as a column
 * @param bending moment that a section carries
 * @param momentFactor factor on moments between the ends, C_m
 */
record ChordStrength(
        Quantity slenderness,
        Quantity axial,
        Quantity buckling,
        Quantity bending,
        Quantity momentFactor) {

    /** Works out the strength of a chord that is so many metres long. */
    static ChordStrength of(DeckArchMembersRoutine.Input input, double length) {
        Section section =
                InputDeckArch.square(input.chordSide(), input.chordPlate()).section("chord");
        double second = section.inertiaY();
        Quantity plastic = Quantity.of(section.area(), "m²").times(input.yieldStrength());
        Quantity slenderness =
                ColumnStrength.slenderness(
                        plastic,
                        ColumnStrength.critical(
                                Quantity.of(Material.steel().youngModulus(), "Pa"),
                                Quantity.of(second, "m⁴"),
                                Quantity.of(length, "m")));
        Quantity reduction = ColumnStrength.reduction(slenderness, input.imperfectionFactor());
        Quantity modulus = Quantity.of(2 * second / input.chordSide().in("m"), "m³");
        return new ChordStrength(
                slenderness,
                plastic.over(input.partialFactor()),
                plastic.times(reduction).over(input.partialFactor()),
                modulus.times(input.yieldStrength()).over(input.partialFactor()),
                input.momentFactor());
    }

    /**
     * Gives how far forces that act together use the chord.
     *
     * @param compression N; tension is negative
     * @param inPlane moment in the plane of the rib, N m, at least 0
     * @param across moment out of that plane, N m, at least 0
     */
    double utilisation(double compression, double inPlane, double across) {
        Quantity share = Quantity.of(Math.max(0, compression), "N").over(buckling);
        Quantity factor =
                compression > 0
                        ? ColumnStrength.interaction(momentFactor, slenderness, share)
                        : Quantity.of(1);
        double used =
                ColumnStrength.utilisation(
                                share,
                                share,
                                factor.times(Quantity.of(inPlane, "N·m").over(bending)),
                                factor.times(Quantity.of(across, "N·m").over(bending)))
                        .si();
        // A section at an end of the member is not helped by what bends it between its ends,
        // nor by C_m.
        double section = Math.abs(compression) / axial.si() + (inPlane + across) / bending.si();
        return Math.max(used, section);
    }
}
