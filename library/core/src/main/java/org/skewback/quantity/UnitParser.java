package org.skewback.quantity;

import org.jspecify.annotations.Nullable;

/** Reads units by recursive descent over the text. */
final class UnitParser {

    private static final int LONGEST = 200;

    private final String text;
    private int at;

    private UnitParser(String text) {
        this.text = text;
    }

    static Unit parse(String text) {
        String trimmed = text.strip();
        if (trimmed.isEmpty()) {
            return Unit.ONE;
        }
        if (trimmed.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "a unit of " + trimmed.length() + " characters; at most " + LONGEST);
        }
        Unit known = UnitTable.find(trimmed);
        if (known != null) {
            return known.symbol().equals("1") ? Unit.ONE : known;
        }
        UnitParser parser = new UnitParser(trimmed);
        Unit unit = parser.product();
        if (parser.at < trimmed.length()) {
            throw parser.refused("\"" + trimmed.substring(parser.at) + "\" was not expected there");
        }
        return new Unit(trimmed, unit.factor(), 0, unit.dimension());
    }

    private Unit product() {
        Unit unit = factor();
        while (at < text.length() && text.charAt(at) != ')') {
            char c = text.charAt(at);
            boolean divides = c == '/';
            if (divides || c == '·' || c == '⋅' || c == '*' || c == ' ') {
                at++;
            }
            Unit next = factor();
            unit =
                    divides
                            ? unit(
                                    unit.factor() / next.factor(),
                                    unit.dimension().over(next.dimension()))
                            : unit(
                                    unit.factor() * next.factor(),
                                    unit.dimension().times(next.dimension()));
        }
        return unit;
    }

    private Unit factor() {
        Unit base;
        if (at < text.length() && text.charAt(at) == '(') {
            at++;
            base = product();
            expect(')');
        } else {
            base = symbol();
        }
        Rational exponent = exponent();
        if (exponent == null) {
            return base;
        }
        double power =
                exponent.isWhole()
                        ? Powers.whole(base.factor(), exponent.numerator())
                        : StrictMath.pow(
                                base.factor(),
                                (double) exponent.numerator() / exponent.denominator());
        return unit(power, base.dimension().power(exponent));
    }

    private Unit symbol() {
        int start = at;
        while (at < text.length() && isSymbol(text.charAt(at))) {
            at++;
        }
        if (start == at && at < text.length() && text.charAt(at) == '1') {
            at++;
        }
        String symbol = text.substring(start, at);
        if (symbol.isEmpty()) {
            throw refused(
                    "a unit's symbol is missing at position "
                            + (at + 1)
                            + UnitHint.afterSymbol(text, at));
        }
        Unit unit = UnitTable.find(symbol);
        if (unit == null) {
            throw refused("\"" + symbol + "\" is not a known unit" + UnitHint.near(symbol));
        }
        if (unit.isReading()) {
            throw refused("°C is a reading on a scale; in a product write K");
        }
        return unit;
    }

    private @Nullable Rational exponent() {
        StringBuilder raised = new StringBuilder();
        while (at < text.length() && Superscript.lowered(text.charAt(at)) != 0) {
            raised.append(Superscript.lowered(text.charAt(at++)));
        }
        if (raised.length() > 0) {
            return exponent(raised.toString());
        }
        if (at >= text.length() || text.charAt(at) != '^') {
            return null;
        }
        at++;
        boolean bracket = at < text.length() && text.charAt(at) == '(';
        if (bracket) {
            at++;
        }
        int start = at;
        while (at < text.length() && "-−0123456789/".indexOf(text.charAt(at)) >= 0) {
            if (!bracket && text.charAt(at) == '/') {
                break;
            }
            at++;
        }
        Rational exponent = exponent(text.substring(start, at).replace('−', '-'));
        if (bracket) {
            expect(')');
        }
        return exponent;
    }

    private Rational exponent(String digits) {
        try {
            return Rational.parse(digits);
        } catch (IllegalArgumentException e) {
            throw refused(e.getMessage() + "");
        }
    }

    private void expect(char wanted) {
        if (at >= text.length() || text.charAt(at) != wanted) {
            throw refused("\"" + wanted + "\" is missing at position " + (at + 1));
        }
        at++;
    }

    private IllegalArgumentException refused(String why) {
        return new IllegalArgumentException("unit \"" + text + "\": " + why);
    }

    private static Unit unit(double factor, Dimension dimension) {
        return new Unit("", factor, 0, dimension);
    }

    private static boolean isSymbol(char c) {
        return Character.isLetter(c) || "°′″%‰".indexOf(c) >= 0;
    }
}
