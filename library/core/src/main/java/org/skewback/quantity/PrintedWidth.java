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
import org.skewback.quantity.Expression.Tabulated;
import org.skewback.quantity.Expression.Term;

/** About how many letters wide a formula is where its fractions stand on a line of their own. */
final class PrintedWidth {

    private static final int OPERATOR = 3;
    private static final int BRACKETS = 2;

    private PrintedWidth() {}

    /** How large a fraction in a fraction is set (MathML Core, 4.3.3: one script level). */
    static final double SMALL = 0.71;

    static int of(Expression expression) {
        return of(expression, false);
    }

    /**
     * Measures a formula.
     *
     * @param inFraction whether it stands above or below the line of a fraction
     */
    static int of(Expression expression, boolean inFraction) {
        if (expression instanceof Sum sum) {
            return all(sum.terms().stream().map(Term::expression).toList(), inFraction);
        } else if (expression instanceof Product product) {
            return all(product.factors(), inFraction);
        } else if (expression instanceof Fraction fraction) {
            int wider = Math.max(of(fraction.numerator(), true), of(fraction.denominator(), true));
            return 1 + (int) Math.ceil(inFraction ? SMALL * wider : wider);
        } else if (expression instanceof Power power) {
            boolean sign = power.isRoot() || power.base().binding() != Binding.ATOM;
            return (sign ? BRACKETS : 0) + 1 + of(power.base(), inFraction);
        } else if (expression instanceof Negation negation) {
            return 1 + of(negation.argument(), inFraction);
        } else if (expression instanceof Call call) {
            return call.function().length() + BRACKETS + all(call.arguments(), inFraction);
        } else if (expression instanceof Absolute absolute) {
            return BRACKETS + of(absolute.argument(), inFraction);
        } else if (expression instanceof Tabulated tabulated) {
            return of(tabulated.table(), inFraction)
                    + BRACKETS
                    + of(tabulated.argument(), inFraction);
        } else if (expression instanceof Chosen chosen) {
            return all(List.of(chosen.chosen(), chosen.left(), chosen.right()), inFraction);
        } else if (expression instanceof Outcome outcome) {
            return outcome.words().length() + BRACKETS + all(outcome.inputs(), inFraction);
        }
        return TextWriter.write(expression).length();
    }

    private static int all(List<Expression> parts, boolean inFraction) {
        int width = parts.stream().mapToInt(part -> of(part, inFraction)).sum();
        return width + OPERATOR * (parts.size() - 1);
    }
}
