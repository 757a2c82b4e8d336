package org.skewback.form;

/**
 * The semicircular masonry arch of least thickness that stands under its own weight.
 *
 * <p>Joints are radial, the material carries any compression and no tension, and the stones do not
 * slide. In the thinnest arch the line of thrust touches the extrados at the crown and at the
 * springings and the intrados at the haunches: five hinges. With radius 1 to the middle of the
 * ring, thickness t, weight of the ring from the crown to the angle φ {@code W} and its lever
 * {@code x̄}, the line of thrust is {@code r(φ) = [H (1 + t/2) + x̄ W]/[W sin φ + H cos φ]}.
 *
 * <p>Source: M. Milankovitch, Theorie der Druckkurven, Zeitschrift für Mathematik und Physik 55
 * (1907) (named from memory); the value 0.1075 is also given in the abstract of N. Makris and H.
 * Alexakis, Archive of Applied Mechanics (2013). It is a measure for teaching and for masonry, not
 * for a steel rib.
 *
 * @param thickness least thickness over the radius to the middle of the ring, without unit
 * @param haunch angle of the haunch hinge from the crown, rad
 * @param thrust thrust over weight per volume, width, thickness and radius, {@code H/(γ b t R)},
 *     without unit
 */
public record MasonrySemicircle(double thickness, double haunch, double thrust) {

    private static final double SPRINGING = Math.PI / 2;

    /**
     * Solves with the weight at its true centre of gravity, {@code x̄ W = (1 − cos φ)(t + t³/12)}.
     *
     * @return thickness 0.10748 of the radius
     */
    public static MasonrySemicircle exact() {
        return solve(t -> t + t * t * t / 12);
    }

    /**
     * Solves with the weight on the middle of the ring, {@code x̄ W = (1 − cos φ) t}, an
     * approximation for a thin ring.
     *
     * @return thickness 0.10743 of the radius
     */
    public static MasonrySemicircle weightOnMiddle() {
        return solve(t -> t);
    }

    /** First moment of the ring about the middle, over 1 − cos φ, as a function of thickness. */
    private interface RingMoment {
        double at(double thickness);
    }

    private static MasonrySemicircle solve(RingMoment moment) {
        double thickness =
                Roots.between(
                        "least thickness of the semicircular arch",
                        t -> new Ring(t, moment.at(t)).clearanceAtHaunch(),
                        0.02,
                        0.4);
        Ring ring = new Ring(thickness, moment.at(thickness));
        return new MasonrySemicircle(thickness, ring.haunch(), ring.thrust() / thickness);
    }

    /** A ring of unit radius and weight, whose line of thrust passes the extrados at three hinges. */
    private record Ring(double thickness, double moment) {

        double outer() {
            return 1 + thickness / 2;
        }

        double thrust() {
            // r(π/2) = 1 + t/2, where cos φ = 0.
            return thickness * SPRINGING - moment / outer();
        }

        double radius(double angle) {
            return numerator(angle) / denominator(angle);
        }

        double numerator(double angle) {
            return thrust() * outer() + moment * (1 - StrictMath.cos(angle));
        }

        double denominator(double angle) {
            return thickness * angle * StrictMath.sin(angle) + thrust() * StrictMath.cos(angle);
        }

        /** Where the line of thrust comes nearest the centre: dr/dφ = 0. */
        double haunch() {
            return Roots.between(
                    "haunch hinge",
                    angle -> {
                        double sine = StrictMath.sin(angle);
                        double change =
                                thickness * (sine + angle * StrictMath.cos(angle))
                                        - thrust() * sine;
                        return moment * sine * denominator(angle) - numerator(angle) * change;
                    },
                    0.3,
                    1.45);
        }

        double clearanceAtHaunch() {
            return radius(haunch()) - (1 - thickness / 2);
        }
    }
}
