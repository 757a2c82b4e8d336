package org.skewback.action;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.skewback.frame.CombinationRule;
import org.skewback.frame.Envelope;
import org.skewback.frame.FrameSolution;
import org.skewback.quantity.Quantity;

/**
 * Actions that act together by one rule with one of them leading, each between two factors.
 *
 * @param name rule and leading action, for print
 * @param factors factors by name of the action
 */
public record Situation(String name, Map<String, FactorRange> factors) {

    /**
     * Copies the factors.
     *
     * @param name rule and leading action
     * @param factors factors by name of the action
     */
    public Situation {
        factors = Collections.unmodifiableMap(new LinkedHashMap<>(factors));
    }

    /**
     * A combined effect and what gave it.
     *
     * @param value the effect
     * @param situation name of the situation that governs
     * @param words factors and actions that count in it, such as {@code 1.35 permanent load + 1.45 rail
     *     traffic}
     */
    public record Governing(Quantity value, String situation, String words) {}

    /**
     * Gives the rule by which a frame envelopes this situation.
     *
     * @param cases names of load cases by action; of several of a variable action at most one acts, a
     *     permanent action has one. Actions without an entry are left out.
     * @return the rule
     * @throws IllegalArgumentException if a permanent action has several load cases
     */
    public CombinationRule rule(Map<String, List<String>> cases) {
        List<CombinationRule.Term> terms = new ArrayList<>();
        factors.forEach(
                (action, range) -> {
                    List<String> own = cases.getOrDefault(action, List.of());
                    if (!own.isEmpty()) {
                        terms.add(new CombinationRule.Term(own, range.low(), range.high()));
                    }
                });
        return new CombinationRule(name, terms);
    }

    /**
     * Writes situations as the table that a routine takes, so that a record holds what it combined.
     *
     * @param situations the situations
     * @return CSV, a line for each action of each situation, with its low and its high factor; names are
     *     numbered from 1
     */
    public static String table(List<Situation> situations) {
        StringBuilder table = new StringBuilder("situation,action,low,high\n");
        for (int i = 0; i < situations.size(); i++) {
            // Two situations may share a name: one rule and leading action, with and without a
            // train.
            String name = (i + 1) + ": " + situations.get(i).name;
            situations
                    .get(i)
                    .factors
                    .forEach(
                            (action, range) ->
                                    table.append('"')
                                            .append(name)
                                            .append("\",\"")
                                            .append(action)
                                            .append("\",")
                                            .append(range.low())
                                            .append(',')
                                            .append(range.high())
                                            .append('\n'));
        }
        return table.toString();
    }

    /**
     * Envelopes this situation over a frame, with loads that move.
     *
     * @param solutions solutions of the load cases
     * @param cases names of load cases by action
     * @param moving envelopes by variable action of loads that move, such as a train's
     * @param stations stations along each member, those of the moving envelopes
     * @return the envelope, whose causes name the factors
     * @throws IllegalArgumentException if a case is missing, a moving action is not of this situation's
     *     variable ones, or members or stations differ
     */
    public Envelope envelope(
            List<FrameSolution> solutions,
            Map<String, List<String>> cases,
            Map<String, Envelope> moving,
            int stations) {
        Envelope envelope = Envelope.of(solutions, rule(cases), stations);
        for (Map.Entry<String, Envelope> entry : moving.entrySet()) {
            FactorRange range = factors.get(entry.getKey());
            if (range == null) {
                continue;
            }
            if (range.permanent()) {
                throw new IllegalArgumentException(
                        "action "
                                + entry.getKey()
                                + " moves and is permanent; allowed is variable.");
            }
            envelope = envelope.plus(range.high(), entry.getValue());
        }
        return envelope;
    }

    /**
     * Combines effects to their largest.
     *
     * @param effects effects by action; of several of a variable action the worst acts or none, a permanent
     *     action has one. Actions without an entry have none.
     * @return the largest effect: Σ max(γ_low G, γ_high G) + Σ γ_high max(0, Q, …)
     * @throws IllegalArgumentException if there is no effect, or a permanent action has several
     */
    public Governing largest(Map<String, List<Quantity>> effects) {
        return combined(effects, true);
    }

