package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * The block of rock above a sliding plane that comes out in the face, per metre run, with or without
 * an upright tension crack behind it.
 *
 * <p>Source: E. Hoek and J. W. Bray, Rock Slope Engineering (1981), ch. 7; D. C. Wyllie and C. W.
 * Mah, Rock Slope Engineering, 4th ed. (2004), ch. 6 (formulas from memory, derived anew).
 *
 * @param planeDip dip of the sliding plane, ψ_p
 * @param crackDepth depth of the tension crack from the ground to the plane, z; 0 m without
 * @param area area of the sliding plane per metre run, A, in m
 * @param weight weight of the block per metre run, W, in N/m
 */
public record PlaneBlock(Quantity planeDip, Quantity crackDepth, Quantity area, Quantity weight) {

    /**
     * Makes a block from its measures.
     *
     * @param planeDip dip of the sliding plane, ψ_p, more than 0°, less than 90°
     * @param crackDepth depth of the tension crack, z, at least 0
     * @param area area of the sliding plane per metre run, A, more than 0, in m
     * @param weight weight of the block per metre run, W, more than 0, in N/m
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public PlaneBlock {
        Require.angleBetween("dip of the sliding plane", planeDip, 0, 90);
        Require.notNegative("depth of the tension crack", crackDepth, "m");
        Require.positive("area of the sliding plane", area, "m");
        Require.positive("weight of the sliding block", weight, "kN/m");
    }

    /**
     * Gives the block before a tension crack behind the crest of the face.
     *
     * <p>With {@code X = H cot ψ_f + b}: {@code z = H + b tan ψ_s − X tan ψ_p}, {@code A = X/cos
     * ψ_p}, {@code W = γ (½ H² cot ψ_f + b H + ½ b² tan ψ_s − ½ X² tan ψ_p)}. With a level upper
     * slope these are z, A and W of Hoek and Bray.
     *
     * @param height height of the face from the toe of the plane to the crest, H, more than 0
     * @param face dip of the face, ψ_f, more than the plane's, less than 90°
     * @param plane dip of the sliding plane, ψ_p, more than 0°
     * @param upper dip of the upper slope, ψ_s, from 0° to less than the plane's
     * @param behindCrest level distance of the crack behind the crest, b, at least 0
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @return the block
     * @throws IllegalArgumentException if a value is outside what is allowed, or the crack would lie
     *     behind where the plane comes out in the upper slope
     */
    public static PlaneBlock crackBehindCrest(
            Quantity height,
            Quantity face,
            Quantity plane,
            Quantity upper,
            Quantity behindCrest,
            Quantity unitWeight) {
        checkFace(height, face, plane, unitWeight);
        Require.within("dip of the upper slope", upper, 0, plane.in("°"), "°");
        Require.notNegative("distance of the crack behind the crest", behindCrest, "m");
        Quantity across = height.over(face.tan()).plus(behindCrest);
        Quantity rise = behindCrest.times(upper.tan());
        Quantity depth = height.plus(rise).minus(across.times(plane.tan()));
        Quantity section =
                height.squared()
                        .over(face.tan().times(2))
                        .plus(behindCrest.times(height))
                        .plus(behindCrest.times(rise).over(2))
                        .minus(across.squared().times(plane.tan()).over(2));
        return new PlaneBlock(plane, depth, across.over(plane.cos()), unitWeight.times(section));
    }

