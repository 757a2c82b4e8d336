package org.skewback.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.skewback.display.Displayable;
import org.skewback.quantity.Expression.Outcome;
import org.skewback.quantity.Expression.Symbol;
import org.skewback.quantity.Expression.Words;

/**
 * A quantity worked out: symbol = formula = numbers put in = result.
 *
 * @param sides the sides of the equation in order; a side that says nothing new is left out
 */
public record WorkedStep(List<Expression> sides) implements Displayable {

    /** Longer than this, each side stands on a line of its own. */
    private static final int ONE_LINE = 64;

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param sides the sides of the equation in order; a side that says nothing new is left out
     */
    public WorkedStep {
        sides = List.copyOf(sides);
    }

    /**
     * Works out a quantity from the graph behind it.
     *
     * @param quantity any quantity
     * @return its equation
     */
    public static WorkedStep of(Quantity quantity) {
        List<Expression> sides = new ArrayList<>();
        String symbol = quantity.symbol();
        if (symbol != null) {
            sides.add(new Symbol(symbol));
        }
        Expression result = Formula.value(quantity);
        if (!quantity.isLeaf()) {
            Expression formula = Formula.symbolic(quantity);
            add(sides, formula, result);
            if (!(formula instanceof Words || formula instanceof Outcome)) {
                add(sides, Formula.numeric(quantity), result);
            }
        }
        sides.add(result);
        return new WorkedStep(sides);
    }

    private static void add(List<Expression> sides, Expression side, Expression result) {
        boolean said = !sides.isEmpty() && sides.get(sides.size() - 1).equals(side);
        if (!said && !side.equals(result)) {
            sides.add(side);
        }
    }

    /**
     * Writes the equation as plain text.
     *
     * @return one line, or one line a side where it is long
     */
    public String text() {
        List<String> written = sides.stream().map(TextWriter::write).toList();
        String line = String.join(" = ", written);
        if (line.length() <= ONE_LINE || sides.size() < 3) {
            return line;
        }
        String head = written.get(0);
        return head
                + written.stream()
                        .skip(1)
                        .collect(
                                Collectors.joining(
                                        "\n" + " ".repeat(head.length()) + " = ", " = ", ""));
    }

    /**
     * Writes the equation as LaTeX.
     *
     * @return mathematics for display mode, without dollar signs
     */
    public String latex() {
        List<String> written = sides.stream().map(LatexWriter::write).toList();
        if (isShort()) {
            return String.join(" = ", written);
        }
        return "\\begin{aligned}"
                + written.get(0)
                + written.stream()
                        .skip(1)
                        .collect(Collectors.joining(" \\\\ &= ", " &= ", "\\end{aligned}"));
    }

    /**
     * Writes the equation as MathML.
     *
     * @return a complete {@code <math>} element in display style
     */
    public String mathml() {
        StringBuilder markup = new StringBuilder("<math display=\"block\">");
        if (isShort()) {
            markup.append("<mrow>")
                    .append(
                            sides.stream()
                                    .map(MathmlWriter::write)
                                    .collect(Collectors.joining("<mo>=</mo>")))
                    .append("</mrow>");
        } else {
            markup.append("<mtable displaystyle=\"true\">");
            for (int i = 1; i < sides.size(); i++) {
                markup.append("<mtr><mtd class=\"left\">")
                        .append(i == 1 ? MathmlWriter.write(sides.get(0)) : "")
                        .append("</mtd><mtd class=\"right\"><mrow><mo>=</mo>")
                        .append(MathmlWriter.write(sides.get(i)))
                        .append("</mrow></mtd></mtr>");
            }
            markup.append("</mtable>");
        }
        return markup.append("</math>").toString();
    }

    private boolean isShort() {
        int length = sides.stream().mapToInt(side -> TextWriter.write(side).length()).sum();
        return length <= ONE_LINE || sides.size() < 3;
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put("text/latex", "$$" + latex() + "$$");
        bundle.put("text/plain", text());
        return bundle;
    }

    @Override
    public String toString() {
        return text();
    }
}
