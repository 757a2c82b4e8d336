package org.skewback.anchor;

import org.skewback.quantity.Quantity;

/** Length of bond between grout and rock, and between grout and tendon. */
public final class BondLength {

    private BondLength() {}

    /**
     * Ultimate bond between grout and rock, by kind of rock.
     *
     * <p>Source: PTI, Recommendations for prestressed rock and soil anchors, and FHWA GEC 4, table of
     * average ultimate bond (from memory). For first sizes; tests at the site decide.
     */
    public enum Rock {
        /** Granite or basalt. */
        GRANITE(1.7, 3.1),
        /** Dolomitic limestone. */
        DOLOMITIC_LIMESTONE(1.4, 2.1),
        /** Soft limestone. */
        SOFT_LIMESTONE(1.0, 1.4),
        /** Slate or hard shale. */
        SLATE(0.8, 1.4),
        /** Soft shale. */
        SOFT_SHALE(0.2, 0.8),
        /** Sandstone. */
        SANDSTONE(0.8, 1.7),
        /** Weathered sandstone. */
        WEATHERED_SANDSTONE(0.7, 0.8),
        /** Chalk. */
        CHALK(0.2, 1.1);

        private final double low;
        private final double high;

        Rock(double low, double high) {
            this.low = low;
            this.high = high;
        }

        /**
         * Gives the lower end of the range.
         *
         * @return ultimate bond
         */
        public Quantity low() {
            return Quantity.of(low, "MPa");
        }

        /**
         * Gives the upper end of the range.
         *
         * @return ultimate bond
         */
        public Quantity high() {
            return Quantity.of(high, "MPa");
        }
    }

    /**
     * Gives the length of bond on the wall of the hole, {@code L = T S/(π d τ)}, the bond taken as
     * even along it.
     *
     * <p>It is not even: beyond some 10 m more length adds little (G. S. Littlejohn and D. A. Bruce,
     * Rock anchors: state of the art, 1977).
     *
     * @param force anchor force, T, more than 0
     * @param safety factor of safety on the bond, S, at least 1
     * @param diameter diameter of the hole, d, more than 0
     * @param bond ultimate bond, τ, more than 0
     * @return the length
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity rock(Quantity force, Quantity safety, Quantity diameter, Quantity bond) {
        check(force, safety);
        Require.positive("diameter of the hole", diameter, "mm");
        Require.positive("ultimate bond", bond, "MPa");
        return force.times(safety).over(diameter.times(bond).times(Math.PI));
    }

    /**
     * Gives the ultimate bond by the strength of the rock, {@code τ = σ_c/10}, at most 4 MPa.
     *
     * <p>Source: BS 8081:1989, 6.2.5 (from memory).
     *
     * @param strength uniaxial compressive strength of the rock, σ_c, more than 0
     * @return ultimate bond
     * @throws IllegalArgumentException if the strength is not positive
     */
    public static Quantity byStrength(Quantity strength) {
        Require.positive("strength of the rock", strength, "MPa");
        return Quantity.min(strength.over(10), Quantity.of(4, "MPa"));
    }

    /**
     * Gives the length of bond by ultimate load transfer per length, {@code L = T S/q}.
     *
     * @param force anchor force, T, more than 0
     * @param safety factor of safety, S, at least 1
     * @param transfer ultimate load transfer per length, q, more than 0
     * @return the length
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity byTransfer(Quantity force, Quantity safety, Quantity transfer) {
        check(force, safety);
        Require.positive("load transfer", transfer, "kN/m");
        return force.times(safety).over(transfer);
    }

    /**
     * Gives the length of bond between grout and strands, {@code L = T S/(n π d τ)}.
     *
     * @param force anchor force, T, more than 0
     * @param safety factor of safety, S, at least 1
     * @param count number of strands, n, at least 1
     * @param diameter diameter of a strand, d, more than 0
     * @param bond ultimate bond between grout and strand, τ, more than 0
     * @return the length
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity tendon(
            Quantity force, Quantity safety, int count, Quantity diameter, Quantity bond) {
        check(force, safety);
        Require.atLeast("number of strands", count, 1);
        Require.positive("diameter of a strand", diameter, "mm");
        Require.positive("ultimate bond", bond, "MPa");
        return force.times(safety).over(diameter.times(bond).times(Math.PI * count));
    }

    private static void check(Quantity force, Quantity safety) {
        Require.positive("anchor force", force, "kN");
        Require.within("factor of safety", safety, 1, 10, "");
    }

    /**
     * Gives the force that a length of bond carries at its ultimate, {@code T = π d L τ}.
     *
     * @param length length of bond, L, more than 0
     * @param diameter diameter of the hole, d, more than 0
     * @param bond ultimate bond, τ, more than 0
     * @return the force
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity force(Quantity length, Quantity diameter, Quantity bond) {
        Require.positive("length of bond", length, "m");
        Require.positive("diameter of the hole", diameter, "mm");
        Require.positive("ultimate bond", bond, "MPa");
        return diameter.times(bond).times(Math.PI).times(length);
    }
}
