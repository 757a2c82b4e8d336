package org.skewback.study;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * What samples say about a check, as a routine; see {@link Reliability#simulate}. The result is the
 * same on any number of threads, so that number is no part of the input.
 */
public final class MonteCarloRoutine
        implements Routine<MonteCarloRoutine.Input, MonteCarloRoutine.Output> {

    private static final int MOST_THREADS = 8;

    /** Makes the routine. */
    public MonteCarloRoutine() {}

    /**
     * What is drawn.
     *
     * @param title what the check requires, in words
     * @param demand the quantity that must meet it
     * @param least the lower limit; empty where there is none
     * @param most the upper limit; empty where there is none
     * @param givens the givens that the study looks at
     * @param others the other numbers that the check rests on
     * @param formula how demand and limits come from givens and others
     * @param distributions names of the distributions of the givens, in order, parted by {@code "; "}
     * @param parameters their parameters, one distribution after the other
     * @param pairs the givens that go together, by their places from 0, such as {@code "0 2; 1 2"}
     * @param correlations correlation coefficient of each pair
     * @param samples how many samples, from 2 to 10⁹
     * @param seed where the random numbers start, a whole number in decimal
     */
    public record Input(
            String title,
            Quantity demand,
            List<Quantity> least,
            List<Quantity> most,
            List<Quantity> givens,
            List<Quantity> others,
            String formula,
            String distributions,
            List<Quantity> parameters,
            String pairs,
            List<Quantity> correlations,
            long samples,
            String seed) {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param title what the check requires, in words
         * @param demand the quantity that must meet it
         * @param least the lower limit; empty where there is none
         * @param most the upper limit; empty where there is none
         * @param givens the givens that the study looks at
         * @param others the other numbers that the check rests on
         * @param formula how demand and limits come from givens and others
         * @param distributions names of the distributions of the givens, in order, parted by {@code "; "}
         * @param parameters their parameters, one distribution after the other
         * @param pairs the givens that go together, by their places from 0, such as {@code "0 2; 1 2"}
         * @param correlations correlation coefficient of each pair
         * @param samples how many samples
         * @param seed where the random numbers start
         */
        public Input {
            least = List.copyOf(least);
            most = List.copyOf(most);
            givens = List.copyOf(givens);
            others = List.copyOf(others);
            parameters = List.copyOf(parameters);
            correlations = List.copyOf(correlations);
        }

        static Input of(UncertainCheck of, Sampling sampling) {
            return new Input(
                    of.title(),
                    of.demand(),
                    of.least(),
                    of.most(),
                    of.givens(),
                    of.others(),
                    of.formula(),
                    of.distributions(),
                    of.parameters(),
                    of.pairs(),
                    of.correlations(),
                    sampling.samples(),
                    Long.toString(sampling.seed()));
        }

        private UncertainCheck check() {
            return new UncertainCheck(
                    title,
                    demand,
                    least,
                    most,
                    givens,
                    others,
                    formula,
                    distributions,
                    parameters,
                    pairs,
                    correlations);
        }

        private Sampling sampling() {
            int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
            try {
                return new Sampling(samples, Long.parseLong(seed), threads);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        "seed is \"" + seed + "\"; allowed is a whole number", e);
            }
        }
    }

    /**
     * What was found.
     *
     * @param mean mean of the demand
     * @param standardDeviation standard deviation of the demand
     * @param probability probability of failure
     * @param standardError standard error of the probability
     * @param upperLimit what the probability stays below with a confidence of 95 %
     * @param index reliability index that belongs to the probability; empty where no sample failed
     *     or all did
     */
    public record Output(
            Quantity mean,
            Quantity standardDeviation,
            Quantity probability,
            Quantity standardError,
            Quantity upperLimit,
            List<Quantity> index) {

        /**
         * Keeps a copy of the list.
         *
         * @param mean mean of the demand
         * @param standardDeviation standard deviation of the demand
         * @param probability probability of failure
         * @param standardError standard error of the probability
         * @param upperLimit what the probability stays below with a confidence of 95 %
         * @param index reliability index that belongs to the probability, or nothing
         */
        public Output {
            index = List.copyOf(index);
        }
    }

    @Override
    public String name() {
        return "study.montecarlo";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        return input.check()
                .study()
                .plainSimulation(input.sampling(), stop, progress -> {})
                .figures();
    }

    @Override
    public void verify(Input input) {
        input.check().verify();
    }
}
