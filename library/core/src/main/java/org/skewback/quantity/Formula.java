package org.skewback.quantity;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.skewback.quantity.Expression.Absolute;
import org.skewback.quantity.Expression.Call;
import org.skewback.quantity.Expression.Chosen;
import org.skewback.quantity.Expression.Fraction;
import org.skewback.quantity.Expression.Negation;
import org.skewback.quantity.Expression.Outcome;
import org.skewback.quantity.Expression.Power;
import org.skewback.quantity.Expression.Product;
import org.skewback.quantity.Expression.Sum;
import org.skewback.quantity.Expression.Symbol;
import org.skewback.quantity.Expression.Tabulated;
import org.skewback.quantity.Expression.Term;
import org.skewback.quantity.Expression.Value;
import org.skewback.quantity.Expression.Words;

/** Draws formulas from the graph: each ends at the nearest quantities that have a name. */
public final class Formula {

    /** More operations than this nobody can read; the words that stand instead say what to do. */
    private static final int LONGEST = 120;

    private static final int ARGUMENTS_SHOWN = 6;

    private static final Expression MINUS_ONE = new Value("−1", "");
    private static final Expression PI = new Symbol("π");

    private final boolean numbersPutIn;
    private final IdentityHashMap<Quantity, Expression> drawn = new IdentityHashMap<>();
    private final IdentityHashMap<Quantity, Integer> sizes = new IdentityHashMap<>();

    private Formula(boolean numbersPutIn) {
        this.numbersPutIn = numbersPutIn;
    }

    /**
     * Draws the formula in symbols.
     *
     * @param quantity whose formula; if it has a name itself, what the name stands for
     * @return the formula
     */
    public static Expression symbolic(Quantity quantity) {
        return new Formula(false).draw(quantity);
    }

    /**
     * Draws the formula with numbers put in for the symbols.
     *
     * @param quantity whose formula
     * @return the formula in numbers with units
     */
    public static Expression numeric(Quantity quantity) {
        return new Formula(true).draw(quantity);
    }

    /**
     * Gives the value as an expression.
     *
     * @param quantity any quantity
     * @return the value in the unit that the quantity shows
     */
    public static Value value(Quantity quantity) {
        return new Value(Numerals.of(quantity), quantity.unit().symbol());
    }

    private Expression draw(Quantity root) {
        for (Quantity node :
                Graph.ordered(List.of(root), n -> n.isSameNode(root) || n.symbol() == null)) {
            int size = 1;
            for (Quantity operand : operandsShown(node, root)) {
                size = Math.min(LONGEST + 1, size + sizes.getOrDefault(operand, 1));
            }
            sizes.put(node, size);
            if (size > LONGEST) {
                return new Words("a formula of more than " + LONGEST + " operations");
            }
            drawn.put(node, node.isSameNode(root) ? definition(node) : mention(node));
        }
        return shown(root);
    }

    private static List<Quantity> operandsShown(Quantity node, Quantity root) {
        boolean ends = !node.isSameNode(root) && node.symbol() != null;
        return ends || node.operation() == Operation.ROUTINE ? List.of() : node.operands();
    }

    private Expression mention(Quantity node) {
        String symbol = node.symbol();
        if (symbol == null) {
            return definition(node);
        }
        return numbersPutIn ? value(node) : new Symbol(symbol);
    }

    private Expression definition(Quantity node) {
        List<Quantity> operands = node.operands();
        return switch (node.operation()) {
            case VALUE, GIVEN -> leaf(node);
            case NAMED -> shown(operands.get(0));
            case ADD -> sum(shown(operands.get(0)), false, shown(operands.get(1)));
            case SUBTRACT -> sum(shown(operands.get(0)), true, shown(operands.get(1)));
            case SUM -> sum(operands);
            case MULTIPLY -> product(shown(operands.get(0)), shown(operands.get(1)));
            case DIVIDE -> quotient(shown(operands.get(0)), shown(operands.get(1)));
            case NEGATE -> new Negation(shown(operands.get(0)));
            case POWER -> new Power(shown(operands.get(0)), exponent(node));
            case ABS -> new Absolute(shown(operands.get(0)));
            case CHOOSE -> chosen(node);
            case INTERPOLATED -> tabulated(node);
            case ROUTINE -> numbersPutIn ? value(node) : routine(node);
            case MIN, MAX -> extreme(node);
            default ->
                    new Call(
                            node.operation().published(),
                            operands.stream().map(this::shown).toList());
        };
    }

    private Expression shown(Quantity operand) {
        Expression expression = drawn.get(operand);
        if (expression == null) {
            throw new IllegalStateException("an operand is drawn before what it gave");
        }
        return expression;
    }

    private static Rational exponent(Quantity node) {
        return node.detail() instanceof Rational exponent ? exponent : Rational.of(1);
    }

    private static Expression sum(Expression left, boolean subtracted, Expression right) {
        List<Term> terms = new ArrayList<>();
        append(terms, left);
        if (subtracted) {
            terms.add(new Term(true, right));
        } else {
            append(terms, right);
        }
        return new Sum(terms);
    }

