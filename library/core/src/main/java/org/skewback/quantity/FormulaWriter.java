package org.skewback.quantity;

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

    /** Writes a part of a formula, in brackets where it binds more loosely than is needed there. */
    String within(Expression expression, Binding least) {
        String written = write(expression);
        return expression.binding().compareTo(least) < 0 ? notation.bracketed(written) : written;
    }
}
