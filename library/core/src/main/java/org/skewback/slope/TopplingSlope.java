package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;
import org.skewback.numeric.NotConvergedException;

/**
 * Toppling and sliding of a row of blocks on a stepped base, worked from the top block down.
 *
 * <p>Block n, n = 1 at the toe, has width Δx, height y_n and stands square to the base of dip ψ_p.
 * The force P_n on its uphill side acts at M_n above its base, P_{n−1} on its downhill side at L_n.
 * With friction φ_p on the base and φ_d on the sides: against toppling {@code P_{n−1} = [P_n (M_n −
 * Δx tan φ_d) + ½ W (y s − Δx c)]/L_n}, against sliding {@code P_{n−1} = P_n + W (s − c tan φ_p)/(1
 * − tan φ_p tan φ_d)}, with {@code s = sin ψ_p + k cos ψ_p} and {@code c = cos ψ_p − k sin ψ_p}
 * under an earthquake coefficient k. The greater of both and 0 is passed on. Water in the joints
 * stands as {@code heights} say, the pressure upright.
 *
 * <p>Source: R. E. Goodman and J. W. Bray, Toppling of rock slopes, ASCE Specialty Conference on
 * Rock Engineering, Boulder (1976); D. C. Wyllie and C. W. Mah, Rock Slope Engineering, 4th ed.
 * (2004), ch. 9 (from memory); the terms of earthquake and water derived anew.
 *
 * @param width width of each block across the layers, Δx, m
 * @param baseDip dip of the base, ψ_p, rad
 * @param unitWeight unit weight of the rock, N/m³
 * @param heights heights y_n of the blocks, from the toe up, m
 * @param upper heights M_n at which the force from above acts, m
 * @param lower heights L_n at which the force to below acts, m
 * @param earthquake level earthquake coefficient k
 * @param water heights of water in the joint above each block, m, at right angles to the base
 */
