package org.skewback.study;

import java.util.List;
import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/**
 * How the values of an uncertain given spread.
 *
 * <p>Immutable. Formulas are those of the textbooks of statistics: A. H.-S. Ang, W. H. Tang,
 * Probability Concepts in Engineering, chapter 3 (from memory); Φ is the standard normal
 * distribution.
 *
 * <pre>{@code
 * Distribution cohesion = Distribution.normal(Quantity.of(25, "kPa"), Quantity.of(5, "kPa"));
 * cohesion.inverse(0.05);                            // 16.78 kPa
 * }</pre>
 */
public final class Distribution {

    /** A cut normal distribution must keep this share, else its tail is all that is left. */
    private static final double LEAST_SHARE = 1e-9;

    private static final String NORMAL = "normal";
    private static final String LOGNORMAL = "lognormal";
    private static final String TRUNCATED_NORMAL = "truncated normal";
    private static final String UNIFORM = "uniform";
    private static final String TRIANGULAR = "triangular";
    private static final String TRUNCATED_EXPONENTIAL = "truncated exponential";
    private static final String GUMBEL = "Gumbel";
    private static final String DETERMINISTIC = "deterministic";

    private final String name;
    private final Unit unit;
    private final Quantity pattern;
    private final Shape shape;
    private final List<Quantity> parameters;

    private Distribution(String name, Quantity pattern, Shape shape, Quantity... parameters) {
        this.parameters = List.of(parameters);
        this.name = name;
        this.pattern = pattern;
        this.unit = pattern.unit();
        this.shape = shape;
    }

    /**
     * Gives the normal distribution.
     *
     * @param mean mean
     * @param standardDeviation standard deviation, of the same dimension, more than 0; in kelvin
     *     where the mean is in °C
     * @return F(x) = Φ((x − mean)/standard deviation)
     * @throws IllegalArgumentException when the standard deviation is not positive
     * @throws DimensionException when the dimensions differ
     */
    public static Distribution normal(Quantity mean, Quantity standardDeviation) {
        return new Distribution(
                NORMAL,
                mean,
                new Shape.Normal(mean.si(), spread(mean, standardDeviation)),
                mean,
                standardDeviation);
    }

    /**
     * Gives the lognormal distribution, of values that are never negative.
     *
     * <p>ln x is normal with the standard deviation ζ = √ln(1 + V²) and the mean ln(mean) − ζ²/2.
     *
     * @param mean mean, more than 0
     * @param variation coefficient of variation V = standard deviation/mean, a plain number, more
     *     than 0
     * @return F(x) = Φ((ln x − ln mean + ζ²/2)/ζ)
     * @throws IllegalArgumentException when the mean or the coefficient of variation is not
     *     positive, or the mean is a reading in °C
     * @throws DimensionException when the coefficient of variation is no plain number
     */
    public static Distribution lognormal(Quantity mean, Quantity variation) {
        Require.sameDimension(
                "coefficient of variation", variation, "the plain number", Quantity.of(1));
        double v = Require.positiveDifference("coefficient of variation", variation);
        if (mean.unit().isReading()) {
            throw Require.refused("mean of a lognormal distribution", mean, "no reading in °C");
        }
        if (!(mean.si() > 0)) {
            throw Require.refused("mean of a lognormal distribution", mean, "more than 0");
        }
        double zetaSquared = StrictMath.log1p(v * v);
        return new Distribution(
                LOGNORMAL,
                mean,
                new Shape.Lognormal(
                        StrictMath.log(mean.si()) - zetaSquared / 2, Math.sqrt(zetaSquared)),
                mean,
                variation);
    }

