package org.skewback.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;

/**
 * A check with its formula and how its givens spread: all that a study of reliability takes.
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
 */
public record UncertainCheck(
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
        List<Quantity> correlations) {

    private static final String PARTED = "; ";

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
     */
    public UncertainCheck {
        least = List.copyOf(least);
        most = List.copyOf(most);
        givens = List.copyOf(givens);
        others = List.copyOf(others);
        parameters = List.copyOf(parameters);
        correlations = List.copyOf(correlations);
    }

    static UncertainCheck of(Check check, Uncertainty uncertainty) {
        StudyFormula formula = StudyFormula.of(check, uncertainty.givens());
        int uncertain = uncertainty.givens().size();
        List<Quantity> parameters = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Distribution distribution : uncertainty.distributions()) {
            names.add(distribution.name());
            parameters.addAll(distribution.parameters());
        }
        List<String> pairs = new ArrayList<>();
        List<Quantity> correlations = new ArrayList<>();
        for (Uncertainty.Pair pair : uncertainty.pairs()) {
            pairs.add(pair.first() + " " + pair.second());
            correlations.add(pair.correlation());
        }
        Quantity low = check.least();
        Quantity high = check.most();
        return new UncertainCheck(
                check.title(),
                check.demand(),
                low == null ? List.of() : List.of(low),
                high == null ? List.of() : List.of(high),
                uncertainty.givens(),
                formula.numbers().subList(uncertain, formula.numbers().size()),
                formula.text(),
                String.join(PARTED, names),
                parameters,
                String.join(PARTED, pairs),
                correlations);
    }

    /**
     * Sets the study up again, upon a formula that is worked out again.
     *
     * @throws IllegalArgumentException when the parts do not agree
     * @throws ArithmeticException when the formula has no value
     */
    Reliability study() {
        Rebuilt again = rebuilt();
        return Reliability.of(again.check(), uncertainty(again.givens()));
    }

    /**
     * Checks that the formula gives the very demand and limits.
     *
     * @throws IllegalArgumentException when it gives others
     */
    void verify() {
        rebuilt().verify(demand, least, most);
    }

    private Rebuilt rebuilt() {
        return Rebuilt.of(title, least, most, givens, others, formula);
    }

    private Uncertainty uncertainty(List<Quantity> nodes) {
        List<String> names = Arrays.asList(distributions.split(PARTED, -1));
        if (names.size() != nodes.size()) {
            throw new IllegalArgumentException(
                    nodes.size() + " givens have " + names.size() + " distributions");
        }
        Uncertainty uncertainty = Uncertainty.none();
        int next = 0;
        for (int i = 0; i < nodes.size(); i++) {
            int wanted = Distribution.parametersOf(names.get(i));
            if (next + wanted > parameters.size()) {
                throw new IllegalArgumentException(
                        "the distributions have only " + parameters.size() + " parameters");
            }
            uncertainty =
                    uncertainty.with(
                            nodes.get(i),
                            Distribution.named(
                                    names.get(i), parameters.subList(next, next + wanted)));
            next += wanted;
        }
        return correlated(uncertainty, nodes);
    }

    private Uncertainty correlated(Uncertainty independent, List<Quantity> nodes) {
        List<String> named = pairs.isEmpty() ? List.of() : Arrays.asList(pairs.split(PARTED, -1));
        if (named.size() != correlations.size()) {
            throw new IllegalArgumentException(
                    named.size() + " pairs have " + correlations.size() + " correlations");
        }
        Uncertainty uncertainty = independent;
        for (int i = 0; i < named.size(); i++) {
            String[] places = named.get(i).split(" ", -1);
            uncertainty =
                    uncertainty.correlated(
                            node(nodes, places[0]),
                            node(nodes, places[places.length - 1]),
                            correlations.get(i));
        }
        return uncertainty;
    }

    private static Quantity node(List<Quantity> nodes, String place) {
        try {
            return nodes.get(Integer.parseUnsignedInt(place));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("\"" + place + "\" is no place of a given", e);
        }
    }
}
