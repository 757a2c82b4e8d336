package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Expression.Absolute;
import org.skewback.quantity.Expression.Binding;
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

/** Walks over a formula and decides where brackets stand, the same for every output. */
final class FormulaWriter {

    /** Room for an operator and the gaps around it. */
    private static final int SIGN = 3;

    private final Notation notation;

    FormulaWriter(Notation notation) {
        this.notation = notation;
    }

    String write(Expression expression) {
        if (expression instanceof Symbol symbol) {
            return notation.symbol(symbol.name());
        } else if (expression instanceof Value value) {
            return notation.value(value);
        } else if (expression instanceof Sum sum) {
            return sum(sum.terms());
        } else if (expression instanceof Product product) {
            return notation.product(
                    product.factors().stream().map(f -> within(f, Binding.PRODUCT)).toList());
        } else if (expression instanceof Fraction fraction) {
            return fraction(fraction);
        } else if (expression instanceof Power power) {
            return power(power);
        } else if (expression instanceof Negation negation) {
            return notation.negation(within(negation.argument(), Binding.PRODUCT));
        } else if (expression instanceof Call call) {
            return notation.call(call.function(), all(call.arguments()));
        } else if (expression instanceof Tabulated tabulated) {
            return notation.tabulated(write(tabulated.table()), write(tabulated.argument()));
        } else if (expression instanceof Absolute absolute) {
            return notation.absolute(write(absolute.argument()));
        } else if (expression instanceof Chosen chosen) {
            return notation.chosen(
                    write(chosen.chosen()),
                    write(chosen.left()),
                    chosen.sign(),
                    write(chosen.right()));
        } else if (expression instanceof Outcome outcome) {
            return notation.outcome(outcome.words(), all(outcome.inputs()));
        } else {
            return notation.words(((Words) expression).text());
        }
    }

    /**
     * A part of a formula before which a line may break.
     *
     * @param written the part, with the operator that joins it to what stands before
     * @param width about how many letters wide it is
     */
    record Part(String written, int width) {}

    /**
     * Takes a formula apart at its loosest operators, and what is still too wide at the next.
     *
     * @param expression the formula
     * @param most how wide a part may be before it is taken apart further
     * @return the parts in order; joined, they are the formula
     */
    List<Part> parts(Expression expression, int most) {
        List<Part> parts = new ArrayList<>();
        if (expression instanceof Sum sum) {
            for (Term term : sum.terms()) {
                boolean first = parts.isEmpty();
                String sign = notation.sign(first, term.subtracted());
                boolean wide = PrintedWidth.of(term.expression()) > most;
                if (wide && term.expression() instanceof Product product) {
                    addFactors(parts, sign, product, most);
                } else if (wide && isOpened(term.expression())) {
                    addBracketed(parts, sign, term.expression(), most);
                } else {
                    parts.add(new Part(sign + term(term, first), width(term.expression())));
                }
            }
        } else if (expression instanceof Product product) {
            addFactors(parts, "", product, most);
        } else if (expression instanceof Negation negation
                && negation.argument() instanceof Product product) {
            addFactors(parts, notation.negation(""), product, most);
        } else if (expression instanceof Chosen chosen) {
            parts.addAll(parts(chosen.chosen(), most));
            String condition =
                    notation.chosen("", write(chosen.left()), chosen.sign(), write(chosen.right()));
            parts.add(new Part(condition, width(chosen.left()) + width(chosen.right())));
        } else {
            parts.add(new Part(write(expression), width(expression)));
        }
        return parts;
    }

    /**
     * Writes a formula over several lines where it is wide, broken before an operator.
     *
     * @param expression the formula
     * @param most about how many letters a line may have
     * @return one line or more; joined, they are the formula
     */
    List<String> lines(Expression expression, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int width = 0;
        for (Part part : parts(expression, most)) {
            if (width > 0 && width + part.width() > most) {
                lines.add(line.toString());
                line.setLength(0);
                width = 0;
            }
            line.append(part.written());
            width += part.width();
        }
        lines.add(line.toString());
        return lines;
    }

    private boolean isOpened(Expression expression) {
        return expression instanceof Sum && !notation.brackets().isEmpty();
    }

    /** A sum in brackets too wide for a line, where it may break between the brackets. */
    private void addBracketed(List<Part> parts, String before, Expression sum, int most) {
        List<Part> inner = parts(sum, most);
        String opening = before + notation.brackets().get(0);
        for (int i = 0; i < inner.size(); i++) {
            boolean last = i == inner.size() - 1;
            parts.add(
                    new Part(
                            (i == 0 ? opening : "")
                                    + inner.get(i).written()
                                    + (last ? notation.brackets().get(1) : ""),
                            inner.get(i).width() + (i == 0 || last ? 1 : 0)));
        }
    }

    private void addFactors(List<Part> parts, String before, Product product, int most) {
        String joint = before;
        for (Expression factor : product.factors()) {
            if (PrintedWidth.of(factor) > most && isOpened(factor)) {
                addBracketed(parts, joint, factor, most);
            } else {
                parts.add(new Part(joint + within(factor, Binding.PRODUCT), width(factor)));
            }
            joint = notation.times();
        }
    }

    private static int width(Expression expression) {
        return SIGN + PrintedWidth.of(expression);
    }

    private List<String> all(List<Expression> expressions) {
        return expressions.stream().map(this::write).toList();
    }

    private String sum(List<Term> terms) {
        StringBuilder written = new StringBuilder();
        for (Term term : terms) {
            boolean first = written.length() == 0;
            written.append(notation.sign(first, term.subtracted()));
            written.append(term(term, first));
        }
        return notation.sum(written.toString());
    }

    private String term(Term term, boolean first) {
        // A negative number may lead a sum without brackets; anywhere else it needs them.
        boolean leads = first && !term.subtracted() && term.expression() instanceof Value;
        return leads ? write(term.expression()) : within(term.expression(), Binding.PRODUCT);
    }

    private String fraction(Fraction fraction) {
        if (notation.stacksFractions()) {
            return notation.fraction(write(fraction.numerator()), write(fraction.denominator()));
        }
        boolean number = fraction.denominator() instanceof Value;
        return notation.fraction(
                within(fraction.numerator(), Binding.PRODUCT),
                within(fraction.denominator(), number ? Binding.PRODUCT : Binding.POWER));
    }

    private String power(Power power) {
        if (power.isRoot()) {
            return notation.root(power.exponent().denominator(), write(power.base()));
        }
        return notation.power(within(power.base(), Binding.ATOM), power.exponent());
    }

    private String within(Expression expression, Binding least) {
        String written = write(expression);
        return expression.binding().compareTo(least) < 0 ? notation.bracketed(written) : written;
    }
}
