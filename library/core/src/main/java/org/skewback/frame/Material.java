package org.skewback.frame;

/**
 * A linear elastic material.
 *
 * @param name what it is called
 * @param youngModulus E, Pa, greater than 0
 * @param shearModulus G, Pa, greater than 0
 * @param density ρ, kg/m³, at least 0
 * @param expansion coefficient of thermal expansion α, 1/K
 */
public record Material(
        String name, double youngModulus, double shearModulus, double density, double expansion) {

    /**
     * Checks the numbers.
     *
     * @param name what it is called
     * @param youngModulus E, Pa
     * @param shearModulus G, Pa
     * @param density ρ, kg/m³
     * @param expansion α, 1/K
     * @throws IllegalArgumentException if a modulus is not greater than 0, the density is negative or
     *     the expansion not finite
     */
    public Material {
        Require.name("material", name);
        Require.positive("Young's modulus of " + name, youngModulus, "Pa");
        Require.positive("shear modulus of " + name, shearModulus, "Pa");
        Require.notNegative("density of " + name, density, "kg/m³");
        Require.finite("thermal expansion of " + name, expansion, "1/K");
    }

    /**
     * Makes a material from Young's modulus and Poisson's ratio: G = E/(2(1 + ν)).
     *
     * @param name what it is called
     * @param youngModulus E, Pa, greater than 0
     * @param poissonRatio ν, greater than −1, at most 0.5
     * @param density ρ, kg/m³, at least 0
     * @param expansion α, 1/K
     * @return the material
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static Material of(
            String name,
            double youngModulus,
            double poissonRatio,
            double density,
            double expansion) {
        if (!(poissonRatio > -1 && poissonRatio <= 0.5)) {
            throw Require.refused(
                    "Poisson's ratio of " + name, poissonRatio, "", "from −1 to 0.5, without −1");
        }
        return new Material(
                name, youngModulus, youngModulus / (2 * (1 + poissonRatio)), density, expansion);
    }

    /**
     * Gives structural steel: E = 210 000 N/mm², ν = 0.3 (G ≈ 81 000 N/mm²), α = 12·10⁻⁶ per K (EN
     * 1993-1-1:2005, 3.2.6); density 7 850 kg/m³ (EN 1991-1-1:2002, table A.4: 77.0 to 78.5 kN/m³).
     *
     * @return structural steel
     */
    public static Material steel() {
        return of("steel", 210e9, 0.3, 7850, 12e-6);
    }
}
