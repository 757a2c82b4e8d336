package org.skewback.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;

/**
 * A check whose formula was built again from a record.
 *
 * @param check the check
 * @param givens the givens of the study, as its formula has them
 */
record Rebuilt(Check check, List<Quantity> givens) {

    /**
     * Builds.
     *
     * @throws IllegalArgumentException when the formula gives more or less than a demand and limits
     */
    static Rebuilt of(
            String title,
            List<Quantity> least,
            List<Quantity> most,
            List<Quantity> givens,
            List<Quantity> others,
            String formula) {
        int wanted = 1 + least.size() + most.size();
        List<Quantity> numbers = new ArrayList<>(givens);
        numbers.addAll(others);
        StudyFormula.Built built = StudyFormula.build(formula, numbers);
        if (built.results().size() != wanted || least.size() > 1 || most.size() > 1) {
            throw new IllegalArgumentException(
                    "the formula of the study does not give a demand and its limits");
        }
        Check check =
                new Check(
                        title,
                        built.results().get(0),
                        least.isEmpty() ? null : built.results().get(1),
                        most.isEmpty() ? null : built.results().get(wanted - 1));
        return new Rebuilt(check, built.numbers().subList(0, givens.size()));
    }

    /**
     * Checks that the formula gives the very demand and limits.
     *
     * @throws IllegalArgumentException when it gives others
     */
    void verify(Quantity demand, List<Quantity> least, List<Quantity> most) {
        verify(check.demand(), demand);
        if (!least.isEmpty()) {
            verify(Objects.requireNonNull(check.least()), least.get(0));
        }
        if (!most.isEmpty()) {
            verify(Objects.requireNonNull(check.most()), most.get(0));
        }
    }

    private static void verify(Quantity built, Quantity wanted) {
        if (built.si() != wanted.si()) {
            throw new IllegalArgumentException(
                    "the formula of the study gives " + built + " where the check has " + wanted);
        }
    }
}
