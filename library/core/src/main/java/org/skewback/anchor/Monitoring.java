package org.skewback.anchor;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/**
 * Readings of a load cell, an inclinometer or a piezometer over years, against alarm levels.
 *
 * @param instrument name of the instrument
 * @param readings the readings in order of time
 */
public record Monitoring(String instrument, List<Reading> readings) {

    private static final double YEAR = 365.25;

    /**
     * One reading.
     *
     * @param date the day
     * @param value the value, SI
     */
    public record Reading(LocalDate date, double value) {}

    /** How bad a reading is. */
    public enum Level {
        /** Within what was expected: go on reading. */
        GREEN,
        /** Beyond the first level: read more often, look for the cause. */
        AMBER,
        /** Beyond the second level: act as laid down, tell the engineer at once. */
        RED
    }

    /**
     * Levels, on the upper, the lower or both sides.
     *
     * @param redBelow values below are red
     * @param amberBelow values below are amber
     * @param amberAbove values above are amber
     * @param redAbove values above are red
     */
    public record Alarm(double redBelow, double amberBelow, double amberAbove, double redAbove) {

        /**
         * Makes levels.
         *
         * @param redBelow values below are red; −∞ for none
         * @param amberBelow values below are amber; −∞ for none
         * @param amberAbove values above are amber; ∞ for none
         * @param redAbove values above are red; ∞ for none
         * @throws IllegalArgumentException if the levels do not ascend in this order
         */
        public Alarm {
            if (!(redBelow <= amberBelow && amberBelow < amberAbove && amberAbove <= redAbove)) {
                throw new IllegalArgumentException(
                        "alarm levels are "
                                + redBelow
                                + ", "
                                + amberBelow
                                + ", "
                                + amberAbove
                                + ", "
                                + redAbove
                                + "; allowed are levels that ascend from red below to red above.");
            }
        }

        /**
         * Gives the level of a value.
         *
         * @param value the value
         * @return its level
         */
        public Level of(double value) {
            if (value < redBelow || value > redAbove) {
                return Level.RED;
            }
            return value < amberBelow || value > amberAbove ? Level.AMBER : Level.GREEN;
        }
    }

    /**
     * A row of a trigger–action table.
     *
     * @param level the level
     * @param trigger what sets it off
     * @param action what is done then, by whom, how soon
     */
    public record Trigger(Level level, String trigger, String action) {}

    /**
     * Takes readings.
     *
     * @param instrument name of the instrument
     * @param readings the readings in order of time, at least one
     * @throws IllegalArgumentException if there is none, or dates do not ascend
     */
    public Monitoring {
        readings = List.copyOf(readings);
        Require.atLeast("number of readings of " + instrument, readings.size(), 1);
        for (int i = 1; i < readings.size(); i++) {
            if (!readings.get(i).date().isAfter(readings.get(i - 1).date())) {
                throw new IllegalArgumentException(
                        "date of reading "
                                + (i + 1)
                                + " of "
                                + instrument
                                + " is "
                                + readings.get(i).date()
                                + "; allowed is one after "
                                + readings.get(i - 1).date()
                                + ".");
            }
        }
    }

    /**
     * Reads a table with a column {@code date} (as 2026-11-30) and one of values.
     *
     * @param table the table
     * @param column name of the column of values, which is the instrument's name
     * @param unit unit of the values wanted
     * @return the readings
     * @throws TableException if a column is missing or of the wrong dimension, a date can't be read or
     *     dates do not ascend
     */
    public static Monitoring of(CsvTable table, String column, String unit) {
        double[] values = table.numbers(column, unit);
        List<String> dates = table.texts("date");
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            LocalDate date = date(table, i, dates.get(i));
            if (i > 0 && !date.isAfter(readings.get(i - 1).date())) {
                throw table.refused(
                        i, "date", dates.get(i), "a day after the one before, " + dates.get(i - 1));
            }
            readings.add(new Reading(date, values[i]));
        }
        if (readings.isEmpty()) {
            throw new TableException(table.name() + " holds no reading.");
        }
        return new Monitoring(column, readings);
    }

    private static LocalDate date(CsvTable table, int row, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw table.refused(row, "date", text, "a day such as 2026-11-30");
        }
    }

    /**
     * Gives the worst level of all readings.
     *
     * @param alarm the levels
     * @return the level
     */
    public Level worst(Alarm alarm) {
        Level worst = Level.GREEN;
        for (Reading reading : readings) {
            Level level = alarm.of(reading.value());
            worst = level.compareTo(worst) > 0 ? level : worst;
        }
        return worst;
    }

    /**
     * Gives the trend by least squares.
     *
     * @return change a year of 365.25 days
     * @throws IllegalArgumentException if there are fewer than three readings
     */
    public double trend() {
        Require.atLeast("number of readings for a trend", readings.size(), 3);
        double meanTime = readings.stream().mapToDouble(this::years).average().orElse(0);
        double mean = readings.stream().mapToDouble(Reading::value).average().orElse(0);
        double xx = 0;
        double xy = 0;
        for (Reading reading : readings) {
            double x = years(reading) - meanTime;
            xx += x * x;
            xy += x * (reading.value() - mean);
        }
        return xy / xx;
    }

    private double years(Reading reading) {
        return ChronoUnit.DAYS.between(readings.get(0).date(), reading.date()) / YEAR;
    }

    /**
     * Gives the day on which the trend, gone on from the last reading, reaches a level.
     *
     * @param value the level
     * @return the day, or nothing where the trend leads away from it or takes more than a century
     * @throws IllegalArgumentException if there are fewer than three readings
     */
    public Optional<LocalDate> reaches(double value) {
        Reading last = readings.get(readings.size() - 1);
        double years = (value - last.value()) / trend();
        if (!(years >= 0 && years <= 100)) {
            return Optional.empty();
        }
        return Optional.of(last.date().plusDays((long) Math.ceil(years * YEAR)));
    }

    /**
     * Gives a trigger–action table of three rows to start from; the project fills in who and how
     * soon.
     *
     * @param alarm the levels
     * @param unit unit of the values
     * @return the rows
     */
    public static List<Trigger> triggers(Alarm alarm, String unit) {
        return List.of(
                new Trigger(
                        Level.GREEN,
                        "from " + alarm.amberBelow() + " to " + alarm.amberAbove() + " " + unit,
                        "read as planned"),
                new Trigger(
                        Level.AMBER,
                        "below "
                                + alarm.amberBelow()
                                + " or above "
                                + alarm.amberAbove()
                                + " "
                                + unit,
                        "check the reading, read more often, look for the cause"),
                new Trigger(
                        Level.RED,
                        "below " + alarm.redBelow() + " or above " + alarm.redAbove() + " " + unit,
                        "tell the engineer in charge at once; act as the emergency plan says"));
    }
}
