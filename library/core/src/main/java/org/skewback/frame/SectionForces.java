package org.skewback.frame;

import org.skewback.steel.Fibre;
import org.skewback.steel.Section;

/**
 * The forces at a section of a member; see the package for the signs.
 *
 * @param axial N, N, positive in tension
 * @param shearY V_y, N
 * @param shearZ V_z, N
 * @param torque T, N·m
 * @param momentY M_y, N·m, positive with tension on the side of −z
 * @param momentZ M_z, N·m, positive with tension on the side of −y
 */
public record SectionForces(
        double axial, double shearY, double shearZ, double torque, double momentY, double momentZ) {

    /**
     * Gives one of the forces.
     *
     * @param component which
     * @return its value, N or N·m
     */
    public double get(ForceComponent component) {
        return switch (component) {
            case AXIAL -> axial;
            case SHEAR_Y -> shearY;
            case SHEAR_Z -> shearZ;
            case TORQUE -> torque;
            case MOMENT_Y -> momentY;
            case MOMENT_Z -> momentZ;
        };
    }

    /**
     * Gives the normal stress at a fibre: σ = N/A − M_y z/I_y − M_z y/I_z.
     *
     * @param section section of the member there
     * @param fibre the fibre
     * @return σ, Pa, positive in tension
     */
    public double stress(Section section, Fibre fibre) {
        return axial / section.area()
                - momentY * fibre.z() / section.inertiaY()
                - momentZ * fibre.y() / section.inertiaZ();
    }

    /**
     * Adds a multiple of other forces.
     *
     * @param factor the factor
     * @param other the other forces
     * @return this + factor · other
     */
    public SectionForces plus(double factor, SectionForces other) {
        return new SectionForces(
                axial + factor * other.axial,
                shearY + factor * other.shearY,
                shearZ + factor * other.shearZ,
                torque + factor * other.torque,
                momentY + factor * other.momentY,
                momentZ + factor * other.momentZ);
    }

    static SectionForces of(double[] s) {
        return new SectionForces(s[0], s[1], s[2], s[3], s[4], s[5]);
    }

    double[] toArray() {
        return new double[] {axial, shearY, shearZ, torque, momentY, momentZ};
    }
}
