package org.skewback.study;

import java.util.List;
import java.util.Map;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;

/**
 * What the first derivatives at the means say about a check.
 *
 * @param check the check
 * @param givens the uncertain givens
 * @param mean the demand with every given at its mean
 * @param standardDeviation standard deviation of the demand, √(∇ᵀ C ∇) with the covariances C of the
 *     givens
 * @param index reliability index: the margin at the means over its standard deviation
 * @param probability probability of failure if the margin were normal, Φ(−index)
 * @param shares share of each given in the variance of the margin, in their order; the sum is 1. With
 *     correlation, a share may be negative
 */
public record FirstOrderSecondMoment(
        Check check,
        List<Quantity> givens,
        Quantity mean,
        Quantity standardDeviation,
        Quantity index,
        Quantity probability,
        List<Quantity> shares)
        implements Displayable {

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param check the check
     * @param givens the uncertain givens
     * @param mean the demand with every given at its mean
     * @param standardDeviation standard deviation of the demand
     * @param index reliability index
     * @param probability probability of failure if the margin were normal
     * @param shares share of each given in the variance of the margin
     */
    public FirstOrderSecondMoment {
        givens = List.copyOf(givens);
        shares = List.copyOf(shares);
    }

    static FirstOrderSecondMoment of(Margin margin, Uncertainty uncertainty, StandardSpace space) {
        double[] means = space.means();
        double[] at = margin.tape().evaluate(means);
        double[][] slopes = margin.tape().gradient(means);
        double[][] correlations = uncertainty.correlations();
        double[] deviations = space.deviations();
        double[] ofDemand = contributions(slopes[Margin.DEMAND], deviations, correlations);
        double[] ofMargin = contributions(slopes[Margin.MARGIN], deviations, correlations);
        double variance = sum(ofMargin);
        if (!(variance > 0)) {
            throw new ArithmeticException(
                    "the variance of the margin of the check \""
                            + margin.check().title()
                            + "\" is "
                            + variance
                            + " to the first order at the means; allowed is more than 0");
        }
        double index = at[Margin.MARGIN] / Math.sqrt(variance);
        Quantity[] shares = new Quantity[ofMargin.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Quantity.of(ofMargin[i] / variance);
        }
        Quantity demand = margin.check().demand();
        return new FirstOrderSecondMoment(
                margin.check(),
                uncertainty.givens(),
                Require.quantity(at[Margin.DEMAND], demand.unit()),
                Require.quantity(
                        Math.sqrt(Math.max(0, sum(ofDemand))),
                        Require.ofDifferences(demand.unit())),
                Quantity.of(index),
                Quantity.of(ReliabilityIndex.probability(index)),
                List.of(shares));
    }

    private static double[] contributions(
            double[] slopes, double[] deviations, double[][] correlations) {
        double[] contributions = new double[slopes.length];
        for (int i = 0; i < slopes.length; i++) {
            for (int j = 0; j < slopes.length; j++) {
                contributions[i] +=
                        slopes[i] * deviations[i] * correlations[i][j] * slopes[j] * deviations[j];
            }
        }
        return contributions;
    }

    private static double sum(double[] terms) {
        double sum = 0;
        for (double term : terms) {
            sum += term;
        }
        return sum;
    }

    FirstOrderSecondMomentRoutine.Output figures() {
        return new FirstOrderSecondMomentRoutine.Output(
                mean, standardDeviation, index, probability, shares);
    }

    /** This with figures that know where they come from. */
    FirstOrderSecondMoment with(FirstOrderSecondMomentRoutine.Output tied) {
        return new FirstOrderSecondMoment(
                check,
                givens,
                tied.mean(),
                tied.standardDeviation(),
                tied.index(),
                tied.probability(),
                tied.shares());
    }

    /**
     * Gives the shares as a table.
     *
     * @return given, its value as it stands, share in the variance of the margin
     */
    public Table table() {
        return Table.of(
                "Shares in the variance of the margin",
                Column.texts("given", givens.stream().map(Require::name).toList()),
                Column.texts("value", givens.stream().map(Words::of).toList()),
                Column.of("share", "%", shares, 1));
    }

    @Override
    public Map<String, String> display() {
        return StudyView.titled("First order, second moments: " + check.title())
                .saying(this + ".")
                .table(table(), givens)
                .cautioning()
                .bundle();
    }

    /**
     * Writes the figures.
     *
     * @return such as {@code mean 1.544, standard deviation 0.1477, reliability index 3.686, …}
     */
    @Override
    public String toString() {
        return "mean "
                + Words.of(mean)
                + ", standard deviation "
                + Words.of(standardDeviation)
                + ", reliability index "
                + Words.of(index)
                + ", probability of failure "
                + Words.of(probability);
    }
}
