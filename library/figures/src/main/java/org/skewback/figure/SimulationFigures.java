package org.skewback.figure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Figure;
import org.skewback.study.Histogram;
import org.skewback.study.Progress;
import org.skewback.study.Simulation;

/** Draws what a simulation found: how the results spread, and how mean and probability settled. */
public final class SimulationFigures {

    private static final double MM = BarPlot.MM;
    private static final double WIDTH = 165 * MM;
    private static final double EDGE = 5 * MM;
    private static final double TOP = 12 * MM;
    private static final double BOTTOM = 66 * MM;

    /** Samples from which the axis counts thousands. */
    private static final long MANY = 20_000;

    private SimulationFigures() {}

    /**
     * Draws the histogram of the demand, with its mean, and with the limits of the check where they
     * are fixed. Classes of which a part fails are dark.
     *
     * @param title the figure's title, one line
     * @param simulation the simulation
     * @return the figure; equal areas are equal shares of the samples
     * @throws IllegalArgumentException if the title is blank or the unit has a character that the
     *     figure font lacks
     */
    public static Figure histogram(String title, Simulation simulation) {
        return new DrawnFigure(histogramPicture(title, simulation));
    }

    static Picture histogramPicture(String title, Simulation simulation) {
        Histogram classes = simulation.histogram();
        Quantity demand = simulation.check().demand();
        Unit unit = demand.unit();
        double low = classes.low().in(unit.symbol());
        double width = classes.width().si() / unit.factor();
        int count = classes.counts().size();
        double high = low + count * width;
        double[] limits =
                simulation.fixedLimits().stream()
                        .mapToDouble(limit -> unit.fromSi(limit.si()))
                        .toArray();
        double from = low;
        double to = high;
        for (double limit : limits) {
            // A limit far off would squeeze the bars; it is then told in words alone.
            if (limit > low - (high - low) && limit < high + (high - low)) {
                from = Math.min(from, limit - 2 * width);
                to = Math.max(to, limit + 2 * width);
            }
        }
        String symbol = demand.symbol() == null ? "demand" : String.valueOf(demand.symbol());
        BarPlot plot =
                new BarPlot(
                        new double[] {from, to},
                        EDGE,
                        WIDTH - EDGE,
                        TOP,
                        BOTTOM,
                        unit.symbol().isEmpty() ? symbol : symbol + " (" + unit.symbol() + ")");
        long most = classes.counts().stream().mapToLong(Long::longValue).max().orElse(1);
        for (int i = 0; i < count; i++) {
            long here = classes.counts().get(i);
            if (here > 0) {
                double start = low + i * width;
                double top = BOTTOM - (BOTTOM - TOP - 3 * MM) * here / most;
                plot.bar(
                        start,
                        start + width,
                        top,
                        BOTTOM,
                        fails(simulation, limits, start, start + width) ? Ink.RUST : Ink.STEEL);
            }
        }
        double mean = unit.fromSi(simulation.mean().si());
        upright(plot, "mean " + Numerals.result(mean), mean, TOP - 1.5 * MM, LineStyle.CENTRE);
        double level = TOP - 1.5 * MM - 1.3 * Board.SMALL;
        for (double limit : limits) {
            if (limit >= from && limit <= to) {
                upright(plot, "limit " + Numerals.result(limit), limit, level, LineStyle.LIMIT);
            }
        }
        return new Picture(
                title, description(simulation), WIDTH, BarPlot.pageBelow(BOTTOM), plot.marks());
    }

    private static void upright(
            BarPlot plot, String name, double value, double y, LineStyle style) {
        plot.upright(value, y + 0.3 * Board.SMALL, style.pen());
        double half = BarPlot.width(name) / 2;
        double x = Math.min(WIDTH - EDGE - half, Math.max(EDGE + half, plot.x(value)));
        plot.words(name, x, y, Mark.Anchor.MIDDLE);
    }

