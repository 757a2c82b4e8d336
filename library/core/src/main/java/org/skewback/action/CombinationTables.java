package org.skewback.action;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.data.CsvTable;

/**
 * Rules of combination and factors of actions as tables; EN 1990:2002, 6.4.3 and 6.5.3, with annex A2 of
 * A1:2005. A national annex, or a later edition, is another pair of tables.
 *
 * <p>Table of actions: {@code action}, {@code kind} (permanent or variable), {@code γ favourable}, {@code γ
 * unfavourable}, {@code ξ}, {@code ψ0}, {@code ψ1}, {@code ψ2}, {@code excludes} and {@code needs} (names
 * separated by {@code ;}). Table of rules: {@code rule}, {@code formula}, and in {@code permanent}, {@code
 * leading} and {@code accompanying} what each kind of action is multiplied by, such as {@code ξ γ} or {@code
 * ψ1}; {@code event} says {@code yes} where an accident or an earthquake acts besides, with the factor 1.
 */
public final class CombinationTables {

    private final Map<String, ActionFactors> actions;
    private final Map<String, Rule> rules;

    private record Rule(
            String name,
            String formula,
            String permanent,
            String leading,
            String accompanying,
            boolean event) {}

    private CombinationTables(Map<String, ActionFactors> actions, Map<String, Rule> rules) {
        this.actions = actions;
        this.rules = rules;
    }

    /**
     * Reads the tables.
     *
     * @param actions table of actions
     * @param rules table of rules
     * @return the tables
     * @throws IllegalArgumentException if a column is missing, a field cannot be read, a factor is out of
     *     range, or a name is there twice
     */
    public static CombinationTables of(CsvTable actions, CsvTable rules) {
        Map<String, ActionFactors> byName = new LinkedHashMap<>();
        for (int i = 0; i < actions.size(); i++) {
            ActionFactors factors = action(actions, i);
            if (byName.put(factors.action(), factors) != null) {
                throw actions.refused(i, "action", factors.action(), "a name that is new");
            }
        }
        Map<String, Rule> ruleByName = new LinkedHashMap<>();
        for (int i = 0; i < rules.size(); i++) {
            Rule rule =
                    new Rule(
                            rules.texts("rule").get(i),
                            rules.texts("formula").get(i),
                            rules.texts("permanent").get(i),
                            rules.texts("leading").get(i),
                            rules.texts("accompanying").get(i),
                            choice(rules, i, "event", "yes", "no"));
            if (ruleByName.put(rule.name, rule) != null) {
                throw rules.refused(i, "rule", rule.name, "a name that is new");
            }
        }
        return new CombinationTables(byName, ruleByName);
    }

    private static ActionFactors action(CsvTable table, int row) {
        boolean permanent = choice(table, row, "kind", "permanent", "variable");
        return new ActionFactors(
                table.texts("action").get(row),
                permanent,
                number(table, row, "γ favourable"),
                number(table, row, "γ unfavourable"),
                number(table, row, "ξ"),
                number(table, row, "ψ0"),
                number(table, row, "ψ1"),
                number(table, row, "ψ2"),
                names(table, row, "excludes"),
                names(table, row, "needs"));
    }

    private static boolean choice(CsvTable table, int row, String column, String yes, String no) {
        String text = table.texts(column).get(row);
        if (!text.equals(yes) && !text.equals(no)) {
            throw table.refused(row, column, text, yes + " or " + no);
        }
        return text.equals(yes);
    }

    private static double number(CsvTable table, int row, String column) {
        return table.numbers(column, "")[row];
    }

    private static List<String> names(CsvTable table, int row, String column) {
        List<String> names = new ArrayList<>();
        for (String part : table.texts(column).get(row).split(";", -1)) {
            if (!part.isBlank()) {
                names.add(part.strip());
            }
        }
        return names;
    }

    /**
     * Lists the rules.
     *
     * @return their names, in the order of the table
     */
    public List<String> rules() {
        return List.copyOf(rules.keySet());
    }

    /**
     * Gives the factors of an action.
     *
     * @param action its name
     * @return the factors
     * @throws IllegalArgumentException if the table has no such action
     */
    public ActionFactors action(String action) {
        ActionFactors factors = actions.get(action);
        if (factors == null) {
            throw new IllegalArgumentException(
                    "action is \"" + action + "\"; allowed are " + actions.keySet() + ".");
        }
        return factors;
    }