    /**
     * Gives the normal distribution cut to a range.
     *
     * @param mean mean before the cut
     * @param standardDeviation standard deviation before the cut, more than 0
     * @param low least value
     * @param high greatest value, more than the least; between the two there must be at least
     *     10⁻⁹ of the distribution before the cut
     * @return F(x) = (Φ(z) − Φ(z_low))/(Φ(z_high) − Φ(z_low)) with z = (x − mean)/standard
     *     deviation
     * @throws IllegalArgumentException when the standard deviation is not positive, the range is
     *     empty or holds next to nothing
     * @throws DimensionException when the dimensions differ
     */
    public static Distribution truncatedNormal(
            Quantity mean, Quantity standardDeviation, Quantity low, Quantity high) {
        double spread = spread(mean, standardDeviation);
        Require.sameDimension("least value", low, "the mean,", mean);
        Require.sameKind("least value", low, mean);
        requireRange(low, high);
        Shape.TruncatedNormal shape =
                new Shape.TruncatedNormal(mean.si(), spread, low.si(), high.si());
        if (!(shape.share() >= LEAST_SHARE)) {
            throw Require.refused(
                    "share of the normal distribution from " + low + " to " + high,
                    shape.share(),
                    "at least " + LEAST_SHARE);
        }
        return new Distribution(TRUNCATED_NORMAL, mean, shape, mean, standardDeviation, low, high);
    }

    /**
     * Gives the uniform distribution.
     *
     * @param low least value
     * @param high greatest value, more than the least
     * @return F(x) = (x − low)/(high − low)
     * @throws IllegalArgumentException when the range is empty
     * @throws DimensionException when the dimensions differ
     */
    public static Distribution uniform(Quantity low, Quantity high) {
        requireRange(low, high);
        return new Distribution(UNIFORM, low, new Shape.Uniform(low.si(), high.si()), low, high);
    }

    /**
     * Gives the triangular distribution.
     *
     * @param low least value
     * @param peak most likely value, from the least to the greatest
     * @param high greatest value, more than the least
     * @return the distribution whose density rises straight from low to peak and falls straight to
     *     high
     * @throws IllegalArgumentException when the range is empty or the peak outside
     * @throws DimensionException when the dimensions differ
     */
    public static Distribution triangular(Quantity low, Quantity peak, Quantity high) {
        requireRange(low, high);
        Require.sameDimension("most likely value", peak, "the least value,", low);
        Require.sameKind("most likely value", peak, low);
        if (!(peak.si() >= low.si() && peak.si() <= high.si())) {
            throw Require.refused("most likely value", peak, "from " + low + " to " + high);
        }
        return new Distribution(
                TRIANGULAR,
                peak,
                new Shape.Triangular(low.si(), peak.si(), high.si()),
                low,
                peak,
                high);
    }

    /**
     * Gives the exponential distribution cut to a range.
     *
     * <p>The parameter is the mean that the distribution would have, measured from the lower limit,
     * without the upper limit. It is not the mean: cut to a range of twice the parameter, the mean
     * is 0.687 of it. Some texts print the parameter as "mean".
     *
     * @param parameter parameter m, more than 0
     * @param low least value, where the density is greatest
     * @param high greatest value, more than the least
     * @return F(x) = (1 − e^(−(x − low)/m))/(1 − e^(−(high − low)/m)); its mean is low + m − (high −
     *     low)/(e^((high − low)/m) − 1)
     * @throws IllegalArgumentException when the parameter is not positive or the range is empty
     * @throws DimensionException when the dimensions differ
     */
    public static Distribution truncatedExponential(
            Quantity parameter, Quantity low, Quantity high) {
        requireRange(low, high);
        Require.sameDimension("parameter", parameter, "the least value,", low);
        double m = Require.positiveDifference("parameter", parameter);
        return new Distribution(
                TRUNCATED_EXPONENTIAL,
                low,
                new Shape.TruncatedExponential(m, low.si(), high.si()),
                parameter,
                low,
                high);
    }

    /**
     * Gives the distribution of the largest of many values, after Gumbel (type I).
     *
     * <p>Its scale is b = standard deviation · √6/π, its most likely value u = mean − 0.57722 b.
     *
     * @param mean mean
     * @param standardDeviation standard deviation, of the same dimension, more than 0
     * @return F(x) = exp(−exp(−(x − u)/b))
     * @throws IllegalArgumentException when the standard deviation is not positive
     * @throws DimensionException when the dimensions differ
     */
    public static Distribution gumbel(Quantity mean, Quantity standardDeviation) {
        double scale = spread(mean, standardDeviation) * Math.sqrt(6) / Math.PI;
        return new Distribution(
                GUMBEL,
                mean,
                new Shape.Gumbel(mean.si() - Shape.EULER * scale, scale),
                mean,
                standardDeviation);
    }