    /** Whether a class reaches beyond a limit on the side that fails. */
    private static boolean fails(Simulation simulation, double[] limits, double start, double end) {
        if (limits.length == 0 || limits.length < simulation.check().limits().size()) {
            return false;
        }
        boolean below = simulation.check().least() != null && start < limits[0];
        boolean above = simulation.check().most() != null && end > limits[limits.length - 1];
        return below || above;
    }

    private static String description(Simulation simulation) {
        Unit unit = simulation.check().demand().unit();
        StringBuilder text = new StringBuilder("Histogram of ");
        text.append(Numerals.result((double) simulation.sampling().samples()))
                .append(" samples of the check \"")
                .append(simulation.check().title())
                .append("\": mean ")
                .append(Tornado.amount(simulation.mean().si(), unit))
                .append(", standard deviation ")
                .append(
                        Tornado.amount(
                                simulation.standardDeviation().si(),
                                simulation.standardDeviation().unit()))
                .append(". ")
                .append(Numerals.result((double) simulation.failures()))
                .append(" failed.");
        Histogram classes = simulation.histogram();
        if (classes.below() + classes.above() > 0) {
            text.append(' ')
                    .append(Numerals.result((double) (classes.below() + classes.above())))
                    .append(" lie beyond the classes drawn.");
        }
        return text.toString();
    }

    /**
     * Draws how the mean of the demand settled, between two standard errors more and less.
     *
     * @param title the figure's title, one line
     * @param simulation the simulation, of more than one block of samples
     * @return the figure
     * @throws IllegalArgumentException if the title is blank, or the simulation has one block of
     *     samples only, in which nothing settles
     */
    public static Figure convergenceOfMean(String title, Simulation simulation) {
        Unit unit = simulation.check().demand().unit();
        return convergence(
                title,
                simulation,
                "mean",
                unit.symbol().isEmpty() ? "1" : unit.symbol(),
                p -> unit.fromSi(p.mean().si()),
                p -> p.meanError().si() / unit.factor());
    }

    /**
     * Draws how the probability of failure settled, between two standard errors more and less.
     *
     * @param title the figure's title, one line
     * @param simulation the simulation, of more than one block of samples
     * @return the figure
     * @throws IllegalArgumentException if the title is blank, or the simulation has one block of
     *     samples only, in which nothing settles
     */
    public static Figure convergenceOfProbability(String title, Simulation simulation) {
        return convergence(
                title,
                simulation,
                "probability of failure",
                "1",
                Progress::probability,
                Progress::probabilityError);
    }

    private static Figure convergence(
            String title,
            Simulation simulation,
            String what,
            String unit,
            ToDoubleFunction<Progress> value,
            ToDoubleFunction<Progress> error) {
        List<Progress> steps = simulation.convergence();
        if (steps.size() < 2) {
            throw new IllegalArgumentException(
                    "figure \""
                            + title
                            + "\": the simulation reported "
                            + steps.size()
                            + " time, with "
                            + simulation.sampling().samples()
                            + " samples; there must be at least two reports, so draw more samples");
        }
        boolean many = simulation.sampling().samples() >= MANY;
        double[] x = steps.stream().mapToDouble(p -> p.samples() / (many ? 1000.0 : 1)).toArray();
        double[] middle = steps.stream().mapToDouble(value).toArray();
        double[] above = new double[middle.length];
        double[] below = new double[middle.length];
        for (int i = 0; i < middle.length; i++) {
            double two = 2 * error.applyAsDouble(steps.get(i));
            above[i] = middle[i] + two;
            below[i] = middle[i] - two;
        }
        int last = middle.length - 1;
        return Chart.titled(title)
                .describedBy(
                        "The "
                                + what
                                + " after more and more samples: it begins at "
                                + Numerals.result(middle[0])
                                + " and ends at "
                                + Numerals.result(middle[last])
                                + ", with a standard error of "
                                + Numerals.result(error.applyAsDouble(steps.get(last)))
                                + ".")
                .x(many ? "thousands of samples" : "samples", "1")
                .y(what, unit)
                .line("two errors more", x, above, LineStyle.HIDDEN)
                .line("running value", x, middle, LineStyle.FIRST)
                .line("two errors less", x, below, LineStyle.THIN)
                .figure();
    }
}
