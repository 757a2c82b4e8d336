package org.skewback.steel;

/**
 * A solid rectangle.
 *
 * <p>A = b h; I_y = b h³/12; I_z = h b³/12; shear areas 5/6 A (from the energy of the parabolic
 * shear stress; S. Timoshenko, <i>Strength of Materials</i> part I, 3rd ed. 1955, art. 66); torsion
 * after de Saint-Venant by the series J = a³c/3 [1 − (192/π⁵)(a/c) Σ tanh(nπc/2a)/n⁵], n = 1, 3, 5 …,
 * with a the shorter and c the longer side (S. Timoshenko and J. N. Goodier, <i>Theory of
 * Elasticity</i>, 3rd ed. 1970, art. 109, eq. 160).
 *
 * @param width b, across, m, greater than 0
 * @param height h, m, greater than 0
 */
public record Rectangle(double width, double height) implements Shape {

    /** Terms after this one change the sum by less than 1e-12. */
    private static final int LAST_TERM = 301;

    /**
     * Checks the dimensions.
     *
     * @param width b, across, m
     * @param height h, m
     * @throws IllegalArgumentException if one is not greater than 0
     */
    public Rectangle {
        Require.positive("width of the rectangle", width, "m");
        Require.positive("height of the rectangle", height, "m");
    }

    @Override
    public Section section(String name) {
        double area = width * height;
        return new Section(
                name,
                area,
                area * 5 / 6,
                area * 5 / 6,
                torsionConstant(),
                area * height * height / 12,
                area * width * width / 12,
                Section.corners(width, height),
                this);
    }

    private double torsionConstant() {
        double shorter = Math.min(width, height);
        double longer = Math.max(width, height);
        double sum = 0;
        for (int n = LAST_TERM; n >= 1; n -= 2) {
            double fifth = (double) n * n * n * n * n;
            sum += StrictMath.tanh(n * Math.PI * longer / (2 * shorter)) / fifth;
        }
        double fifthOfPi = Math.PI * Math.PI * Math.PI * Math.PI * Math.PI;
        return shorter
                * shorter
                * shorter
                * longer
                / 3
                * (1 - 192 / fifthOfPi * shorter / longer * sum);
    }

    @Override
    public Shape towards(Shape other, double fraction) {
        if (!(other instanceof Rectangle to)) {
            throw Shape.kindsDiffer(this, other);
        }
        return new Rectangle(
                Shape.between(width, to.width, fraction),
                Shape.between(height, to.height, fraction));
    }
}
