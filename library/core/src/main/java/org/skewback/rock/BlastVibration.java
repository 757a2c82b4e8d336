package org.skewback.rock;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;
import org.skewback.quantity.Quantity;

/**
 * How vibration falls off with scaled distance at a site, fitted to records: {@code v = K
 * (D/√W)^−β}.
 *
 * <p>The fit is a straight line through lg v over lg(D/√W) by least squares; the prediction limit of
 * one more record is that of the line by Student's t. It holds for the site and the range of scaled
 * distances recorded. It predicts what a blast designed by others will do, for checking against
 * limits: it is not a means to choose a charge.
 *
 * <p>Source: scaled distance after D. E. Siskind and others, US Bureau of Mines Report of
 * Investigations 8507 (1980); the statistics of a straight line are in any textbook of regression.
 *
 * @param constant K, speed at a scaled distance of 1 m/√kg, m/s
 * @param exponent β
 * @param scatter standard error of lg v about the line
 * @param records number of records
 * @param meanLog mean of lg(D/√W)
 * @param spreadLog sum of squares of lg(D/√W) about its mean
 * @param least least scaled distance recorded, m/√kg
 * @param greatest greatest scaled distance recorded, m/√kg
 */
public record BlastVibration(
        double constant,
        double exponent,
        double scatter,
        int records,
        double meanLog,
        double spreadLog,
        double least,
        double greatest) {

    /**
     * A record.
     *
     * @param distance distance from the blast to the instrument, m
     * @param charge greatest charge weight a delay, as reported by the blaster, kg
     * @param speed peak particle velocity, m/s
     */
    public record Shot(double distance, double charge, double speed) {

        /**
         * Makes a record.
         *
         * @param distance distance, m, greater than 0
         * @param charge charge weight a delay as reported, kg, greater than 0
         * @param speed peak particle velocity, m/s, greater than 0
         * @throws IllegalArgumentException if a value is not positive
         */
        public Shot {
            Require.positive("distance from the blast", distance, "m");
            Require.positive("charge weight a delay", charge, "kg");
            Require.positive("peak particle velocity", speed, "m/s");
        }

        double scaledDistance() {
            return distance / Math.sqrt(charge);
        }
    }

    /**
     * Reads records from a table with columns {@code distance}, {@code charge} and {@code speed}.
     *
     * @param table the table
     * @return the records
     * @throws TableException if a column is missing or of the wrong dimension, or a value is not
     *     positive
     */
    public static List<Shot> shots(CsvTable table) {
        double[] distance = table.numbers("distance", "m");
        double[] charge = table.numbers("charge", "kg");
        double[] speed = table.numbers("speed", "m/s");
        List<Shot> records = new ArrayList<>();
        for (int i = 0; i < distance.length; i++) {
            requirePositive(table, i, "distance", distance[i]);
            requirePositive(table, i, "charge", charge[i]);
            requirePositive(table, i, "speed", speed[i]);
            records.add(new Shot(distance[i], charge[i], speed[i]));
        }
        return List.copyOf(records);
    }

    private static void requirePositive(CsvTable table, int row, String column, double value) {
        if (!(value > 0)) {
            throw table.refused(row, column, table.texts(column).get(row), "more than 0");
        }
    }

    /**
     * Fits the line.
     *
     * @param records records, at least 5, not all at one scaled distance
     * @return the fit
     * @throws IllegalArgumentException if there are too few records, all at one scaled distance, or
     *     the speed does not fall off with distance
     */
    public static BlastVibration fit(List<Shot> records) {
        int count = Require.atLeast("number of records", records.size(), 5);
        double meanX = 0;
        double meanY = 0;
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        for (Shot record : records) {
            meanX += StrictMath.log10(record.scaledDistance()) / count;
            meanY += StrictMath.log10(record.speed()) / count;
            least = Math.min(least, record.scaledDistance());
            greatest = Math.max(greatest, record.scaledDistance());
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Shot record : records) {
            double x = StrictMath.log10(record.scaledDistance()) - meanX;
            double y = StrictMath.log10(record.speed()) - meanY;
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        if (!(xx > 1e-6)) {
            throw new IllegalArgumentException(
                    "All records are at one scaled distance; allowed are records over a range.");
        }
        double slope = xy / xx;
        if (!(slope < 0)) {
            throw Require.refused("exponent of the fall-off", -slope, "", "more than 0");
        }
        double scatter = Math.sqrt(Math.max(0, yy - slope * xy) / (count - 2));
        return new BlastVibration(
                StrictMath.pow(10, meanY - slope * meanX),
                -slope,
                scatter,
                count,
                meanX,
                xx,
                least,
                greatest);
    }

    /**
     * Predicts the speed on average.
     *
     * @param distance distance, m, greater than 0
     * @param charge charge weight a delay as reported, kg, greater than 0
     * @return peak particle velocity, m/s
     * @throws IllegalArgumentException if a value is not positive, or the scaled distance is below a
     *     half of the least recorded
     */
    public double mean(double distance, double charge) {
        return constant * StrictMath.pow(scaled(distance, charge), -exponent);
    }

    /**
     * Predicts the speed that one more record passes with a given probability only.
     *
     * @param distance distance, m, greater than 0
     * @param charge charge weight a delay as reported, kg, greater than 0
     * @param confidence probability of staying below, from 0.5 to 0.999
     * @return peak particle velocity, m/s
     * @throws IllegalArgumentException if a value is outside, or the scaled distance is below a half
     *     of the least recorded
     */
    public double limit(double distance, double charge, double confidence) {
        Require.within("confidence", confidence, 0.5, 0.999, "");
        double x = StrictMath.log10(scaled(distance, charge)) - meanLog;
        double t = new TDistribution(records - 2).inverseCumulativeProbability(confidence);
        double wide = scatter * Math.sqrt(1 + 1.0 / records + x * x / spreadLog);
        return mean(distance, charge) * StrictMath.pow(10, t * wide);
    }

    /**
     * Gives the distance at which a blast as reported reaches a speed on average: how far damage to
     * rock or fresh concrete of that limit may reach.
     *
     * @param speed peak particle velocity, m/s, greater than 0
     * @param charge charge weight a delay as reported, kg, greater than 0
     * @return distance, m
     * @throws IllegalArgumentException if a value is not positive
     */
    public double distance(double speed, double charge) {
        Require.positive("peak particle velocity", speed, "m/s");
        Require.positive("charge weight a delay", charge, "kg");
        return StrictMath.pow(constant / speed, 1 / exponent) * Math.sqrt(charge);
    }

    private double scaled(double distance, double charge) {
        Require.positive("distance from the blast", distance, "m");
        Require.positive("charge weight a delay", charge, "kg");
        double scaled = distance / Math.sqrt(charge);
        if (scaled < least / 2) {
            throw Require.refused(
                    "scaled distance",
                    scaled,
                    "m/√kg",
                    "at least half of the least recorded, " + least + " m/√kg");
        }
        return scaled;
    }

    /**
     * Gives the speed by scaled distance in closed form, {@code v = K (D/√W)^−β}.
     *
     * @param constant speed at a scaled distance of 1 m/√kg, K, more than 0
     * @param exponent β, more than 0
     * @param distance distance, D, more than 0
     * @param charge charge weight a delay as reported, W, more than 0
     * @return peak particle velocity
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity speed(
            Quantity constant, Quantity exponent, Quantity distance, Quantity charge) {
        Require.positive("constant of the fall-off", constant, "m/s");
        Require.positive("exponent of the fall-off", exponent, "");
        return constant.times(
                scaledDistance(distance, charge).ln().times(exponent).negated().exp());
    }

    /**
     * Gives the scaled distance, {@code D/√W} in m and kg.
     *
     * @param distance distance, D, more than 0
     * @param charge charge weight a delay as reported, W, more than 0
     * @return the scaled distance in m/√kg, as a plain number
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity scaledDistance(Quantity distance, Quantity charge) {
        Require.positive("distance from the blast", distance, "m");
        Require.positive("charge weight a delay", charge, "kg");
        return distance.per("m").over(charge.per("kg").root());
    }

    /**
     * Gives the strain that a wave brings along its way, {@code ε = v/c}.
     *
     * @param speed peak particle velocity, v, at least 0
     * @param wave speed of the wave, c, more than 0
     * @return the strain
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity strain(Quantity speed, Quantity wave) {
        Require.notNegative("peak particle velocity", speed, "m/s");
        Require.positive("speed of the wave", wave, "m/s");
        return speed.over(wave);
    }

    /**
     * Gives the stress that a wave brings, {@code σ = ρ c v}.
     *
     * @param density density of the rock, ρ, more than 0
     * @param wave speed of the wave, c, more than 0
     * @param speed peak particle velocity, v, at least 0
     * @return the stress
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity stress(Quantity density, Quantity wave, Quantity speed) {
        Require.positive("density of the rock", density, "kg/m³");
        Require.positive("speed of the wave", wave, "m/s");
        Require.notNegative("peak particle velocity", speed, "m/s");
        return density.times(wave).times(speed);
    }

    /**
     * Gives the spacing of perimeter holes beyond which a crack from hole to hole is not to be
     * expected, {@code S = d (P_b + T)/T}: to check a plan by others for plausibility.
     *
     * @param diameter diameter of the holes, d, more than 0
     * @param pressure pressure on the wall of the hole, P_b, as stated by the blaster, more than 0
     * @param tensileStrength dynamic tensile strength of the rock, T, more than 0
     * @return the spacing
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity plausibleSpacing(
            Quantity diameter, Quantity pressure, Quantity tensileStrength) {
        Require.positive("diameter of the holes", diameter, "mm");
        Require.positive("pressure on the wall of the hole", pressure, "MPa");
        Require.positive("tensile strength of the rock", tensileStrength, "MPa");
        return diameter.times(pressure.plus(tensileStrength)).over(tensileStrength);
    }
}