    /**
     * Makes the situations of a rule without accident or earthquake.
     *
     * @param rule name of the rule
     * @param present names of the actions there are
     * @return one situation for each set of variable actions that can act together and each of them leading;
     *     sets that are part of another are left out, and so is what would differ in name alone
     * @throws IllegalArgumentException if there is no such rule or action, or the rule wants an event
     */
    public List<Situation> situations(String rule, List<String> present) {
        return situations(rule, present, "");
    }

    /**
     * Makes the situations of a rule.
     *
     * @param rule name of the rule
     * @param present names of the actions there are
     * @param event name of the accident or earthquake, which has the factor 1 and no line in the table; empty
     *     for a rule without one
     * @return the situations
     * @throws IllegalArgumentException if there is no such rule or action, or an event is missing or too much
     */
    public List<Situation> situations(String rule, List<String> present, String event) {
        Rule by = rules.get(rule);
        if (by == null) {
            throw new IllegalArgumentException(
                    "rule of combination is \"" + rule + "\"; allowed are " + rules.keySet() + ".");
        }
        if (by.event == event.isEmpty()) {
            throw new IllegalArgumentException(
                    "event of rule "
                            + rule
                            + " is \""
                            + event
                            + "\"; allowed is "
                            + (by.event ? "the name of an accident or earthquake." : "none."));
        }
        List<ActionFactors> permanent = new ArrayList<>();
        List<ActionFactors> variable = new ArrayList<>();
        for (String name : present) {
            ActionFactors factors = action(name);
            (factors.permanent() ? permanent : variable).add(factors);
        }
        Map<Map<String, FactorRange>, Situation> situations = new LinkedHashMap<>();
        for (Set<ActionFactors> together : together(variable)) {
            if (together.isEmpty()) {
                add(situations, by, permanent, together, null, event);
            }
            for (ActionFactors leading : together) {
                add(situations, by, permanent, together, leading, event);
            }
        }
        return List.copyOf(situations.values());
    }

    private static void add(
            Map<Map<String, FactorRange>, Situation> situations,
            Rule rule,
            List<ActionFactors> permanent,
            Set<ActionFactors> together,
            @Nullable ActionFactors leading,
            String event) {
        Map<String, FactorRange> factors = new LinkedHashMap<>();
        for (ActionFactors action : permanent) {
            double high = action.product(rule.permanent);
            double low = rule.permanent.contains("γ") ? action.favourable() : high;
            factors.put(action.action(), new FactorRange(true, Math.min(low, high), high));
        }
        for (ActionFactors action : together) {
            double high = action.product(action.equals(leading) ? rule.leading : rule.accompanying);
            factors.put(action.action(), new FactorRange(false, 0, high));
        }
        if (!event.isEmpty()) {
            factors.put(event, new FactorRange(false, 0, 1));
        }
        String name = rule.formula + (leading == null ? "" : ", " + leading.action() + " leading");
        situations.putIfAbsent(factors, new Situation(name, factors));
    }

    /** Sets of actions that can act together, none part of another; one empty set where there are none. */
    private static List<Set<ActionFactors>> together(List<ActionFactors> variable) {
        Require.within("number of variable actions", variable.size(), 0, 16, "");
        List<Set<ActionFactors>> sets = new ArrayList<>();
        for (int mask = (1 << variable.size()) - 1; mask >= 0; mask--) {
            Set<ActionFactors> set = new LinkedHashSet<>();
            for (int i = 0; i < variable.size(); i++) {
                if ((mask >> i & 1) == 1) {
                    set.add(variable.get(i));
                }
            }
            if (canAct(set) && sets.stream().noneMatch(larger -> larger.containsAll(set))) {
                sets.removeIf(set::containsAll);
                sets.add(set);
            }
        }
        return sets;
    }

    private static boolean canAct(Set<ActionFactors> set) {
        List<String> names = set.stream().map(ActionFactors::action).toList();
        for (ActionFactors one : set) {
            if (!names.containsAll(one.needs())
                    || !set.stream().allMatch(other -> other.equals(one) || one.goesWith(other))) {
                return false;
            }
        }
        return true;
    }
}
