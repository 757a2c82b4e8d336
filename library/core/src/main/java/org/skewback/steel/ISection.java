package org.skewback.steel;

/**
 * A doubly symmetric I of three plates, without fillets.
 *
 * <p>Area and second moments are exact. Shear areas: the web between the middle planes of the
 * flanges, A_z = t_w (h − t_f), and 5/6 of the flanges, A_y = 5/6 · 2 b t_f (common practice, no
 * source). Torsion of the thin open section: J = Σ b t³/3 (S. Timoshenko, <i>Strength of
 * Materials</i> part II, 3rd ed. 1956, art. 53). Warping is ignored, which understates the torsional
 * stiffness of members held against warping.
 *
 * @param width b of both flanges, across, m, greater than t_w
 * @param height h, outer, m, greater than 2 t_f
 * @param webThickness t_w, m, greater than 0
 * @param flangeThickness t_f, m, greater than 0
 */
public record ISection(double width, double height, double webThickness, double flangeThickness)
        implements Shape {

    /**
     * Checks the dimensions.
     *
     * @param width b of both flanges, across, m
     * @param height h, outer, m
     * @param webThickness t_w, m
     * @param flangeThickness t_f, m
     * @throws IllegalArgumentException if one is not greater than 0 or the plates do not fit
     */
    public ISection {
        Require.positive("width of the I-section", width, "m");
        Require.positive("height of the I-section", height, "m");
        Require.positive("web thickness of the I-section", webThickness, "m");
        Require.positive("flange thickness of the I-section", flangeThickness, "m");
        Require.below("web thickness of the I-section", webThickness, width, "m");
        Require.below("flange thickness of the I-section", flangeThickness, height / 2, "m");
    }

    @Override
    public Section section(String name) {
        double clear = height - 2 * flangeThickness;
        double flange = width * flangeThickness;
        return new Section(
                name,
                2 * flange + clear * webThickness,
                2 * flange * 5 / 6,
                webThickness * (height - flangeThickness),
                (2 * flange * flangeThickness * flangeThickness
                                + clear * webThickness * webThickness * webThickness)
                        / 3,
                (width * height * height * height - (width - webThickness) * clear * clear * clear)
                        / 12,
                (2 * flangeThickness * width * width * width
                                + clear * webThickness * webThickness * webThickness)
                        / 12,
                Section.corners(width, height),
                this);
    }

    @Override
    public Shape towards(Shape other, double fraction) {
        if (!(other instanceof ISection to)) {
            throw Shape.kindsDiffer(this, other);
        }
        return new ISection(
                Shape.between(width, to.width, fraction),
                Shape.between(height, to.height, fraction),
                Shape.between(webThickness, to.webThickness, fraction),
                Shape.between(flangeThickness, to.flangeThickness, fraction));
    }
}
