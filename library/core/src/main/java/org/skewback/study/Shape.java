package org.skewback.study;

/** A distribution of plain doubles in SI base units; parameters are checked by whoever makes it. */
sealed interface Shape {

    /** Euler's constant. */
    double EULER = 0.5772156649015329;

    double mean();

    double deviation();

    /** The value below which the share p lies, from both p and q = 1 − p. */
    double inverse(double p, double q);

    double below(double x);

    double density(double x);

    /** The value that stands where z stands in the standard normal distribution. */
    default double ofNormal(double z) {
        return inverse(StandardNormal.below(z), StandardNormal.below(-z));
    }

    /** Derivative of {@link #ofNormal}: φ(z)/f(x). */
    default double slopeOfNormal(double z, double x) {
        return StandardNormal.density(z) / density(x);
    }

    /** Draws independent values. */
    default void fill(Draws draws, double[] values, int count) {
        for (int i = 0; i < count; i++) {
            double p = draws.uniform();
            values[i] = inverse(p, 1 - p);
        }
    }

    /** One value, always. */
    record Fixed(double mean) implements Shape {
        @Override
        public double deviation() {
            return 0;
        }

        @Override
        public double inverse(double p, double q) {
            return mean;
        }

        @Override
        public double below(double x) {
            return x < mean ? 0 : 1;
        }

        @Override
        public double density(double x) {
            return x == mean ? Double.POSITIVE_INFINITY : 0;
        }

        @Override
        public double ofNormal(double z) {
            return mean;
        }

        @Override
        public double slopeOfNormal(double z, double x) {
            return 0;
        }

        @Override
        public void fill(Draws draws, double[] values, int count) {
            for (int i = 0; i < count; i++) {
                values[i] = mean;
            }
        }
    }

    /** Normal. */
    record Normal(double mean, double deviation) implements Shape {
        @Override
        public double inverse(double p, double q) {
            return ofNormal(StandardNormal.inverse(p, q));
        }

        @Override
        public double below(double x) {
            return StandardNormal.below((x - mean) / deviation);
        }

        @Override
        public double density(double x) {
            return StandardNormal.density((x - mean) / deviation) / deviation;
        }

        @Override
        public double ofNormal(double z) {
            return mean + deviation * z;
        }

        @Override
        public double slopeOfNormal(double z, double x) {
            return deviation;
        }

        @Override
        public void fill(Draws draws, double[] values, int count) {
            for (int i = 0; i < count; i++) {
                values[i] = mean + deviation * draws.normal();
            }
        }
    }

    /** Normal logarithm with this mean and deviation. */
    record Lognormal(double logMean, double logDeviation) implements Shape {
        @Override
        public double mean() {
            return StrictMath.exp(logMean + 0.5 * logDeviation * logDeviation);
        }

        @Override
        public double deviation() {
            return mean() * variation();
        }

        /** Coefficient of variation. */
        double variation() {
            return Math.sqrt(StrictMath.expm1(logDeviation * logDeviation));
        }

        @Override
        public double inverse(double p, double q) {
            return ofNormal(StandardNormal.inverse(p, q));
        }

        @Override
        public double below(double x) {
            return x <= 0 ? 0 : StandardNormal.below(standard(x));
        }

        @Override
        public double density(double x) {
            return x <= 0 ? 0 : StandardNormal.density(standard(x)) / (logDeviation * x);
        }

        private double standard(double x) {
            return (StrictMath.log(x) - logMean) / logDeviation;
        }

        @Override
        public double ofNormal(double z) {
            return StrictMath.exp(logMean + logDeviation * z);
        }

        @Override
        public double slopeOfNormal(double z, double x) {
            return logDeviation * x;
        }

        @Override
        public void fill(Draws draws, double[] values, int count) {
            for (int i = 0; i < count; i++) {
                values[i] = ofNormal(draws.normal());
            }
        }
    }

    /** Normal with this middle and spread before it was cut to a range. */
    record TruncatedNormal(double middle, double spread, double low, double high) implements Shape {

        /** Share within the range from which drawing and refusing is faster than inverting. */
        private static final double WORTH_DRAWING = 0.25;

        private double from() {
            return (low - middle) / spread;
        }

        private double to() {
            return (high - middle) / spread;
        }

        /** Share of the whole normal distribution that lies within the range. */
        double share() {
            return from() > 0
                    ? StandardNormal.below(-from()) - StandardNormal.below(-to())
                    : StandardNormal.below(to()) - StandardNormal.below(from());
        }

        private double lean() {
            return (StandardNormal.density(from()) - StandardNormal.density(to())) / share();
        }

        @Override
        public double mean() {
            return middle + spread * lean();
        }

        @Override
        public double deviation() {
            double ends =
                    (from() * StandardNormal.density(from()) - to() * StandardNormal.density(to()))
                            / share();
            return spread * Math.sqrt(1 + ends - lean() * lean());
        }

        @Override
        public double inverse(double p, double q) {
            double share = share();
            double z =
                    StandardNormal.inverse(
                            StandardNormal.below(from()) + p * share,
                            StandardNormal.below(-to()) + q * share);
            return Math.min(high, Math.max(low, middle + spread * z));
        }

