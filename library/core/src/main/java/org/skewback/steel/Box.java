package org.skewback.steel;

/**
 * A box of two equal flanges over the whole width and two equal webs between them.
 *
 * <p>Area and second moments are exact. The shear areas are the walls along the force between the
 * middle planes of the walls across it: A_z = 2 t_w (h − t_f), A_y = 2 t_f (b − t_w) (common
 * practice for thin walls, no source). Torsion after Bredt for the closed cell of the middle lines:
 * J = 4 A₀²/∮ds/t (R. Bredt, <i>Z. VDI</i> 40 (1896) 785).
 *
 * @param width b, outer, across, m, greater than 2 t_w
 * @param height h, outer, m, greater than 2 t_f
 * @param webThickness t_w, m, greater than 0
 * @param flangeThickness t_f, m, greater than 0
 */
public record Box(double width, double height, double webThickness, double flangeThickness)
        implements Shape {

    /**
     * Checks the dimensions.
     *
     * @param width b, outer, across, m
     * @param height h, outer, m
     * @param webThickness t_w, m
     * @param flangeThickness t_f, m
     * @throws IllegalArgumentException if one is not greater than 0 or the walls fill the box
     */
    public Box {
        Require.positive("width of the box", width, "m");
        Require.positive("height of the box", height, "m");
        Require.positive("web thickness of the box", webThickness, "m");
        Require.positive("flange thickness of the box", flangeThickness, "m");
        Require.below("web thickness of the box", webThickness, width / 2, "m");
        Require.below("flange thickness of the box", flangeThickness, height / 2, "m");
    }

    @Override
    public Section section(String name) {
        double clearWidth = width - 2 * webThickness;
        double clearHeight = height - 2 * flangeThickness;
        double middleWidth = width - webThickness;
        double middleHeight = height - flangeThickness;
        double enclosed = middleWidth * middleHeight;
        return new Section(
                name,
                width * height - clearWidth * clearHeight,
                2 * flangeThickness * middleWidth,
                2 * webThickness * middleHeight,
                4
                        * enclosed
                        * enclosed
                        / (2 * middleWidth / flangeThickness + 2 * middleHeight / webThickness),
                (width * height * height * height
                                - clearWidth * clearHeight * clearHeight * clearHeight)
                        / 12,
                (height * width * width * width
                                - clearHeight * clearWidth * clearWidth * clearWidth)
                        / 12,
                Section.corners(width, height),
                this);
    }

    @Override
    public Shape towards(Shape other, double fraction) {
        if (!(other instanceof Box to)) {
            throw Shape.kindsDiffer(this, other);
        }
        return new Box(
                Shape.between(width, to.width, fraction),
                Shape.between(height, to.height, fraction),
                Shape.between(webThickness, to.webThickness, fraction),
                Shape.between(flangeThickness, to.flangeThickness, fraction));
    }
}
