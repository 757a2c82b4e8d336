package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Member;
import org.skewback.frame.Passage;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Figure;

/**
 * Charts of loads that move over a frame: influence lines, what a train does while it passes, and
 * envelopes along a way.
 */
public final class FrameCharts {

    private static final int SAMPLES = 240;
    private static final int HALVINGS = 20;

    /** Of a line's range, what between two samples is more may be a jump. */
    private static final double STEEP = 0.1;

    private FrameCharts() {}

    /**
     * Draws an influence line: what a force of 1 kN at a station does to a response.
     *
     * @param title the figure's title, one line
     * @param response what the response is called, such as M_y at the crown
     * @param unit unit of the response under 1 kN, such as kN·m or mm
     * @param line the line
     * @return the figure
     * @throws IllegalArgumentException if a text is blank, the unit is unknown or the line is 0
     */
    public static Figure influence(String title, String response, String unit, InfluenceLine line) {
        return influenceChart(title, response, unit, line).figure();
    }

    static Chart influenceChart(String title, String response, String unit, InfluenceLine line) {
        Unit shown = Quantity.of(1, unit).unit();
        List<double[]> points = sampled(line);
        double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
        double[] y = points.stream().mapToDouble(p -> shown.fromSi(1000 * p[1])).toArray();
        InfluenceLine.Peak high = line.largest();
        InfluenceLine.Peak low = line.smallest();
        return Chart.titled(title)
                .describedBy(
                        "Influence line of "
                                + response
                                + " for a force of 1 kN on "
                                + line.lane().name()
                                + ". Largest value "
                                + Tornado.amount(1000 * high.value(), shown)
                                + " with the force at "
                                + Numbers.shortest(high.station(), 2)
                                + " m; smallest value "
                                + Tornado.amount(1000 * low.value(), shown)
                                + " with the force at "
                                + Numbers.shortest(low.station(), 2)
                                + " m.")
                .x("station of the force on " + line.lane().name(), "m")
                .y(response + " under 1 kN", unit)
                .line(response, x, y);
    }

    /** Samples, closer together where the line jumps, so that a jump is drawn upright. */
    private static List<double[]> sampled(InfluenceLine line) {
        double length = line.lane().length();
        double range = line.largest().value() - line.smallest().value();
        List<double[]> points = new ArrayList<>();
        double before = line.value(0);
        points.add(new double[] {0, before});
        for (int i = 1; i <= SAMPLES; i++) {
            double x = i == SAMPLES ? length : length * i / SAMPLES;
            double value = line.value(x);
            double from = points.get(points.size() - 1)[0];
            if (Math.abs(value - before) > STEEP * range) {
                jump(line, from, x, range, points);
            }
            points.add(new double[] {x, value});
            before = value;
        }
        return points;
    }

