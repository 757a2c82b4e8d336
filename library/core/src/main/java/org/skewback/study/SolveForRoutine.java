package org.skewback.study;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** The value with which a check just reaches a utilisation, as a routine; see {@link SolveFor}. */
public final class SolveForRoutine
        implements Routine<SolveForRoutine.Input, SolveForRoutine.Output> {

    /** Makes the routine. */
    public SolveForRoutine() {}

    /**
     * What is sought.
     *
     * @param title what the check requires, in words
     * @param demand the quantity that must meet it
     * @param least the lower limit; empty where there is none
     * @param most the upper limit; empty where there is none
     * @param given the given whose value is sought
     * @param others the other numbers that the check rests on
     * @param formula how demand and limits come from given and others
     * @param utilisation utilisation wanted
     * @param low one end of where the value is sought
     * @param high the other end
     */
    public record Input(
            String title,
            Quantity demand,
            List<Quantity> least,
            List<Quantity> most,
            Quantity given,
            List<Quantity> others,
            String formula,
            double utilisation,
            Quantity low,
            Quantity high) {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param title what the check requires, in words
         * @param demand the quantity that must meet it
         * @param least the lower limit; empty where there is none
         * @param most the upper limit; empty where there is none
         * @param given the given whose value is sought
         * @param others the other numbers that the check rests on
         * @param formula how demand and limits come from given and others
         * @param utilisation utilisation wanted
         * @param low one end of where the value is sought
         * @param high the other end
         */
        public Input {
            least = List.copyOf(least);
            most = List.copyOf(most);
            others = List.copyOf(others);
        }
    }

    /**
     * What was found.
     *
     * @param value the value with which the check reaches the utilisation
     * @param utilisation the utilisation reached
     */
    public record Output(Quantity value, Quantity utilisation) {}

    @Override
    public String name() {
        return "study.solvefor";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Rebuilt again = rebuilt(input);
        SolveFor.Solution solution =
                SolveFor.plain(
                        again.check(),
                        input.utilisation(),
                        again.givens().get(0),
                        input.low(),
                        input.high());
        return new Output(solution.value(), solution.utilisation());
    }

    @Override
    public void verify(Input input) {
        rebuilt(input).verify(input.demand(), input.least(), input.most());
    }

    private static Rebuilt rebuilt(Input input) {
        return Rebuilt.of(
                input.title(),
                input.least(),
                input.most(),
                List.of(input.given()),
                input.others(),
                input.formula());
    }
}
