package org.skewback.frame;

import java.util.List;

/**
 * A family of combinations from which the worst is wanted for each force at each place: every term
 * takes the lower or the upper of its two factors, whichever is worse there. A permanent action that
 * may help has both factors above 0 (1.00 and 1.35, say); a variable one has 0 and its factor.
 *
 * @param name what the rule is called
 * @param terms the terms that act together
 */
public record CombinationRule(String name, List<Term> terms) {

    /**
     * One load case, or several of which at most one acts.
     *
     * @param cases names of load cases; of more than one only the worst acts
     * @param low factor where the action helps
     * @param high factor where it hurts, at least {@code low}
     */
    public record Term(List<String> cases, double low, double high) {

        /**
         * Checks the factors.
         *
         * @param cases names of load cases; of more than one only the worst acts
         * @param low factor where the action helps; 0 if several cases exclude each other
         * @param high factor where it hurts
         * @throws IllegalArgumentException if there is no case, the factors are out of order, or
         *     several cases have a lower factor other than 0
         */
        public Term {
            cases = List.copyOf(cases);
            Require.finite("lower factor of " + cases, low, "");
            Require.finite("upper factor of " + cases, high, "");
            if (cases.isEmpty() || low > high || (cases.size() > 1 && low != 0)) {
                throw new IllegalArgumentException(
                        "factors of "
                                + cases
                                + " are "
                                + low
                                + " and "
                                + high
                                + "; allowed are one case with the lower first, or several with a"
                                + " lower factor of 0.");
            }
        }

        /**
         * Makes the term of one load case.
         *
         * @param load name of the load case
         * @param low factor where it helps
         * @param high factor where it hurts
         * @return the term
         */
        public static Term of(String load, double low, double high) {
            return new Term(List.of(load), low, high);
        }

        /**
         * Makes the term of load cases of which at most one acts.
         *
         * @param factor factor of the one that acts
         * @param cases names of the load cases
         * @return the term
         */
        public static Term oneOf(double factor, String... cases) {
            return new Term(List.of(cases), 0, factor);
        }
    }

    /**
     * Copies the terms.
     *
     * @param name what the rule is called
     * @param terms the terms that act together
     * @throws IllegalArgumentException if the name is blank
     */
    public CombinationRule {
        Require.name("combination rule", name);
        terms = List.copyOf(terms);
    }
}
