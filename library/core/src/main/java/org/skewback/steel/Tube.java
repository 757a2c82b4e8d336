package org.skewback.steel;

import java.util.List;

/**
 * A circular tube.
 *
 * <p>With R the outer and r the inner radius: A = π(R² − r²); I = π(R⁴ − r⁴)/4; J = 2 I, exact. The
 * shear areas are k A with k = 6(1 + m²)²/(7(1 + m²)² + 20 m²), m = r/R: the coefficient of the
 * hollow circle for Poisson's ratio 0 (G. R. Cowper, <i>J. Appl. Mech.</i> 33 (1966) 335, table 1),
 * which is 1/2 for a thin wall; Poisson's ratio 0.3 would raise it by about 6 %.
 *
 * @param diameter outer diameter, m, greater than 0
 * @param thickness wall thickness, m, greater than 0, less than half the diameter
 */
public record Tube(double diameter, double thickness) implements Shape {

    /**
     * Checks the dimensions.
     *
     * @param diameter outer diameter, m
     * @param thickness wall thickness, m
     * @throws IllegalArgumentException if one is not greater than 0 or the wall fills the tube
     */
    public Tube {
        Require.positive("diameter of the tube", diameter, "m");
        Require.positive("thickness of the tube", thickness, "m");
        Require.below("thickness of the tube", thickness, diameter / 2, "m");
    }

    @Override
    public Section section(String name) {
        double outer = diameter / 2;
        double inner = outer - thickness;
        double area = Math.PI * (outer - inner) * (outer + inner);
        double inertia = area * (outer * outer + inner * inner) / 4;
        double square = 1 + inner * inner / (outer * outer);
        double shear =
                area
                        * 6
                        * square
                        * square
                        / (7 * square * square + 20 * inner * inner / (outer * outer));
        return new Section(
                name,
                area,
                shear,
                shear,
                2 * inertia,
                inertia,
                inertia,
                List.of(
                        new Fibre("top", 0, outer),
                        new Fibre("bottom", 0, -outer),
                        new Fibre("left", outer, 0),
                        new Fibre("right", -outer, 0)),
                this);
    }

    @Override
    public Shape towards(Shape other, double fraction) {
        if (!(other instanceof Tube to)) {
            throw Shape.kindsDiffer(this, other);
        }
        return new Tube(
                Shape.between(diameter, to.diameter, fraction),
                Shape.between(thickness, to.thickness, fraction));
    }
}
