package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Quantity;

/**
 * Safety of a block against sliding on a plane, per metre run.
 *
 * <p>With forces square to the plane N (positive into it) and along it S (positive down), {@code F =
 * (c A + max(N, 0) tan φ + P)/S}, P being what passive anchors add. Weight gives {@code W cos ψ_p}
 * and {@code W sin ψ_p}; water {@code −U − V sin ψ_p} and {@code V cos ψ_p}; a level earthquake
 * coefficient k_h {@code −k_h W sin ψ_p} and {@code k_h W cos ψ_p}; an upright one k_v, positive
 * upward, {@code −k_v W cos ψ_p} and {@code −k_v W sin ψ_p}; an anchor of force T and plunge ψ_T
 * {@code T sin(ψ_T + ψ_p)} and {@code −T cos(ψ_T + ψ_p)}.
 *
 * <p>All forces are taken through one point: a block that can tip is not covered, nor is one held at
 * its sides. Where water lifts the block off the plane its friction is nothing and its cohesion is
 * still counted, so that a check on {@link #normalForce} belongs beside the factor.
 *
 * <p>Source: E. Hoek and J. W. Bray, Rock Slope Engineering (1981), ch. 7; D. C. Wyllie and C. W.
 * Mah, Rock Slope Engineering, 4th ed. (2004), ch. 6 (from memory).
 */
public final class PlaneSlide {

    private final PlaneBlock block;
    private final Quantity cohesion;
    private final Quantity friction;
    private final List<Quantity> normal;
    private final List<Quantity> driving;
    private final List<Quantity> passive;

    private PlaneSlide(
            PlaneBlock block,
            Quantity cohesion,
            Quantity friction,
            List<Quantity> normal,
            List<Quantity> driving,
            List<Quantity> passive) {
        this.block = block;
        this.cohesion = cohesion;
        this.friction = friction;
        this.normal = normal;
        this.driving = driving;
        this.passive = passive;
    }

    /**
     * Takes a dry block under its weight.
     *
     * @param block the block
     * @param cohesion cohesion on the plane, c, at least 0
     * @param friction friction angle on the plane, φ, from 0° to less than 90°
     * @return the slide
     * @throws IllegalArgumentException if cohesion or friction is outside what is allowed
     */
    public static PlaneSlide of(PlaneBlock block, Quantity cohesion, Quantity friction) {
        Require.notNegative("cohesion", cohesion, "kPa");
        Require.friction(friction.in("rad"));
        Quantity dip = block.planeDip();
        return new PlaneSlide(
                block,
                cohesion,
                friction,
                List.of(block.weight().times(dip.cos())),
                List.of(block.weight().times(dip.sin())),
                List.of());
    }

    /**
     * Adds water.
     *
     * @param water forces of the water
     * @return the slide with it
     */
    public PlaneSlide withWater(PlaneWater water) {
        Quantity dip = block.planeDip();
        return with(
                water.uplift().plus(water.push().times(dip.sin())).negated(),
                water.push().times(dip.cos()));
    }

    /**
     * Adds an earthquake by a level coefficient of the weight.
     *
     * @param level coefficient out of the slope, k_h, from 0 to 2
     * @return the slide with it
     * @throws IllegalArgumentException if the coefficient is outside what is allowed
     */
    public PlaneSlide withEarthquake(Quantity level) {
        Require.within("level earthquake coefficient", level, 0, 2, "");
        Quantity force = block.weight().times(level);
        return with(
                force.times(block.planeDip().sin()).negated(), force.times(block.planeDip().cos()));
    }

    /**
     * Adds an earthquake by a level and an upright coefficient of the weight.
     *
     * @param level coefficient out of the slope, k_h, from 0 to 2
     * @param upward coefficient upward, k_v, from −1 to 1; both signs are to be tried
     * @return the slide with it
     * @throws IllegalArgumentException if a coefficient is outside what is allowed
     */
    public PlaneSlide withEarthquake(Quantity level, Quantity upward) {
        Require.within("upward earthquake coefficient", upward, -1, 1, "");
        Quantity lift = block.weight().times(upward);
        return withEarthquake(level)
                .with(
                        lift.times(block.planeDip().cos()).negated(),
                        lift.times(block.planeDip().sin()).negated());
    }

    /**
     * Adds a force on the block, such as the thrust of a springing or the load of a pier.
     *
     * @param outward level component out of the slope, in N/m
     * @param downward upright component downward, in N/m
     * @return the slide with it
     */
    public PlaneSlide withForce(Quantity outward, Quantity downward) {
        Quantity sine = block.planeDip().sin();
        Quantity cosine = block.planeDip().cos();
        return with(
                downward.times(cosine).minus(outward.times(sine)),
                downward.times(sine).plus(outward.times(cosine)));
    }

