package org.skewback.slope;

/** A wedge of rock with the strength of its joints and all that acts on it. */
public final class WedgeLoads {

    private final WedgeShape shape;
    private final WedgeJoint jointA;
    private final WedgeJoint jointB;
    private final double weight;
    private final Vector active;
    private final Vector passive;

    private WedgeLoads(
            WedgeShape shape,
            WedgeJoint jointA,
            WedgeJoint jointB,
            double weight,
            Vector active,
            Vector passive) {
        this.shape = shape;
        this.jointA = jointA;
        this.jointB = jointB;
        this.weight = weight;
        this.active = active;
        this.passive = passive;
    }

    /**
     * Takes a dry wedge under its weight.
     *
     * @param shape the wedge, cut out by the joints' orientations in the same order
     * @param jointA strength of joint A
     * @param jointB strength of joint B
     * @param unitWeight unit weight of the rock, N/m³, greater than 0
     * @return the wedge with its weight
     * @throws IllegalArgumentException if the unit weight is not positive, or a joint's orientation
     *     is not the one of the shape
     */
    public static WedgeLoads of(
            WedgeShape shape, WedgeJoint jointA, WedgeJoint jointB, double unitWeight) {
        Require.positive("unit weight of the rock", unitWeight, "N/m³");
        if (!jointA.orientation().normal().equals(shape.normalA())
                || !jointB.orientation().normal().equals(shape.normalB())) {
            throw new IllegalArgumentException(
                    "The joints are not those that cut out the wedge: strengths may be swapped.");
        }
        double weight = unitWeight * shape.volume();
        return new WedgeLoads(
                shape, jointA, jointB, weight, new Vector(0, 0, -weight), Vector.ORIGIN);
    }

    /**
     * Adds water.
     *
     * @param water mean pressures
     * @return the wedge with it
     */
    public WedgeLoads withWater(WedgeWater water) {
        return with(
                shape.normalA()
                        .times(water.onA() * shape.areaA())
                        .plus(shape.normalB().times(water.onB() * shape.areaB()))
                        .plus(shape.crackOutward().times(-water.inCrack() * shape.crackArea())));
    }

    /**
     * Adds an earthquake by coefficients of the weight.
     *
     * @param level level coefficient, from 0 to 2
     * @param trend direction that the level force points to, clockwise from north, rad; {@link
     *     WedgeShape#trend} is the usual choice
     * @param upward coefficient upward, from −1 to 1
     * @return the wedge with it
     * @throws IllegalArgumentException if a value is outside
     */
    public WedgeLoads withEarthquake(double level, double trend, double upward) {
        Require.within("level earthquake coefficient", level, 0, 2, "");
        Require.within("upward earthquake coefficient", upward, -1, 1, "");
        Require.finite("direction of the earthquake", trend, "rad");
        return with(
                Vector.ofTrend(trend, 0)
                        .times(level * weight)
                        .plus(new Vector(0, 0, upward * weight)));
    }

    /**
     * Adds a force on the block, such as the thrust of a springing.
     *
     * @param force the force
     * @return the wedge with it
     */
    public WedgeLoads withForce(SpaceForce force) {
        return with(force.vector());
    }

    /**
     * Adds an anchor.
     *
     * @param force force that the anchor puts on the block, pointing into the slope
     * @param convention on which side of the factor its part along the direction of sliding stands
     * @return the wedge with it
     */
    public WedgeLoads withAnchor(SpaceForce force, AnchorConvention convention) {
        if (convention == AnchorConvention.ACTIVE) {
            return with(force.vector());
        }
        return new WedgeLoads(shape, jointA, jointB, weight, active, passive.plus(force.vector()));
    }

    private WedgeLoads with(Vector force) {
        return new WedgeLoads(shape, jointA, jointB, weight, active.plus(force), passive);
    }

    /**
     * Gives the wedge.
     *
     * @return its shape
     */
    public WedgeShape shape() {
        return shape;
    }

    /**
     * Gives the strength of joint A.
     *
     * @return joint A
     */
    public WedgeJoint jointA() {
        return jointA;
    }

    /**
     * Gives the strength of joint B.
     *
     * @return joint B
     */
    public WedgeJoint jointB() {
        return jointB;
    }

    /**
     * Gives the weight of the block.
     *
     * @return weight, N
     */
    public double weight() {
        return weight;
    }

    Vector active() {
        return active;
    }

    Vector passive() {
        return passive;
    }
}
