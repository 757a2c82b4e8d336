package org.skewback.rock;

import org.skewback.quantity.Quantity;

/**
 * Grout in joints: how far it goes, how much it takes, how hard it lifts, and what a mix holds.
 *
 * <p><b>Half or full aperture.</b> Here t is <em>half</em> the aperture of the joint, as Lombardi
 * writes it. Whoever puts in the full aperture gets twice the reach and eight times the take: use
 * {@link #halfOf}. Flow of water ({@link #jointConductivity}, {@link #radialFlow}) is by the full
 * aperture e, as is usual there.
 *
 * <p>Source: G. Lombardi, The role of cohesion in cement grouting of rock, 15th ICOLD Congress,
 * Lausanne (1985), for reach, volume and lift; G. Lombardi and D. Deere, Grouting design and control
 * using the GIN principle, Water Power and Dam Construction (1993) (from memory).
 */
public final class Grout {

    private static final double WATER_DENSITY = 1000;

    private Grout() {}

    /**
     * Gives half of an aperture, {@code t = e/2}.
     *
     * @param aperture full aperture, e, more than 0
     * @return half aperture
     * @throws IllegalArgumentException if the aperture is not positive
     */
    public static Quantity halfOf(Quantity aperture) {
        Require.positive("aperture of the joint", aperture, "mm");
        return aperture.over(2);
    }

