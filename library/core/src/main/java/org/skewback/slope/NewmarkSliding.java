package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;
import org.skewback.quantity.Quantity;

/**
 * How far a rigid block slides in an earthquake once the ground's acceleration passes its yield
 * acceleration.
 *
 * <p>Between records the acceleration is a straight line, so that the speed is a parabola and the
 * path a cubic: the steps are exact for the record as read, and start and stop of sliding are found
 * as roots. Sliding is one way, down the slope. It stops when ground and block have one speed.
 *
 * <p>Source: N. M. Newmark, Effects of earthquakes on dams and embankments, Géotechnique 15 (1965).
 *
 * @param displacement displacement at the end, m
 * @param slidingTime time during which the block slides, s
 * @param end time at which the block last comes to rest, s, or the last of the record; 0 if it never
 *     slides
 * @param moving whether the block still slides when the record ends, so that the displacement is too
 *     small
 * @param path displacement at each time of the record, m
 */
public record NewmarkSliding(
        double displacement, double slidingTime, double end, boolean moving, List<Double> path) {

    /**
     * Copies the path.
     *
     * @param displacement displacement at the end, m
     * @param slidingTime time during which the block slides, s
     * @param end time at which the block last comes to rest, s
     * @param moving whether the block still slides when the record ends
     * @param path displacement at each time of the record, m
     */
    public NewmarkSliding {
        path = List.copyOf(path);
    }

    /**
     * Runs a record.
     *
     * @param times times, s, ascending, at least two
     * @param accelerations acceleration of the ground along the slide, m/s², one for each time,
     *     positive in the direction that drives the block: the block's inertia, downhill
     * @param yield yield acceleration, m/s², greater than 0
     * @return the sliding
     * @throws IllegalArgumentException if the lists differ in length, are too short, hold a value
     *     that is not finite or times that do not ascend, or the yield acceleration is not positive
     */
    public static NewmarkSliding of(List<Double> times, List<Double> accelerations, double yield) {
        Require.positive("yield acceleration", yield, "m/s²");
        Require.atLeast("number of records", times.size(), 2);
        if (accelerations.size() != times.size()) {
            throw new IllegalArgumentException(
                    "number of accelerations is "
                            + accelerations.size()
                            + "; allowed is one for each of "
                            + times.size()
                            + " times.");
        }
        Block block = new Block();
        List<Double> path = new ArrayList<>();
        path.add(0.0);
        for (int i = 0; i + 1 < times.size(); i++) {
            double step = times.get(i + 1) - times.get(i);
            Require.positive("step of time after record " + (i + 1), step, "s");
            double a = Require.finite("acceleration", accelerations.get(i), "m/s²") - yield;
            double b = Require.finite("acceleration", accelerations.get(i + 1), "m/s²") - yield;
            block.move(times.get(i), step, a, b);
            path.add(block.path);
        }
        return new NewmarkSliding(block.path, block.time, block.end, block.speed > 0, path);
    }

    /**
     * Runs a record from a table.
     *
     * @param table the table, with columns {@code time} and {@code acceleration}, the latter in
     *     m/s² or with a unit of it
     * @param yield yield acceleration, m/s², greater than 0
     * @return the sliding
     * @throws TableException if a column is missing, of the wrong dimension, holds what is no finite
     *     number, or times do not ascend
     * @throws IllegalArgumentException if there are fewer than two records, or the yield
     *     acceleration is not positive
     */
    public static NewmarkSliding of(CsvTable table, double yield) {
        double[] times = table.ascending("time", "s");
        double[] accelerations = table.numbers("acceleration", "m/s²");
        return of(boxed(times), boxed(accelerations), yield);
    }

    private static List<Double> boxed(double[] values) {
        List<Double> list = new ArrayList<>();
        for (double value : values) {
            list.add(value);
        }
        return list;
    }

    /** The block on its way; a and b are accelerations beyond the yield at both ends of a step. */
    private static final class Block {

        private double path;
        private double speed;
        private double time;
        private double end;

        void move(double start, double step, double a, double b) {
            double at = 0;
            double slope = (b - a) / step;
            while (at < step) {
                double now = a + slope * at;
                if (speed <= 0) {
                    at = begin(at, now, slope, step);
                    now = a + slope * at;
                    if (at >= step) {
                        return;
                    }
                }
                double left = step - at;
                double stop = rest(now, slope, left);
                double taken = Math.min(stop, left);
                path += taken * (speed + taken * (now / 2 + taken * slope / 6));
                speed = stop <= left ? 0 : speed + taken * (now + taken * slope / 2);
                time += taken;
                at += taken;
                end = start + at;
                if (stop > left) {
                    return;
                }
            }
        }

        /** When sliding begins: at once, where the acceleration crosses the yield, or not at all. */
        private static double begin(double at, double now, double slope, double step) {
            if (now > 0 || (now == 0 && slope > 0)) {
                return at;
            }
            if (slope <= 0) {
                return step;
            }
            return Math.min(step, at - now / slope);
        }

        /** Time until the speed is nothing again, or infinity: a root of v + a t + s t²/2. */
        private double rest(double now, double slope, double left) {
            if (speed + left * (now + left * slope / 2) > 0
                    && (slope <= 0 || now >= 0 || turning(now, slope) > 0)) {
                return Double.POSITIVE_INFINITY;
            }
            double discriminant = now * now - 2 * slope * speed;
            if (discriminant < 0) {
                return Double.POSITIVE_INFINITY;
            }
            double root = Math.sqrt(discriminant);
            // The first root after the start, in the form without cancellation for each sign.
            double first;
            if (now < 0) {
                first = 2 * speed / (-now + root);
            } else {
                first = slope < 0 ? (-now - root) / slope : Double.POSITIVE_INFINITY;
            }
            return first > left ? Double.POSITIVE_INFINITY : first;
        }

        /** The least speed in a step where the acceleration rises. */
        private double turning(double now, double slope) {
            return speed - now * now / (2 * slope);
        }
    }

    /**
     * Gives how far a block slides under one rectangular pulse, {@code D = ½ (A − k_y) g T² A/k_y}.
     *
     * @param pulse acceleration of the pulse, A g, more than the yield, m/s²
     * @param duration duration of the pulse, T, s, greater than 0
     * @param yield yield acceleration, k_y g, m/s², greater than 0
     * @return the displacement, m
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity rectangularPulse(Quantity pulse, Quantity duration, Quantity yield) {
        Require.positive("yield acceleration", yield, "m/s²");
        Require.positive("duration of the pulse", duration, "s");
        Require.positive("acceleration beyond the yield", pulse.minus(yield), "m/s²");
        return pulse.minus(yield).times(duration.squared()).over(2).times(pulse.over(yield));
    }
}
