package org.skewback.frame;

/**
 * What a train does to one response while it passes.
 *
 * @param largest largest value, at least 0 (no train)
 * @param largestAt station of the first axle then, m
 * @param smallest smallest value, at most 0 (no train)
 * @param smallestAt station of the first axle then, m
 */
public record Passage(double largest, double largestAt, double smallest, double smallestAt) {

    /**
     * Moves a train over an influence line: in steps, and with each axle on each peak of the line,
     * where the extremes are if the line is straight between peaks.
     *
     * @param line the influence line of a weight
     * @param train the train; it travels toward larger stations
     * @param step distance between positions, m, greater than 0
     * @return the extremes
     * @throws IllegalArgumentException if the step is not greater than 0
     */
    public static Passage of(InfluenceLine line, LoadTrain train, double step) {
        Require.positive("step of a train", step, "m");
        Best best = new Best();
        double end = line.lane().length() + train.length();
        int count = (int) Math.ceil(end / step);
        for (int i = 0; i <= count; i++) {
            double at = Math.min(end, i * step);
            best.offer(at, response(line, train, at));
        }
        for (InfluenceLine.Peak peak : line.peaks()) {
            for (LoadTrain.Axle axle : train.axles()) {
                double at = peak.station() + axle.behind();
                best.offer(at, response(line, train, at));
            }
        }
        return new Passage(best.largest, best.largestAt, best.smallest, best.smallestAt);
    }

    /**
     * Gives the response to a train at one place.
     *
     * @param line the influence line of a weight
     * @param train the train
     * @param firstAxle station of its first axle, m
     * @return Σ influence · force over the axles on the lane
     */
    public static double response(InfluenceLine line, LoadTrain train, double firstAxle) {
        double sum = 0;
        for (LoadTrain.Axle axle : train.axles()) {
            sum += axle.force() * line.value(firstAxle - axle.behind());
        }
        return sum;
    }

    private static final class Best {
        private double largest;
        private double largestAt;
        private double smallest;
        private double smallestAt;

        void offer(double at, double value) {
            if (value > largest) {
                largest = value;
                largestAt = at;
            }
            if (value < smallest) {
                smallest = value;
                smallestAt = at;
            }
        }
    }
}
