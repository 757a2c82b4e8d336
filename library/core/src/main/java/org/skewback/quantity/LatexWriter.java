package org.skewback.quantity;

import java.util.List;
import java.util.Map;
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

    private LatexWriter() {}

    /**
     * Writes an expression.
     *
     * @param expression the formula
     * @return LaTeX for mathematics mode, without dollar signs
     */
    public static String write(Expression expression) {
        if (expression instanceof Symbol symbol) {
            return symbol(symbol.name());
        } else if (expression instanceof Value value) {
            return value(value);
        } else if (expression instanceof Sum sum) {
            return sum(sum.terms());
        } else if (expression instanceof Product product) {
            return product.factors().stream()
                    .map(factor -> within(factor, Binding.PRODUCT))
                    .collect(Collectors.joining(" \\cdot "));
        } else if (expression instanceof Fraction fraction) {
            return "\\frac{"
                    + write(fraction.numerator())
                    + "}{"
                    + write(fraction.denominator())
                    + "}";
        } else if (expression instanceof Power power) {
            return power(power);
        } else if (expression instanceof Negation negation) {
            return "-" + within(negation.argument(), Binding.PRODUCT);
        } else if (expression instanceof Call call) {
            String function =
                    FUNCTIONS.getOrDefault(
                            call.function(), "\\operatorname{" + call.function() + "}");
            return function
                    + call.arguments().stream()
                            .map(LatexWriter::write)
                            .collect(Collectors.joining(",\\, ", "\\left(", "\\right)"));
        } else if (expression instanceof Absolute absolute) {
            return "\\left|" + write(absolute.argument()) + "\\right|";
        } else if (expression instanceof Chosen chosen) {
            return write(chosen.chosen())
                    + "\\quad\\text{since}\\quad "
                    + write(chosen.left())
                    + " "
                    + SIGNS.getOrDefault(chosen.sign(), chosen.sign())
                    + " "
                    + write(chosen.right());
        } else if (expression instanceof Outcome outcome) {
            return "\\text{"
                    + words(outcome.words())
                    + "}\\ "
                    + outcome.inputs().stream()
                            .map(LatexWriter::write)
                            .collect(Collectors.joining(",\\, ", "\\left(", "\\right)"));
        } else {
            String text = ((Words) expression).text();
            return text.equals("…") ? "\\dots" : "\\text{" + words(text) + "}";
        }
    }

    private static String sum(List<Term> terms) {
        StringBuilder text = new StringBuilder();
        for (Term term : terms) {
            boolean head = text.length() == 0;
            if (term.subtracted()) {
                text.append(head ? "-" : " - ");
            } else if (!head) {
                text.append(" + ");
            }
            boolean bare = head && !term.subtracted() && term.expression() instanceof Value;
            text.append(
                    bare ? write(term.expression()) : within(term.expression(), Binding.PRODUCT));
        }
        return text.toString();
    }

    private static String power(Power power) {
        if (power.isRoot()) {
            String degree = power.exponent().denominator() == 2 ? "" : "[3]";
            return "\\sqrt" + degree + "{" + write(power.base()) + "}";
        }
        // A fraction has no brackets of its own under an exponent.
        return within(power.base(), Binding.ATOM) + "^{" + power.exponent() + "}";
    }

    private static String within(Expression expression, Binding least) {
        String text = write(expression);
        return expression.binding().compareTo(least) < 0 ? "\\left(" + text + "\\right)" : text;
    }

    private static String symbol(String name) {
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

    private static String value(Value value) {
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
    private static String words(String text) {
        return text.replaceAll("[^\\p{L}\\p{N} .,()-]", " ");
    }
}
