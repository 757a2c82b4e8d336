package org.skewback.quantity;

import java.util.List;
import org.skewback.quantity.Expression.Value;

/** Writes text, symbols and formulas on one line as HTML that is well-formed as XML too. */
final class Html {

    private static final char REPLACEMENT = '\uFFFD';

    private static final FormulaWriter WRITER = new FormulaWriter(new OneLine());

    private Html() {}

    /** Escapes text to stand between tags; what XML 1.0 or HTML cannot hold becomes U+FFFD. */
    static String text(String written) {
        StringBuilder escaped = new StringBuilder();
        written.codePoints()
                .forEach(
                        c -> {
                            switch (c) {
                                case '&' -> escaped.append("&amp;");
                                case '<' -> escaped.append("&lt;");
                                case '>' -> escaped.append("&gt;");
                                case '"' -> escaped.append("&quot;");
                                default -> escaped.appendCodePoint(isAllowed(c) ? c : REPLACEMENT);
                            }
                        });
        return escaped.toString();
    }

    /** A symbol such as N_Ed: one letter is italic, a word upright, the subscript lowered. */
    static String symbol(String name) {
        int underscore = name.indexOf('_');
        String base = underscore < 0 ? name : name.substring(0, underscore);
        boolean letter = base.codePointCount(0, base.length()) == 1;
        String written = letter ? "<i>" + text(base) + "</i>" : text(base);
        return underscore < 0
                ? written
                : written + "<sub>" + text(name.substring(underscore + 1)) + "</sub>";
    }

    static String write(Expression expression) {
        return WRITER.write(expression);
    }

    private static boolean isAllowed(int c) {
        if (c < 0x20) {
            return c == '\n' || c == '\t';
        }
        boolean control = c >= 0x7F && c <= 0x9F;
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        boolean noncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        return !control && !surrogate && !noncharacter;
    }

    private static final class OneLine extends TextWriter.PlainText {

        @Override
        public String symbol(String name) {
            return Html.symbol(name);
        }

        @Override
        public String value(Value value) {
            return text(super.value(value));
        }

        @Override
        public String chosen(String chosen, String left, String sign, String right) {
            return super.chosen(chosen, left, text(sign), right);
        }

        @Override
        public String call(String function, List<String> arguments) {
            return super.call(text(function), arguments);
        }

        @Override
        public String outcome(String words, List<String> inputs) {
            return super.outcome(text(words), inputs);
        }

        @Override
        public String words(String words) {
            return text(words);
        }
    }
}
