package org.skewback.train;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.data.CsvTable;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Passage;

/**
 * A train as a load: axles, stretches of line load that travel with them, and a line load of any length
 * and in any number of parts outside a gap about the axles.
 *
 * <p>So are load model 71 (four axles, and a line load outside them wherever it is adverse), SW/0 (two
 * stretches) and the unloaded train (a line load alone) of EN 1991-2:2003, 6.3, and real trains (axles
 * alone).
 *
 * @param name what it is called
 * @param axles the axles; may be empty
 * @param stretches line loads of fixed length that travel with the axles; may be empty
 * @param elsewhere line load wherever it is adverse, N/m, at least 0
 * @param gapFrom begin of the gap that this line load leaves, behind the first axle, m
 * @param gapTo end of the gap, m, at least {@code gapFrom}
 */
public record TrainLoad(
        String name,
        List<LoadTrain.Axle> axles,
        List<Stretch> stretches,
        double elsewhere,
        double gapFrom,
        double gapTo) {

    /**
     * A line load that travels with the train.
     *
     * @param from where it begins behind the first axle, m, at least 0
     * @param to where it ends behind the first axle, m, greater than {@code from}
     * @param intensity load per length, N/m, at least 0
     */
    public record Stretch(double from, double to, double intensity) {

        /**
         * Checks the numbers.
         *
         * @param from where it begins, m
         * @param to where it ends, m
         * @param intensity load per length, N/m
         * @throws IllegalArgumentException if one is out of range
         */
        public Stretch {
            Require.notNegative("begin of a stretch of line load", from, "m");
            Require.notNegative("length of a stretch of line load", to - from, "m");
            Require.notNegative("line load of a stretch", intensity, "N/m");
        }
    }

    /**
     * Checks the numbers.
     *
     * @param name what it is called
     * @param axles the axles
     * @param stretches line loads of fixed length
     * @param elsewhere line load wherever it is adverse, N/m
     * @param gapFrom begin of the gap, m
     * @param gapTo end of the gap, m
     * @throws IllegalArgumentException if there is no load at all, or a number is out of range
     */
    public TrainLoad {
        axles = List.copyOf(axles);
        stretches = List.copyOf(stretches);
        Require.notNegative("line load elsewhere of " + name, elsewhere, "N/m");
        Require.notNegative("length of the gap of " + name, gapTo - gapFrom, "m");
        if (axles.isEmpty() && stretches.isEmpty() && elsewhere == 0) {
            throw new IllegalArgumentException(
                    "number of loads of train " + name + " is 0; allowed is at least 1.");
        }
    }

    /**
     * Reads trains from a table with the columns {@code train}, {@code part} (axle, stretch or elsewhere), {@code
     * from} and {@code to} (behind the first axle; for {@code elsewhere} the gap), {@code force} (of an axle) and
     * {@code line} (load per length). An axle stands at {@code from}.
     *
     * @param table the table
     * @return the trains by name, in the order of the table
     * @throws IllegalArgumentException if a column is missing, a field cannot be read or is out of range
     */
    public static Map<String, TrainLoad> read(CsvTable table) {
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        List<String> names = table.texts("train");
        for (int i = 0; i < names.size(); i++) {
            rows.computeIfAbsent(names.get(i), fresh -> new ArrayList<>()).add(i);
        }
        double[] from = table.numbers("from", "m");
        double[] to = table.numbers("to", "m");
        double[] force = table.numbers("force", "N");
        double[] line = table.numbers("line", "N/m");
        Map<String, TrainLoad> trains = new LinkedHashMap<>();
        rows.forEach(
                (name, own) -> {
                    List<LoadTrain.Axle> axles = new ArrayList<>();
                    List<Stretch> stretches = new ArrayList<>();
                    double elsewhere = 0;
                    double gapFrom = 0;
                    double gapTo = 0;
                    for (int i : own) {
                        String part = table.texts("part").get(i);
                        switch (part) {
                            case "axle" -> axles.add(new LoadTrain.Axle(from[i], force[i]));
                            case "stretch" -> stretches.add(new Stretch(from[i], to[i], line[i]));
                            case "elsewhere" -> {
                                elsewhere = line[i];
                                gapFrom = from[i];
                                gapTo = to[i];
                            }
                            default ->
                                    throw table.refused(
                                            i, "part", part, "axle, stretch or elsewhere");
                        }
                    }
                    trains.put(
                            name, new TrainLoad(name, axles, stretches, elsewhere, gapFrom, gapTo));
                });
        return trains;
    }

    /**
     * Gives the train with all its loads times a factor, such as that of the line's classification.
     *
     * @param factor the factor, greater than 0
     * @return the train
     * @throws IllegalArgumentException if the factor is not greater than 0
     */
    public TrainLoad times(double factor) {
        if (!(factor > 0 && factor < Double.POSITIVE_INFINITY)) {
            throw Require.refused(
                    "factor of train " + name, factor, "", "a finite number greater than 0");
        }
        return new TrainLoad(
                name,
                axles.stream()
                        .map(a -> new LoadTrain.Axle(a.behind(), factor * a.force()))
                        .toList(),
                stretches.stream()
                        .map(s -> new Stretch(s.from(), s.to(), factor * s.intensity()))
                        .toList(),
                factor * elsewhere,
                gapFrom,
                gapTo);
    }

    /**
     * Gives the length over which the train has loads that travel together.
     *
     * @return distance from the first axle to the last load, m
     */
    public double length() {
        double length = axles.stream().mapToDouble(LoadTrain.Axle::behind).max().orElse(0);
        return Math.max(length, stretches.stream().mapToDouble(Stretch::to).max().orElse(0));
    }

    /**
     * Moves the train over an influence line, in steps and with each axle on each end and peak of the line: the
     * axles and stretches that travel together, and elsewhere the line load wherever it is adverse. Where there
     * is such a line load, axles that help are left out (up to four axles, EN 1991-2, 6.8.1, from memory); the
     * axles of a real train, and stretches, count one and all.
     *
     * <p>The train is passed as it is and turned round.
     *
     * @param line influence line of a weight
     * @param step distance between positions, m, greater than 0
     * @return the extremes, no train included; stations are those of the first axle, or of the last where the
     *     train turned round governs
     * @throws IllegalArgumentException if the step is not greater than 0
     */
    public Passage over(InfluenceLine line, double step) {
        if (!(step > 0)) {
            throw Require.refused("step of train " + name, step, "m", "greater than 0");
        }
        Passage ahead = passage(line, step);
        Passage back = reversed().passage(line, step);
        boolean high = back.largest() > ahead.largest();
        boolean low = back.smallest() < ahead.smallest();
        return new Passage(
                high ? back.largest() : ahead.largest(),
                high ? back.largestAt() : ahead.largestAt(),
                low ? back.smallest() : ahead.smallest(),
                low ? back.smallestAt() : ahead.smallestAt());
    }

    private TrainLoad reversed() {
        double length = length();
        List<LoadTrain.Axle> turned = new ArrayList<>();
        axles.forEach(a -> turned.add(new LoadTrain.Axle(length - a.behind(), a.force())));
        return new TrainLoad(
                name + " reversed",
                turned,
                stretches.stream()
                        .map(s -> new Stretch(length - s.to(), length - s.from(), s.intensity()))
                        .toList(),
                elsewhere,
                length - gapTo,
                length - gapFrom);
    }

    private Passage passage(InfluenceLine line, double step) {
        double end = line.lane().length() + length();
        double everywhereUp = elsewhere == 0 ? 0 : line.positiveArea();
        double everywhereDown = elsewhere == 0 ? 0 : line.negativeArea();
        double largest = 0;
        double largestAt = 0;
        double smallest = 0;
        double smallestAt = 0;
        for (double at : positions(line, step, end)) {
            double whole = 0;
            double up = 0;
            double down = 0;
            for (LoadTrain.Axle axle : axles) {
                double effect = axle.force() * line.value(at - axle.behind());
                whole += effect;
                up += Math.max(0, effect);
                down += Math.min(0, effect);
            }
            if (elsewhere == 0) {
                up = whole;
                down = whole;
            }
            for (Stretch stretch : stretches) {
                double effect =
                        stretch.intensity() * line.area(at - stretch.to(), at - stretch.from());
                up += effect;
                down += effect;
            }
            if (elsewhere > 0) {
                double from = at - gapTo;
                double to = at - gapFrom;
                up += elsewhere * (everywhereUp - line.positiveArea(from, to));
                down += elsewhere * (everywhereDown - line.negativeArea(from, to));
            }
            if (up > largest) {
                largest = up;
                largestAt = at;
            }
            if (down < smallest) {
                smallest = down;
                smallestAt = at;
            }
        }
        return new Passage(largest, largestAt, smallest, smallestAt);
    }

    private double[] positions(InfluenceLine line, double step, double end) {
        List<Double> all = new ArrayList<>();
        int count = (int) Math.ceil(end / step);
        for (int i = 0; i <= count; i++) {
            all.add(Math.min(end, i * step));
        }
        for (double peak : new double[] {line.largest().station(), line.smallest().station()}) {
            for (LoadTrain.Axle axle : axles) {
                all.add(peak + axle.behind());
            }
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Gives the train as forces alone, so that a frame can pass it over all its members: each line load is cut
     * into pieces whose forces stand in their middles. The line load elsewhere follows the head of the train
     * over a given length, gap included.
     *
     * @param piece longest piece, m, greater than 0
     * @param length length of the whole train behind its head, m, at least that of its fixed part
     * @return the train
     * @throws IllegalArgumentException if a length is out of range
     */
    public LoadTrain asForces(double piece, double length) {
        if (!(piece > 0)) {
            throw Require.refused("longest piece of train " + name, piece, "m", "greater than 0");
        }
        if (!(length >= length())) {
            throw Require.refused(
                    "length of train " + name, length, "m", "at least " + length() + " m");
        }
        List<LoadTrain.Axle> forces = new ArrayList<>(axles);
        for (Stretch stretch : stretches) {
            cut(stretch, piece, forces);
        }
        if (elsewhere > 0) {
            if (gapFrom > 0) {
                cut(new Stretch(0, gapFrom, elsewhere), piece, forces);
            }
            if (length > gapTo) {
                cut(new Stretch(Math.max(0, gapTo), length, elsewhere), piece, forces);
            }
        }
        forces.sort((a, b) -> Double.compare(a.behind(), b.behind()));
        return new LoadTrain(name, forces);
    }

    private static void cut(Stretch stretch, double piece, List<LoadTrain.Axle> forces) {
        double length = stretch.to() - stretch.from();
        int count = (int) Math.ceil(length / piece - 1e-9);
        for (int i = 0; i < count; i++) {
            forces.add(
                    new LoadTrain.Axle(
                            stretch.from() + length * (i + 0.5) / count,
                            stretch.intensity() * length / count));
        }
    }
}
