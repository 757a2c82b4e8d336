package org.skewback.study;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;

/**
 * Which givens are uncertain, how each spreads, and which go together.
 *
 * <p>Immutable; each method gives another. Givens are told apart by identity, so each must be the
 * very node on which the calculation rests.
 *
 * <pre>{@code
 * Uncertainty ground = Uncertainty.none()
 *         .with(c, Distribution.normal(Quantity.of(25, "kPa"), Quantity.of(5, "kPa")))
 *         .with(φ, Distribution.normal(Quantity.of(37, "°"), Quantity.of(3, "°")))
 *         .correlated(c, φ, -0.5);
 * }</pre>
 */
public final class Uncertainty {

    private static final Uncertainty NONE = new Uncertainty(List.of(), List.of(), List.of());

    private final List<Quantity> givens;
    private final List<Distribution> distributions;
    private final List<Pair> pairs;

    /**
     * Two givens that go together.
     *
     * @param first position of one
     * @param second position of the other, after the first
     * @param correlation correlation coefficient of their values, a plain number
     */
    record Pair(int first, int second, Quantity correlation) {}

    private Uncertainty(List<Quantity> givens, List<Distribution> distributions, List<Pair> pairs) {
        this.givens = List.copyOf(givens);
        this.distributions = List.copyOf(distributions);
        this.pairs = List.copyOf(pairs);
    }

    /**
     * Starts without any uncertain given.
     *
     * @return no uncertainty
     */
    public static Uncertainty none() {
        return NONE;
    }

    /**
     * Adds an uncertain given.
     *
     * @param given a node of the graph, usually a given
     * @param distribution how its values spread, of the same dimension; its mean need not be the
     *     given's value
     * @return this and the given
     * @throws IllegalArgumentException when the given is there already, or one of the two is of
     *     readings in °C and the other is not
     * @throws DimensionException when the dimensions differ
     */
    public Uncertainty with(Quantity given, Distribution distribution) {
        Require.sameDimension(
                "distribution of " + Require.name(given),
                distribution.pattern(),
                "the given,",
                given);
        Require.sameKind("distribution of " + Require.name(given), distribution.pattern(), given);
        if (find(given) >= 0) {
            throw new IllegalArgumentException(
                    Require.name(given) + " has a distribution already: " + distribution(given));
        }
        List<Quantity> more = new ArrayList<>(givens);
        more.add(given);
        List<Distribution> theirs = new ArrayList<>(distributions);
        theirs.add(distribution);
        return new Uncertainty(more, theirs, pairs);
    }

    /**
     * Says that two uncertain givens go together.
     *
     * @param first one given
     * @param second another
     * @param correlation correlation coefficient ρ of their values, more than −1 and less than 1
     * @return this with that correlation, in place of an earlier one of the two
     * @throws IllegalArgumentException when one has no distribution or no spread, both are the same,
     *     or the coefficient is outside
     */
    public Uncertainty correlated(Quantity first, Quantity second, double correlation) {
        if (!Double.isFinite(correlation)) {
            throw outside(spreading(first), spreading(second), correlation);
        }
        return correlated(first, second, Quantity.of(correlation));
    }

    /**
     * Says that two uncertain givens go together, by a coefficient that has a source.
     *
     * @param first one given
     * @param second another
     * @param coefficient correlation coefficient ρ of their values, a plain number more than −1 and
     *     less than 1
     * @return this with that correlation, in place of an earlier one of the two
     * @throws IllegalArgumentException when one has no distribution or no spread, both are the same,
     *     or the coefficient is outside
     * @throws DimensionException when the coefficient is no plain number
     */
    public Uncertainty correlated(Quantity first, Quantity second, Quantity coefficient) {
        Require.sameDimension("correlation", coefficient, "the plain number", Quantity.of(1));
        double correlation = coefficient.si();
        int a = spreading(first);
        int b = spreading(second);
        String what = correlationOf(a, b);
        if (a == b) {
            throw Require.refused(what, correlation, "a correlation of two different givens");
        }
        if (!(correlation > -1 && correlation < 1)) {
            throw outside(a, b, correlation);
        }
        List<Pair> more = new ArrayList<>();
        for (Pair pair : pairs) {
            boolean same = Math.min(a, b) == pair.first() && Math.max(a, b) == pair.second();
            if (!same) {
                more.add(pair);
            }
        }
        more.add(new Pair(Math.min(a, b), Math.max(a, b), coefficient));
        return new Uncertainty(givens, distributions, more);
    }

    private IllegalArgumentException outside(int first, int second, double correlation) {
        return Require.refused(
                correlationOf(first, second), correlation, "more than −1 and less than 1");
    }

    /**
     * Gives the uncertain givens.
     *
     * @return the givens in the order in which they were added
     */
    public List<Quantity> givens() {
        return givens;
    }

    /**
     * Gives the distribution of a given.
     *
     * @param given one of the givens
     * @return its distribution
     * @throws IllegalArgumentException when it is none of them
     */
    public Distribution distribution(Quantity given) {
        int at = find(given);
        if (at < 0) {
            throw new IllegalArgumentException(
                    Require.name(given)
                            + " has no distribution; those that have one are "
                            + givens.stream().map(Require::name).toList());
        }
        return distributions.get(at);
    }

    /**
     * Gives the correlation coefficient of two givens.
     *
     * @param first one given
     * @param second another
     * @return ρ; 1 for a given with itself, 0 where nothing was said
     * @throws IllegalArgumentException when one has no distribution
     */
    public double correlation(Quantity first, Quantity second) {
        distribution(first);
        distribution(second);
        return correlations()[find(first)][find(second)];
    }

    boolean has(Quantity given) {
        return find(given) >= 0;
    }

    List<Distribution> distributions() {
        return distributions;
    }

    List<Pair> pairs() {
        return pairs;
    }

    double[][] correlations() {
        double[][] matrix = new double[givens.size()][givens.size()];
        for (int i = 0; i < matrix.length; i++) {
            matrix[i][i] = 1;
        }
        for (Pair pair : pairs) {
            matrix[pair.first()][pair.second()] = pair.correlation().si();
            matrix[pair.second()][pair.first()] = pair.correlation().si();
        }
        return matrix;
    }

    String correlationOf(int first, int second) {
        return "correlation of "
                + Require.name(givens.get(first))
                + " and "
                + Require.name(givens.get(second));
    }

    private int spreading(Quantity given) {
        if (distribution(given).isFixed()) {
            throw Require.refused(
                    "distribution of the correlated given " + Require.name(given),
                    distribution(given),
                    "one with a spread");
        }
        return find(given);
    }

    private int find(Quantity given) {
        for (int i = 0; i < givens.size(); i++) {
            if (givens.get(i).isSameNode(given)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Writes the givens with their distributions.
     *
     * @return one given a line
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < givens.size(); i++) {
            text.append(i == 0 ? "" : "\n")
                    .append(Require.name(givens.get(i)))
                    .append(": ")
                    .append(distributions.get(i));
        }
        for (Pair pair : pairs) {
            text.append('\n')
                    .append(correlationOf(pair.first(), pair.second()))
                    .append(": ")
                    .append(pair.correlation().si());
        }
        return text.toString();
    }
}
