package org.skewback.foundation;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** Pressure below a footing with eccentricity both ways, as a routine; see {@link ContactPressure}. */
public final class ContactPressureRoutine
        implements Routine<ContactPressureRoutine.Input, ContactPressureRoutine.Output> {

    /** Makes the routine. */
    public ContactPressureRoutine() {}

    /**
     * The footing and its load.
     *
     * @param width side along x
     * @param length side along y
     * @param normal force square to the base
     * @param momentX moment that moves the force along x
     * @param momentY moment that moves the force along y
     */
    public record Input(
            Quantity width, Quantity length, Quantity normal, Quantity momentX, Quantity momentY) {}

    /**
     * What is found.
     *
     * @param greatest greatest pressure
     * @param contactPart part of the base that presses
     */
    public record Output(Quantity greatest, Quantity contactPart) {}

    @Override
    public String name() {
        return "foundation.contactPressure";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input in, Stop stop) {
        double normal = Require.positive("force square to the base", in.normal().in("N"), "N");
        ContactPressure found =
                ContactPressure.of(
                        in.width().in("m"),
                        in.length().in("m"),
                        normal,
                        in.momentX().in("N·m") / normal,
                        in.momentY().in("N·m") / normal);
        return new Output(
                Quantity.of(found.greatest(), "Pa").inUnit("kPa"),
                Quantity.of(found.contactPart()));
    }
}
