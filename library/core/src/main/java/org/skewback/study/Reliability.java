package org.skewback.study;

import java.util.List;
import java.util.function.Consumer;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Stop;
import org.skewback.sheet.Check;

/**
 * How likely a check fails when some of its givens are uncertain.
 *
 * <pre>{@code
 * Reliability slide = Reliability.of(check, ground);
 * slide.firstOrderSecondMoment();                    // derivatives at the means
 * slide.designPoint();                               // most likely way to fail
 * slide.simulate(Sampling.of(1_000_000));            // Monte Carlo
 * }</pre>
 *
 * <p>The check fails where its demand passes its capacity; either may be uncertain. Immutable, and
 * safe for use by several threads.
 */
public final class Reliability {

    /** A routine may take a thousand times as long as a line of arithmetic. */
    private static final long MOST_WITH_ROUTINES = 10_000_000;

    private final Margin margin;
    private final Uncertainty uncertainty;
    private final StandardSpace space;
    private final UncertainCheck input;

    private Reliability(Margin margin, Uncertainty uncertainty) {
        this.margin = margin;
        this.uncertainty = uncertainty;
        this.space = new StandardSpace(uncertainty);
        this.input = UncertainCheck.of(margin.check(), uncertainty);
    }

    /**
     * Sets up the study of a check.
     *
     * @param check the requirement
     * @param uncertainty at least one uncertain given, each one that the check rests on
     * @return the study
     * @throws IllegalArgumentException when no given is uncertain, the check does not rest on one of
     *     them, the correlations cannot be had together, or the formula is too large to be kept with
     *     a result (100 000 operations); the message names the given or the pair
     */
    public static Reliability of(Check check, Uncertainty uncertainty) {
        if (uncertainty.givens().isEmpty()) {
            throw new IllegalArgumentException(
                    "the study of the check \""
                            + check.title()
                            + "\" has no uncertain givens; allowed are one or more");
        }
        return new Reliability(Margin.of(check, uncertainty.givens()), uncertainty);
    }

    /**
     * Estimates from the first derivatives at the means (mean-value first-order second-moment
     * method): β = g(means)/√(∇gᵀ C ∇g), where g is the margin and C holds the covariances. Exact for
     * the moments of linear formulas.
     *
     * @return mean, standard deviation, index and probability
     * @throws ArithmeticException when the formula has no value at the means, or the margin no spread
     */
    public FirstOrderSecondMoment firstOrderSecondMoment() {
        FirstOrderSecondMoment plain = plainMoments();
        return plain.with(
                Routines.tie(new FirstOrderSecondMomentRoutine(), input, plain.figures()));
    }

    /**
     * Finds the design point (first-order reliability method of A. M. Hasofer and N. C. Lind, Exact
     * and invariant second-moment code format, Journal of the Engineering Mechanics Division 100,
     * 1974), with distributions and correlations carried over to standard normal numbers after Nataf
     * (P.-L. Liu, A. Der Kiureghian, Probabilistic Engineering Mechanics 1, 1986).
     *
     * @return index, probability, design point and influences
     * @throws NotConvergedException when the search does not end at a design point
     * @throws ArithmeticException when the formula has no value at the medians
     */
    public DesignPoint designPoint() {
        DesignPoint plain = plainDesignPoint();
        return plain.with(Routines.tie(new DesignPointRoutine(), input, plain.figures()));
    }

    /**
     * Simulates, and stops when the thread is interrupted.
     *
     * @param sampling how many samples, which seed, how many threads
     * @return what was found
     * @throws ArithmeticException when the formula has no value for a sample
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public Simulation simulate(Sampling sampling) {
        return simulate(sampling, Stop.onInterrupt(), progress -> {});
    }

    /**
     * Simulates, tells how it goes, and stops when the thread is interrupted.
     *
     * <pre>{@code
     * slide.simulate(Sampling.of(10_000_000), ProgressLine.on(System.out));
     * }</pre>
     *
     * @param sampling how many samples, which seed, how many threads
     * @param listener told by the calling thread, in order, up to about 200 times
     * @return what was found
     * @throws ArithmeticException when the formula has no value for a sample
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public Simulation simulate(Sampling sampling, Consumer<Progress> listener) {
        return simulate(sampling, Stop.onInterrupt(), listener);
    }

    /**
     * Simulates by drawing samples (Monte Carlo).
     *
     * <p>Correlated givens are drawn as correlated normal numbers and carried over, as for {@link
     * #designPoint}. The same sampling gives the same result, to the last bit, on any number of
     * threads.
     *
     * @param sampling how many samples, which seed, how many threads
     * @param stop asked before each block of samples
     * @param listener told by the calling thread, in order, up to about 200 times
     * @return what was found
     * @throws ArithmeticException when the formula has no value for a sample
     * @throws org.skewback.quantity.GuardTurnedException when a sample wants a branch that is not
     *     known
     * @throws java.util.concurrent.CancellationException when a stop was asked for
     */
    public Simulation simulate(Sampling sampling, Stop stop, Consumer<Progress> listener) {
        Simulation plain = plainSimulation(sampling, stop, listener);
        return plain.with(
                Routines.tie(
                        new MonteCarloRoutine(),
                        MonteCarloRoutine.Input.of(input, sampling),
                        plain.figures()));
    }

    FirstOrderSecondMoment plainMoments() {
        return FirstOrderSecondMoment.of(margin, uncertainty, space);
    }

    DesignPoint plainDesignPoint() {
        return DesignPoint.of(margin, uncertainty, space);
    }

    Simulation plainSimulation(Sampling sampling, Stop stop, Consumer<Progress> listener) {
        long most = margin.tape().hasRoutines() ? MOST_WITH_ROUTINES : sampling.samples();
        if (sampling.samples() > most) {
            throw Require.refused(
                    "number of samples of the check \""
                            + margin.check().title()
                            + "\", whose formula runs routines,",
                    sampling.samples(),
                    "at most " + most);
        }
        return new MonteCarlo(margin, space, sampling).run(stop, listener);
    }

    /**
     * Gives the uncertain givens, in the order in which results name them.
     *
     * @return the givens
     */
    public List<Quantity> givens() {
        return uncertainty.givens();
    }
}
