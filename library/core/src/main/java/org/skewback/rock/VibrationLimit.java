package org.skewback.rock;

import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/**
 * Limits of peak particle velocity set by others, to check records against. A limit of the project
 * or of the place has precedence over any here.
 */
public final class VibrationLimit {

    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;

    private VibrationLimit() {}

    /**
     * Gives the limit for houses by frequency.
     *
     * <p>The least of 2πf · 0.030 in, then 0.75 in/s, then 2πf · 0.008 in, then 2 in/s: each line
     * holds from where the one before crosses it, at 3.98, 14.9 and 39.8 Hz. Source: D. E. Siskind
     * and others, US Bureau of Mines Report of Investigations 8507 (1980), app. B (from memory).
     *
     * @param frequency frequency of the peak, Hz, greater than 0
     * @return peak particle velocity, m/s
     * @throws IllegalArgumentException if the frequency is not positive
     */
    public static double house(double frequency) {
        Require.positive("frequency", frequency, "Hz");
        double turning = 2 * Math.PI * frequency;
        double low = Math.min(turning * 0.030, 0.75);
        double high = Math.min(turning * 0.008, 2.0);
        return Math.max(low, high) * INCH;
    }

    /**
     * Gives the limit by distance alone where no frequency is recorded: 1.25 in/s to 300 ft, 1.00
     * in/s to 5000 ft, 0.75 in/s beyond.
     *
     * <p>Source: US Code of Federal Regulations, 30 CFR 816.67 (from memory).
     *
     * @param distance distance from the blast, m, greater than 0
     * @return peak particle velocity, m/s
     * @throws IllegalArgumentException if the distance is not positive
     */
    public static double byDistance(double distance) {
        double feet = Require.positive("distance from the blast", distance, "m") / FOOT;
        double inches = notBeyond(feet, 300) ? 1.25 : notBeyond(feet, 5000) ? 1.00 : 0.75;
        return inches * INCH;
    }

    /**
     * Gives the least scaled distance at which no instrument is asked for: 50 to 300 ft, 55 to 5000
     * ft, 65 beyond, in ft/√lb.
     *
     * <p>Source: as for {@link #byDistance}.
     *
     * @param distance distance from the blast, m, greater than 0
     * @return scaled distance, m/√kg
     * @throws IllegalArgumentException if the distance is not positive
     */
    public static double leastScaledDistance(double distance) {
        double feet = Require.positive("distance from the blast", distance, "m") / FOOT;
        double scaled = notBeyond(feet, 300) ? 50 : notBeyond(feet, 5000) ? 55 : 65;
        return scaled * FOOT / Math.sqrt(0.45359237);
    }

    private static boolean notBeyond(double value, double limit) {
        return value <= limit * (1 + 1e-12);
    }

    /**
     * Gives the limit for mass concrete by its age and distance.
     *
     * <p>To 4 h 4 in/s, to 24 h 6, to 3 d 9, to 7 d 12, to 10 d 15, then 20; times 1.0 to 50 ft, 0.8
     * to 150 ft, 0.7 to 250 ft, 0.6 beyond. Many specifications ask for far less, 6 to 25 mm/s in the
     * first day. Source: L. L. Oriard and J. H. Coulson, TVA blast vibration criteria for mass
     * concrete, ASCE (1980) (from memory).
     *
     * @param age age of the concrete, s, greater than 0
     * @param distance distance from the blast, m, greater than 0
     * @return peak particle velocity, m/s
     * @throws IllegalArgumentException if a value is not positive
     */
    public static double massConcrete(double age, double distance) {
        double hours = Require.positive("age of the concrete", age, "s") / 3600;
        double feet = Require.positive("distance from the blast", distance, "m") / FOOT;
        double[] until = {4, 24, 72, 168, 240};
        double[] inches = {4, 6, 9, 12, 15, 20};
        int i = 0;
        while (i < until.length && !notBeyond(hours, until[i])) {
            i++;
        }
        double far =
                notBeyond(feet, 50)
                        ? 1
                        : notBeyond(feet, 150) ? 0.8 : notBeyond(feet, 250) ? 0.7 : 0.6;
        return inches[i] * far * INCH;
    }

    /**
     * A record that was checked.
     *
     * @param line line of the table
     * @param speed peak particle velocity recorded, m/s
     * @param limit limit at its frequency, m/s
     */
    public record Checked(int line, double speed, double limit) {

        /**
         * Says whether the record keeps the limit.
         *
         * @return true if it does not pass it
         */
        public boolean kept() {
            return speed <= limit;
        }
    }

    /**
     * Checks records of a table with columns {@code speed} and {@code frequency} against the limit
     * for houses, and against a limit of the project where that is lower.
     *
     * @param table the table
     * @param projectLimit limit of the project, m/s, greater than 0; infinite for none
     * @return each record with its limit
     * @throws TableException if a column is missing or of the wrong dimension, a speed is negative or
     *     a frequency not positive
     * @throws IllegalArgumentException if the limit is not positive
     */
    public static List<Checked> check(CsvTable table, double projectLimit) {
        if (!(projectLimit > 0)) {
            throw Require.refused("limit of the project", projectLimit, "m/s", "more than 0");
        }
        double[] speeds = table.numbers("speed", "m/s");
        double[] frequencies = table.numbers("frequency", "Hz");
        List<Checked> checked = new ArrayList<>();
        for (int i = 0; i < speeds.length; i++) {
            if (!(speeds[i] >= 0)) {
                throw table.refused(i, "speed", table.texts("speed").get(i), "at least 0");
            }
            if (!(frequencies[i] > 0)) {
                throw table.refused(i, "frequency", table.texts("frequency").get(i), "more than 0");
            }
            checked.add(
                    new Checked(
                            table.line(i),
                            speeds[i],
                            Math.min(projectLimit, house(frequencies[i]))));
        }
        return List.copyOf(checked);
    }
}