public record TopplingSlope(
        double width,
        double baseDip,
        double unitWeight,
        List<Double> heights,
        List<Double> upper,
        List<Double> lower,
        double earthquake,
        List<Double> water) {

    private static final double WATER_WEIGHT = 9810;

    /** What a block does. */
    public enum Mode {
        /** It stands by itself. */
        STABLE,
        /** It would topple and leans on the next. */
        TOPPLING,
        /** It would slide and pushes the next. */
        SLIDING
    }

    /**
     * A block's part.
     *
     * @param number number of the block, from 1 at the toe
     * @param mode what it does
     * @param passedOn force on its downhill side, P_{n−1}, N/m
     * @param normal force square to its base, R_n, N/m
     * @param shear force along its base, S_n, N/m
     */
    public record Block(int number, Mode mode, double passedOn, double normal, double shear) {}

    /**
     * The blocks worked through.
     *
     * @param blocks the blocks from the toe up
     * @param needed force that must hold the block at the toe, P_0, N/m; 0 where none is needed
     */
    public record Forces(List<Block> blocks, double needed) {

        /**
         * Copies the blocks.
         *
         * @param blocks the blocks from the toe up
         * @param needed force that must hold the block at the toe, N/m
         */
        public Forces {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * Makes a row of blocks.
     *
     * @param width width of each block, m, greater than 0
     * @param baseDip dip of the base, rad, more than 0, less than π/2
     * @param unitWeight unit weight of the rock, N/m³, greater than 0
     * @param heights heights of the blocks from the toe up, m, each greater than 0
     * @param upper heights M_n, m; at most the block's height
     * @param lower heights L_n, m; greater than 0, at most the block's height
     * @param earthquake level earthquake coefficient, from 0 to 2
     * @param water heights of water in the joint above each block, m, from 0 to the block's height
     * @throws IllegalArgumentException if a value is outside or the lists differ in length
     */
    public TopplingSlope {
        Require.positive("width of a block", width, "m");
        if (!(baseDip > 0 && baseDip < Math.PI / 2)) {
            throw Require.refused(
                    "dip of the base",
                    StrictMath.toDegrees(baseDip),
                    "°",
                    "more than 0°, less than 90°");
        }
        Require.positive("unit weight of the rock", unitWeight, "N/m³");
        Require.within("earthquake coefficient", earthquake, 0, 2, "");
        heights = List.copyOf(heights);
        upper = List.copyOf(upper);
        lower = List.copyOf(lower);
        water = List.copyOf(water);
        int count = Require.atLeast("number of blocks", heights.size(), 1);
        if (upper.size() != count || lower.size() != count || water.size() != count) {
            throw new IllegalArgumentException(
                    "The lists for "
                            + count
                            + " blocks have "
                            + upper.size()
                            + ", "
                            + lower.size()
                            + " and "
                            + water.size()
                            + " values; allowed is one for each block.");
        }
        for (int i = 0; i < count; i++) {
            String block = " of block " + (i + 1);
            double high = Require.positive("height" + block, heights.get(i), "m");
            Require.within(
                    "height of the force from above" + block, upper.get(i), -high, high, "m");
            if (!(lower.get(i) > 0 && lower.get(i) <= high)) {
                throw Require.refused(
                        "height of the force to below" + block,
                        lower.get(i),
                        "m",
                        "more than 0, at most " + high + " m");
            }
            Require.within("height of water above" + block, water.get(i), 0, high, "m");
        }
    }

    /**
     * Makes the row of a regular stepped slope, without water.
     *
     * <p>Below the crest block {@code y_n = n (a_1 − b)}, M = y, L = y − a_1; at it M = y − a_2, L =
     * y − a_1; above it each block is lower by a_2 + b, M = y − a_2, L = y.
     *
     * @param width width of each block, Δx, m, greater than 0
     * @param baseDip dip of the base, ψ_p, rad
     * @param unitWeight unit weight, N/m³
     * @param crest number of the block at the crest
     * @param count number of blocks
     * @param faceStep step of the tops below the crest, a_1, m
     * @param upperStep step of the tops above the crest, a_2, m
     * @param baseStep step of the base, b, m
     * @return the row
     * @throws IllegalArgumentException if a value is outside or leaves a block without height
     */
    public static TopplingSlope regular(
            double width,
            double baseDip,
            double unitWeight,
            int crest,
            int count,
            double faceStep,
            double upperStep,
            double baseStep) {
        Require.atLeast("number of blocks", count, 1);
        if (crest < 1 || crest > count) {
            throw new IllegalArgumentException(
                    "number of the crest block is " + crest + "; allowed is 1 to " + count + ".");
        }
        List<Double> heights = new ArrayList<>();
        List<Double> upper = new ArrayList<>();
        List<Double> lower = new ArrayList<>();
        List<Double> water = new ArrayList<>();
        for (int n = 1; n <= count; n++) {
            double high =
                    n <= crest
                            ? n * (faceStep - baseStep)
                            : crest * (faceStep - baseStep) - (n - crest) * (upperStep + baseStep);
            heights.add(high);
            upper.add(n < crest ? high : high - upperStep);
            // The lowest block is held at its top: nothing stands before it.
            lower.add(n <= crest ? (n == 1 ? high : high - faceStep) : high);
            water.add(0.0);
        }
        return new TopplingSlope(width, baseDip, unitWeight, heights, upper, lower, 0, water);
    }

    /**
     * Takes the row under an earthquake.
     *
     * @param coefficient level earthquake coefficient, from 0 to 2
     * @return the row under it
     */
    public TopplingSlope withEarthquake(double coefficient) {
        return new TopplingSlope(
                width, baseDip, unitWeight, heights, upper, lower, coefficient, water);
    }

    /**
     * Takes the row with water in its joints.
     *
     * @param above heights of water in the joint above each block, m, at right angles to the base
     * @return the row with it
     */
    public TopplingSlope withWater(List<Double> above) {
        return new TopplingSlope(
                width, baseDip, unitWeight, heights, upper, lower, earthquake, above);
    }

    /**
     * Works the blocks from the top down.
     *
     * @param base friction angle on the base, φ_p, rad
     * @param sides friction angle on the sides, φ_d, rad
     * @return the forces
     * @throws IllegalArgumentException if a friction angle is outside 0 to π/2, or the two jam:
     *     {@code tan φ_p tan φ_d ≥ 1}
     */
    public Forces forces(double base, double sides) {
        double onBase = StrictMath.tan(Require.friction(base));
        double onSides = StrictMath.tan(Require.friction(sides));
        if (onBase * onSides >= 1) {
            throw Require.refused(
                    "product of the tangents of both friction angles",
                    onBase * onSides,
                    "",
                    "less than 1, else blocks jam");
        }
        double along = StrictMath.sin(baseDip) + earthquake * StrictMath.cos(baseDip);
        double square = StrictMath.cos(baseDip) - earthquake * StrictMath.sin(baseDip);
        double pressure = WATER_WEIGHT * StrictMath.cos(baseDip);
        List<Block> blocks = new ArrayList<>();
        double from = 0;
        for (int i = heights.size() - 1; i >= 0; i--) {
            double high = heights.get(i);
            double weight = unitWeight * high * width;
            double above = water.get(i);
            double below = i > 0 ? Math.min(water.get(i - 1), high) : 0;
            double push = pressure / 2 * (above * above - below * below);
            double uplift = pressure / 2 * (above + below) * width;
            double turning =
                    pressure / 6 * (above * above * above - below * below * below)
                            + pressure / 6 * width * width * (2 * above + below);
            double topple =
                    (from * (upper.get(i) - width * onSides)
                                    + weight / 2 * (high * along - width * square)
                                    + turning)
                            / lower.get(i);
            double slide =
                    from
                            + (weight * along + push - onBase * (weight * square - uplift))
                                    / (1 - onBase * onSides);
            double on = Math.max(0, Math.max(topple, slide));
            Mode mode = Mode.STABLE;
            if (on > 0) {
                mode = topple > slide ? Mode.TOPPLING : Mode.SLIDING;
            }
            blocks.add(
                    0,
                    new Block(
                            i + 1,
                            mode,
                            on,
                            weight * square - uplift + (from - on) * onSides,
                            weight * along + push + from - on));
            from = on;
        }
        return new Forces(blocks, from);
    }

    /**
     * Finds the friction that would just do: the tangent, alike on base and sides, at which the
     * block at the toe needs no force.
     *
     * <p>The factor of safety is the tangent that is there over this one.
     *
     * @return tangent of the friction angle, from 0 to less than 1
     * @throws IllegalArgumentException if the row stands without friction, or not with a tangent of
     *     1
     * @throws NotConvergedException if the bisection does not end
     */
    public double frictionNeeded() {
        double low = 0;
        double high = 1 - 1e-12;
        if (heldBy(low)) {
            throw new IllegalArgumentException(
                    "The row of blocks stands without friction; no factor can be given.");
        }
        if (!heldBy(high)) {
            throw new IllegalArgumentException(
                    "The row of blocks does not stand with a tangent of friction of 1.");
        }
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (heldBy(middle)) {
                high = middle;
            } else {
                low = middle;
            }
            if (high - low < 1e-14) {
                return high;
            }
        }
        throw new NotConvergedException(
                "No friction for toppling found between " + low + " and " + high + ".");
    }

    private boolean heldBy(double tangent) {
        double angle = StrictMath.atan(tangent);
        return forces(angle, angle).needed() <= 0;
    }

    /**
     * Gives the anchor force at the toe block that just holds the row.
     *
     * <p>Toppling: {@code T = [½ W (y s − Δx c) + P_1 (y − Δx tan φ_d)]/(L cos(ψ_p + δ))}; sliding:
     * {@code T = [P_1 (1 − tan φ_p tan φ_d) − W (c tan φ_p − s)]/(tan φ_p sin(ψ_p + δ) + cos(ψ_p +
     * δ))}; the greater of both. For a row without water.
     *
     * @param base friction angle on the base, φ_p, rad
     * @param sides friction angle on the sides, φ_d, rad
     * @param plunge plunge of the anchor below the level, δ, rad, such that {@code ψ_p + δ < 90°}
     * @param above height of the anchor above the base of the toe block, L, m, greater than 0, at
     *     most the block's height
     * @return the force, N/m; 0 where none is needed
     * @throws IllegalArgumentException if a value is outside, or there is water in the joints
     */
    public double anchorForce(double base, double sides, double plunge, double above) {
        double high = heights.get(0);
        if (!(above > 0 && above <= high)) {
            throw Require.refused(
                    "height of the anchor", above, "m", "more than 0, at most " + high + " m");
        }
        double toBase = baseDip + plunge;
        if (!(Math.abs(toBase) < Math.PI / 2)) {
            throw Require.refused(
                    "plunge of the anchor",
                    StrictMath.toDegrees(plunge),
                    "°",
                    "one within 90° of the base");
        }
        if (water.stream().anyMatch(height -> height > 0)) {
            throw new IllegalArgumentException(
                    "The anchor force is given for rows without water in the joints only.");
        }
        Forces forces = forces(base, sides);
        double from = forces.blocks().size() > 1 ? forces.blocks().get(1).passedOn() : 0;
        double onBase = StrictMath.tan(base);
        double onSides = StrictMath.tan(sides);
        double along = StrictMath.sin(baseDip) + earthquake * StrictMath.cos(baseDip);
        double square = StrictMath.cos(baseDip) - earthquake * StrictMath.sin(baseDip);
        double weight = unitWeight * high * width;
        double topple =
                (weight / 2 * (high * along - width * square)
                                + from * (upper.get(0) - width * onSides))
                        / (above * StrictMath.cos(toBase));
        double slide =
                (from * (1 - onBase * onSides) - weight * (square * onBase - along))
                        / (onBase * StrictMath.sin(toBase) + StrictMath.cos(toBase));
        return Math.max(0, Math.max(topple, slide));
    }
}
