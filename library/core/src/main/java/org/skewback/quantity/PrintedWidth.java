package org.skewback.quantity;

import java.util.List;
import org.skewback.quantity.Expression.Absolute;
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

    static int of(Expression expression) {
        if (expression instanceof Sum sum) {
            return all(sum.terms().stream().map(Term::expression).toList());
        } else if (expression instanceof Product product) {
            return all(product.factors());
        } else if (expression instanceof Fraction fraction) {
            return 1 + Math.max(of(fraction.numerator()), of(fraction.denominator()));
        } else if (expression instanceof Power power) {
            return 1 + of(power.base());
        } else if (expression instanceof Negation negation) {
            return 1 + of(negation.argument());
        } else if (expression instanceof Call call) {
            return call.function().length() + BRACKETS + all(call.arguments());
        } else if (expression instanceof Absolute absolute) {
            return BRACKETS + of(absolute.argument());
        } else if (expression instanceof Tabulated tabulated) {
            return of(tabulated.table()) + BRACKETS + of(tabulated.argument());
        } else if (expression instanceof Chosen chosen) {
            return all(List.of(chosen.chosen(), chosen.left(), chosen.right()));
        } else if (expression instanceof Outcome outcome) {
            return outcome.words().length() + BRACKETS + all(outcome.inputs());
        }
        return TextWriter.write(expression).length();
    }

    private static int all(List<Expression> parts) {
        return parts.stream().mapToInt(PrintedWidth::of).sum() + OPERATOR * (parts.size() - 1);
    }
}
