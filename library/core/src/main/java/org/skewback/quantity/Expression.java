package org.skewback.quantity;

import java.util.List;

/**
 * A formula as a tree, the one form from which text, LaTeX and MathML are written.
 *
 * <p>It is drawn from the graph by {@link Formula}; nobody types one.
 */
public sealed interface Expression {

    /** How tightly a form of expression binds; a looser one inside a tighter one needs brackets. */
    enum Binding {
        /** Sums and signs. */
        SUM,
        /** Products and quotients. */
        PRODUCT,
        /** Powers. */
        POWER,
        /** Symbols, numbers, functions. */
        ATOM
    }

    /**
     * Tells how tightly this expression binds.
     *
     * @return its binding
     */
    Binding binding();

    /**
     * The name of a quantity.
     *
     * @param name such as {@code N_Ed}
     */
    record Symbol(String name) implements Expression {
        @Override
        public Binding binding() {
            return Binding.ATOM;
        }
    }

    /**
     * A number with its unit.
     *
     * @param number digits as printed, see {@link Numerals}
     * @param unit unit as printed; empty for plain numbers
     */
    record Value(String number, String unit) implements Expression {
        @Override
        public Binding binding() {
            if (number.startsWith("−")) {
                return Binding.SUM;
            }
            // A unit or a power of ten belongs to its number before any exponent does.
            return unit.isEmpty() && number.indexOf('×') < 0 ? Binding.ATOM : Binding.PRODUCT;
        }
    }

    /**
     * A sum of terms, each added or subtracted.
     *
     * @param terms the terms in order
     */
    record Sum(List<Term> terms) implements Expression {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param terms the terms in order
         */
        public Sum {
            terms = List.copyOf(terms);
        }

        @Override
        public Binding binding() {
            return Binding.SUM;
        }
    }

    /**
     * One term of a sum.
     *
     * @param subtracted whether it is taken away
     * @param expression what is added or taken away
     */
    record Term(boolean subtracted, Expression expression) {}

    /**
     * A product.
     *
     * @param factors the factors in order
     */
    record Product(List<Expression> factors) implements Expression {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param factors the factors in order
         */
        public Product {
            factors = List.copyOf(factors);
        }

        @Override
        public Binding binding() {
            return Binding.PRODUCT;
        }
    }

    /**
     * A quotient.
     *
     * @param numerator above the line
     * @param denominator below it
     */
    record Fraction(Expression numerator, Expression denominator) implements Expression {
        @Override
        public Binding binding() {
            return Binding.PRODUCT;
        }
    }

    /**
     * A power; the exponents ½ and ⅓ are written as roots.
     *
     * @param base what is raised
     * @param exponent to which power
     */
    record Power(Expression base, Rational exponent) implements Expression {
        @Override
        public Binding binding() {
            return isRoot() ? Binding.ATOM : Binding.POWER;
        }

        /**
         * Tells whether this is written with a root sign.
         *
         * @return whether the exponent is ½ or ⅓
         */
        public boolean isRoot() {
            return exponent.numerator() == 1
                    && (exponent.denominator() == 2 || exponent.denominator() == 3);
        }
    }

    /**
     * A change of sign.
     *
     * @param argument whose sign changes
     */
    record Negation(Expression argument) implements Expression {
        @Override
        public Binding binding() {
            return Binding.SUM;
        }
    }

    /**
     * A function of one or more arguments.
     *
     * @param function name, such as {@code sin} or {@code max}
     * @param arguments the arguments in order
     */
    record Call(String function, List<Expression> arguments) implements Expression {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param function name, such as {@code sin} or {@code max}
         * @param arguments the arguments in order
         */
        public Call {
            arguments = List.copyOf(arguments);
        }

        @Override
        public Binding binding() {
            return Binding.ATOM;
        }
    }

    /**
     * A value read off a table.
     *
     * @param table symbol of the table
     * @param argument where it is read
     */
    record Tabulated(Symbol table, Expression argument) implements Expression {
        @Override
        public Binding binding() {
            return Binding.ATOM;
        }
    }

    /**
     * An absolute value.
     *
     * @param argument between the bars
     */
    record Absolute(Expression argument) implements Expression {
        @Override
        public Binding binding() {
            return Binding.ATOM;
        }
    }

    /**
     * A value chosen by a condition, which is printed with it.
     *
     * @param chosen the value
     * @param left left side of the condition
     * @param sign how the sides compare, as it came out
     * @param right right side of the condition
     */
    record Chosen(Expression chosen, Expression left, String sign, Expression right)
            implements Expression {
        @Override
        public Binding binding() {
            return Binding.SUM;
        }
    }

    /**
     * What a routine gave.
     *
     * @param output which of its results, in words
     * @param routine the routine's published name
     * @param inputs what went in, in order; {@link Words} with an ellipsis for those left out
     */
    record Outcome(String output, String routine, List<Expression> inputs) implements Expression {

        /**
         * Keeps a copy of the list.
         *
         * @param output which of its results, in words
         * @param routine the routine's published name
         * @param inputs what went in, in order
         */
        public Outcome {
            inputs = List.copyOf(inputs);
        }

        /**
         * Gives the words that stand before the inputs.
         *
         * @return such as {@code thrust by routine form.funicular of}
         */
        public String words() {
            return output + " by routine " + routine + " of";
        }

        @Override
        public Binding binding() {
            return Binding.ATOM;
        }
    }

    /**
     * Words in place of a formula that is too long to print, or an ellipsis.
     *
     * @param text the words
     */
    record Words(String text) implements Expression {
        @Override
        public Binding binding() {
            return Binding.ATOM;
        }
    }
}
