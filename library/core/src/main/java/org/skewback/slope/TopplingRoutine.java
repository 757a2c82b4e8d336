package org.skewback.slope;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** Toppling of a regular row of blocks, as a routine; see {@link TopplingSlope}. */
public final class TopplingRoutine
        implements Routine<TopplingRoutine.Input, TopplingRoutine.Output> {

    /** Makes the routine. */
    public TopplingRoutine() {}

    /**
     * The row of blocks.
     *
     * @param width width of each block
     * @param baseDip dip of the base
     * @param unitWeight unit weight of the rock
     * @param crest number of the block at the crest
     * @param count number of blocks
     * @param faceStep step of the tops below the crest
     * @param upperStep step of the tops above the crest
     * @param baseStep step of the base
     * @param friction friction angle on base and sides
     * @param level level earthquake coefficient
     * @param anchorPlunge plunge of an anchor at the top of the toe block
     */
    public record Input(
            Quantity width,
            Quantity baseDip,
            Quantity unitWeight,
            int crest,
            int count,
            Quantity faceStep,
            Quantity upperStep,
            Quantity baseStep,
            Quantity friction,
            Quantity level,
            Quantity anchorPlunge) {}

    /**
     * What is found.
     *
     * @param passedOn force on the downhill side of each block, from the toe up, per metre run
     * @param normal force square to the base of each block
     * @param shear force along the base of each block
     * @param tangentNeeded tangent of the friction angle that would just do
     * @param factor tangent that is there over the one needed
     * @param anchorForce anchor force at the toe block that just holds the row; 0 where none is
     *     needed
     */
    public record Output(
            List<Quantity> passedOn,
            List<Quantity> normal,
            List<Quantity> shear,
            Quantity tangentNeeded,
            Quantity factor,
            Quantity anchorForce) {}

    @Override
    public String name() {
        return "slope.toppling";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input in, Stop stop) {
        TopplingSlope slope =
                TopplingSlope.regular(
                                in.width().in("m"),
                                in.baseDip().in("rad"),
                                in.unitWeight().in("N/m³"),
                                in.crest(),
                                in.count(),
                                in.faceStep().in("m"),
                                in.upperStep().in("m"),
                                in.baseStep().in("m"))
                        .withEarthquake(in.level().in(""));
        double friction = in.friction().in("rad");
        TopplingSlope.Forces forces = slope.forces(friction, friction);
        double needed = slope.frictionNeeded();
        return new Output(
                forces.blocks().stream().map(b -> Quantity.of(b.passedOn(), "N/m")).toList(),
                forces.blocks().stream().map(b -> Quantity.of(b.normal(), "N/m")).toList(),
                forces.blocks().stream().map(b -> Quantity.of(b.shear(), "N/m")).toList(),
                Quantity.of(needed),
                Quantity.of(StrictMath.tan(friction) / needed),
                Quantity.of(
                        slope.anchorForce(
                                friction,
                                friction,
                                in.anchorPlunge().in("rad"),
                                slope.heights().get(0)),
                        "N/m"));
    }
}
