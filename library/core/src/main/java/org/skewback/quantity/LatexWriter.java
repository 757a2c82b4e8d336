package org.skewback.quantity;

import java.util.List;
import java.util.Map;
import org.skewback.quantity.Expression.Value;

/** Writes formulas as LaTeX mathematics, for notebooks and for print. */
public final class LatexWriter {

    private static final Map<String, String> FUNCTIONS =
            Map.ofEntries(
                    Map.entry("sin", "\\sin"),
                    Map.entry("cos", "\\cos"),
                    Map.entry("tan", "\\tan"),
                    Map.entry("arcsin", "\\arcsin"),
                    Map.entry("arccos", "\\arccos"),
                    Map.entry("arctan", "\\arctan"),
                    Map.entry("sinh", "\\sinh"),
                    Map.entry("cosh", "\\cosh"),
                    Map.entry("tanh", "\\tanh"),
                    Map.entry("exp", "\\exp"),
                    Map.entry("ln", "\\ln"),
                    Map.entry("lg", "\\lg"),
                    Map.entry("min", "\\min"),
                    Map.entry("max", "\\max"));

    private static final Map<String, String> SIGNS =
            Map.of("≤", "\\le", "≥", "\\ge", "<", "<", ">", ">");

    private static final String GREEK = "αβγδεζηθικλμνξπρστυφχψωΓΔΘΛΞΠΣΥΦΨΩ";

    private static final List<String> GREEK_COMMANDS =
            List.of(
                    "alpha",
                    "beta",
                    "gamma",
                    "delta",
                    "varepsilon",
                    "zeta",
                    "eta",
                    "theta",
                    "iota",
                    "kappa",
                    "lambda",
                    "mu",
                    "nu",
                    "xi",
                    "pi",
                    "rho",
                    "sigma",
                    "tau",
                    "upsilon",
                    "varphi",
                    "chi",
                    "psi",
                    "omega",
                    "Gamma",
                    "Delta",
                    "Theta",
                    "Lambda",
                    "Xi",
                    "Pi",
                    "Sigma",
                    "Upsilon",
                    "Phi",
                    "Psi",
                    "Omega");

    /** About as many letters as a notebook shows beside each other. */
    private static final int WIDTH = 80;

    private static final Notation LATEX = new Latex();
    private static final FormulaWriter WRITER = new FormulaWriter(LATEX);

    private LatexWriter() {}

    /**
     * Writes an expression.
     *
     * @param expression the formula
     * @return LaTeX for mathematics mode, without dollar signs
     */
    public static String write(Expression expression) {
        return WRITER.write(expression);
    }

    /**
     * Writes an expression over several lines where it is wide, broken before + − · at the top, and
     * never inside brackets or a fraction.
     *
     * @param expression the formula
     * @return one line or more; joined, they are what {@link #write} gives
     */
    static List<String> lines(Expression expression) {
        return FormulaLines.of(LATEX, expression, WIDTH);
    }

    private static final class Latex implements Notation {

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
            return "\\left(" + inner + "\\right)";
        }

        @Override
        public String sign(boolean first, boolean subtracted) {
            if (first) {
                return subtracted ? "-" : "";
            }
            return subtracted ? " - " : " + ";
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
            return " \\cdot ";
        }

        @Override
        public String fraction(String numerator, String denominator) {
            return "\\frac{" + numerator + "}{" + denominator + "}";
        }

        @Override
        public String power(String base, Rational exponent) {
            return base + "^{" + exponent + "}";
        }

        @Override
        public String root(int degree, String inner) {
            return "\\sqrt" + (degree == 2 ? "" : "[" + degree + "]") + "{" + inner + "}";
        }

        @Override
        public String negation(String argument) {
            return "-" + argument;
        }

        @Override
        public String call(String function, List<String> arguments) {
            String command = FUNCTIONS.getOrDefault(function, "\\operatorname{" + function + "}");
            return command + bracketed(String.join(",\\, ", arguments));
        }

        @Override
        public String tabulated(String table, String argument) {
            return table + bracketed(argument);
        }

        @Override
        public String absolute(String argument) {
            return "\\left|" + argument + "\\right|";
        }

        @Override
        public String chosen(String chosen, String left, String sign, String right) {
            return chosen
                    + "\\quad\\text{since}\\quad "
                    + left
                    + " "
                    + SIGNS.getOrDefault(sign, sign)
                    + " "
                    + right;
        }

        @Override
        public String outcome(String words, List<String> inputs) {
            return words(words) + "\\ " + bracketed(String.join(",\\, ", inputs));
        }

        @Override
        public String words(String text) {
            return text.equals("…") ? "\\dots" : "\\text{" + plainWords(text) + "}";
        }
    }

    private static String named(String name) {
        int underscore = name.indexOf('_');
        if (underscore < 0) {
            return letters(name);
        }
        String subscript = name.substring(underscore + 1);
        return letters(name.substring(0, underscore)) + "_{" + letters(subscript) + "}";
    }

    /** One letter is a variable, set in italics; a word is upright (ISO 80000-1, 7.1). */
    private static String letters(String text) {
        StringBuilder latex = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int greek = GREEK.indexOf(c);
            if (greek >= 0) {
                latex.append('\\').append(GREEK_COMMANDS.get(greek)).append(' ');
            } else if (c == '′') {
                latex.append("'");
            } else if (c == '″') {
                latex.append("''");
            } else {
                latex.append(c == '−' ? '-' : c);
            }
        }
        boolean primed = text.length() == 2 && "′″".indexOf(text.charAt(1)) >= 0;
        boolean oneLetter = text.length() == 1 || primed;
        boolean hasCommand = latex.indexOf("\\") >= 0;
        return oneLetter || hasCommand ? latex.toString().strip() : "\\mathrm{" + latex + "}";
    }

    private static String valued(Value value) {
        String number = number(value.number());
        if (value.unit().isEmpty()) {
            return number;
        }
        String unit = unit(value.unit());
        return Numerals.standsClose(value.unit()) ? number + unit : number + "\\ " + unit;
    }

    private static String number(String printed) {
        return raised(
                printed.replace(String.valueOf(Numerals.GROUP), "\\,")
                        .replace(Numerals.BEFORE_UNIT + "×" + Numerals.BEFORE_UNIT, " \\times ")
                        .replace('−', '-'));
    }

    private static String unit(String symbol) {
        if (symbol.equals("°")) {
            return "^{\\circ}";
        }
        return "\\mathrm{"
                + raised(symbol)
                        .replace("·", "{\\cdot}")
                        .replace("°C", "{}^{\\circ}C")
                        .replace("%", "\\%")
                        .replace("µ", "\\mu ")
                        .replace("μ", "\\mu ")
                + "}";
    }

    private static String raised(String text) {
        StringBuilder latex = new StringBuilder();
        StringBuilder exponent = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            char lowered = Superscript.lowered(c);
            if (lowered != 0) {
                exponent.append(lowered);
                continue;
            }
            flush(exponent, latex);
            latex.append(c);
        }
        flush(exponent, latex);
        return latex.toString();
    }

    private static void flush(StringBuilder exponent, StringBuilder latex) {
        if (exponent.length() > 0) {
            latex.append("^{").append(exponent).append('}');
            exponent.setLength(0);
        }
    }

    /** Inside text some notebooks read no command at all, so none may be needed there. */
    private static String plainWords(String text) {
        return text.replaceAll("[^\\p{L}\\p{N} .,()-]", " ");
    }
}
