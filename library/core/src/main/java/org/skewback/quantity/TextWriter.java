package org.skewback.quantity;

import java.util.List;
import org.skewback.quantity.Expression.Value;

/**
 * Writes formulas as plain text, such as {@code g · L² / (8 · f)}.
 *
 * <p>Operators stand between ordinary spaces and numbers keep to their units by a no-break space, so
 * that the text can be read back without doubt: the dot inside {@code kN·m} is never an operator.
 */
public final class TextWriter {

    private static final FormulaWriter WRITER = new FormulaWriter(new PlainText());

    private TextWriter() {}

    /**
     * Writes an expression.
     *
     * @param expression the formula
     * @return one line of text
     */
    public static String write(Expression expression) {
        return WRITER.write(expression);
    }

    /** Text on one line; HTML differs from it in symbols and escapes alone. */
    static class PlainText implements Notation {

        @Override
        public boolean stacksFractions() {
            return false;
        }

        @Override
        public String symbol(String name) {
            return name;
        }

        @Override
        public String value(Value value) {
            return Numerals.withUnit(value.number(), value.unit());
        }

        @Override
        public String bracketed(String inner) {
            return "(" + inner + ")";
        }

        @Override
        public String sign(boolean first, boolean subtracted) {
            if (first) {
                return subtracted ? "−" : "";
            }
            return subtracted ? " − " : " + ";
        }

        @Override
        public String sum(String signsAndTerms) {
            return signsAndTerms;
        }

        @Override
        public String product(List<String> factors) {
            return String.join(times(), factors);
        }

        @Override
        public String times() {
            return " · ";
        }

        @Override
        public String fraction(String numerator, String denominator) {
            return numerator + " / " + denominator;
        }

        @Override
        public String power(String base, Rational exponent) {
            return base + Superscript.of(exponent);
        }

        @Override
        public String root(int degree, String inner) {
            return (degree == 2 ? "√" : "∛") + bracketed(inner);
        }

        @Override
        public String negation(String argument) {
            return "−" + argument;
        }

        @Override
        public String call(String function, List<String> arguments) {
            return function + bracketed(String.join(", ", arguments));
        }

        @Override
        public String tabulated(String table, String argument) {
            return table + bracketed(argument);
        }

        @Override
        public String absolute(String argument) {
            return "|" + argument + "|";
        }

        @Override
        public String chosen(String chosen, String left, String sign, String right) {
            return chosen + " since " + left + " " + sign + " " + right;
        }

        @Override
        public String outcome(String words, List<String> inputs) {
            return words + " " + bracketed(String.join(", ", inputs));
        }

        @Override
        public String words(String text) {
            return text;
        }
    }
}
