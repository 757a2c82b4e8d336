package org.skewback.quantity;

import java.util.List;
import org.skewback.quantity.Expression.Value;

/** How one kind of output writes each form of expression; the walk is {@link FormulaWriter}'s. */
interface Notation {

    /** Whether a fraction has a line of its own, so that it needs no brackets above and below. */
    boolean stacksFractions();

    String symbol(String name);

    String value(Value value);

    /** Sets brackets around what is written. */
    String bracketed(String inner);

    /** The sign before a term; the first term has none unless it is subtracted. */
    String sign(boolean first, boolean subtracted);

    /** Joins signs and terms that are already in order. */
    String sum(String signsAndTerms);

    String product(List<String> factors);

    /** The sign between the factors of a product, with the gaps around it. */
    String times();

    String fraction(String numerator, String denominator);

    String power(String base, Rational exponent);

    /** A square root (degree 2) or a cube root (degree 3). */
    String root(int degree, String inner);

    String negation(String argument);

    String call(String function, List<String> arguments);

    /** The symbol of a table, already written, before its argument in brackets. */
    String tabulated(String table, String argument);

    String absolute(String argument);

    String chosen(String chosen, String left, String sign, String right);

    String outcome(String words, List<String> inputs);

    String words(String text);
}
