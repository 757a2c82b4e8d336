package org.skewback.slope;

/**
 * Whether joints let a face fail at all, by direction alone, before any force is looked at.
 *
 * <p>Source: J. W. Markland (1972) for sliding, R. E. Goodman and J. W. Bray, Toppling of rock
 * slopes (1976) for toppling (from memory). A joint that passes is one to calculate; one that does
 * not may still fail together with others.
 *
 * @param possible whether this failure is possible by direction
 * @param reason which condition decides, with its numbers
 */
public record KinematicTest(boolean possible, String reason) {

    /**
     * Tests a joint for sliding on a plane: it strikes like the face, comes out in it, and is
     * steeper than friction.
     *
     * @param joint the joint
     * @param face the face
     * @param friction friction angle, rad
     * @param spread largest difference of the dip directions, rad; 20° is usual
     * @return the finding
     * @throws IllegalArgumentException if friction or spread is outside 0 to π/2
     */
    public static KinematicTest planar(
            Orientation joint, Orientation face, double friction, double spread) {
        Require.friction(friction);
        Require.within("spread of dip directions", spread, 0, Math.PI / 2, "rad");
        double off = apart(joint.dipDirection(), face.dipDirection());
        if (off > spread) {
            return no("its dip direction is", off, "off the face, more than", spread);
        }
        if (joint.dip() >= face.dip()) {
            return no("its dip of", joint.dip(), "does not come out in the face of", face.dip());
        }
        if (joint.dip() <= friction) {
            return no("its dip of", joint.dip(), "is not steeper than friction of", friction);
        }
        return yes("its dip of", joint.dip(), "lies between friction and the face of", face.dip());
    }

    /**
     * Tests two joints for a wedge: their line of intersection comes out in the face and is steeper
     * than friction.
     *
     * @param jointA one joint
     * @param jointB the other
     * @param face the face
     * @param friction friction angle, rad; the smaller of the two, on the safe side
     * @return the finding
     * @throws IllegalArgumentException if friction is outside 0 to π/2, or the joints are parallel
     */
    public static KinematicTest wedge(
            Orientation jointA, Orientation jointB, Orientation face, double friction) {
        Require.friction(friction);
        Vector line = jointA.normal().cross(jointB.normal());
        if (line.length() < 1e-9) {
            throw new IllegalArgumentException("Joints A and B are parallel: they make no wedge.");
        }
        Vector down = line.z() > 0 ? line.unit().times(-1) : line.unit();
        double plunge = down.plunge();
        double apparent = face.apparentDip(down.trend());
        if (plunge >= apparent) {
            return no("the plunge of", plunge, "does not come out in the face of", apparent);
        }
        if (plunge <= friction) {
            return no("the plunge of", plunge, "is not steeper than friction of", friction);
        }
        return yes("the plunge of", plunge, "lies between friction and the face of", apparent);
    }

    /**
     * Tests a joint for toppling: it dips into the slope, strikes like the face, and lets layers
     * slip on each other, {@code 90° − ψ_d ≤ ψ_f − φ}.
     *
     * @param joint the joint
     * @param face the face
     * @param friction friction angle between the layers, rad
     * @param spread largest difference of the strikes, rad; 10° to 30° are in use
     * @return the finding
     * @throws IllegalArgumentException if friction or spread is outside 0 to π/2
     */
    public static KinematicTest toppling(
            Orientation joint, Orientation face, double friction, double spread) {
        Require.friction(friction);
        Require.within("spread of dip directions", spread, 0, Math.PI / 2, "rad");
        double off = Math.PI - apart(joint.dipDirection(), face.dipDirection());
        if (off > spread) {
            return no("it dips into the slope with its strike", off, "off, more than", spread);
        }
        double lean = Math.PI / 2 - joint.dip();
        double room = face.dip() - friction;
        if (lean > room) {
            return no("its normal plunges", lean, "more than face less friction,", room);
        }
        return yes("its normal plunges", lean, "at most face less friction,", room);
    }

    private static double apart(double first, double second) {
        double off = Math.abs(first - second) % (2 * Math.PI);
        return Math.min(off, 2 * Math.PI - off);
    }

    private static KinematicTest no(String before, double first, String between, double second) {
        return new KinematicTest(false, words(before, first, between, second));
    }

    private static KinematicTest yes(String before, double first, String between, double second) {
        return new KinematicTest(true, words(before, first, between, second));
    }

    private static String words(String before, double first, String between, double second) {
        return before + " " + degrees(first) + " " + between + " " + degrees(second);
    }

    private static String degrees(double angle) {
        return Math.round(StrictMath.toDegrees(angle) * 10) / 10.0 + "°";
    }
}
