package org.skewback.rock;

import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;
import org.skewback.quantity.Quantity;

/**
 * A water pressure test in a borehole section, in stages of rising and falling pressure, with the
 * Lugeon value of each stage and what their pattern says.
 *
 * <p>One Lugeon is a take of 1 litre a minute and metre of hole at 1 MPa, {@code Lu = q/L · 1
 * MPa/p}. Patterns: alike in all stages, laminar flow (the mean counts); least at the greatest
 * pressure and back again, turbulent flow (the value at the greatest pressure counts); greatest at
 * the greatest pressure and back again, joints widened for as long as it lasts (the least counts);
 * rising to the end, fines washed out (the last counts); falling to the end, joints filling (the
 * last counts). Stages count as alike within {@value #ALIKE_PERCENT} % of their mean.
 *
 * <p>Source: A. C. Houlsby, Routine interpretation of the Lugeon water-test, Quarterly Journal of
 * Engineering Geology 9 (1976); the limit for "alike" is our own.
 *
 * @param length length of the section, m
 * @param stages the stages in order
 */
public record LugeonTest(double length, List<Stage> stages) {

    /** Stages count as alike within this part of their mean, %. */
    public static final int ALIKE_PERCENT = 15;

    private static final double ALIKE = ALIKE_PERCENT / 100.0;

    /**
     * One stage.
     *
     * @param pressure effective pressure in the section, Pa
     * @param flow take of water, m³/s
     */
    public record Stage(double pressure, double flow) {

        /**
         * Makes a stage.
         *
         * @param pressure effective pressure in the section, Pa, greater than 0
         * @param flow take of water, m³/s, at least 0
         * @throws IllegalArgumentException if a value is outside
         */
        public Stage {
            Require.positive("test pressure", pressure, "Pa");
            Require.notNegative("take of water", flow, "m³/s");
        }
    }

    /** What the stages say. */
    public enum Pattern {
        /** Alike in all stages. */
        LAMINAR,
        /** Least at the greatest pressure. */
        TURBULENT,
        /** Greatest at the greatest pressure. */
        DILATION,
        /** Rising to the end. */
        WASH_OUT,
        /** Falling to the end. */
        VOID_FILLING,
        /** None of them: the test is to be looked at, or done again. */
        UNCLEAR
    }

    /**
     * Makes a test.
     *
     * @param length length of the section, m, greater than 0
     * @param stages the stages in order, at least 3, the greatest pressure neither first nor last
     * @throws IllegalArgumentException if a value is outside
     */
    public LugeonTest {
        Require.positive("length of the test section", length, "m");
        stages = List.copyOf(stages);
        Require.atLeast("number of stages", stages.size(), 3);
        int peak = peak(stages);
        if (peak == 0 || peak == stages.size() - 1) {
            throw new IllegalArgumentException(
                    "The greatest pressure is in stage "
                            + (peak + 1)
                            + " of "
                            + stages.size()
                            + "; allowed is one between the first and the last.");
        }
    }

    private static int peak(List<Stage> stages) {
        int peak = 0;
        for (int i = 1; i < stages.size(); i++) {
            if (stages.get(i).pressure() > stages.get(peak).pressure()) {
                peak = i;
            }
        }
        return peak;
    }

