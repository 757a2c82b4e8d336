package org.skewback.anchor;

import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/**
 * What was read while an anchor was stressed: force, time since that force was reached, and
 * displacement of the tendon at the head.
 *
 * @param readings the readings in order; the first at the alignment load
 */
public record StressingRecord(List<Reading> readings) {

    /** Forces this close count as one step, as a part of the greatest. */
    private static final double ONE_STEP = 0.02;

    /**
     * One reading.
     *
     * @param force force, N
     * @param time time since this force was reached, s
     * @param displacement displacement of the tendon at the head from the first reading, m
     */
    public record Reading(double force, double time, double displacement) {}

    /**
     * Takes readings.
     *
     * @param readings the readings in order, at least 3; the first at the alignment load
     * @throws IllegalArgumentException if there are fewer than 3
     */
    public StressingRecord {
        readings = List.copyOf(readings);
        Require.atLeast("number of readings", readings.size(), 3);
    }

    /**
     * Reads a table with columns {@code load}, {@code time} and {@code displacement}.
     *
     * @param table the table
     * @return the record
     * @throws TableException if a column is missing or of the wrong dimension; if a load is not
     *     positive or a time negative; if in one load step time does not go on; if a load is below
     *     the first; if displacement falls by more than 1 mm while the load rises; if the load never
     *     rises; or if there are fewer than 3 rows
     */
    public static StressingRecord of(CsvTable table) {
        double[] loads = table.numbers("load", "N");
        double[] times = table.numbers("time", "s");
        double[] displacements = table.numbers("displacement", "m");
        if (loads.length < 3) {
            throw new TableException(
                    table.name() + " has " + loads.length + " rows; allowed is at least 3.");
        }
        double greatest = 0;
        for (double load : loads) {
            greatest = Math.max(greatest, load);
        }
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < loads.length; i++) {
            check(table, loads, times, displacements, i, greatest);
            readings.add(new Reading(loads[i], times[i], displacements[i] - displacements[0]));
        }
        if (greatest <= loads[0] * (1 + ONE_STEP)) {
            throw table.refused(
                    0,
                    "load",
                    table.texts("load").get(0),
                    "an alignment load that a later row rises above");
        }
        return new StressingRecord(readings);
    }

    private static void check(
            CsvTable table,
            double[] loads,
            double[] times,
            double[] displacements,
            int i,
            double greatest) {
        if (!(loads[i] > 0)) {
            throw table.refused(i, "load", table.texts("load").get(i), "more than 0");
        }
        if (!(times[i] >= 0)) {
            throw table.refused(i, "time", table.texts("time").get(i), "at least 0");
        }
        if (loads[i] < loads[0] * (1 - ONE_STEP)) {
            throw table.refused(
                    i,
                    "load",
                    table.texts("load").get(i),
                    "at least the alignment load of the first row");
        }
        if (i == 0) {
            return;
        }
        boolean same = Math.abs(loads[i] - loads[i - 1]) <= ONE_STEP * greatest;
        if (same && !(times[i] > times[i - 1])) {
            throw table.refused(
                    i,
                    "time",
                    table.texts("time").get(i),
                    "more than the one before in the same load step");
        }
        if (loads[i] > loads[i - 1] && displacements[i] < displacements[i - 1] - 1e-3) {
            throw table.refused(
                    i,
                    "displacement",
                    table.texts("displacement").get(i),
                    "not less than the one before by more than 1 mm while the load rises");
        }
    }

    /**
     * Gives the alignment load.
     *
     * @return force of the first reading, N
     */
    public double alignmentLoad() {
        return readings.get(0).force();
    }

    /**
     * Gives the greatest load.
     *
     * @return force, N
     */
    public double testLoad() {
        return readings.stream().mapToDouble(Reading::force).max().orElse(0);
    }

    /**
     * Gives the readings of the last hold at the greatest load.
     *
     * @return readings, by ascending time
     */
    public List<Reading> hold() {
        double greatest = testLoad();
        List<Reading> hold = new ArrayList<>();
        for (Reading reading : readings) {
            if (reading.force() >= greatest * (1 - ONE_STEP)) {
                if (!hold.isEmpty() && reading.time() <= hold.get(hold.size() - 1).time()) {
                    hold.clear();
                }
                hold.add(reading);
            }
        }
        return List.copyOf(hold);
    }

    /**
     * Gives the displacement in the hold at a time, a straight line in the logarithm of time between
     * readings.
     *
     * @param time time, s, greater than 0, from the first to the last reading above 0 in the hold
     * @return displacement, m
     * @throws IllegalArgumentException if the hold has no readings around that time
     */
    public double heldDisplacement(double time) {
        Require.positive("time in the hold", time, "s");
        List<Reading> hold = hold().stream().filter(reading -> reading.time() > 0).toList();
        for (int i = 0; i < hold.size(); i++) {
            Reading b = hold.get(i);
            if (Math.abs(b.time() - time) <= 1e-9 * time) {
                return b.displacement();
            }
            if (i > 0 && hold.get(i - 1).time() < time && time < b.time()) {
                Reading a = hold.get(i - 1);
                double part = StrictMath.log(time / a.time()) / StrictMath.log(b.time() / a.time());
                return a.displacement() + part * (b.displacement() - a.displacement());
            }
        }
        throw new IllegalArgumentException(
                "time in the hold is "
                        + time
                        + " s; allowed is from "
                        + (hold.isEmpty() ? "none" : hold.get(0).time() + " s")
                        + " to "
                        + (hold.isEmpty() ? "none" : hold.get(hold.size() - 1).time() + " s")
                        + ", where the hold was read.");
    }

    /** Whether the hold was read around a time. */
    boolean heldAt(double time) {
        List<Reading> hold = hold().stream().filter(reading -> reading.time() > 0).toList();
        return !hold.isEmpty()
                && hold.get(0).time() <= time * (1 + 1e-9)
                && hold.get(hold.size() - 1).time() >= time * (1 - 1e-9);
    }

    /**
     * Gives the displacement that stays when the load goes back to the alignment load after the
     * greatest load.
     *
     * @return displacement, m; NaN where the record does not go back, so that nobody takes all that
     *     was read for elastic
     */
    public double residual() {
        double greatest = testLoad();
        boolean passed = false;
        double residual = Double.NaN;
        for (Reading reading : readings) {
            passed |= reading.force() >= greatest * (1 - ONE_STEP);
            if (passed && reading.force() <= alignmentLoad() + ONE_STEP * greatest) {
                residual = reading.displacement();
            }
        }
        return residual;
    }

    /**
     * Gives the elastic displacement from the alignment to the greatest load: that at the first
     * reading of the hold, less what stays.
     *
     * @return displacement, m; NaN where the record does not go back
     */
    public double elastic() {
        return hold().get(0).displacement() - residual();
    }
}
