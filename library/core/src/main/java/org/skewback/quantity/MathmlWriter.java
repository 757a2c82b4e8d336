package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.skewback.quantity.Expression.Value;

/** Writes formulas as MathML Core, for pages. */
public final class MathmlWriter {

    /** A sign that leads a line still joins it to the line before. */
    private static final Pattern LEADING_SIGN =
            Pattern.compile("^<mo>(?=(?:[+−·≤≥=]|&lt;|&gt;)</mo>)");

    private static final Notation MATHML = new Mathml();
    private static final FormulaWriter WRITER = new FormulaWriter(MATHML);

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
     * Writes an expression over several lines where it is wide, see {@link FormulaLines}.
     *
     * @param expression the formula
     * @param most about how many letters a line may have
     * @return one line or more of presentation markup, each well-formed
     */
    static List<String> lines(Expression expression, int most) {
        return PrintedWidth.of(expression) <= most
                ? List.of(write(expression))
                : resumed(FormulaLines.of(MATHML, expression, most));
    }

    private static List<String> resumed(List<String> lines) {
        List<String> resumed = new ArrayList<>(lines);
        for (int i = 1; i < lines.size(); i++) {
            resumed.set(i, LEADING_SIGN.matcher(lines.get(i)).replaceFirst("<mo form=\"infix\">"));
        }
        return resumed;
    }

    private static final class Mathml implements OpenNotation {

        /** Stands unseen between a function and its arguments. */
        private static final String APPLIED = "<mo>&#x2061;</mo>";

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
            return row(opening() + inner + closing());
        }

        @Override
        public String opening() {
            return "<mo>(</mo>";
        }

        @Override
        public String closing() {
            return "<mo>)</mo>";
        }

        @Override
        public String separator() {
            return "<mo>,</mo>";
        }

        @Override
        public String bar() {
            return "<mo>|</mo>";
        }

        @Override
        public String function(String name) {
            return "<mi>" + escape(name) + "</mi>" + APPLIED;
        }

        @Override
        public String table(String symbol) {
            return symbol + APPLIED;
        }

        @Override
        public String word(String word) {
            return "<mtext>" + escape(word) + "\u00A0</mtext>";
        }

        @Override
        public String since() {
            return "<mtext>\u00A0since\u00A0</mtext>";
        }

        @Override
        public String relation(String sign) {
            return "<mo>" + escape(sign) + "</mo>";
        }

        @Override
        public String stacked(List<String> lines) {
            return resumed(lines).stream()
                    .collect(
                            Collectors.joining(
                                    "</mrow></mtd></mtr><mtr><mtd class=\"right\"><mrow>",
                                    "<mtable><mtr><mtd class=\"right\"><mrow>",
                                    "</mrow></mtd></mtr></mtable>"));
        }

        @Override
        public String sign(boolean first, boolean subtracted) {
            if (first) {
                return subtracted ? "<mo form=\"prefix\">−</mo>" : "";
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
            return row(function(function) + listed(arguments));
        }

        @Override
        public String tabulated(String table, String argument) {
            return row(table(table) + listed(List.of(argument)));
        }

        @Override
        public String absolute(String argument) {
            return row(bar() + argument + bar());
        }

        @Override
        public String chosen(String chosen, String left, String sign, String right) {
            return row(chosen + since() + left + relation(sign) + right);
        }

        @Override
        public String outcome(String words, List<String> inputs) {
            return row("<mtext>\u00A0" + escape(words) + "\u00A0</mtext>" + listed(inputs));
        }

        @Override
        public String words(String text) {
            return "<mtext>" + escape(text) + "</mtext>";
        }

        private String listed(List<String> parts) {
            return opening() + row(String.join(separator(), parts)) + closing();
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
