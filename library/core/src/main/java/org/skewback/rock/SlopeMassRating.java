package org.skewback.rock;

import org.skewback.quantity.Quantity;

/**
 * Slope mass rating, {@code SMR = RMR_b + F_1 F_2 F_3 + F_4}, of a joint and a face.
 *
 * <p>A is the angle between the strikes (or 180° off for toppling), B the dip of the joint, C the
 * dip of the joint less that of the face for sliding, and their sum for toppling. In classes a value
 * on a limit belongs to the class that begins there; one on the limit of an open class, such as 30°
 * of "above 30°", to the class below.
 *
 * <p>Source: M. Romana, New adjustment ratings for application of Bieniawski classification to
 * slopes, ISRM Symposium, Zacatecas (1985); continuous functions: R. Tomás, J. Delgado and J. B.
 * Serón, Modification of slope mass rating by continuous functions, International Journal of Rock
 * Mechanics and Mining Sciences 44 (2007) (from memory).
 */
public final class SlopeMassRating {

    private SlopeMassRating() {}

    /** How the face was made, F_4. */
    public enum Excavation {
        /** A natural slope. */
        NATURAL(15),
        /** Presplit. */
        PRESPLIT(10),
        /** Smooth blasting. */
        SMOOTH(8),
        /** Normal blasting or by machine. */
        NORMAL(0),
        /** Deficient blasting. */
        DEFICIENT(-8);

        private final int points;

        Excavation(int points) {
            this.points = points;
        }

        /**
         * Gives the points.
         *
         * @return F_4
         */
        public int points() {
            return points;
        }
    }

    /**
     * The factors of the joint's orientation.
     *
     * @param parallel F_1, from 0.15 to 1
     * @param dip F_2, from 0.15 to 1
     * @param relation F_3, from −60 to 0
     */
    public record Factors(double parallel, double dip, double relation) {}

    /**
     * Gives the factors for sliding on a plane, by classes.
     *
     * <p>F_1: A above 30° 0.15, from 20° 0.40, from 10° 0.70, from 5° 0.85, else 1. F_2: B above 45°
     * 1, from 35° 0.85, from 30° 0.70, from 20° 0.40, else 0.15. F_3: C above 10° 0, above 0°
     * −6, 0° −25, down to −10° −50, below −60.
     *
     * @param strikes angle between the strikes, A, rad, from 0 to π
     * @param jointDip dip of the joint, B, rad, from 0 to π/2
     * @param faceDip dip of the face, rad, from 0 to π/2
     * @return the factors
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Factors planar(double strikes, double jointDip, double faceDip) {
        double a = degrees("angle between the strikes", strikes, 180);
        double b = degrees("dip of the joint", jointDip, 90);
        double c = b - degrees("dip of the face", faceDip, 90);
        double dip = b > 45 ? 1 : b >= 35 ? 0.85 : b >= 30 ? 0.70 : b >= 20 ? 0.40 : 0.15;
        double relation = c < -10 ? -60 : c < 0 ? -50 : c <= 0 ? -25 : c <= 10 ? -6 : 0;
        return new Factors(parallel(a), dip, relation);
    }

    /**
     * Gives the factors for toppling, by classes.
     *
     * <p>F_1 as for sliding; F_2 is 1; F_3: C below 110° 0, to 120° −6, above −25.
     *
     * @param strikes angle between the strikes, A, rad, from 0 to π
     * @param jointDip dip of the joint into the slope, B, rad, from 0 to π/2
     * @param faceDip dip of the face, rad, from 0 to π/2
     * @return the factors
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Factors toppling(double strikes, double jointDip, double faceDip) {
        double a = degrees("angle between the strikes", strikes, 180);
        double c =
                degrees("dip of the joint", jointDip, 90) + degrees("dip of the face", faceDip, 90);
        double relation = c > 120 ? -25 : c >= 110 ? -6 : 0;
        return new Factors(parallel(a), 1, relation);
    }

    private static double parallel(double a) {
        return a < 5 ? 1 : a < 10 ? 0.85 : a < 20 ? 0.70 : a <= 30 ? 0.40 : 0.15;
    }

    /**
     * Gives the factors for sliding on a plane, continuous.
     *
     * <p>{@code F_1 = 16/25 − 3/500 arctan((|A| − 17)/10)}, {@code F_2 = 9/16 + 1/195 arctan(17 B/100
     * − 5)}, {@code F_3 = −30 + 1/3 arctan C}, angles and arcs in degrees.
     *
     * @param strikes angle between the strikes, A, rad, from 0 to π
     * @param jointDip dip of the joint, B, rad, from 0 to π/2
     * @param faceDip dip of the face, rad, from 0 to π/2
     * @return the factors
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Factors planarContinuous(double strikes, double jointDip, double faceDip) {
        double a = degrees("angle between the strikes", strikes, 180);
        double b = degrees("dip of the joint", jointDip, 90);
        double c = b - degrees("dip of the face", faceDip, 90);
        return new Factors(
                parallelContinuous(a), 9.0 / 16 + arc(0.17 * b - 5) / 195, -30 + arc(c) / 3);
    }

    /**
     * Gives the factors for toppling, continuous: F_1 as for sliding, F_2 = 1, {@code F_3 = −13 −
     * 1/7 arctan(C − 120)}.
     *
     * @param strikes angle between the strikes, A, rad, from 0 to π
     * @param jointDip dip of the joint into the slope, B, rad, from 0 to π/2
     * @param faceDip dip of the face, rad, from 0 to π/2
     * @return the factors
     * @throws IllegalArgumentException if an angle is outside
     */
    public static Factors topplingContinuous(double strikes, double jointDip, double faceDip) {
        double a = degrees("angle between the strikes", strikes, 180);
        double c =
                degrees("dip of the joint", jointDip, 90) + degrees("dip of the face", faceDip, 90);
        return new Factors(parallelContinuous(a), 1, -13 - arc(c - 120) / 7);
    }

    private static double parallelContinuous(double a) {
        return 16.0 / 25 - 3.0 / 500 * arc((a - 17) / 10);
    }

    private static double arc(double tangent) {
        return StrictMath.toDegrees(StrictMath.atan(tangent));
    }

    /** An angle in degrees, rounded to a billionth so that limits of classes are met. */
    private static double degrees(String what, double angle, double most) {
        double degrees = Math.rint(StrictMath.toDegrees(angle) * 1e9) / 1e9;
        return Require.within(what, degrees, 0, most, "°");
    }

    /**
     * Gives the slope mass rating.
     *
     * @param basic basic rock mass rating, RMR_b, from 0 to 100
     * @param factors factors of the joint's orientation
     * @param excavation how the face was made
     * @return SMR, a plain number
     * @throws IllegalArgumentException if the rating is outside
     */
    public static Quantity of(Quantity basic, Factors factors, Excavation excavation) {
        Require.within("basic rock mass rating", basic, 0, 100, "");
        Quantity product =
                Quantity.of(factors.parallel())
                        .times(Quantity.of(factors.dip()))
                        .times(Quantity.of(factors.relation()));
        return basic.plus(product).plus(excavation.points());
    }

    /**
     * Gives the class of a slope mass rating.
     *
     * @param rating SMR
     * @return 1 completely stable (81 to 100) to 5 completely unstable (0 to 20)
     */
    public static int slopeClass(double rating) {
        if (rating > 80) {
            return 1;
        }
        if (rating > 60) {
            return 2;
        }
        if (rating > 40) {
            return 3;
        }
        return rating > 20 ? 4 : 5;
    }
}
