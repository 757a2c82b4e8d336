package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
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
import org.skewback.quantity.Expression.Tabulated;
import org.skewback.quantity.Expression.Term;
import org.skewback.quantity.Expression.Value;

/**
 * Breaks a formula over lines where it binds most loosely, and what is still too wide further in.
 *
 * <p>Every notation breaks before the signs of a sum and a product. One that {@link OpenNotation
 * opens} breaks inside brackets too, after the commas of a function or a routine, between the words
 * before them, and stacks the lines of a wide numerator, denominator or root.
 */
final class FormulaLines {

    /** Room for an operator and the gaps around it. */
    private static final int SIGN = 3;

    private final Notation notation;
    private final @Nullable OpenNotation open;
    private final FormulaWriter writer;
    private final int most;
    private final boolean inFraction;
    private final List<Part> parts = new ArrayList<>();

    /** Letters that stand before the next part and belong to it, such as the name of a function. */
    private int joined;

    private FormulaLines(Notation notation, int most, boolean inFraction) {
        this.notation = notation;
        this.open = notation instanceof OpenNotation opened ? opened : null;
        this.writer = new FormulaWriter(notation);
        this.most = most;
        this.inFraction = inFraction;
    }

    /** A part of a formula before which a line may break, and about how many letters it has. */
    private record Part(String written, int width) {}

    /**
     * Writes a formula over as many lines as it needs.
     *
     * @param notation how it is written
     * @param expression the formula
     * @param most about how many letters a line may have
     * @return one line or more; joined, they are the formula
     */
    static List<String> of(Notation notation, Expression expression, int most) {
        return of(notation, expression, most, false);
    }

    private static List<String> of(
            Notation notation, Expression expression, int most, boolean inFraction) {
        FormulaLines lines = new FormulaLines(notation, most, inFraction);
        lines.add("", expression, Binding.SUM, "");
        return lines.filled();
    }

    private List<String> filled() {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int width = 0;
        for (Part part : parts) {
            if (width > 0 && width + part.width() > most) {
                lines.add(line.toString());
                line.setLength(0);
                // A line that goes on stands further in.
                width = open == null ? 0 : SIGN;
            }
            line.append(part.written());
            width += part.width();
        }
        lines.add(line.toString());
        return lines;
    }

    /**
     * Adds a formula or a part of one.
     *
     * @param before what stands before it, such as its sign
     * @param least how tightly it must bind to need no brackets
     * @param after what stands behind it, such as a comma
     */
    private void add(String before, Expression expression, Binding least, String after) {
        boolean bracketed = expression.binding().compareTo(least) < 0;
        if (!isWide(expression) || (bracketed && open == null)) {
            whole(before, expression, least, after);
        } else if (bracketed && open != null) {
            add(before + open.opening(), expression, Binding.SUM, open.closing() + after);
        } else if (expression instanceof Sum sum) {
            add(before, sum, after);
        } else if (expression instanceof Product product) {
            add(before, product, after);
        } else if (expression instanceof Negation negation) {
            add(before + notation.sign(true, true), negation.argument(), Binding.PRODUCT, after);
        } else if (expression instanceof Chosen chosen) {
            add(before, chosen, after);
        } else if (open != null) {
            opened(open, before, expression, after);
        } else {
            whole(before, expression, least, after);
        }
    }

    private boolean isWide(Expression expression) {
        return SIGN + width(expression) > most;
    }

    private int width(Expression expression) {
        return PrintedWidth.of(expression, inFraction);
    }

    private void whole(String before, Expression expression, Binding least, String after) {
        part(before + writer.within(expression, least) + after, SIGN + width(expression));
    }

