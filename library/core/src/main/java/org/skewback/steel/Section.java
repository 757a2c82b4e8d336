package org.skewback.steel;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Properties of a cross-section for the analysis of frames, given or found from a {@link Shape}.
 *
 * <p>Torsion is that of de Saint-Venant alone; warping is ignored. That leaves out the stiffness and
 * the stresses of restrained warping, which matter for open sections (I) in torsion and little for
 * boxes and tubes.
 *
 * @param name what the section is called
 * @param area A, m², greater than 0
 * @param shearAreaY area that carries shear along y, m², greater than 0; infinite for no shear
 *     flexibility
 * @param shearAreaZ area that carries shear along z, m², greater than 0; infinite for no shear
 *     flexibility
 * @param torsionConstant J, m⁴, greater than 0
 * @param inertiaY ∫z² dA, for bending about y, m⁴, greater than 0
 * @param inertiaZ ∫y² dA, for bending about z, m⁴, greater than 0
 * @param fibres points at which stresses are wanted
 * @param shape the dimensions behind the numbers, or null where these were given
 */
public record Section(
        String name,
        double area,
        double shearAreaY,
        double shearAreaZ,
        double torsionConstant,
        double inertiaY,
        double inertiaZ,
        List<Fibre> fibres,
        @Nullable Shape shape) {

    /**
     * Checks the properties.
     *
     * @param name what the section is called
     * @param area A, m²
     * @param shearAreaY area that carries shear along y, m²
     * @param shearAreaZ area that carries shear along z, m²
     * @param torsionConstant J, m⁴
     * @param inertiaY ∫z² dA, m⁴
     * @param inertiaZ ∫y² dA, m⁴
     * @param fibres points at which stresses are wanted
     * @param shape the dimensions behind the numbers, or null
     * @throws IllegalArgumentException if a property is not greater than 0
     */
    public Section {
        Require.positive("area of section " + name, area, "m²");
        Require.positiveOrInfinite("shear area y of section " + name, shearAreaY, "m²");
        Require.positiveOrInfinite("shear area z of section " + name, shearAreaZ, "m²");
        Require.positive("torsion constant of section " + name, torsionConstant, "m⁴");
        Require.positive("second moment y of section " + name, inertiaY, "m⁴");
        Require.positive("second moment z of section " + name, inertiaZ, "m⁴");
        fibres = List.copyOf(fibres);
    }

    /**
     * Makes a section of given properties.
     *
     * @param name what the section is called
     * @param area A, m²
     * @param shearAreaY area that carries shear along y, m²; infinite for no shear flexibility
     * @param shearAreaZ area that carries shear along z, m²; infinite for no shear flexibility
     * @param torsionConstant J, m⁴
     * @param inertiaY ∫z² dA, m⁴
     * @param inertiaZ ∫y² dA, m⁴
     * @return the section, without fibres
     * @throws IllegalArgumentException if a property is not greater than 0
     */
    public static Section of(
            String name,
            double area,
            double shearAreaY,
            double shearAreaZ,
            double torsionConstant,
            double inertiaY,
            double inertiaZ) {
        return new Section(
                name,
                area,
                shearAreaY,
                shearAreaZ,
                torsionConstant,
                inertiaY,
                inertiaZ,
                List.of(),
                null);
    }

    /**
     * Makes a section of given properties without shear flexibility.
     *
     * @param name what the section is called
     * @param area A, m²
     * @param torsionConstant J, m⁴
     * @param inertiaY ∫z² dA, m⁴
     * @param inertiaZ ∫y² dA, m⁴
     * @return the section, without fibres
     * @throws IllegalArgumentException if a property is not greater than 0
     */
    public static Section slender(
            String name, double area, double torsionConstant, double inertiaY, double inertiaZ) {
        return of(
                name,
                area,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                torsionConstant,
                inertiaY,
                inertiaZ);
    }

    /**
     * Gives the section with other fibres.
     *
     * @param wanted points at which stresses are wanted
     * @return a section that differs in its fibres only
     */
    public Section withFibres(List<Fibre> wanted) {
        return new Section(
                name,
                area,
                shearAreaY,
                shearAreaZ,
                torsionConstant,
                inertiaY,
                inertiaZ,
                wanted,
                shape);
    }

    /** The four corners of the rectangle around a section. */
    static List<Fibre> corners(double width, double height) {
        return List.of(
                new Fibre("top left", width / 2, height / 2),
                new Fibre("top right", -width / 2, height / 2),
                new Fibre("bottom left", width / 2, -height / 2),
                new Fibre("bottom right", -width / 2, -height / 2));
    }
}
