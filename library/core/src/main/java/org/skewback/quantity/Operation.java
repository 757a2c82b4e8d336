package org.skewback.quantity;

import java.util.Locale;

/** What gave a quantity its value. */
enum Operation {
    /** A number written by the author, with or without a unit. */
    VALUE,
    /** A named input with its source. */
    GIVEN,
    /** A name, a note and a unit put on another quantity; the value is the same. */
    NAMED,
    ADD,
    SUBTRACT,
    MULTIPLY,
    DIVIDE,
    NEGATE,
    POWER,
    EXP,
    LN,
    LOG10,
    SIN,
    COS,
    TAN,
    ASIN,
    ACOS,
    ATAN,
    SINH,
    COSH,
    TANH,
    ASINH,
    ACOSH,
    ABS,
    MIN,
    MAX,
    /** The sum of a list. */
    SUM,
    /** One of two, by a condition. */
    CHOOSE,
    /** Read off a cited table between its rows. */
    INTERPOLATED,
    /** One output of a routine. */
    ROUTINE;

    /** The name in print and in records: sin, arcosh (ISO 80000-2, items 2-14 and 2-15). */
    String published() {
        return switch (this) {
            case ASIN -> "arcsin";
            case ACOS -> "arccos";
            case ATAN -> "arctan";
            case ASINH -> "arsinh";
            case ACOSH -> "arcosh";
            case LOG10 -> "lg";
            default -> name().toLowerCase(Locale.ROOT);
        };
    }

    static Operation ofPublished(String name) {
        for (Operation operation : values()) {
            if (operation.published().equals(name)) {
                return operation;
            }
        }
        throw new IllegalArgumentException("operation \"" + name + "\" is not known");
    }

    /** The value of a function of one plain number. */
    double function(double x) {
        return switch (this) {
            case EXP -> StrictMath.exp(x);
            case LN -> StrictMath.log(x);
            case LOG10 -> StrictMath.log10(x);
            case SIN -> StrictMath.sin(x);
            case COS -> StrictMath.cos(x);
            case TAN -> StrictMath.tan(x);
            case ASIN -> StrictMath.asin(x);
            case ACOS -> StrictMath.acos(x);
            case ATAN -> StrictMath.atan(x);
            case SINH -> StrictMath.sinh(x);
            case COSH -> StrictMath.cosh(x);
            case TANH -> StrictMath.tanh(x);
            case ASINH -> Hyperbolic.arsinh(x);
            case ACOSH -> Hyperbolic.arcosh(x);
            default -> throw new IllegalStateException(this + " is no function of one number");
        };
    }
}
