package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.skewback.anchor.AcceptanceTest;
import org.skewback.anchor.Monitoring;
import org.skewback.anchor.StressingRecord;
import org.skewback.rock.BlastVibration;
import org.skewback.sheet.Figure;

/**
 * Charts of what is measured on slopes and anchors: stressing, readings over years, vibration.
 *
 * <p>Each is described in words from its own numbers.
 */
public final class GroundCharts {

    private GroundCharts() {}

    /**
     * Charts a stressing record: load over displacement, with the lines of the least and greatest
     * elastic free length between which the elastic part must lie.
     *
     * @param title the figure's title, one line
     * @param record the record
     * @param anchor the anchor it belongs to
     * @return the figure: displacement in mm, load in kN
     */
    public static Figure stressing(
            String title, StressingRecord record, AcceptanceTest.Anchor anchor) {
        int count = record.readings().size();
        double[] moved = new double[count];
        double[] load = new double[count];
        for (int i = 0; i < count; i++) {
            moved[i] = 1000 * record.readings().get(i).displacement();
            load[i] = record.readings().get(i).force() / 1000;
        }
        double from = record.alignmentLoad();
        double to = record.testLoad();
        double outside = anchor.outside();
        double least = 0.8 * anchor.freeLength() + outside;
        double greatest =
                outside
                        + Math.max(
                                1.1 * anchor.freeLength(),
                                anchor.freeLength() + anchor.bondLength() / 2);
        double[] ends = {from / 1000, to / 1000};
        return Chart.titled(title)
                .describedBy(
                        "Load against displacement while the anchor was stressed from "
                                + Numbers.shortest(from / 1000, 0)
                                + " to "
                                + Numbers.shortest(to / 1000, 0)
                                + " kN. "
                                + parts(record)
                                + " Two straight lines show the elastic displacement of the"
                                + " shortest and longest free length allowed.")
                .x("displacement of the head", "mm")
                .y("load", "kN")
                .line("read", moved, load, LineStyle.FIRST)
                .line(
                        "shortest free length",
                        new double[] {0, 1000 * least * (to - from) / anchor.stiffness()},
                        ends,
                        LineStyle.HIDDEN)
                .line(
                        "longest free length",
                        new double[] {0, 1000 * greatest * (to - from) / anchor.stiffness()},
                        ends,
                        LineStyle.SECOND)
                .yRange(0, 1.12 * to / 1000)
                .figure();
    }

    /**
     * Charts the creep of anchors held at their greatest load, over the logarithm of time.
     *
     * @param title the figure's title, one line
     * @param names names of the anchors
     * @param records their records, one for each name, at most four
     * @return the figure: time in min, displacement since the first reading of the hold in mm
     * @throws IllegalArgumentException if the numbers of names and records differ, or a hold has
     *     fewer than two readings after its beginning
     */
    public static Figure creep(String title, List<String> names, List<StressingRecord> records) {
        if (names.size() != records.size()) {
            throw new IllegalArgumentException(
                    "there are "
                            + names.size()
                            + " names and "
                            + records.size()
                            + " records; there must be one for each");
        }
        List<String> said = new ArrayList<>();
        Chart chart =
                Chart.titled(title)
                        .x("time at the greatest load", "min")
                        .y("displacement since the first reading", "mm")
                        .logarithmicX();
        for (int k = 0; k < names.size(); k++) {
            List<StressingRecord.Reading> hold =
                    records.get(k).hold().stream().filter(r -> r.time() > 0).toList();
            Check.atLeast("hold of " + names.get(k), hold.size(), 2);
            double first = hold.get(0).displacement();
            double[] time = hold.stream().mapToDouble(r -> r.time() / 60).toArray();
            double[] crept =
                    hold.stream().mapToDouble(r -> 1000 * (r.displacement() - first)).toArray();
            chart.line(names.get(k), time, crept);
            said.add(
                    names.get(k)
                            + " crept "
                            + Numbers.shortest(crept[crept.length - 1], 2)
                            + " mm until "
                            + Numbers.shortest(time[time.length - 1], 0)
                            + " min");
        }
        return chart.describedBy(
                        "Creep over the logarithm of time: " + String.join("; ", said) + ".")
                .figure();
    }

