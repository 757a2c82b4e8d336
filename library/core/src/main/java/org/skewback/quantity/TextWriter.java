package org.skewback.quantity;

import java.util.List;
import java.util.stream.Collectors;
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
import org.skewback.quantity.Expression.Term;
import org.skewback.quantity.Expression.Value;
import org.skewback.quantity.Expression.Words;

/**
 * Writes formulas as plain text, such as {@code g · L² / (8 · f)}.
 *
 * <p>Operators stand between ordinary spaces and numbers keep to their units by a no-break space, so
 * that the text can be read back without doubt: the dot inside {@code kN·m} is never an operator.
 */
public final class TextWriter {

    private TextWriter() {}

    /**
     * Writes an expression.
     *
     * @param expression the formula
     * @return one line of text
     */
    public static String write(Expression expression) {
        if (expression instanceof Symbol symbol) {
            return symbol.name();
        } else if (expression instanceof Value value) {
            return Numerals.withUnit(value.number(), value.unit());
        } else if (expression instanceof Sum sum) {
            return sum(sum.terms());
        } else if (expression instanceof Product product) {
            return product.factors().stream()
                    .map(factor -> within(factor, Binding.PRODUCT))
                    .collect(Collectors.joining(" · "));
        } else if (expression instanceof Fraction fraction) {
            return within(fraction.numerator(), Binding.PRODUCT)
                    + " / "
                    + within(
                            fraction.denominator(),
                            fraction.denominator() instanceof Value
                                    ? Binding.PRODUCT
                                    : Binding.POWER);
        } else if (expression instanceof Power power) {
            return power(power);
        } else if (expression instanceof Negation negation) {
            return "−" + within(negation.argument(), Binding.PRODUCT);
        } else if (expression instanceof Call call) {
            return call.function()
                    + call.arguments().stream()
                            .map(TextWriter::write)
                            .collect(Collectors.joining(", ", "(", ")"));
        } else if (expression instanceof Absolute absolute) {
            return "|" + write(absolute.argument()) + "|";
        } else if (expression instanceof Chosen chosen) {
            return write(chosen.chosen())
                    + " since "
                    + write(chosen.left())
                    + " "
                    + chosen.sign()
                    + " "
                    + write(chosen.right());
        } else if (expression instanceof Outcome outcome) {
            return outcome.words()
                    + outcome.inputs().stream()
                            .map(TextWriter::write)
                            .collect(Collectors.joining(", ", " (", ")"));
        } else {
            return ((Words) expression).text();
        }
    }

    private static String sum(List<Term> terms) {
        StringBuilder text = new StringBuilder();
        for (Term term : terms) {
            boolean head = text.length() == 0;
            if (!head) {
                text.append(term.subtracted() ? " − " : " + ");
            } else if (term.subtracted()) {
                text.append("−");
            }
            boolean bare = head && !term.subtracted() && term.expression() instanceof Value;
            text.append(
                    bare ? write(term.expression()) : within(term.expression(), Binding.PRODUCT));
        }
        return text.toString();
    }

    private static String power(Power power) {
        if (power.isRoot()) {
            String sign = power.exponent().denominator() == 2 ? "√" : "∛";
            return sign + "(" + write(power.base()) + ")";
        }
        return within(power.base(), Binding.ATOM) + Superscript.of(power.exponent());
    }

    private static String within(Expression expression, Binding least) {
        String text = write(expression);
        return expression.binding().compareTo(least) < 0 ? "(" + text + ")" : text;
    }
}