    /**
     * Gives how far a stable grout goes, {@code R = p t/c}.
     *
     * @param pressure grouting pressure beyond the water's, p, more than 0
     * @param halfAperture half the aperture of the joint, t, more than 0
     * @param cohesion cohesion (yield stress) of the grout, c, more than 0
     * @return the reach from the hole
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity reach(Quantity pressure, Quantity halfAperture, Quantity cohesion) {
        check(pressure, halfAperture, cohesion);
        return pressure.times(halfAperture).over(cohesion);
    }

    /**
     * Gives the volume taken by one joint, {@code V = 2 π p² t³/c²}, which is {@code 2 π R² t}.
     *
     * @param pressure grouting pressure beyond the water's, p, more than 0
     * @param halfAperture half the aperture of the joint, t, more than 0
     * @param cohesion cohesion of the grout, c, more than 0
     * @return the volume
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity take(Quantity pressure, Quantity halfAperture, Quantity cohesion) {
        check(pressure, halfAperture, cohesion);
        return pressure.squared()
                .times(halfAperture.cubed())
                .times(2 * Math.PI)
                .over(cohesion.squared());
    }

    /**
     * Gives the force that lifts the rock above a level joint, {@code F = π p³ t²/(3 c²)}, which is
     * {@code π R² p/3}.
     *
     * @param pressure grouting pressure beyond the water's, p, more than 0
     * @param halfAperture half the aperture of the joint, t, more than 0
     * @param cohesion cohesion of the grout, c, more than 0
     * @return the force
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity lift(Quantity pressure, Quantity halfAperture, Quantity cohesion) {
        check(pressure, halfAperture, cohesion);
        return pressure.cubed()
                .times(halfAperture.squared())
                .times(Math.PI)
                .over(cohesion.squared().times(3));
    }

    private static void check(Quantity pressure, Quantity halfAperture, Quantity cohesion) {
        Require.positive("grouting pressure", pressure, "MPa");
        Require.positive("half aperture of the joint", halfAperture, "mm");
        Require.positive("cohesion of the grout", cohesion, "Pa");
    }

    /**
     * Gives the pressure at which the lift equals the weight of the rock above, so that the ground
     * may rise: the mean pressure p/3 over the grouted circle against γ z, {@code p = 3 γ z}.
     *
     * <p>It leaves out what the rock carries in bending and the joint's own strength, and holds for a
     * level joint grouted to a circle by itself.
     *
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @param depth depth of the joint, z, more than 0
     * @return the pressure
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity liftingPressure(Quantity unitWeight, Quantity depth) {
        Require.positive("unit weight of the rock", unitWeight, "kN/m³");
        Require.positive("depth of the joint", depth, "m");
        return unitWeight.times(depth).times(3);
    }

    /**
     * Gives the pressure at which a grouting intensity is reached at a take, {@code p = GIN/V}.
     *
     * @param intensity grouting intensity number, as pressure times volume per length of hole, more
     *     than 0
     * @param takePerLength volume per length of hole, more than 0
     * @return the pressure at which grouting ends
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity endPressure(Quantity intensity, Quantity takePerLength) {
        Require.positive("grouting intensity", intensity, "bar·l/m");
        Require.positive("take per length of hole", takePerLength, "l/m");
        return intensity.over(takePerLength);
    }

    /**
     * Gives the conductivity of a smooth joint, {@code k = g e²/(12 ν)}, e the full aperture.
     *
     * @param aperture full aperture, e, more than 0
     * @param viscosity kinematic viscosity of water, ν, more than 0
     * @return the conductivity of the joint itself
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity jointConductivity(Quantity aperture, Quantity viscosity) {
        Require.positive("aperture of the joint", aperture, "mm");
        Require.positive("kinematic viscosity", viscosity, "m²/s");
        return Quantity.of(9.81, "m/s²").times(aperture.squared()).over(viscosity.times(12));
    }

    /**
     * Gives the flow from a hole into one smooth joint, {@code Q = π e³ Δp/(6 μ ln(R/r))}, e the full
     * aperture.
     *
     * @param aperture full aperture, e, more than 0
     * @param pressure pressure beyond that at the outer radius, Δp, more than 0
     * @param viscosity dynamic viscosity, μ, more than 0
     * @param outer radius at which the pressure is gone, R, more than the hole's
     * @param hole radius of the hole, r, more than 0
     * @return the flow
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity radialFlow(
            Quantity aperture,
            Quantity pressure,
            Quantity viscosity,
            Quantity outer,
            Quantity hole) {
        Require.positive("aperture of the joint", aperture, "mm");
        Require.positive("pressure", pressure, "MPa");
        Require.positive("dynamic viscosity", viscosity, "Pa·s");
        Require.positive("radius of the hole", hole, "m");
        Require.positive("outer radius less that of the hole", outer.minus(hole), "m");
        return aperture.cubed()
                .times(pressure)
                .times(Math.PI)
                .over(viscosity.times(outer.over(hole).ln()).times(6));
    }

    /**
     * Gives the volume of a round hole, {@code V = π d² L/4}.
     *
     * @param diameter diameter, d, more than 0
     * @param length length, L, more than 0
     * @return the volume
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity holeVolume(Quantity diameter, Quantity length) {
        Require.positive("diameter of the hole", diameter, "mm");
        Require.positive("length of the hole", length, "m");
        return diameter.squared().times(length).times(Math.PI).over(4);
    }

    /**
     * Gives the volume of the joints that a hole reaches, {@code V = n π R² L}.
     *
     * @param porosity part of the rock that is open joints, n, from 0 to 1
     * @param radius reach, R, more than 0
     * @param length length of the hole, L, more than 0
     * @return the volume
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity jointVolume(Quantity porosity, Quantity radius, Quantity length) {
        Require.within("porosity of the joints", porosity, 0, 1, "");
        Require.positive("reach", radius, "m");
        Require.positive("length of the hole", length, "m");
        return porosity.times(radius.squared()).times(length).times(Math.PI);
    }

    /**
     * Gives the mass of cement in a volume of grout, {@code 1/(1/G + w/c)} tonnes a cubic metre.
     *
     * @param waterRatio water over cement by mass, w/c, more than 0
     * @param gravity relative density of the cement, G, more than 1; 3.15 is usual
     * @return mass of cement per volume of grout
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity cementContent(Quantity waterRatio, Quantity gravity) {
        Require.positive("water–cement ratio", waterRatio, "");
        Require.within("relative density of the cement", gravity, 1, 5, "");
        return Quantity.of(WATER_DENSITY, "kg/m³")
                .over(Quantity.of(1).over(gravity).plus(waterRatio));
    }

    /**
     * Gives the density of a grout, {@code (1 + w/c)} times the cement content.
     *
     * @param waterRatio water over cement by mass, w/c, more than 0
     * @param gravity relative density of the cement, G
     * @return the density
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity density(Quantity waterRatio, Quantity gravity) {
        return cementContent(waterRatio, gravity).times(waterRatio.plus(1));
    }

    /**
     * Judges a grouted zone by a Lugeon test afterwards.
     *
     * @param after the test after grouting
     * @param wanted greatest Lugeon value allowed, more than 0
     * @return whether the value that counts is at most the one allowed
     * @throws IllegalArgumentException if the value allowed is not positive
     */
    public static boolean accepted(LugeonTest after, double wanted) {
        Require.positive("greatest Lugeon value allowed", wanted, "Lu");
        return after.representative() <= wanted;
    }
}
