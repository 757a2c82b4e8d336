package org.skewback.action;

import java.util.List;

/**
 * Partial and combination factors of one action; EN 1990, annex A2.
 *
 * @param action name of the action
 * @param permanent whether it is permanent, else variable
 * @param favourable γ where it helps; 0 for a variable action
 * @param unfavourable γ where it hurts, at least {@code favourable}
 * @param reduction ξ on an unfavourable permanent action in 6.10b, 0 to 1; 1 for a variable one
 * @param combination ψ₀, 0 to 1
 * @param frequent ψ₁, 0 to 1
 * @param quasiPermanent ψ₂, 0 to 1
 * @param excludes names of actions that never act with it
 * @param needs names of actions without which it does not act
 */
public record ActionFactors(
        String action,
        boolean permanent,
        double favourable,
        double unfavourable,
        double reduction,
        double combination,
        double frequent,
        double quasiPermanent,
        List<String> excludes,
        List<String> needs) {

    /**
     * Checks the factors.
     *
     * @param action name of the action
     * @param permanent whether it is permanent
     * @param favourable γ where it helps
     * @param unfavourable γ where it hurts
     * @param reduction ξ
     * @param combination ψ₀
     * @param frequent ψ₁
     * @param quasiPermanent ψ₂
     * @param excludes names of actions that never act with it
     * @param needs names of actions without which it does not act
     * @throws IllegalArgumentException if the name is blank, a factor out of range, or a variable action
     *     has a factor other than 0 where it helps
     */
    public ActionFactors {
        if (action.isBlank()) {
            throw new IllegalArgumentException(
                    "name of an action is \"" + action + "\"; allowed is a word or more.");
        }
        Require.within("γ of " + action + " where it helps", favourable, 0, permanent ? 10 : 0, "");
        Require.within("γ of " + action + " where it hurts", unfavourable, favourable, 10, "");
        Require.within("ξ of " + action, reduction, 0, 1, "");
        Require.within("ψ₀ of " + action, combination, 0, 1, "");
        Require.within("ψ₁ of " + action, frequent, 0, 1, "");
        Require.within("ψ₂ of " + action, quasiPermanent, 0, 1, "");
        excludes = List.copyOf(excludes);
        needs = List.copyOf(needs);
    }

    /** Whether both can act at a time. */
    boolean goesWith(ActionFactors other) {
        return !excludes.contains(other.action) && !other.excludes.contains(action);
    }

    /** Product of the factors named, such as {@code ξ γ}; 0 for none. */
    double product(String words) {
        double product = 1;
        for (String word : words.strip().split(" +", -1)) {
            product *=
                    switch (word) {
                        case "0" -> 0;
                        case "1" -> 1;
                        case "γ" -> unfavourable;
                        case "ξ" -> reduction;
                        case "ψ0" -> combination;
                        case "ψ1" -> frequent;
                        case "ψ2" -> quasiPermanent;
                        default ->
                                throw new IllegalArgumentException(
                                        "factor in a rule of combination is \""
                                                + word
                                                + "\"; allowed are 0, 1, γ, ξ, ψ0, ψ1 and ψ2, with"
                                                + " spaces between factors that multiply.");
                    };
        }
        return product;
    }
}
