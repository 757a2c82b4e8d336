package org.skewback.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.steel.Section;

/** One way in which a structure buckles. */
public final class BucklingMode {

    private final double factor;
    private final double residual;
    private final ModeShape shape;
    private final DividedSystem divided;
    private final FrameSolution growing;
    private final @Nullable FrameSolution permanent;

    BucklingMode(
            double factor,
            double residual,
            ModeShape shape,
            DividedSystem divided,
            FrameSolution growing,
            @Nullable FrameSolution permanent) {
        this.factor = factor;
        this.residual = residual;
        this.shape = shape;
        this.divided = divided;
        this.growing = growing;
        this.permanent = permanent;
    }

    /**
     * Gives the factor.
     *
     * @return λ by which the growing load is multiplied when the structure buckles, greater than 0
     */
    public double factor() {
        return factor;
    }

    /**
     * Gives the error of the pair of factor and shape.
     *
     * @return bound of the relative error of the factor from the iteration
     */
    public double residual() {
        return residual;
    }

    /**
     * Gives the shape.
     *
     * @return movements, of no particular size
     */
    public ModeShape shape() {
        return shape;
    }

    /**
     * The part of a member in buckling.
     *
     * @param member its name
     * @param share its share of the energy that the members store as the structure buckles, 0 to 1:
     *     where it is large, stiffening the member helps
     */
    public record Share(String member, double share) {}

    /**
     * Tells which members hold against this mode most: the ones whose stiffness governs it.
     *
     * @return all members, the largest share first
     */
    public List<Share> shares() {
        double[] energies = new double[divided.model().members().size()];
        double sum = 0;
        for (int m = 0; m < energies.length; m++) {
            energies[m] =
                    divided.energy(
                            m,
                            shape.movements(),
                            p -> divided.system().elements().get(p).stiffness());
            sum += energies[m];
        }
        List<Share> shares = new ArrayList<>();
        for (int m = 0; m < energies.length; m++) {
            shares.add(new Share(divided.model().members().get(m).name(), energies[m] / sum));
        }
        shares.sort(Comparator.comparingDouble((Share s) -> -s.share()));
        return List.copyOf(shares);
    }

    /**
     * Gives the axial force of a member when the structure buckles.
     *
     * @param member the member
     * @param position distance from its start, m
     * @return λ N of the growing load and N of the permanent one, positive in tension, N
     * @throws IllegalArgumentException if there is no such member, or it is not so long
     */
    public double axialForce(String member, double position) {
        double force = factor * growing.member(member).at(position).axial();
        return permanent == null ? force : force + permanent.member(member).at(position).axial();
    }

    /**
     * Gives the length of the pinned column of the same section that buckles at the same axial force,
     * √(π²EI/N): the buckling length for code checks. It means something for members that take part in
     * this mode only, and for the axis about which they bend in it.
     *
     * @param member the beam-column
     * @param position where force and section are taken, distance from its start, m
     * @param axis the axis of bending: {@link Motion#ABOUT_Y} or {@link Motion#ABOUT_Z}, local
     * @return buckling length, m
     * @throws IllegalArgumentException if the member is no beam-column, is not compressed, or the axis
     *     is none of bending
     */
    public double bucklingLength(String member, double position, Motion axis) {
        if (!(divided.model().member(member) instanceof BeamColumn beam)) {
            throw new IllegalArgumentException(
                    "member " + member + " is no beam-column; allowed are beam-columns.");
        }
        if (axis != Motion.ABOUT_Y && axis != Motion.ABOUT_Z) {
            throw new IllegalArgumentException(
                    "axis of bending is " + axis + "; allowed are about y and about z.");
        }
        double force = axialForce(member, position);
        if (!(force < 0)) {
            throw Require.refused("axial force of member " + member, force, "N", "compression");
        }
        double length = growing.member(member).length();
        Section section = beam.profile().at(position / length);
        double inertia = axis == Motion.ABOUT_Y ? section.inertiaY() : section.inertiaZ();
        return StrictMath.PI * Math.sqrt(beam.material().youngModulus() * inertia / -force);
    }
}
