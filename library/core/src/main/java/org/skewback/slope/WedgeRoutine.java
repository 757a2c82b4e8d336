package org.skewback.slope;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The safety of a wedge between two joints, by vectors, as a routine; see {@link WedgeSlide}. */
public final class WedgeRoutine implements Routine<WedgeRoutine.Input, WedgeRoutine.Output> {

    /** Makes the routine. */
    public WedgeRoutine() {}

    /**
     * The wedge and what acts on it.
     *
     * @param dipA dip of joint A
     * @param directionA dip direction of joint A
     * @param dipB dip of joint B
     * @param directionB dip direction of joint B
     * @param dipFace dip of the face
     * @param directionFace dip direction of the face
     * @param dipUpper dip of the upper slope
     * @param directionUpper dip direction of the upper slope
     * @param height total height of the wedge
     * @param unitWeight unit weight of the rock
     * @param cohesionA cohesion of joint A
     * @param frictionA friction angle of joint A
     * @param cohesionB cohesion of joint B
     * @param frictionB friction angle of joint B
     * @param pressureA mean water pressure on joint A
     * @param pressureB mean water pressure on joint B
     * @param level level earthquake coefficient down the line of intersection
     * @param anchorForce force of the anchors on the wedge
     * @param anchorTrend trend that the anchors point to
     * @param anchorPlunge plunge of the anchors
     * @param passive whether the anchors' force along the sliding is added to the resistance
     */
    public record Input(
            Quantity dipA,
            Quantity directionA,
            Quantity dipB,
            Quantity directionB,
            Quantity dipFace,
            Quantity directionFace,
            Quantity dipUpper,
            Quantity directionUpper,
            Quantity height,
            Quantity unitWeight,
            Quantity cohesionA,
            Quantity frictionA,
            Quantity cohesionB,
            Quantity frictionB,
            Quantity pressureA,
            Quantity pressureB,
            Quantity level,
            Quantity anchorForce,
            Quantity anchorTrend,
            Quantity anchorPlunge,
            boolean passive) {}

    /**
     * What is found.
     *
     * @param factor factor of safety
     * @param weight weight of the wedge
     * @param areaA area on joint A
     * @param areaB area on joint B
     * @param normalA force square to joint A
     * @param normalB force square to joint B
     * @param driving force along the sliding
     * @param trend trend of the sliding
     * @param plunge plunge of the sliding
     */
    public record Output(
            Quantity factor,
            Quantity weight,
            Quantity areaA,
            Quantity areaB,
            Quantity normalA,
            Quantity normalB,
            Quantity driving,
            Quantity trend,
            Quantity plunge) {}

    @Override
    public String name() {
        return "slope.wedge";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input in, Stop stop) {
        Orientation a = new Orientation(in.dipA().in("rad"), in.directionA().in("rad"));
        Orientation b = new Orientation(in.dipB().in("rad"), in.directionB().in("rad"));
        WedgeShape shape =
                WedgeShape.ofTotalHeight(
                        a,
                        b,
                        new Orientation(in.dipFace().in("rad"), in.directionFace().in("rad")),
                        new Orientation(in.dipUpper().in("rad"), in.directionUpper().in("rad")),
                        in.height().in("m"));
        WedgeLoads loads =
                WedgeLoads.of(
                                shape,
                                new WedgeJoint(
                                        a, in.cohesionA().in("Pa"), in.frictionA().in("rad")),
                                new WedgeJoint(
                                        b, in.cohesionB().in("Pa"), in.frictionB().in("rad")),
                                in.unitWeight().in("N/m³"))
                        .withWater(
                                new WedgeWater(in.pressureA().in("Pa"), in.pressureB().in("Pa"), 0))
                        .withEarthquake(in.level().in(""), shape.trend(), 0)
                        .withAnchor(
                                SpaceForce.of(
                                        in.anchorForce().in("N"),
                                        in.anchorTrend().in("rad"),
                                        in.anchorPlunge().in("rad")),
                                in.passive() ? AnchorConvention.PASSIVE : AnchorConvention.ACTIVE);
        WedgeSlide slide = WedgeSlide.of(loads);
        return new Output(
                Quantity.of(slide.factor()),
                Quantity.of(slide.weight(), "N"),
                Quantity.of(shape.areaA(), "m²"),
                Quantity.of(shape.areaB(), "m²"),
                Quantity.of(slide.normalA(), "N"),
                Quantity.of(slide.normalB(), "N"),
                Quantity.of(slide.driving(), "N"),
                Quantity.of(slide.trend(), "rad").inUnit("°"),
                Quantity.of(slide.plunge(), "rad").inUnit("°"));
    }
}
