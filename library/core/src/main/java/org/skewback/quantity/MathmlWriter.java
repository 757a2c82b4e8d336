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
import org.skewback.quantity.Expression.Term;
import org.skewback.quantity.Expression.Value;
import org.skewback.quantity.Expression.Words;

/** Writes formulas as MathML Core, for pages. */
public final class MathmlWriter {

    private MathmlWriter() {}

    /**
     * Writes an expression.
     *
     * @param expression the formula
     * @return presentation markup to stand inside {@code <math>}; well-formed, all text escaped
     */
    public static String write(Expression expression) {
        if (expression instanceof Symbol symbol) {
            return symbol(symbol.name());
        } else if (expression instanceof Value value) {
            return value(value);
        } else if (expression instanceof Sum sum) {
            return sum(sum.terms());
        } else if (expression instanceof Product product) {
            return joined(product.factors(), Binding.PRODUCT, "<mo>·</mo>");
        } else if (expression instanceof Fraction fraction) {
            return "<mfrac>"
                    + row(write(fraction.numerator()))
                    + row(write(fraction.denominator()))
                    + "</mfrac>";
        } else if (expression instanceof Power power) {
            return power(power);
        } else if (expression instanceof Negation negation) {
            return row("<mo>−</mo>" + within(negation.argument(), Binding.PRODUCT));
        } else if (expression instanceof Call call) {
            return row(
                    "<mi>"
                            + escape(call.function())
                            + "</mi><mo>&#x2061;</mo><mo>(</mo>"
                            + joined(call.arguments(), Binding.SUM, "<mo>,</mo>")
                            + "<mo>)</mo>");
        } else if (expression instanceof Absolute absolute) {
            return row("<mo>|</mo>" + write(absolute.argument()) + "<mo>|</mo>");
        } else if (expression instanceof Chosen chosen) {
            return row(
                    write(chosen.chosen())
                            + "<mtext>\u00A0since\u00A0</mtext>"
                            + write(chosen.left())
                            + "<mo>"
                            + escape(chosen.sign())
                            + "</mo>"
                            + write(chosen.right()));
        } else if (expression instanceof Outcome outcome) {
            return row(
                    "<mtext>\u00A0"
                            + escape(outcome.words())
                            + "\u00A0</mtext><mo>(</mo>"
                            + joined(outcome.inputs(), Binding.SUM, "<mo>,</mo>")
                            + "<mo>)</mo>");
        } else {
            return "<mtext>" + escape(((Words) expression).text()) + "</mtext>";
        }
    }

    private static String joined(List<Expression> parts, Binding least, String operator) {
        StringBuilder markup = new StringBuilder();
        for (Expression part : parts) {
            if (markup.length() > 0) {
                markup.append(operator);
            }
            boolean bracketless = part instanceof Fraction;
            markup.append(bracketless ? write(part) : within(part, least));
        }
        return row(markup.toString());
    }

    private static String sum(List<Term> terms) {
        StringBuilder markup = new StringBuilder();
        for (Term term : terms) {
            boolean head = markup.length() == 0;
            if (term.subtracted()) {
                markup.append("<mo>−</mo>");
            } else if (!head) {
                markup.append("<mo>+</mo>");
            }
            boolean bare = head && !term.subtracted() && term.expression() instanceof Value;
            markup.append(
                    bare ? write(term.expression()) : within(term.expression(), Binding.PRODUCT));
        }
        return row(markup.toString());
    }

    private static String power(Power power) {
        if (power.isRoot()) {
            String base = row(write(power.base()));
            return power.exponent().denominator() == 2
                    ? "<msqrt>" + base + "</msqrt>"
                    : "<mroot>" + base + "<mn>3</mn></mroot>";
        }
        String exponent = power.exponent().toString().replace('-', '−');
        return "<msup>"
                + row(within(power.base(), Binding.ATOM))
                + "<mn>"
                + exponent
                + "</mn></msup>";
    }

    private static String within(Expression expression, Binding least) {
        String markup = write(expression);
        return expression.binding().compareTo(least) < 0
                ? row("<mo>(</mo>" + markup + "<mo>)</mo>")
                : markup;
    }

    private static String symbol(String name) {
        int underscore = name.indexOf('_');
        if (underscore < 0) {
            return identifier(name);
        }
        return "<msub>"
                + identifier(name.substring(0, underscore))
                + identifier(name.substring(underscore + 1))
                + "</msub>";
    }

    /** One letter is set in italics by itself; a digit or a word is upright. */
    private static String identifier(String text) {
        return text.chars().allMatch(Character::isDigit)
                ? "<mn>" + text + "</mn>"
                : "<mi>" + escape(text) + "</mi>";
    }

    private static String value(Value value) {
        String number = "<mn>" + escape(value.number()) + "</mn>";
        if (value.unit().isEmpty()) {
            return number;
        }
        String gap = Numerals.standsClose(value.unit()) ? "" : "\u00A0";
        return row(number + "<mtext>" + gap + escape(value.unit()) + "</mtext>");
    }

    private static String row(String markup) {
        return "<mrow>" + markup + "</mrow>";
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
