package org.skewback.foundation;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Quantity;

/**
 * The block that takes the thrust of an arch at its springing, in the plane of the arch, on a base
 * that may be inclined toward the mountain.
 *
 * <p>Forces are taken by a level component, positive toward the mountain (as an arch pushes), an
 * upright one, positive downward, and where they act: x from the middle of the base toward the
 * mountain, y upward. The base falls toward the mountain at the angle α: the skewback of the rock.
 * Square to it {@code N = V cos α + H sin α}, along it, positive toward the mountain, {@code T = H
 * cos α − V sin α}; the moment about the middle of the base, positive when it presses the
 * mountain-side edge, {@code M = V x + H y}.
 */
public final class SpringingBlock {

    private final Quantity incline;
    private final List<Quantity> outward;
    private final List<Quantity> downward;
    private final List<Quantity> turning;

    private SpringingBlock(
            Quantity incline,
            List<Quantity> outward,
            List<Quantity> downward,
            List<Quantity> turning) {
        this.incline = incline;
        this.outward = outward;
        this.downward = downward;
        this.turning = turning;
    }

    /**
     * Begins with a base without forces.
     *
     * @param incline fall of the base toward the mountain, α, from 0° to less than 90°
     * @return the block, to which forces must be added
     * @throws IllegalArgumentException if the angle is outside
     */
    public static SpringingBlock on(Quantity incline) {
        Require.within("inclination of the base", incline, 0, 89.999, "°");
        return new SpringingBlock(incline, List.of(), List.of(), List.of());
    }

    /**
     * Adds a force: the arch's, the weight of the block, an anchor.
     *
     * @param toMountain level component toward the mountain, H
     * @param down upright component downward, V
     * @param x where it acts, from the middle of the base toward the mountain
     * @param y where it acts, above the middle of the base
     * @return the block with it
     * @throws IllegalArgumentException if an argument has the wrong dimension
     */
    public SpringingBlock with(Quantity toMountain, Quantity down, Quantity x, Quantity y) {
        return new SpringingBlock(
                incline,
                joined(outward, toMountain),
                joined(downward, down),
                joined(turning, down.times(x).plus(toMountain.times(y))));
    }

    private static List<Quantity> joined(List<Quantity> terms, Quantity term) {
        List<Quantity> longer = new ArrayList<>(terms);
        longer.add(term);
        return List.copyOf(longer);
    }

    private Quantity sum(List<Quantity> terms) {
        if (terms.isEmpty()) {
            throw new IllegalArgumentException("The block carries no force yet; add at least one.");
        }
        return Quantity.sum(terms);
    }

    /**
     * Gives the force square to the base, {@code N = ΣV cos α + ΣH sin α}.
     *
     * @return the force, positive pressing
     * @throws IllegalArgumentException if no force was added
     */
    public Quantity normal() {
        return sum(downward).times(incline.cos()).plus(sum(outward).times(incline.sin()));
    }

    /**
     * Gives the force along the base, {@code T = ΣH cos α − ΣV sin α}.
     *
     * @return the force, positive toward the mountain
     * @throws IllegalArgumentException if no force was added
     */
    public Quantity along() {
        return sum(outward).times(incline.cos()).minus(sum(downward).times(incline.sin()));
    }

    /**
     * Gives the moment about the middle of the base, {@code M = ΣV x + ΣH y}.
     *
     * @return the moment, positive when it presses the mountain-side edge
     * @throws IllegalArgumentException if no force was added
     */
    public Quantity moment() {
        return sum(turning);
    }

    /**
     * Gives the angle between the resultant and the square to the base, {@code arctan(|T|/N)}: what
     * friction alone must carry.
     *
     * @return the angle
     * @throws IllegalArgumentException if no force was added, or the base is pulled
     */
    public Quantity obliquity() {
        Require.positive("force square to the base", normal(), "kN");
        return along().abs().over(normal()).atan();
    }
}
