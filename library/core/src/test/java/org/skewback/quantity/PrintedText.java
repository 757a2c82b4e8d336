package org.skewback.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Evaluates printed text by the ordinary rules of arithmetic. It shares nothing with the code that
 * prints: it has its own grammar, its own functions and its own few units.
 */
final class PrintedText {

    private static final Map<String, Double> UNITS =
            Map.of("m", 1.0, "kN", 1e3, "mm", 1e-3, "kN/m", 1e3, "MPa", 1e6);
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private final String text;
    private final Map<String, Double> symbols;
    private int at;

    private PrintedText(String text, Map<String, Double> symbols) {
        this.text = text;
        this.symbols = symbols;
    }

    static double evaluate(String text, Map<String, Double> symbols) {
        PrintedText parser = new PrintedText(text, symbols);
        double value = parser.sum();
        if (parser.at != text.length()) {
            throw new AssertionError("cannot read on at " + text.substring(parser.at));
        }
        return value;
    }

    private double sum() {
        double value = take("−") ? -product() : product();
        while (true) {
            if (take(" + ")) {
                value += product();
            } else if (take(" − ")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take(" · ")) {
                value *= power();
            } else if (take(" / ")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double base = atom();
        if (take("^(")) {
            int close = text.indexOf(')', at);
            String[] parts = text.substring(at, close).split("/");
            at = close + 1;
            return Math.pow(base, Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]));
        }
        boolean negative = take("⁻");
        String digits = "";
        while (at < text.length() && RAISED.indexOf(text.charAt(at)) >= 0) {
            digits += RAISED.indexOf(text.charAt(at++));
        }
        return digits.isEmpty()
                ? base
                : Math.pow(base, (negative ? -1 : 1) * Double.parseDouble(digits));
    }

    private double atom() {
        if (take("(")) {
            double value = sum();
            expect(")");
            return value;
        }
        if (take("|")) {
            double value = sum();
            expect("|");
            return Math.abs(value);
        }
        if (take("√(")) {
            double value = sum();
            expect(")");
            return Math.sqrt(value);
        }
        return Character.isDigit(text.charAt(at)) ? number() : nameOrFunction();
    }

    private double number() {
        StringBuilder digits = new StringBuilder();
        while (at < text.length() && "0123456789.\u202F".indexOf(text.charAt(at)) >= 0) {
            char c = text.charAt(at++);
            if (c != '\u202F') {
                digits.append(c);
            }
        }
        double value = Double.parseDouble(digits.toString());
        if (take("\u00A0×\u00A010")) {
            boolean negative = take("⁻");
            String power = "";
            while (at < text.length() && RAISED.indexOf(text.charAt(at)) >= 0) {
                power += RAISED.indexOf(text.charAt(at++));
            }
            value *= Math.pow(10, (negative ? -1 : 1) * Double.parseDouble(power));
        }
        if (take("\u00A0")) {
            int end = at;
            while (end < text.length() && " )²³|,⁰¹⁴⁵⁶⁷⁸⁹⁻^".indexOf(text.charAt(end)) < 0) {
                end++;
            }
            value *= UNITS.get(text.substring(at, end));
            at = end;
        }
        return value;
    }

    private double nameOrFunction() {
        int start = at;
        while (at < text.length()
                && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')
                && RAISED.indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String name = text.substring(start, at);
        if (!take("(")) {
            return symbols.get(name);
        }
        List<Double> arguments = new ArrayList<>();
        do {
            arguments.add(sum());
        } while (take(", "));
        expect(")");
        double x = arguments.get(0);
        return switch (name) {
            case "exp" -> Math.exp(x);
            case "ln" -> Math.log(x);
            case "sin" -> Math.sin(x);
            case "arctan" -> Math.atan(x);
            case "cosh" -> Math.cosh(x);
            case "tanh" -> Math.tanh(x);
            case "arsinh" -> Math.log(x + Math.sqrt(x * x + 1));
            case "max" -> Collections.max(arguments);
            default -> throw new AssertionError("unknown function " + name);
        };
    }

    private boolean take(String wanted) {
        if (text.startsWith(wanted, at)) {
            at += wanted.length();
            return true;
        }
        return false;
    }

    private void expect(String wanted) {
        if (!take(wanted)) {
            throw new AssertionError(wanted + " missing at " + text.substring(at));
        }
    }
}