    /**
     * Gives the distribution of a value that is always the same.
     *
     * @param value the value
     * @return the distribution without spread
     */
    public static Distribution deterministic(Quantity value) {
        return new Distribution(DETERMINISTIC, value, new Shape.Fixed(value.si()), value);
    }

    /**
     * Gives the name.
     *
     * @return such as {@code truncated normal}
     */
    public String name() {
        return name;
    }

    /**
     * Gives the mean; for distributions cut to a range, the mean after the cut.
     *
     * @return the mean, in the unit of the first parameter
     */
    public Quantity mean() {
        return Require.quantity(shape.mean(), unit);
    }

    /**
     * Gives the standard deviation; for distributions cut to a range, that after the cut.
     *
     * @return the standard deviation, at least 0; in kelvin where the mean is in °C
     */
    public Quantity standardDeviation() {
        return Require.quantity(shape.deviation(), Require.ofDifferences(unit));
    }

    /**
     * Gives the value below which a share of all values lies: the inverse of the cumulative
     * distribution.
     *
     * @param probability share, more than 0 and less than 1
     * @return the value
     * @throws IllegalArgumentException when the probability is outside
     */
    public Quantity inverse(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw Require.refused("probability", probability, "more than 0 and less than 1");
        }
        return Require.quantity(shape.inverse(probability, 1 - probability), unit);
    }

    /**
     * Gives the share of all values that lie below one: the cumulative distribution.
     *
     * @param value a value of the same dimension
     * @return F(value), from 0 to 1
     * @throws DimensionException when the dimension is another
     */
    public double cumulative(Quantity value) {
        Require.sameDimension("value", value, "the distribution's", pattern);
        return shape.below(value.si());
    }

    /**
     * Gives the parameters from which it was made.
     *
     * @return the quantities in the order in which the method of its name takes them
     */
    public List<Quantity> parameters() {
        return parameters;
    }

    /** How many parameters a distribution of a name has. */
    static int parametersOf(String name) {
        return switch (name) {
            case NORMAL, LOGNORMAL, UNIFORM, GUMBEL -> 2;
            case TRIANGULAR, TRUNCATED_EXPONENTIAL -> 3;
            case TRUNCATED_NORMAL -> 4;
            case DETERMINISTIC -> 1;
            default -> throw Require.refused("name of a distribution", name, "one that there is");
        };
    }

    /** Makes the distribution of a name again from as many parameters as it has. */
    static Distribution named(String name, List<Quantity> from) {
        return switch (name) {
            case NORMAL -> normal(from.get(0), from.get(1));
            case LOGNORMAL -> lognormal(from.get(0), from.get(1));
            case UNIFORM -> uniform(from.get(0), from.get(1));
            case GUMBEL -> gumbel(from.get(0), from.get(1));
            case TRIANGULAR -> triangular(from.get(0), from.get(1), from.get(2));
            case TRUNCATED_EXPONENTIAL ->
                    truncatedExponential(from.get(0), from.get(1), from.get(2));
            case TRUNCATED_NORMAL ->
                    truncatedNormal(from.get(0), from.get(1), from.get(2), from.get(3));
            case DETERMINISTIC -> deterministic(from.get(0));
            default -> throw Require.refused("name of a distribution", name, "one that there is");
        };
    }

    Shape shape() {
        return shape;
    }

    Quantity pattern() {
        return pattern;
    }

    boolean isFixed() {
        return shape instanceof Shape.Fixed;
    }

    private static double spread(Quantity mean, Quantity standardDeviation) {
        Require.sameDimension("standard deviation", standardDeviation, "the mean,", mean);
        return Require.positiveDifference("standard deviation", standardDeviation);
    }

    private static void requireRange(Quantity low, Quantity high) {
        Require.sameDimension("greatest value", high, "the least value,", low);
        Require.sameKind("greatest value", high, low);
        if (!(low.si() < high.si())) {
            throw Require.refused("greatest value", high, "more than the least value, " + low);
        }
    }

    /**
     * Writes the name, the mean and the standard deviation.
     *
     * @return such as {@code normal, mean 25 kPa, standard deviation 5 kPa}
     */
    @Override
    public String toString() {
        String mean = Words.of(mean());
        return isFixed()
                ? name + ", " + mean
                : name + ", mean " + mean + ", standard deviation " + Words.of(standardDeviation());
    }
}
