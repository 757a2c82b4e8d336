package org.skewback.slope;

/**
 * Safety of a wedge of rock against sliding on one or both of its joints, by vectors.
 *
 * <p>The forces on the block are added up to one vector. While both joints press, the block slides
 * along their line of intersection: the part of the vector across the line is carried by the two
 * normals, {@code F = (c_A A_A + N_A tan φ_A + c_B A_B + N_B tan φ_B + P)/S}. Where one normal would
 * be a pull, that joint opens: the block slides on the other in the direction of the resultant in
 * its plane. Where both would pull, contact is lost and there is no factor. Moments are not looked
 * at: a wedge that can rotate is not covered.
 *
 * <p>Source: E. Hoek and J. W. Bray, Rock Slope Engineering (1981), app. 2 (from memory), derived
 * anew with vectors.
 *
 * @param contact which joints press
 * @param factor factor of safety F; 0 where contact is lost
 * @param normalA force square to joint A, N
 * @param normalB force square to joint B, N
 * @param driving force along the direction of sliding, S, N
 * @param trend trend of the direction of sliding, rad
 * @param plunge plunge of the direction of sliding, rad
 * @param weight weight of the block, N
 */
public record WedgeSlide(
        Contact contact,
        double factor,
        double normalA,
        double normalB,
        double driving,
        double trend,
        double plunge,
        double weight) {

    /** Which joints press. */
    public enum Contact {
        /** The block slides along the line of intersection. */
        BOTH,
        /** Joint B opens; the block slides on joint A. */
        JOINT_A,
        /** Joint A opens; the block slides on joint B. */
        JOINT_B,
        /** Both joints open: the forces lift the block off. */
        LOST
    }

    /**
     * Gives the result for a wedge, its joints and all that acts on it.
     *
     * @param loads the wedge with its loads
     * @return the result
     * @throws IllegalArgumentException if nothing drives the block downward, so that there is no
     *     factor
     */
    public static WedgeSlide of(WedgeLoads loads) {
        WedgeShape shape = loads.shape();
        Vector a = shape.normalA();
        Vector b = shape.normalB();
        // Passive anchors press too; only their part along the sliding stands with the resistance.
        Vector all = loads.active().plus(loads.passive());
        // Across the line of intersection the normals of A and B balance the forces.
        double ab = a.dot(b);
        double onA = -all.dot(a);
        double onB = -all.dot(b);
        double normalA = (onA - ab * onB) / (1 - ab * ab);
        double normalB = (onB - ab * onA) / (1 - ab * ab);
        if (normalA > 0 && normalB > 0) {
            return slide(loads, Contact.BOTH, normalA, normalB, shape.lineDown());
        }
        if (onA > 0 && across(all, a).dot(b) >= 0) {
            return slide(loads, Contact.JOINT_A, onA, 0, across(loads.active(), a));
        }
        if (onB > 0 && across(all, b).dot(a) >= 0) {
            return slide(loads, Contact.JOINT_B, 0, onB, across(loads.active(), b));
        }
        return new WedgeSlide(
                Contact.LOST, 0, 0, 0, all.length(), all.trend(), all.plunge(), loads.weight());
    }

    /** The part of a vector in the plane of a normal. */
    private static Vector across(Vector all, Vector normal) {
        return all.minus(normal.times(all.dot(normal)));
    }

    private static WedgeSlide slide(
            WedgeLoads loads, Contact contact, double onA, double onB, Vector toward) {
        WedgeShape shape = loads.shape();
        Vector direction = toward.length() > 0 ? toward.unit() : shape.lineDown();
        double driving = loads.active().dot(direction);
        if (!(driving > 0)) {
            throw Require.refused(
                    "driving force along the direction of sliding", driving, "N", "more than 0");
        }
        double resistance = -loads.passive().dot(direction);
        if (contact != Contact.JOINT_B) {
            resistance +=
                    loads.jointA().cohesion() * shape.areaA()
                            + onA * StrictMath.tan(loads.jointA().friction());
        }
        if (contact != Contact.JOINT_A) {
            resistance +=
                    loads.jointB().cohesion() * shape.areaB()
                            + onB * StrictMath.tan(loads.jointB().friction());
        }
        return new WedgeSlide(
                contact,
                resistance / driving,
                onA,
                onB,
                driving,
                direction.trend(),
                direction.plunge(),
                loads.weight());
    }
}
