package org.skewback.quantity;

import java.util.List;
import org.skewback.quantity.Expression.Value;

/** Writes formulas as MathML Core, for pages. */
public final class MathmlWriter {

    private static final FormulaWriter WRITER = new FormulaWriter(new Mathml());

    private MathmlWriter() {}

    /**
     * Writes an expression.
     *
     * @param expression the formula
     * @return presentation markup to stand inside {@code <math>}; well-formed, all text escaped
     */
    public static String write(Expression expression) {
        return WRITER.write(expression);
    }

    /**
     * Writes an expression over several lines where it is wide, broken before + − · at the top, and
     * never inside brackets or a fraction.
     *
     * @param expression the formula
     * @param most about how many letters a line may have
     * @return one line or more of presentation markup, each well-formed
     */
    static List<String> lines(Expression expression, int most) {
        return PrintedWidth.of(expression) <= most
                ? List.of(write(expression))
                : WRITER.lines(expression, most);
    }

    private static final class Mathml implements Notation {

        @Override
        public boolean stacksFractions() {
            return true;
        }

        @Override
        public String symbol(String name) {
            return named(name);
        }

        @Override
        public String value(Value value) {
            return valued(value);
        }

        @Override
        public String bracketed(String inner) {
            return row("<mo>(</mo>" + inner + "<mo>)</mo>");
        }

        @Override
        public List<String> brackets() {
            return List.of("<mo>(</mo>", "<mo>)</mo>");
        }

        @Override
        public String sign(boolean first, boolean subtracted) {
            if (first) {
                return subtracted ? "<mo>−</mo>" : "";
            }
            return subtracted ? "<mo>−</mo>" : "<mo>+</mo>";
        }

        @Override
        public String sum(String signsAndTerms) {
            return row(signsAndTerms);
        }

        @Override
        public String product(List<String> factors) {
            return row(String.join(times(), factors));
        }

        @Override
        public String times() {
            return "<mo>·</mo>";
        }

        @Override
        public String fraction(String numerator, String denominator) {
            return "<mfrac>" + row(numerator) + row(denominator) + "</mfrac>";
        }

        @Override
        public String power(String base, Rational exponent) {
            return "<msup>"
                    + row(base)
                    + "<mn>"
                    + exponent.toString().replace('-', '−')
                    + "</mn></msup>";
        }

        @Override
        public String root(int degree, String inner) {
            return degree == 2
                    ? "<msqrt>" + row(inner) + "</msqrt>"
                    : "<mroot>" + row(inner) + "<mn>" + degree + "</mn></mroot>";
        }

        @Override
        public String negation(String argument) {
            return row("<mo>−</mo>" + argument);
        }

        @Override
        public String call(String function, List<String> arguments) {
            return row("<mi>" + escape(function) + "</mi><mo>&#x2061;</mo>" + listed(arguments));
        }

        @Override
        public String tabulated(String table, String argument) {
            return row(table + "<mo>&#x2061;</mo>" + listed(List.of(argument)));
        }

        @Override
        public String absolute(String argument) {
            return row("<mo>|</mo>" + argument + "<mo>|</mo>");
        }

        @Override
        public String chosen(String chosen, String left, String sign, String right) {
            return row(
                    chosen
                            + "<mtext>\u00A0since\u00A0</mtext>"
                            + left
                            + "<mo>"
                            + escape(sign)
                            + "</mo>"
                            + right);
        }

        @Override
        public String outcome(String words, List<String> inputs) {
            return row("<mtext>\u00A0" + escape(words) + "\u00A0</mtext>" + listed(inputs));
        }

        @Override
        public String words(String text) {
            return "<mtext>" + escape(text) + "</mtext>";
        }

        private static String listed(List<String> parts) {
            return "<mo>(</mo>" + row(String.join("<mo>,</mo>", parts)) + "<mo>)</mo>";
        }
    }

    private static String named(String name) {
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

    private static String valued(Value value) {
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
