package org.skewback.frame;

/**
 * A gap opened at a section of a member: the deformation of a very short piece there. The structure's
 * movement under a gap of one unit is the influence line of that force (E. Betti, <i>Nuovo Cimento</i>
 * 7–8 (1872) 5; H. Müller-Breslau, <i>Die neueren Methoden der Festigkeitslehre</i>, 1886).
 *
 * @param member member cut
 * @param position distance from the start of the flexible part, m
 * @param component force whose conjugate deformation is imposed
 * @param amount elongation or slip, m, or twist or kink, rad, of the sense in which a positive force would deform
 */
public record Dislocation(String member, double position, ForceComponent component, double amount)
        implements Load {

    /**
     * Checks the numbers.
     *
     * @param member member cut
     * @param position distance from the start of the flexible part, m
     * @param component force whose conjugate deformation is imposed
     * @param amount elongation or slip, m, or twist or kink, rad, of the sense in which a positive force would deform
     * @throws IllegalArgumentException if the position is negative or the amount not finite
     */
    public Dislocation {
        Require.notNegative("position of a dislocation in member " + member, position, "m");
        Require.finite(
                "dislocation in member " + member, amount, component.isMoment() ? "rad" : "m");
    }
}
