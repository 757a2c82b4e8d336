package org.skewback.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sums of linear solutions of one model. */
public final class Superposition {

    private Superposition() {}

    /**
     * Adds up solutions by the factors of a combination.
     *
     * @param cases solutions of the load cases, of one model
     * @param combination the factors
     * @return the solution of the combined loads, with forces exact along members
     * @throws IllegalArgumentException if a case is missing, named twice, or of another model
     */
    public static FrameSolution of(List<FrameSolution> cases, Combination combination) {
        double[] factors = factors(cases, combination);
        FrameSolution first = cases.get(0);
        double[] movements = new double[first.movements().length];
        List<AppliedLoads> loads = new ArrayList<>();
        for (int c = 0; c < factors.length; c++) {
            requireSameModel(first, cases.get(c));
            loads.add(cases.get(c).loads());
            double[] u = cases.get(c).movements();
            for (int i = 0; i < u.length && factors[c] != 0; i++) {
                movements[i] += factors[c] * u[i];
            }
        }
        return first.with(
                combination.name(), AppliedLoads.sum(first.model(), loads, factors), movements);
    }

    static void requireSameModel(FrameSolution first, FrameSolution other) {
        if (first.system() != other.system() || !first.sameParts(other)) {
            throw new IllegalArgumentException(
                    "solutions "
                            + first.name()
                            + " and "
                            + other.name()
                            + " are of different structures; allowed are those of one analysis.");
        }
    }

    /** One factor for each solution. */
    static double[] factors(List<FrameSolution> cases, Combination combination) {
        Map<String, Integer> index = index(cases);
        double[] factors = new double[cases.size()];
        combination
                .factors()
                .forEach((name, factor) -> factors[at(index, name, combination.name())] += factor);
        return factors;
    }

    private static Map<String, Integer> index(List<FrameSolution> cases) {
        Map<String, Integer> index = new HashMap<>();
        for (FrameSolution solution : cases) {
            if (index.put(solution.name(), index.size()) != null) {
                throw new IllegalArgumentException(
                        "load case " + solution.name() + " is there twice; allowed is once.");
            }
        }
        return index;
    }

    private static int at(Map<String, Integer> index, String name, String combination) {
        Integer at = index.get(name);
        if (at == null) {
            throw new IllegalArgumentException(
                    "combination "
                            + combination
                            + " names load case "
                            + name
                            + "; allowed are "
                            + index.keySet()
                            + ".");
        }
        return at;
    }

    static double[] sum(double[][] byCase, double[] factors) {
        double[] sum = new double[6];
        for (int c = 0; c < factors.length; c++) {
            for (int k = 0; k < 6 && factors[c] != 0; k++) {
                sum[k] += factors[c] * byCase[c][k];
            }
        }
        return sum;
    }

    static String times(double factor, String name) {
        return (factor == 1 ? "" : factor == -1 ? "−" : factor + "·") + name;
    }

    /** Chooses the factors of a rule for an extreme. */
    static final class Chooser {

        private final CombinationRule rule;
        private final List<int[]> cases = new ArrayList<>();
        private final List<String> names;

        Chooser(List<FrameSolution> solutions, CombinationRule rule) {
            this.rule = rule;
            names = solutions.stream().map(FrameSolution::name).toList();
            Map<String, Integer> index = index(solutions);
            for (CombinationRule.Term term : rule.terms()) {
                cases.add(
                        term.cases().stream()
                                .mapToInt(name -> at(index, name, rule.name()))
                                .toArray());
            }
        }

        /** Factors of all cases; slot is 2 · component for the largest, + 1 for the smallest. */
        double[] factors(double[][] byCase, int slot) {
            int k = slot / 2;
            int sense = slot % 2 == 0 ? 1 : -1;
            double[] factors = new double[byCase.length];
            for (int t = 0; t < cases.size(); t++) {
                CombinationRule.Term term = rule.terms().get(t);
                int worst = cases.get(t)[0];
                for (int c : cases.get(t)) {
                    if (sense * byCase[c][k] > sense * byCase[worst][k]) {
                        worst = c;
                    }
                }
                factors[worst] += sense * byCase[worst][k] > 0 ? term.high() : term.low();
            }
            return factors;
        }

        String words(double[] factors) {
            StringBuilder words = new StringBuilder();
            for (int c = 0; c < factors.length; c++) {
                if (factors[c] != 0) {
                    words.append(words.length() == 0 ? "" : " + ")
                            .append(times(factors[c], names.get(c)));
                }
            }
            return rule.name() + ": " + (words.length() == 0 ? "nothing" : words);
        }
    }
}