    /**
     * Adds anchors.
     *
     * @param force force of the anchors per metre run, T, at least 0
     * @param plunge plunge of the anchors below the level, into the slope, ψ_T, from −90° to 90°;
     *     beyond {@code 90° − ψ_p} an active anchor drives the block
     * @param convention on which side of the factor the force along the plane stands
     * @return the slide with them
     * @throws IllegalArgumentException if force or plunge is outside what is allowed
     */
    public PlaneSlide withAnchor(Quantity force, Quantity plunge, AnchorConvention convention) {
        Require.notNegative("anchor force", force, "kN/m");
        Require.within("plunge of the anchors", plunge, -90, 90, "°");
        Quantity toPlane = plunge.plus(block.planeDip());
        Quantity along = force.times(toPlane.cos());
        Quantity square = force.times(toPlane.sin());
        return convention == AnchorConvention.ACTIVE
                ? with(square, along.negated())
                : new PlaneSlide(
                        block,
                        cohesion,
                        friction,
                        joined(normal, square),
                        driving,
                        joined(passive, along));
    }

    /**
     * Gives the force square to the plane, N.
     *
     * @return the force, in N/m; negative where the block is lifted
     */
    public Quantity normalForce() {
        return sum(normal);
    }

    /**
     * Gives the force along the plane, S.
     *
     * @return the force, in N/m; negative where nothing drives the block
     */
    public Quantity drivingForce() {
        return sum(driving);
    }

    /**
     * Gives the resistance, {@code c A + max(N, 0) tan φ + P}.
     *
     * @return the resistance, in N/m
     */
    public Quantity resistance() {
        Quantity pressing = normalForce();
        Quantity held =
                normal.size() == 1 ? pressing : Quantity.max(pressing, Quantity.of(0, "kN/m"));
        Quantity strength = cohesion.times(block.area()).plus(held.times(friction.tan()));
        return passive.isEmpty() ? strength : strength.plus(sum(passive));
    }

    /**
     * Gives the factor of safety, resistance over driving force.
     *
     * @return F, a plain number
     * @throws IllegalArgumentException if nothing drives the block, so that there is no factor
     */
    public Quantity factor() {
        Quantity down = drivingForce();
        Require.positive("driving force along the plane", down, "kN/m");
        return resistance().over(down);
    }

    /**
     * Gives resistance less driving force: a margin that stays meaningful where strong anchors leave
     * no driving force, as in some samples of a simulation.
     *
     * @return the margin, in N/m
     */
    public Quantity margin() {
        return resistance().minus(drivingForce());
    }

    /**
     * Gives the level earthquake coefficient, beyond what was put in, at which the block just
     * slides, {@code k_y = (R − S)/(W (cos ψ_p + sin ψ_p tan φ))}.
     *
     * @return the yield coefficient, a plain number; negative where it slides already
     */
    public Quantity yieldCoefficient() {
        Quantity dip = block.planeDip();
        return margin().over(block.weight().times(dip.cos().plus(dip.sin().times(friction.tan()))));
    }

    /**
     * Gives the anchor force that brings the factor of safety to a wanted value.
     *
     * <p>Active: {@code T = (F S − R)/(sin(ψ_T + ψ_p) tan φ + F cos(ψ_T + ψ_p))}; passive: the same
     * with 1 in place of F before the cosine.
     *
     * @param wanted wanted factor, F, more than 0
     * @param plunge plunge of the anchors, ψ_T
     * @param convention on which side of the factor the force along the plane stands
     * @return the force per metre run; negative where the factor is there without
     * @throws IllegalArgumentException if the factor is not positive, or an anchor at that plunge
     *     does not add to safety
     */
    public Quantity anchorForce(Quantity wanted, Quantity plunge, AnchorConvention convention) {
        Require.positive("wanted factor of safety", wanted, "");
        Quantity toPlane = plunge.plus(block.planeDip());
        Quantity along =
                convention == AnchorConvention.ACTIVE ? wanted.times(toPlane.cos()) : toPlane.cos();
        Quantity use = toPlane.sin().times(friction.tan()).plus(along);
        if (!(use.si() > 0)) {
            throw Require.refused(
                    "plunge of the anchors",
                    plunge.in("°"),
                    "°",
                    "one at which the anchors add to the safety of this plane");
        }
        return wanted.times(drivingForce()).minus(resistance()).over(use);
    }

    /**
     * Gives the plunge at which an active anchor of least force reaches a wanted factor, {@code
     * arctan(tan φ/F) − ψ_p}.
     *
     * @param wanted wanted factor, F, more than 0
     * @return the plunge; negative is above the level
     * @throws IllegalArgumentException if the factor is not positive
     */
    public Quantity bestPlunge(Quantity wanted) {
        Require.positive("wanted factor of safety", wanted, "");
        return friction.tan().over(wanted).atan().minus(block.planeDip());
    }

    private PlaneSlide with(Quantity square, Quantity along) {
        return new PlaneSlide(
                block, cohesion, friction, joined(normal, square), joined(driving, along), passive);
    }

    private static List<Quantity> joined(List<Quantity> terms, Quantity term) {
        List<Quantity> longer = new ArrayList<>(terms);
        longer.add(term);
        return List.copyOf(longer);
    }

    private static Quantity sum(List<Quantity> terms) {
        Quantity total = terms.get(0);
        for (Quantity term : terms.subList(1, terms.size())) {
            total = total.plus(term);
        }
        return total;
    }
}
