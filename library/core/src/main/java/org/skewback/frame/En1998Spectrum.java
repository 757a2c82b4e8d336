package org.skewback.frame;

/**
 * The spectra of EN 1998-1:2004, 3.2.2, as remembered: for a period up to T_B straight from a start to a
 * plateau, up to T_C the plateau, up to T_D falling as 1/T, beyond as 1/T², never below a floor. The code
 * gives the last branch up to 4 s; beyond (its annex A) it is continued here.
 *
 * <p>National annexes choose type, soil factor and periods; they come first.
 *
 * @param ground ground acceleration times soil factor, a_g S (a_vg for vertical spectra), m/s²
 * @param start ordinate at T = 0 over {@code ground}
 * @param plateau ordinate from T_B to T_C over {@code ground}
 * @param periodB T_B, s
 * @param periodC T_C, s
 * @param periodD T_D, s
 * @param floor least ordinate from T_C on, β a_g, m/s²; 0 where there is none
 */
public record En1998Spectrum(
        double ground,
        double start,
        double plateau,
        double periodB,
        double periodC,
        double periodD,
        double floor)
        implements DesignSpectrum {

    /** Shape of the spectrum: of strong, or of weak and near earthquakes. */
    public enum Type {
        /** Surface-wave magnitude above 5.5. */
        ONE,
        /** Surface-wave magnitude up to 5.5. */
        TWO
    }

    /** Ground type of EN 1998-1, 3.1.2. */
    public enum Ground {
        /** Rock. */
        A,
        /** Very dense sand or gravel, very stiff clay. */
        B,
        /** Deep dense or medium-dense sand or gravel, stiff clay. */
        C,
        /** Loose to medium cohesionless or soft to firm cohesive soil. */
        D,
        /** Soil layer of 5 m to 20 m of types C or D on rock. */
        E
    }

    /** S, T_B, T_C, T_D: Tables 3.2 and 3.3, from memory. */
    private static double[] table(Type type, Ground ground) {
        if (type == Type.ONE) {
            return switch (ground) {
                case A -> new double[] {1, 0.15, 0.4, 2};
                case B -> new double[] {1.2, 0.15, 0.5, 2};
                case C -> new double[] {1.15, 0.2, 0.6, 2};
                case D -> new double[] {1.35, 0.2, 0.8, 2};
                case E -> new double[] {1.4, 0.15, 0.5, 2};
            };
        }
        return switch (ground) {
            case A -> new double[] {1, 0.05, 0.25, 1.2};
            case B -> new double[] {1.35, 0.05, 0.25, 1.2};
            case C -> new double[] {1.5, 0.1, 0.25, 1.2};
            case D -> new double[] {1.8, 0.1, 0.3, 1.2};
            case E -> new double[] {1.6, 0.05, 0.25, 1.2};
        };
    }

    /**
     * Checks the numbers.
     *
     * @param ground a_g S, m/s², greater than 0
     * @param start ordinate at T = 0 over {@code ground}, greater than 0
     * @param plateau ordinate of the plateau over {@code ground}, greater than 0
     * @param periodB T_B, s, greater than 0
     * @param periodC T_C, s, not less than T_B
     * @param periodD T_D, s, not less than T_C
     * @param floor least ordinate, m/s², 0 or more
     * @throws IllegalArgumentException if a number is out of range
     */
    public En1998Spectrum {
        Require.positive("ground acceleration", ground, "m/s²");
        Require.positive("start of a spectrum", start, "");
        Require.positive("plateau of a spectrum", plateau, "");
        Require.positive("period T_B", periodB, "s");
        Require.within("period T_C", periodC, periodB, 100, "s");
        Require.within("period T_D", periodD, periodC, 100, "s");
        Require.notNegative("floor of a spectrum", floor, "m/s²");
    }

    /**
     * Gives the correction for damping, η = √(10/(5 + ξ)) ≥ 0.55 with ξ in percent (3.2.2.2).
     *
     * @param damping damping ratio ζ, 0 to 1
     * @return η
     * @throws IllegalArgumentException if the ratio is out of range
     */
    public static double dampingCorrection(double damping) {
        Require.within("damping ratio", damping, 0, 1, "");
        return Math.max(0.55, Math.sqrt(10 / (5 + 100 * damping)));
    }

    /**
     * Makes the horizontal elastic spectrum (3.2.2.2).
     *
     * @param type shape
     * @param ground ground type
     * @param acceleration a_g on rock, importance factor included, m/s²
     * @param damping damping ratio ζ
     * @return the spectrum
     * @throws IllegalArgumentException if a number is out of range
     */
    public static En1998Spectrum elastic(
            Type type, Ground ground, double acceleration, double damping) {
        double[] row = table(type, ground);
        return new En1998Spectrum(
                acceleration * row[0],
                1,
                2.5 * dampingCorrection(damping),
                row[1],
                row[2],
                row[3],
                0);
    }

    /**
     * Makes the vertical elastic spectrum (3.2.2.3): plateau 3η from 0.05 s to 0.15 s, T_D = 1 s.
     *
     * @param acceleration a_vg, m/s²; recommended 0.9 a_g for type 1, 0.45 a_g for type 2
     * @param damping damping ratio ζ
     * @return the spectrum
     * @throws IllegalArgumentException if a number is out of range
     */
    public static En1998Spectrum verticalElastic(double acceleration, double damping) {
        return new En1998Spectrum(
                acceleration, 1, 3 * dampingCorrection(damping), 0.05, 0.15, 1, 0);
    }

    /**
     * Makes the horizontal spectrum for elastic analysis with a behaviour factor (3.2.2.5): from ⅔ to
     * 2.5/q, not below β a_g beyond T_C.
     *
     * @param type shape
     * @param ground ground type
     * @param acceleration a_g on rock, importance factor included, m/s²
     * @param behaviour behaviour factor q, 1 or more
     * @param lowerBound β, recommended 0.2
     * @return the spectrum
     * @throws IllegalArgumentException if a number is out of range
     */
    public static En1998Spectrum design(
            Type type, Ground ground, double acceleration, double behaviour, double lowerBound) {
        Require.within("behaviour factor", behaviour, 1, 20, "");
        Require.within("lower bound of a design spectrum", lowerBound, 0, 1, "");
        double[] row = table(type, ground);
        return new En1998Spectrum(
                acceleration * row[0],
                2.0 / 3,
                2.5 / behaviour,
                row[1],
                row[2],
                row[3],
                lowerBound * acceleration);
    }

    @Override
    public double acceleration(double period) {
        Require.notNegative("period", period, "s");
        double top = ground * plateau;
        if (period < periodB) {
            return ground * (start + period / periodB * (plateau - start));
        } else if (period <= periodC) {
            return top;
        } else if (period <= periodD) {
            return Math.max(floor, top * periodC / period);
        }
        return Math.max(floor, top * periodC * periodD / (period * period));
    }

    /**
     * Gives the displacement of the ground, 0.025 a_g S T_C T_D (3.2.2.4), meant for elastic horizontal
     * spectra.
     *
     * @return d_g, m
     */
    public double groundDisplacement() {
        return 0.025 * ground * periodC * periodD;
    }
}