    /**
     * Gives the block before a tension crack in the face.
     *
     * <p>With {@code X = H cot ψ_f − b}: {@code z = X (tan ψ_f − tan ψ_p)}, {@code A = X/cos ψ_p},
     * {@code W = ½ γ X² (tan ψ_f − tan ψ_p)}.
     *
     * @param height height of the face from the toe of the plane to the crest, H, more than 0
     * @param face dip of the face, ψ_f, more than the plane's, less than 90°
     * @param plane dip of the sliding plane, ψ_p, more than 0°
     * @param beforeCrest level distance of the crack before the crest, b, from 0 to less than H cot
     *     ψ_f
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @return the block
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public static PlaneBlock crackInFace(
            Quantity height,
            Quantity face,
            Quantity plane,
            Quantity beforeCrest,
            Quantity unitWeight) {
        checkFace(height, face, plane, unitWeight);
        Require.notNegative("distance of the crack before the crest", beforeCrest, "m");
        Quantity across = height.over(face.tan()).minus(beforeCrest);
        Require.positive("distance of the crack from the toe", across, "m");
        Quantity steeper = face.tan().minus(plane.tan());
        return new PlaneBlock(
                plane,
                across.times(steeper),
                across.over(plane.cos()),
                unitWeight.times(across.squared()).times(steeper).over(2));
    }

    /**
     * Gives the block before a tension crack of known depth behind the crest, the ground there
     * level.
     *
     * <p>{@code A = (H − z)/sin ψ_p}, {@code W = ½ γ H² [(1 − (z/H)²) cot ψ_p − cot ψ_f]}.
     *
     * @param height height of the face from the toe of the plane to the crest, H, more than 0
     * @param face dip of the face, ψ_f, more than the plane's, less than 90°
     * @param plane dip of the sliding plane, ψ_p, more than 0°
     * @param depth depth of the crack, z, from 0 to {@code H (1 − tan ψ_p cot ψ_f)}, where it would
     *     reach the crest
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @return the block
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public static PlaneBlock ofCrackDepth(
            Quantity height, Quantity face, Quantity plane, Quantity depth, Quantity unitWeight) {
        checkFace(height, face, plane, unitWeight);
        double atCrest =
                height.in("m") * (1 - StrictMath.tan(plane.si()) / StrictMath.tan(face.si()));
        Require.within("depth of the tension crack", depth, 0, atCrest, "m");
        Quantity one = Quantity.of(1);
        Quantity shape =
                one.minus(depth.over(height).squared())
                        .over(plane.tan())
                        .minus(one.over(face.tan()));
        return new PlaneBlock(
                plane,
                depth,
                height.minus(depth).over(plane.sin()),
                unitWeight.times(height.squared()).over(2).times(shape));
    }

    /**
     * Gives the depth of the crack at which a dry block is least safe, {@code z_c = H (1 − √(cot
     * ψ_f tan ψ_p))}, the ground behind the crest level.
     *
     * @param height height of the face, H, more than 0
     * @param face dip of the face, ψ_f, more than the plane's, less than 90°
     * @param plane dip of the sliding plane, ψ_p, more than 0°
     * @return the depth
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public static Quantity criticalCrackDepth(Quantity height, Quantity face, Quantity plane) {
        checkFace(height, face, plane);
        return height.times(Quantity.of(1).minus(plane.tan().over(face.tan()).root()));
    }

    /**
     * Gives the distance behind the crest of the crack of {@link #criticalCrackDepth}, {@code b_c =
     * H (√(cot ψ_f cot ψ_p) − cot ψ_f)}.
     *
     * @param height height of the face, H, more than 0
     * @param face dip of the face, ψ_f, more than the plane's, less than 90°
     * @param plane dip of the sliding plane, ψ_p, more than 0°
     * @return the level distance
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public static Quantity criticalCrackDistance(Quantity height, Quantity face, Quantity plane) {
        checkFace(height, face, plane);
        Quantity one = Quantity.of(1);
        return height.times(
                one.over(face.tan().times(plane.tan())).root().minus(one.over(face.tan())));
    }

    private static void checkFace(Quantity height, Quantity face, Quantity plane, Quantity weight) {
        checkFace(height, face, plane);
        Require.positive("unit weight of the rock", weight, "kN/m³");
    }

    private static void checkFace(Quantity height, Quantity face, Quantity plane) {
        Require.positive("height of the face", height, "m");
        Require.angleBetween("dip of the sliding plane", plane, 0, 90);
        Require.angleBetween("dip of the face", face, plane.in("°"), 90);
    }
}
