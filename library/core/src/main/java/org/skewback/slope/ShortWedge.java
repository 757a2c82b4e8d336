package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * Short formulas for a wedge between two joints, without tension crack or loads: all that a
 * stereonet and a sheet of paper need.
 *
 * <p>{@code F = 3/(γ H) (c_A X + c_B Y) + (A − γ_w X/(2 γ)) tan φ_A + (B − γ_w Y/(2 γ)) tan φ_B}, H
 * the total height of the wedge. Numbers of lines as in {@link WedgeAngles}. Angles read off a
 * stereonet to a degree change F by about one in a hundred.
 *
 * <p>Source: E. Hoek and J. W. Bray, Rock Slope Engineering (1981), ch. 8; D. C. Wyllie and C. W.
 * Mah, Rock Slope Engineering, 4th ed. (2004), ch. 7 (from memory).
 */
public final class ShortWedge {

    private ShortWedge() {}

    /**
     * Gives the number X of joint A, {@code X = sin θ_24/(sin θ_45 cos θ_2na)}.
     *
     * @param angle24 angle between lines 2 and 4
     * @param angle45 angle between lines 4 and 5
     * @param angle2a angle between line 2 and the normal of joint A
     * @return X, a plain number
     * @throws IllegalArgumentException if an angle leaves no wedge
     */
    public static Quantity x(Quantity angle24, Quantity angle45, Quantity angle2a) {
        return ratio(angle24, angle45, angle2a);
    }

    /**
     * Gives the number Y of joint B, {@code Y = sin θ_13/(sin θ_35 cos θ_1nb)}.
     *
     * @param angle13 angle between lines 1 and 3
     * @param angle35 angle between lines 3 and 5
     * @param angle1b angle between line 1 and the normal of joint B
     * @return Y, a plain number
     * @throws IllegalArgumentException if an angle leaves no wedge
     */
    public static Quantity y(Quantity angle13, Quantity angle35, Quantity angle1b) {
        return ratio(angle13, angle35, angle1b);
    }

    private static Quantity ratio(Quantity above, Quantity below, Quantity toNormal) {
        Require.angleBetween("angle between two lines", above, 0, 180);
        Require.angleBetween("angle between two lines", below, 0, 180);
        Require.angleBetween("angle between a line and a normal", toNormal, -90, 90);
        return above.sin().over(below.sin().times(toNormal.cos()));
    }

    /**
     * Gives the number A of joint A, or B with the joints exchanged: the normal force over the
     * driving force of the dry wedge, {@code A = (cos ψ_a − cos ψ_b cos θ_nanb)/(sin ψ_5
     * sin²θ_nanb)}.
     *
     * @param dip dip of the joint itself
     * @param other dip of the other joint
     * @param plunge plunge of the line of intersection, ψ_5
     * @param between angle between the normals
     * @return A or B, a plain number; negative where the joint opens
     * @throws IllegalArgumentException if an angle leaves no wedge
     */
    public static Quantity normalNumber(
            Quantity dip, Quantity other, Quantity plunge, Quantity between) {
        Require.angleBetween("plunge of the line of intersection", plunge, 0, 90);
        Require.angleBetween("angle between the normals", between, 0, 180);
        return dip.cos()
                .minus(other.cos().times(between.cos()))
                .over(plunge.sin().times(between.sin().squared()));
    }

    /**
     * Gives the factor of safety of a dry wedge without cohesion, {@code F = A tan φ_A + B tan φ_B}.
     *
     * @param a number of joint A, at least 0
     * @param frictionA friction angle of joint A
     * @param b number of joint B, at least 0
     * @param frictionB friction angle of joint B
     * @return F, a plain number
     * @throws IllegalArgumentException if a joint opens, which the formula does not cover
     */
    public static Quantity dryFriction(
            Quantity a, Quantity frictionA, Quantity b, Quantity frictionB) {
        Require.notNegative("number A", a, "");
        Require.notNegative("number B", b, "");
        Require.friction(frictionA.in("rad"));
        Require.friction(frictionB.in("rad"));
        return a.times(frictionA.tan()).plus(b.times(frictionB.tan()));
    }

