package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * Safety of a layer of even thickness on a long slope, and the closed forms that bound what slices
 * may give.
 */
public final class InfiniteSlope {

    private InfiniteSlope() {}

    /**
     * Gives the factor of safety of a layer on a long slope with seepage along it.
     *
     * <p>{@code F = [c + (γ z cos²β − k_h γ z sin β cos β − γ_w h cos²β) tan φ]/[γ z (sin β cos β +
     * k_h cos²β)]}: statics of a column with equal forces on both its sides (A. W. Skempton and F.
     * A. DeLory, Stability of natural slopes in London Clay, 1957, for k_h = 0; from memory).
     *
     * @param cohesion cohesion, c, at least 0
     * @param friction friction angle, φ, from 0° to less than 90°
     * @param unitWeight unit weight of the layer, γ, more than 0
     * @param thickness upright thickness of the layer, z, more than 0
     * @param slope inclination, β, more than 0°, less than 90°
     * @param waterDepth upright height of the water table above the base, h, from 0 to z
     * @param waterWeight unit weight of water, γ_w, more than 0
     * @param level level earthquake coefficient, k_h, from 0 to 2
     * @return F, a plain number
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public static Quantity factor(
            Quantity cohesion,
            Quantity friction,
            Quantity unitWeight,
            Quantity thickness,
            Quantity slope,
            Quantity waterDepth,
            Quantity waterWeight,
            Quantity level) {
        Require.notNegative("cohesion", cohesion, "kPa");
        Require.friction(friction.in("rad"));
        Require.positive("unit weight", unitWeight, "kN/m³");
        Require.positive("thickness of the layer", thickness, "m");
        Require.angleBetween("inclination of the slope", slope, 0, 90);
        Require.within("height of water above the base", waterDepth, 0, thickness.in("m"), "m");
        Require.positive("unit weight of water", waterWeight, "kN/m³");
        Require.within("level earthquake coefficient", level, 0, 2, "");
        Quantity cosine = slope.cos();
        Quantity across = slope.sin().times(cosine);
        Quantity load = unitWeight.times(thickness);
        Quantity square =
                load.times(cosine.squared().minus(level.times(across)))
                        .minus(waterWeight.times(waterDepth).times(cosine.squared()));
        Quantity along = load.times(across.plus(level.times(cosine.squared())));
        return cohesion.plus(square.times(friction.tan())).over(along);
    }

    /**
     * Gives the level earthquake coefficient at which a block without cohesion just slides down a
     * plane, {@code k_y = tan(φ − α)}.
     *
     * @param friction friction angle, φ
     * @param plane dip of the plane, α, from 0° to φ
     * @return the coefficient, a plain number
     * @throws IllegalArgumentException if the plane is steeper than the friction angle
     */
    public static Quantity yieldCoefficient(Quantity friction, Quantity plane) {
        Require.friction(friction.in("rad"));
        Require.within("dip of the plane", plane, 0, friction.in("°"), "°");
        return friction.minus(plane).tan();
    }

    /**
     * Gives the height of a face at which the worst plane through its toe just slides, {@code H_c =
     * 4 c sin β cos φ/(γ (1 − cos(β − φ)))}.
     *
     * <p>It is too high by what a curved surface finds; steep faces only. Source: C. Culmann, Die
     * Graphische Statik (1866), as in D. W. Taylor, Journal of the Boston Society of Civil
     * Engineers 24 (1937) (from memory).
     *
     * @param cohesion cohesion, c, more than 0
     * @param friction friction angle, φ, less than the face
     * @param unitWeight unit weight, γ, more than 0
     * @param face inclination of the face, β, from φ to 90°
     * @return the height
     * @throws IllegalArgumentException if a value is outside what is allowed
     */
    public static Quantity planarCriticalHeight(
            Quantity cohesion, Quantity friction, Quantity unitWeight, Quantity face) {
        Require.positive("cohesion", cohesion, "kPa");
        Require.friction(friction.in("rad"));
        Require.positive("unit weight", unitWeight, "kN/m³");
        double least = friction.in("°");
        if (!(face.in("°") > least && face.in("°") <= 90)) {
            throw Require.refused(
                    "inclination of the face",
                    face.in("°"),
                    "°",
                    "more than the friction angle, at most 90°");
        }
        return cohesion.times(4)
                .times(face.sin())
                .times(friction.cos())
                .over(unitWeight.times(Quantity.of(1).minus(face.minus(friction).cos())));
    }
}