    private void add(String before, Sum sum, String after) {
        List<Term> terms = sum.terms();
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            boolean first = i == 0;
            // A negative number may lead a sum without brackets; anywhere else it needs them.
            boolean leads = first && !term.subtracted() && term.expression() instanceof Value;
            add(
                    (first ? before : "") + notation.sign(first, term.subtracted()),
                    term.expression(),
                    leads ? Binding.SUM : Binding.PRODUCT,
                    i == terms.size() - 1 ? after : "");
        }
    }

    private void add(String before, Product product, String after) {
        List<Expression> factors = product.factors();
        for (int i = 0; i < factors.size(); i++) {
            add(
                    i == 0 ? before : notation.times(),
                    factors.get(i),
                    Binding.PRODUCT,
                    i == factors.size() - 1 ? after : "");
        }
    }

    private void add(String before, Chosen chosen, String after) {
        add(before, chosen.chosen(), Binding.SUM, "");
        if (open == null) {
            String condition =
                    notation.chosen(
                            "",
                            writer.write(chosen.left()),
                            chosen.sign(),
                            writer.write(chosen.right()));
            int width = PrintedWidth.of(chosen.left()) + PrintedWidth.of(chosen.right());
            part(condition + after, SIGN + width);
            return;
        }
        add(open.since(), chosen.left(), Binding.SUM, "");
        add(open.relation(chosen.sign()), chosen.right(), Binding.SUM, after);
    }

    private void opened(OpenNotation open, String before, Expression expression, String after) {
        if (expression instanceof Call call) {
            joined += call.function().length();
            addAll(open, before + open.function(call.function()), call.arguments(), after);
        } else if (expression instanceof Tabulated table) {
            joined += PrintedWidth.of(table.table());
            addAll(
                    open,
                    before + open.table(writer.write(table.table())),
                    List.of(table.argument()),
                    after);
        } else if (expression instanceof Outcome outcome) {
            // Beside words alone a sign before them would lose its gap in a browser.
            String joint = before + open.word("");
            for (String word : outcome.words().split(" ", -1)) {
                part(joint + open.word(word), 1 + word.length());
                joint = "";
            }
            addAll(open, "", outcome.inputs(), after);
        } else if (expression instanceof Absolute absolute) {
            add(before + open.bar(), absolute.argument(), Binding.SUM, open.bar() + after);
        } else if (expression instanceof Fraction fraction) {
            String written =
                    notation.fraction(
                            level(open, fraction.numerator()), level(open, fraction.denominator()));
            part(before + written + after, most - joined);
        } else if (expression instanceof Power power && power.isRoot()) {
            part(before + root(open, power) + after, most - joined);
        } else if (expression instanceof Power power && isAtom(power.base())) {
            String written =
                    power.base() instanceof Power inner && inner.isRoot()
                            ? root(open, inner)
                            : writer.write(power.base());
            part(before + notation.power(written, power.exponent()) + after, most - joined);
        } else if (expression instanceof Power power) {
            String raised = notation.power(open.closing(), power.exponent());
            add(before + open.opening(), power.base(), Binding.SUM, raised + after);
        } else {
            whole(before, expression, Binding.SUM, after);
        }
    }

    private static boolean isAtom(Expression expression) {
        return expression.binding() == Binding.ATOM;
    }

    private void part(String written, int width) {
        parts.add(new Part(written, joined + width));
        joined = 0;
    }

    private void addAll(OpenNotation open, String name, List<Expression> arguments, String after) {
        String before = name + open.opening();
        for (int i = 0; i < arguments.size(); i++) {
            boolean last = i == arguments.size() - 1;
            String behind = last ? open.closing() + after : open.separator();
            add(before, arguments.get(i), Binding.SUM, behind);
            before = "";
        }
    }

    /** Writes what stands above or below a fraction's line. */
    private String level(OpenNotation open, Expression expression) {
        // A fraction in a fraction is set smaller, so more of it stands on a line.
        double letters = most - joined - SIGN;
        int room = (int) (inFraction ? letters / PrintedWidth.SMALL : letters);
        return stacked(open, expression, room, true);
    }

    private String root(OpenNotation open, Power root) {
        String under = stacked(open, root.base(), most - joined - SIGN, true);
        return notation.root(root.exponent().denominator(), under);
    }

    private String stacked(OpenNotation open, Expression expression, int room, boolean inside) {
        return SIGN + PrintedWidth.of(expression, inside) > room
                ? open.stacked(of(notation, expression, room, inside))
                : writer.write(expression);
    }
}