    /**
     * Combines effects to their smallest.
     *
     * @param effects effects by action, as for {@link #largest}
     * @return the smallest effect
     * @throws IllegalArgumentException if there is no effect, or a permanent action has several
     */
    public Governing smallest(Map<String, List<Quantity>> effects) {
        return combined(effects, false);
    }

    /**
     * Combines effects to the largest of several situations.
     *
     * @param situations the situations, at least one
     * @param effects effects by action, as for {@link #largest(Map)}
     * @return the largest, and the situation that gives it
     * @throws IllegalArgumentException if there is no situation or no effect
     */
    public static Governing largest(
            List<Situation> situations, Map<String, List<Quantity>> effects) {
        return worst(situations, effects, true);
    }

    /**
     * Combines effects to the smallest of several situations.
     *
     * @param situations the situations, at least one
     * @param effects effects by action, as for {@link #largest(Map)}
     * @return the smallest, and the situation that gives it
     * @throws IllegalArgumentException if there is no situation or no effect
     */
    public static Governing smallest(
            List<Situation> situations, Map<String, List<Quantity>> effects) {
        return worst(situations, effects, false);
    }

    private static Governing worst(
            List<Situation> situations, Map<String, List<Quantity>> effects, boolean largest) {
        Governing worst = null;
        for (Situation situation : situations) {
            Governing next = situation.combined(effects, largest);
            if (worst == null) {
                worst = next;
            } else {
                boolean governs =
                        largest
                                ? next.value().si() > worst.value().si()
                                : next.value().si() < worst.value().si();
                worst =
                        new Governing(
                                either(worst.value(), next.value(), largest),
                                governs ? next.situation() : worst.situation(),
                                governs ? next.words() : worst.words());
            }
        }
        if (worst == null) {
            throw new IllegalArgumentException("number of situations is 0; allowed is at least 1.");
        }
        return worst;
    }

    private Governing combined(Map<String, List<Quantity>> effects, boolean largest) {
        List<Quantity> terms = new ArrayList<>();
        List<String> words = new ArrayList<>();
        factors.forEach(
                (action, range) -> {
                    List<Quantity> own = effects.getOrDefault(action, List.of());
                    if (own.isEmpty()) {
                        return;
                    }
                    Quantity term = term(action, range, own, largest);
                    terms.add(term);
                    if (term.si() != 0) {
                        boolean hurts = largest == term.si() > 0;
                        words.add(
                                String.format(
                                        Locale.ROOT,
                                        "%.2f %s",
                                        hurts ? range.high() : range.low(),
                                        action));
                    }
                });
        if (terms.isEmpty()) {
            throw new IllegalArgumentException(
                    "number of effects in "
                            + name
                            + " is 0; allowed is at least 1, of the actions "
                            + factors.keySet()
                            + ".");
        }
        return new Governing(
                Quantity.sum(terms), name, words.stream().collect(Collectors.joining(" + ")));
    }

    private static Quantity term(
            String action, FactorRange range, List<Quantity> own, boolean largest) {
        if (range.permanent()) {
            if (own.size() > 1) {
                throw new IllegalArgumentException(
                        "number of effects of "
                                + action
                                + " is "
                                + own.size()
                                + "; allowed is one, as it is permanent.");
            }
            Quantity high = own.get(0).times(range.high());
            return range.low() == range.high()
                    ? high
                    : either(own.get(0).times(range.low()), high, largest);
        }
        Quantity worst = own.get(0).times(0);
        for (Quantity effect : own) {
            worst = either(worst, effect, largest);
        }
        return worst.times(range.high());
    }

    private static Quantity either(Quantity a, Quantity b, boolean largest) {
        return largest ? Quantity.max(a, b) : Quantity.min(a, b);
    }
}