    private static void jump(
            InfluenceLine line, double from, double to, double range, List<double[]> points) {
        double a = from;
        double b = to;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (a + b) / 2;
            double value = line.value(middle);
            if (Math.abs(value - line.value(a)) > Math.abs(line.value(b) - value)) {
                b = middle;
            } else {
                a = middle;
            }
        }
        if (Math.abs(line.value(b) - line.value(a)) > STEEP * range) {
            if (a > from) {
                points.add(new double[] {a, line.value(a)});
            }
            if (b < to) {
                points.add(new double[] {b, line.value(b)});
            }
        }
    }

    /**
     * Draws what a train does to a response while it passes, against the place of its first axle.
     *
     * @param title the figure's title, one line
     * @param response what the response is called
     * @param unit unit of the response, such as kN·m or mm
     * @param line influence line of a weight for the response
     * @param trains the trains, 1 to 4; each travels toward larger stations
     * @return the figure
     * @throws IllegalArgumentException if a text is blank, the unit is unknown, or the trains are too
     *     few or too many
     */
    public static Figure passage(
            String title, String response, String unit, InfluenceLine line, LoadTrain... trains) {
        return passageChart(title, response, unit, line, trains).figure();
    }

    static Chart passageChart(
            String title, String response, String unit, InfluenceLine line, LoadTrain... trains) {
        DeflectedShape.requireCount("trains", trains.length);
        Unit shown = Quantity.of(1, unit).unit();
        Chart chart =
                Chart.titled(title)
                        .x("station of the first axle on " + line.lane().name(), "m")
                        .y(response, unit);
        StringBuilder text = new StringBuilder(response + " while a train passes.");
        for (LoadTrain train : trains) {
            double end = line.lane().length() + train.length();
            double[] x = new double[2 * SAMPLES + 1];
            double[] y = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                x[i] = end * i / (2 * SAMPLES);
                y[i] = shown.fromSi(Passage.response(line, train, x[i]));
            }
            chart.line(train.name(), x, y);
            Passage passage = Passage.of(line, train, end / (2 * SAMPLES));
            text.append(' ')
                    .append(train.name())
                    .append(": from ")
                    .append(Tornado.amount(passage.smallest(), shown))
                    .append(" to ")
                    .append(Tornado.amount(passage.largest(), shown))
                    .append('.');
        }
        return chart.describedBy(text.toString());
    }

    /**
     * Draws an envelope along members that join one to the next, such as a deck under a train.
     *
     * @param title the figure's title, one line
     * @param model the model that the envelope is of
     * @param members the members in order, at least one, all in the envelope
     * @param component the force
     * @param envelope the envelope
     * @return the figure
     * @throws IllegalArgumentException if the title is blank, a member is not in the envelope, or two
     *     do not join
     */
    public static Figure envelope(
            String title,
            FrameModel model,
            List<String> members,
            ForceComponent component,
            Envelope envelope) {
        return envelopeChart(title, model, members, component, envelope).figure();
    }

    static Chart envelopeChart(
            String title,
            FrameModel model,
            List<String> members,
            ForceComponent component,
            Envelope envelope) {
        Check.atLeast("way along members", members.size(), 1);
        List<double[]> points = new ArrayList<>();
        double from = 0;
        for (int i = 0; i < members.size(); i++) {
            String name = members.get(i);
            boolean backward = backward(model, members, i);
            double[] stations = envelope.stations(name);
            double length = stations[stations.length - 1];
            for (int k = 0; k < stations.length; k++) {
                int at = backward ? stations.length - 1 - k : k;
                points.add(
                        new double[] {
                            from + (backward ? length - stations[at] : stations[at]),
                            envelope.largest(name, at, component).value(),
                            envelope.smallest(name, at, component).value()
                        });
            }
            from += length;
        }
        double most =
                points.stream()
                        .mapToDouble(p -> Math.max(Math.abs(p[1]), Math.abs(p[2])))
                        .max()
                        .orElse(0);
        ForceUnit unit = ForceUnit.of(component, most);
        double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
        double high = points.stream().mapToDouble(p -> p[1]).max().orElse(0);
        double low = points.stream().mapToDouble(p -> p[2]).min().orElse(0);
        return Chart.titled(title)
                .describedBy(
                        "Envelope of "
                                + component.symbol()
                                + " along "
                                + FrameFigure.count(members.size(), "member")
                                + ", from "
                                + unit.written(low)
                                + " to "
                                + unit.written(high)
                                + ".")
                .x("distance from the start of " + members.get(0), "m")
                .y(component.symbol(), unit.symbol())
                .line("largest", x, points.stream().mapToDouble(p -> p[1] / unit.si()).toArray())
                .line("smallest", x, points.stream().mapToDouble(p -> p[2] / unit.si()).toArray());
    }

    /** Whether the way runs from a member's end to its start. */
    private static boolean backward(FrameModel model, List<String> members, int i) {
        if (members.size() == 1) {
            return false;
        }
        Member member = model.member(members.get(i));
        Member near = model.member(members.get(i == 0 ? 1 : i - 1));
        boolean atStart = touches(near, member.start());
        boolean atEnd = touches(near, member.end());
        if (!atStart && !atEnd) {
            throw new IllegalArgumentException(
                    "members "
                            + near.name()
                            + " and "
                            + member.name()
                            + " do not join; they must have a common node");
        }
        return i == 0 ? atStart && !atEnd : atEnd && !atStart;
    }

    private static boolean touches(Member member, String node) {
        return member.start().equals(node) || member.end().equals(node);
    }
}