        @Override
        public double below(double x) {
            if (x <= low || x >= high) {
                return x <= low ? 0 : 1;
            }
            return new TruncatedNormal(middle, spread, low, x).share() / share();
        }

        @Override
        public double density(double x) {
            return x < low || x > high
                    ? 0
                    : StandardNormal.density((x - middle) / spread) / (spread * share());
        }

        @Override
        public void fill(Draws draws, double[] values, int count) {
            if (share() < WORTH_DRAWING) {
                Shape.super.fill(draws, values, count);
                return;
            }
            for (int i = 0; i < count; i++) {
                double x;
                do {
                    x = middle + spread * draws.normal();
                } while (x < low || x > high);
                values[i] = x;
            }
        }
    }

    /** Even between two limits. */
    record Uniform(double low, double high) implements Shape {
        @Override
        public double mean() {
            return low + 0.5 * (high - low);
        }

        @Override
        public double deviation() {
            return (high - low) / Math.sqrt(12);
        }

        @Override
        public double inverse(double p, double q) {
            return p <= q ? low + p * (high - low) : high - q * (high - low);
        }

        @Override
        public double below(double x) {
            return Math.min(1, Math.max(0, (x - low) / (high - low)));
        }

        @Override
        public double density(double x) {
            return x < low || x > high ? 0 : 1 / (high - low);
        }
    }

    /** Density that rises straight to the peak and falls straight from it. */
    record Triangular(double low, double peak, double high) implements Shape {
        @Override
        public double mean() {
            return low + ((peak - low) + (high - low)) / 3;
        }

        @Override
        public double deviation() {
            double width = high - low;
            double rise = peak - low;
            return Math.sqrt((width * width - width * rise + rise * rise) / 18);
        }

        @Override
        public double inverse(double p, double q) {
            double width = high - low;
            return p * width <= peak - low
                    ? low + Math.sqrt(p * width * (peak - low))
                    : high - Math.sqrt(q * width * (high - peak));
        }

        @Override
        public double below(double x) {
            if (x <= low || x >= high) {
                return x <= low ? 0 : 1;
            }
            return x < peak
                    ? (x - low) * (x - low) / ((high - low) * (peak - low))
                    : 1 - (high - x) * (high - x) / ((high - low) * (high - peak));
        }

        @Override
        public double density(double x) {
            if (x < low || x > high) {
                return 0;
            }
            double top = 2 / (high - low);
            if (x == peak) {
                return top;
            }
            return x < peak ? top * (x - low) / (peak - low) : top * (high - x) / (high - peak);
        }
    }

    /** Exponential from the lower limit, cut at the upper. */
    record TruncatedExponential(double parameter, double low, double high) implements Shape {

        /** Range over parameter below which differences are taken from a series. */
        private static final double SHORT = 0.1;

        private double range() {
            return (high - low) / parameter;
        }

        @Override
        public double mean() {
            double w = range();
            if (w < SHORT) {
                double cubed = w * w * w;
                return low + (high - low) * (0.5 - w / 12 + cubed / 720 - cubed * w * w / 30240);
            }
            return low + parameter - (high - low) / StrictMath.expm1(w);
        }

        @Override
        public double deviation() {
            double half = range() / 2;
            if (range() < SHORT) {
                double h = half * half;
                return parameter * Math.sqrt(h * (1.0 / 3 - h / 15 + 2 * h * h / 189));
            }
            double ratio = half / StrictMath.sinh(half);
            return parameter * Math.sqrt(1 - ratio * ratio);
        }

        @Override
        public double inverse(double p, double q) {
            double log =
                    p <= q
                            ? StrictMath.log1p(p * StrictMath.expm1(-range()))
                            : StrictMath.log(
                                    StrictMath.exp(-range()) - q * StrictMath.expm1(-range()));
            return Math.min(high, Math.max(low, low - parameter * log));
        }

        @Override
        public double below(double x) {
            if (x <= low || x >= high) {
                return x <= low ? 0 : 1;
            }
            return StrictMath.expm1(-(x - low) / parameter) / StrictMath.expm1(-range());
        }

        @Override
        public double density(double x) {
            return x < low || x > high
                    ? 0
                    : -StrictMath.exp(-(x - low) / parameter)
                            / (parameter * StrictMath.expm1(-range()));
        }
    }

    /** Largest of many, with its most likely value and its scale. */
    record Gumbel(double peak, double scale) implements Shape {
        @Override
        public double mean() {
            return peak + EULER * scale;
        }

        @Override
        public double deviation() {
            return Math.PI * scale / Math.sqrt(6);
        }

        @Override
        public double inverse(double p, double q) {
            double minusLog = p <= q ? -StrictMath.log(p) : -StrictMath.log1p(-q);
            return peak - scale * StrictMath.log(minusLog);
        }

        @Override
        public double below(double x) {
            return StrictMath.exp(-StrictMath.exp(-(x - peak) / scale));
        }

        @Override
        public double density(double x) {
            double e = StrictMath.exp(-(x - peak) / scale);
            return Double.isInfinite(e) ? 0 : e * StrictMath.exp(-e) / scale;
        }
    }
}