    private Expression sum(List<Quantity> operands) {
        List<Term> terms = new ArrayList<>();
        for (Quantity operand : operands) {
            append(terms, shown(operand));
        }
        return terms.size() == 1 ? terms.get(0).expression() : new Sum(terms);
    }

    private static void append(List<Term> terms, Expression expression) {
        if (expression instanceof Sum inner) {
            terms.addAll(inner.terms());
        } else if (expression instanceof Negation negation) {
            terms.add(new Term(true, negation.argument()));
        } else {
            terms.add(new Term(false, expression));
        }
    }

    /** Minus one times something is a change of sign, and is written as one. */
    private static Expression product(Expression left, Expression right) {
        if (left.equals(MINUS_ONE)) {
            return new Negation(right);
        } else if (right.equals(MINUS_ONE)) {
            return new Negation(left);
        } else if (left instanceof Negation negation) {
            return new Negation(product(negation.argument(), right));
        }
        List<Expression> factors = new ArrayList<>();
        boolean numberLast = isPlainNumber(right) && !isPlainNumber(left);
        appendFactors(factors, numberLast ? right : left);
        appendFactors(factors, numberLast ? left : right);
        return new Product(factors);
    }

    /**
     * Writes the circle's number by its letter (ISO 80000-2) where an author wrote it
     * into the formula, alone, doubled or squared; sixteen digits of it tell nobody what it is.
     */
    private static Expression leaf(Quantity node) {
        if (!node.unit().symbol().isEmpty() || node.source() != null) {
            return value(node);
        }
        double number = node.si();
        if (number == Math.PI) {
            return PI;
        } else if (number == 2 * Math.PI) {
            return new Product(List.of(new Value("2", ""), PI));
        } else if (number == Math.PI * Math.PI) {
            return new Power(PI, Rational.of(2));
        }
        return value(node);
    }

    private static Expression quotient(Expression left, Expression right) {
        return left instanceof Negation negation
                ? new Negation(new Fraction(negation.argument(), right))
                : new Fraction(left, right);
    }

    private static void appendFactors(List<Expression> factors, Expression expression) {
        if (expression instanceof Product inner) {
            factors.addAll(inner.factors());
        } else {
            factors.add(expression);
        }
    }

    /** 8 · f reads better than f · 8, and the product is the same to the last bit. */
    private static boolean isPlainNumber(Expression expression) {
        if (expression instanceof Power power) {
            return power.base().equals(PI);
        } else if (expression instanceof Product product) {
            return product.factors().stream().allMatch(Formula::isPlainNumber);
        }
        return expression.equals(PI)
                || (expression instanceof Value value && value.unit().isEmpty());
    }

    private Expression chosen(Quantity node) {
        if (!(node.detail() instanceof Guard guard)) {
            throw new IllegalStateException("a choice without a condition");
        }
        List<Quantity> operands = node.operands();
        Relation relation = guard.condition().relation();
        String sign =
                guard.held()
                        ? relation.sign()
                        : switch (relation) {
                            case AT_MOST -> Relation.MORE.sign();
                            case LESS -> Relation.AT_LEAST.sign();
                            case AT_LEAST -> Relation.LESS.sign();
                            case MORE -> Relation.AT_MOST.sign();
                        };
        return new Chosen(
                shown(operands.get(0)), shown(operands.get(1)), sign, shown(operands.get(2)));
    }

    /** The least of the least of a and b, and c, is the least of a, b and c. */
    private Expression extreme(Quantity node) {
        String function = node.operation().published();
        List<Expression> arguments = new ArrayList<>();
        for (Quantity operand : node.operands()) {
            Expression shown = shown(operand);
            if (shown instanceof Call inner && inner.function().equals(function)) {
                arguments.addAll(inner.arguments());
            } else {
                arguments.add(shown);
            }
        }
        return new Call(function, arguments);
    }

    private Expression tabulated(Quantity node) {
        if (!(node.detail() instanceof InterpolationTable table)) {
            throw new IllegalStateException("a value from a table without the table");
        }
        return new Tabulated(new Symbol(table.symbol()), shown(node.operands().get(0)));
    }

    private static Expression routine(Quantity node) {
        if (!(node.detail() instanceof RoutineOutput output)) {
            throw new IllegalStateException("a routine's result without its call");
        }
        List<Quantity> inputs = output.call().inputs();
        List<Expression> shown = new ArrayList<>();
        if (inputs.size() <= ARGUMENTS_SHOWN) {
            inputs.forEach(input -> shown.add(named(input)));
        } else {
            shown.add(named(inputs.get(0)));
            shown.add(new Words("…"));
            shown.add(named(inputs.get(inputs.size() - 1)));
        }
        return new Outcome(output.inWords(), output.call().name(), shown);
    }

    private static Expression named(Quantity input) {
        String symbol = input.symbol();
        return symbol != null ? new Symbol(symbol) : value(input);
    }
}