    /**
     * Charts readings over years against alarm levels.
     *
     * @param title the figure's title, one line
     * @param quantity what is read
     * @param unit its unit as printed
     * @param perUnit SI value of one of that unit, positive
     * @param instruments the instruments with their readings, at most four
     * @param alarm levels in SI; infinite ones are not drawn
     * @return the figure: years across
     * @throws IllegalArgumentException if there is no instrument, more than four, or the unit's value
     *     is not positive
     */
    public static Figure monitoring(
            String title,
            String quantity,
            String unit,
            double perUnit,
            List<Monitoring> instruments,
            Monitoring.Alarm alarm) {
        Check.positive("SI value of the unit", perUnit);
        Check.atLeast("instruments", instruments.size(), 1);
        List<String> said = new ArrayList<>();
        Chart chart = Chart.titled(title).dates("year").y(quantity, unit);
        for (Monitoring instrument : instruments) {
            double[] year =
                    instrument.readings().stream().mapToDouble(r -> Ticks.year(r.date())).toArray();
            double[] value =
                    instrument.readings().stream().mapToDouble(r -> r.value() / perUnit).toArray();
            chart.line(instrument.instrument(), year, value);
            said.add(
                    instrument.instrument()
                            + " is "
                            + Numbers.shortest(value[value.length - 1], 1)
                            + " "
                            + unit
                            + " at the end, at worst "
                            + instrument.worst(alarm).name().toLowerCase(Locale.ROOT));
        }
        limit(chart, "red below", alarm.redBelow() / perUnit);
        limit(chart, "amber below", alarm.amberBelow() / perUnit);
        limit(chart, "amber above", alarm.amberAbove() / perUnit);
        limit(chart, "red above", alarm.redAbove() / perUnit);
        return chart.describedBy("Readings over years: " + String.join("; ", said) + ".").figure();
    }

    private static void limit(Chart chart, String name, double value) {
        if (Double.isFinite(value)) {
            chart.limit(name, value);
        }
    }

    /**
     * Charts recorded vibration over scaled distance on logarithmic axes, with the line fitted and
     * the limit that one more record passes rarely.
     *
     * @param title the figure's title, one line
     * @param records the records
     * @param fit the line fitted to them
     * @param confidence probability that one more record stays below the upper line, from 0.5 to
     *     0.999
     * @return the figure: scaled distance in m/√kg, peak particle velocity in mm/s
     */
    public static Figure vibration(
            String title,
            List<BlastVibration.Shot> records,
            BlastVibration fit,
            double confidence) {
        double[] scaled = new double[records.size()];
        double[] speed = new double[records.size()];
        for (int i = 0; i < scaled.length; i++) {
            BlastVibration.Shot shot = records.get(i);
            scaled[i] = shot.distance() / Math.sqrt(shot.charge());
            speed[i] = 1000 * shot.speed();
        }
        int parts = 24;
        double[] at = new double[parts + 1];
        double[] mean = new double[parts + 1];
        double[] upper = new double[parts + 1];
        for (int i = 0; i <= parts; i++) {
            at[i] = fit.least() * StrictMath.pow(fit.greatest() / fit.least(), (double) i / parts);
            mean[i] = 1000 * fit.mean(at[i], 1);
            upper[i] = 1000 * fit.limit(at[i], 1, confidence);
        }
        String percent = Numbers.shortest(100 * confidence, 1) + " %";
        return Chart.titled(title)
                .describedBy(
                        records.size()
                                + " records of peak particle velocity over scaled distance, both"
                                + " axes logarithmic. The line fitted falls with the exponent "
                                + Numbers.shortest(fit.exponent(), 2)
                                + "; a second line above it is the one below which one more record"
                                + " stays with "
                                + percent
                                + ".")
                .x("scaled distance", "m/\u221akg")
                .y("peak particle velocity", "mm/s")
                .logarithmicX()
                .logarithmicY()
                .points("records", scaled, speed)
                .line("mean", at, mean)
                .line(percent + " stay below", at, upper)
                .figure();
    }

    private static String parts(StressingRecord record) {
        if (Double.isNaN(record.residual())) {
            return "The load was not taken back, so that what stays was not read.";
        }
        return "The elastic part is "
                + Numbers.shortest(1000 * record.elastic(), 1)
                + " mm, what stays "
                + Numbers.shortest(1000 * record.residual(), 1)
                + " mm.";
    }
}
