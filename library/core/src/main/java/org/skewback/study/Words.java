package org.skewback.study;

import java.math.BigDecimal;
import java.math.MathContext;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/** Writes what a study found: no more digits than mean something. */
final class Words {

    private static final int DIGITS_KEPT = 13;

    private Words() {}

    /** A value in SI base units, written in a unit. */
    static String of(double si, Unit unit) {
        // The last digits are rounding of conversions: 10 kPa must not read 10.00 kPa.
        double clean =
                new BigDecimal(unit.fromSi(si)).round(new MathContext(DIGITS_KEPT)).doubleValue();
        return of(Numerals.result(clean), unit);
    }

    static String of(Quantity quantity) {
        return of(quantity.si(), quantity.unit());
    }

    /** A value with its sign, plus or minus. */
    static String signed(Quantity change) {
        String text = of(change);
        return change.si() > 0 ? "+" + text : text;
    }

    private static String of(String number, Unit unit) {
        String symbol = unit.symbol();
        if (symbol.isEmpty()) {
            return number;
        }
        boolean close = symbol.equals("°") || symbol.equals("′") || symbol.equals("″");
        return close ? number + symbol : number + Numerals.BEFORE_UNIT + symbol;
    }
}
