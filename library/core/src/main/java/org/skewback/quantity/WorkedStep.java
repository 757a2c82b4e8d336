package org.skewback.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.skewback.display.Displayable;
import org.skewback.quantity.Expression.Outcome;
import org.skewback.quantity.Expression.Symbol;
import org.skewback.quantity.Expression.Value;
import org.skewback.quantity.Expression.Words;

/**
 * A quantity worked out: symbol = formula = numbers put in = result.
 *
 * @param sides the sides of the equation in order; a side that says nothing new is left out
 */
public record WorkedStep(List<Expression> sides) implements Displayable {

    /** Longer than this, each side stands on a line of its own. */
    private static final int ONE_LINE = 64;

    private static final String EQUALS = " = ";

    private static final int FEWEST_LETTERS = 20;

    /** Room for an equals sign and the gaps around it. */
    private static final int JOINT = 3;

    private static final String FURTHER_IN = "<mspace width=\"1.5em\"/>";

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
        return of(quantity, Formula.value(quantity));
    }

    /**
     * Works out a quantity and states the result with a count of significant digits.
     *
     * @param quantity any quantity
     * @param digits significant digits of the result, from 1 to 17
     * @return its equation
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public static WorkedStep of(Quantity quantity, int digits) {
        Unit unit = quantity.unit();
        return of(
                quantity,
                new Value(Numerals.significant(quantity.in(unit), digits), unit.symbol()));
    }

    private static WorkedStep of(Quantity quantity, Value result) {
        List<Expression> sides = new ArrayList<>();
        String symbol = quantity.symbol();
        if (symbol != null) {
            sides.add(new Symbol(symbol));
        }
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
     * @return one line, or one line a side where it is long; a side of more than 88 characters is
     *     broken where it binds most loosely, and stands indented behind its equals sign
     */
    public String text() {
        List<String> written = sides.stream().map(TextWriter::write).toList();
        String line = String.join(EQUALS, written);
        if (line.length() <= ONE_LINE || (sides.size() < 3 && line.length() <= TextLines.WIDTH)) {
            return line;
        }
        boolean named = sides.get(0) instanceof Symbol;
        int indent = named ? written.get(0).length() : 1;
        StringBuilder text = new StringBuilder(TextLines.broken(written.get(0), 0));
        for (int i = 1; i < written.size(); i++) {
            if (i > 1 || !named) {
                text.append('\n').append(" ".repeat(indent));
            }
            text.append(EQUALS).append(TextLines.broken(written.get(i), indent + EQUALS.length()));
        }
        return text.toString();
    }

    /**
     * Writes the equation as LaTeX.
     *
     * @return mathematics for display mode, without dollar signs; a side too wide for a notebook is
     *     broken before + − · outside all brackets
     */
    public String latex() {
        List<List<String>> written = sides.stream().map(LatexWriter::lines).toList();
        if (isShort() && written.stream().allMatch(lines -> lines.size() == 1)) {
            return written.stream().map(lines -> lines.get(0)).collect(Collectors.joining(EQUALS));
        }
        boolean headFits = written.get(0).size() == 1;
        StringBuilder latex = new StringBuilder("\\begin{aligned}");
        for (int i = 0; i < written.size(); i++) {
            if (i > 1 || (i == 1 && !headFits)) {
                latex.append(" \\\\ ");
            } else if (i == 1) {
                latex.append(' ');
            }
            latex.append(i > 0 ? "&= " : headFits ? "" : "& ");
            // The empty group makes the sign an operator again: a line has nothing before it.
            latex.append(String.join(" \\\\ &\\quad {}", written.get(i)));
        }
        return latex.append("\\end{aligned}").toString();
    }

    /**
     * Writes the equation as MathML, as wide as it is.
     *
     * @return a complete {@code <math>} element in display style
     */
    public String mathml() {
        return mathml(Integer.MAX_VALUE);
    }

    /**
     * Writes the equation as MathML for a page of some width: browsers do not break formulas.
     *
     * @param letters about how many letters a line may have, from 20; a side that is wider is broken
     *     where it binds most loosely and goes on further in
     * @return a complete {@code <math>} element in display style
     * @throws IllegalArgumentException when a line may have fewer letters
     */
    public String mathml(int letters) {
        if (letters < FEWEST_LETTERS) {
            throw new IllegalArgumentException(
                    "letters of a line are "
                            + letters
                            + "; allowed are "
                            + FEWEST_LETTERS
                            + " and more");
        }
        long width = sides.stream().mapToLong(side -> PrintedWidth.of(side) + JOINT).sum();
        StringBuilder markup = new StringBuilder("<math display=\"block\">");
        if (isShort() && width <= letters) {
            markup.append("<mrow>")
                    .append(
                            sides.stream()
                                    .map(MathmlWriter::write)
                                    .collect(Collectors.joining("<mo>=</mo>")))
                    .append("</mrow>");
        } else {
            boolean named = sides.get(0) instanceof Symbol && sides.size() > 1;
            int room = letters - (named ? PrintedWidth.of(sides.get(0)) : 0) - JOINT;
            markup.append("<mtable displaystyle=\"true\">");
            for (int i = named ? 1 : 0; i < sides.size(); i++) {
                String before = named && i == 1 ? MathmlWriter.write(sides.get(0)) : "";
                row(markup, before, i > 0, MathmlWriter.lines(sides.get(i), room));
            }
            markup.append("</mtable>");
        }
        return markup.append("</math>").toString();
    }

    private static void row(
            StringBuilder markup, String before, boolean equals, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            markup.append("<mtr><mtd class=\"left\">")
                    .append(i == 0 ? before : "")
                    .append("</mtd><mtd class=\"right\"><mrow>")
                    .append(i > 0 ? FURTHER_IN : equals ? "<mo>=</mo>" : "")
                    .append(lines.get(i))
                    .append("</mrow></mtd></mtr>");
        }
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