    /**
     * What cohesion and water add to the short formula.
     *
     * @param cohesionA cohesion of joint A, c_A
     * @param cohesionB cohesion of joint B, c_B
     * @param x number X of joint A
     * @param y number Y of joint B
     * @param unitWeight unit weight of the rock, γ
     * @param waterWeight unit weight of water, γ_w; 0 for a drained wedge
     * @param height total height of the wedge, H
     */
    public record Terms(
            Quantity cohesionA,
            Quantity cohesionB,
            Quantity x,
            Quantity y,
            Quantity unitWeight,
            Quantity waterWeight,
            Quantity height) {

        /**
         * Checks the terms.
         *
         * @param cohesionA cohesion of joint A, c_A, at least 0
         * @param cohesionB cohesion of joint B, c_B, at least 0
         * @param x number X of joint A, more than 0
         * @param y number Y of joint B, more than 0
         * @param unitWeight unit weight of the rock, γ, more than 0
         * @param waterWeight unit weight of water, γ_w, at least 0
         * @param height total height of the wedge, H, more than 0
         * @throws IllegalArgumentException if a value is outside
         */
        public Terms {
            Require.notNegative("cohesion of joint A", cohesionA, "kPa");
            Require.notNegative("cohesion of joint B", cohesionB, "kPa");
            Require.positive("number X", x, "");
            Require.positive("number Y", y, "");
            Require.positive("unit weight of the rock", unitWeight, "kN/m³");
            Require.notNegative("unit weight of water", waterWeight, "kN/m³");
            Require.positive("total height of the wedge", height, "m");
        }
    }

    /**
     * Gives the factor of safety of a wedge whose joints are filled with water, the pressure as in
     * {@link WedgeWater#full} without a crack.
     *
     * @param terms cohesion, water and size
     * @param a number of joint A, at least 0
     * @param frictionA friction angle of joint A
     * @param b number of joint B, at least 0
     * @param frictionB friction angle of joint B
     * @return F, a plain number
     * @throws IllegalArgumentException if a joint opens, under weight or by the water, which the
     *     formula does not cover
     */
    public static Quantity factor(
            Terms terms, Quantity a, Quantity frictionA, Quantity b, Quantity frictionB) {
        Quantity buoyed = terms.waterWeight().over(terms.unitWeight().times(2));
        Quantity pressingA = a.minus(buoyed.times(terms.x()));
        Quantity pressingB = b.minus(buoyed.times(terms.y()));
        Quantity held =
                Quantity.of(3)
                        .over(terms.unitWeight().times(terms.height()))
                        .times(
                                terms.cohesionA()
                                        .times(terms.x())
                                        .plus(terms.cohesionB().times(terms.y())));
        return held.plus(dryFriction(pressingA, frictionA, pressingB, frictionB));
    }

    /**
     * Gives the factor of safety of a symmetric wedge without cohesion, {@code F = sin β/sin(ξ/2) ·
     * tan φ/tan ψ_i}.
     *
     * @param tilt angle between the bisector of the wedge and the level, β
     * @param opening angle between the joints, ξ
     * @param friction friction angle of both joints, φ
     * @param plunge plunge of the line of intersection, ψ_i
     * @return F, a plain number
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Quantity symmetric(
            Quantity tilt, Quantity opening, Quantity friction, Quantity plunge) {
        Require.angleBetween("tilt of the wedge", tilt, 0, 180);
        Require.angleBetween("angle between the joints", opening, 0, 180);
        Require.friction(friction.in("rad"));
        Require.angleBetween("plunge of the line of intersection", plunge, 0, 90);
        return tilt.sin().over(opening.over(2).sin()).times(friction.tan().over(plunge.tan()));
    }
}
