package org.skewback.study;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Check;

/**
 * A block of rock on a plane behind a vertical crack, per metre of face: 12 m high, face 60°, plane
 * 35°, crack 4 m behind the crest (formulas of E. Hoek and J. W. Bray, Rock Slope Engineering, 1981;
 * from memory).
 */
final class PlaneSlide {

    final Quantity cohesion = given("c", 25, "kPa");
    final Quantity friction = given("φ", 37, "°");
    final Quantity tangent = given("t_φ", StrictMath.tan(StrictMath.toRadians(37)), "");
    final Quantity water = given("z_w", 3, "m");
    final Quantity weight = given("γ", 26, "kN/m³");

    static Quantity given(String symbol, double value, String unit) {
        return Quantity.given(symbol, value, unit, "", Source.assumption("an example"));
    }

    Quantity factor() {
        return factor(friction.tan(), water);
    }

    Quantity dryFactor() {
        return factor(tangent, Quantity.of(0, "m"));
    }

    private Quantity factor(Quantity slope, Quantity depth) {
        Quantity height = Quantity.of(12, "m");
        Quantity face = Quantity.of(60, "°");
        Quantity plane = Quantity.of(35, "°");
        Quantity behind = Quantity.of(4, "m");
        Quantity one = Quantity.of(1);
        Quantity crack = height.minus(behind.plus(height.over(face.tan())).times(plane.tan()));
        Quantity area = height.minus(crack).over(plane.sin());
        Quantity waterWeight = Quantity.of(9.81, "kN/m³");
        Quantity uplift = waterWeight.times(depth).times(area).over(2);
        Quantity push = waterWeight.times(depth.squared()).over(2);
        Quantity shape =
                one.minus(crack.over(height).squared())
                        .over(plane.tan())
                        .minus(one.over(face.tan()));
        Quantity block = weight.times(height.squared()).over(2).times(shape);
        Quantity normal = block.times(plane.cos()).minus(uplift).minus(push.times(plane.sin()));
        return cohesion.times(area)
                .plus(normal.times(slope))
                .over(block.times(plane.sin()).plus(push.times(plane.cos())));
    }

    static Check stable(Quantity factor) {
        return new Check("safety against sliding", factor, Quantity.of(1), null);
    }

    /** Cohesion and tangent of the friction angle normal, so that the dry factor is linear. */
    Uncertainty linear() {
        return Uncertainty.none()
                .with(cohesion, Distribution.normal(Quantity.of(25, "kPa"), Quantity.of(5, "kPa")))
                .with(tangent, Distribution.normal(Quantity.of(tangent.si()), Quantity.of(0.08)));
    }

    /** Cohesion, friction angle and depth of water in the crack. */
    Uncertainty wet() {
        return Uncertainty.none()
                .with(cohesion, Distribution.normal(Quantity.of(25, "kPa"), Quantity.of(5, "kPa")))
                .with(friction, Distribution.normal(Quantity.of(37, "°"), Quantity.of(3, "°")))
                .with(water, Distribution.uniform(Quantity.of(0, "m"), Quantity.of(4, "m")));
    }
}