    /**
     * Reads a test from a table.
     *
     * @param table the table, with columns {@code pressure} and {@code flow}, one stage a row
     * @param length length of the section, m, greater than 0
     * @return the test
     * @throws TableException if a column is missing, of the wrong dimension, or holds a pressure that
     *     is not positive or a flow that is negative; or if the stages are no test
     * @throws IllegalArgumentException if the length is not positive
     */
    public static LugeonTest of(CsvTable table, double length) {
        Require.positive("length of the test section", length, "m");
        double[] pressures = table.numbers("pressure", "Pa");
        double[] flows = table.numbers("flow", "m³/s");
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < pressures.length; i++) {
            if (!(pressures[i] > 0)) {
                throw table.refused(i, "pressure", table.texts("pressure").get(i), "more than 0");
            }
            if (!(flows[i] >= 0)) {
                throw table.refused(i, "flow", table.texts("flow").get(i), "at least 0");
            }
            stages.add(new Stage(pressures[i], flows[i]));
        }
        try {
            return new LugeonTest(length, stages);
        } catch (IllegalArgumentException e) {
            throw new TableException(table.name() + ": " + e.getMessage(), e);
        }
    }

    /**
     * Gives the Lugeon value of a stage.
     *
     * @param stage index of the stage, from 0
     * @return the value, Lu
     * @throws IndexOutOfBoundsException if there is no such stage
     */
    public double value(int stage) {
        Stage s = stages.get(stage);
        return s.flow() * 60_000 / length * (1e6 / s.pressure());
    }

    private List<Double> values() {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            values.add(value(i));
        }
        return values;
    }

    /**
     * Says what the pattern of the stages is.
     *
     * @return the pattern
     */
    public Pattern pattern() {
        List<Double> values = values();
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double slack = ALIKE * mean;
        double first = values.get(0);
        double last = values.get(values.size() - 1);
        double top = values.get(peak(stages));
        if (values.stream().allMatch(value -> Math.abs(value - mean) <= slack)) {
            return Pattern.LAMINAR;
        }
        boolean back = Math.abs(last - first) <= slack;
        if (back) {
            double ends = (first + last) / 2;
            return top < ends - slack
                    ? Pattern.TURBULENT
                    : top > ends + slack ? Pattern.DILATION : Pattern.UNCLEAR;
        }
        return monotone(values, slack, last > first)
                ? last > first ? Pattern.WASH_OUT : Pattern.VOID_FILLING
                : Pattern.UNCLEAR;
    }

    private static boolean monotone(List<Double> values, double slack, boolean rising) {
        for (int i = 1; i < values.size(); i++) {
            double step = values.get(i) - values.get(i - 1);
            if ((rising ? step : -step) < -slack) {
                return false;
            }
        }
        return true;
    }

    /**
     * Gives the value that counts, by the pattern.
     *
     * @return the value, Lu; of an unclear test the greatest, to be on the safe side
     */
    public double representative() {
        List<Double> values = values();
        return switch (pattern()) {
            case LAMINAR -> values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
            case TURBULENT -> values.get(peak(stages));
            case DILATION -> values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
            case WASH_OUT, VOID_FILLING -> values.get(values.size() - 1);
            case UNCLEAR -> values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        };
    }

    /**
     * Gives a Lugeon value in closed form, {@code q/(L p)} in litres a minute, metre and MPa.
     *
     * @param flow take of water, q, at least 0
     * @param length length of the section, L, more than 0
     * @param pressure effective pressure, p, more than 0
     * @return the value, Lu, a plain number
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity value(Quantity flow, Quantity length, Quantity pressure) {
        Require.notNegative("take of water", flow, "l/min");
        Require.positive("length of the test section", length, "m");
        Require.positive("test pressure", pressure, "MPa");
        return flow.over(length)
                .over(Quantity.of(1, "l/min").over(Quantity.of(1, "m")))
                .times(Quantity.of(1, "MPa").over(pressure));
    }

    /**
     * Gives the conductivity from radial flow, {@code k = Q ln(L/r)/(2 π L H)}.
     *
     * @param flow take of water, Q, more than 0
     * @param length length of the section, L, more than 0
     * @param radius radius of the hole, r, more than 0, less than L
     * @param head pressure as a head of water, H, more than 0
     * @return the conductivity
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity conductivity(
            Quantity flow, Quantity length, Quantity radius, Quantity head) {
        checkHole(flow, length, radius, head);
        return flow.times(length.over(radius).ln()).over(length.times(head).times(2 * Math.PI));
    }

    /**
     * Gives the conductivity by Moye, {@code k = Q (1 + ln(L/(2 r)))/(2 π L H)}.
     *
     * <p>Source: D. G. Moye, Diamond drilling for foundation exploration (1967) (from memory).
     *
     * @param flow take of water, Q, more than 0
     * @param length length of the section, L, more than 0
     * @param radius radius of the hole, r, more than 0, less than L
     * @param head pressure as a head of water, H, more than 0
     * @return the conductivity
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity conductivityByMoye(
            Quantity flow, Quantity length, Quantity radius, Quantity head) {
        checkHole(flow, length, radius, head);
        return flow.times(length.over(radius.times(2)).ln().plus(1))
                .over(length.times(head).times(2 * Math.PI));
    }

    private static void checkHole(Quantity flow, Quantity length, Quantity radius, Quantity head) {
        Require.positive("take of water", flow, "l/min");
        Require.positive("length of the test section", length, "m");
        Require.positive("radius of the hole", radius, "m");
        Require.positive("length less radius", length.minus(radius), "m");
        Require.positive("head of water", head, "m");
    }
}
