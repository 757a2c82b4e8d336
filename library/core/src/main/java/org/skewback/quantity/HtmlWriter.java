package org.skewback.quantity;

import java.util.List;
import org.skewback.quantity.Expression.Value;

/** Writes text and formulas on one line as HTML that is well-formed as XML too. */
public final class HtmlWriter {

    private static final char REPLACEMENT = '\uFFFD';

    private static final FormulaWriter WRITER = new FormulaWriter(new OneLine());

    private HtmlWriter() {}

    /**
     * Escapes text to stand between tags.
     *
     * @param written any text
     * @return the text without any markup; what XML 1.0 or HTML cannot hold becomes U+FFFD
     */
    public static String text(String written) {
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

    /**
     * Writes an expression: in a symbol such as N_Ed one letter is italic, a word upright, the
     * subscript lowered.
     *
     * @param expression the formula
     * @return markup for one line of text
     */
    public static String write(Expression expression) {
        return WRITER.write(expression);
    }

    /**
     * Tells whether XML 1.0 (production 2) and HTML can both hold a character.
     *
     * @param codePoint the character
     * @return whether it may stand in a page
     */
    public static boolean isAllowed(int codePoint) {
        if (codePoint < 0x20) {
            return codePoint == '\n' || codePoint == '\t';
        }
        boolean control = codePoint >= 0x7F && codePoint <= 0x9F;
        boolean surrogate = codePoint >= 0xD800 && codePoint <= 0xDFFF;
        boolean noncharacter =
                (codePoint & 0xFFFE) == 0xFFFE || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
        return !control && !surrogate && !noncharacter;
    }

    private static String named(String name) {
        int underscore = name.indexOf('_');
        String base = underscore < 0 ? name : name.substring(0, underscore);
        String lowered = underscore < 0 ? "" : name.substring(underscore + 1);
        boolean letter = base.codePointCount(0, base.length()) == 1;
        String written = letter ? "<i>" + text(base) + "</i>" : text(base);
        return lowered.isEmpty() ? written : written + "<sub>" + text(lowered) + "</sub>";
    }

    private static final class OneLine extends TextWriter.PlainText {

        @Override
        public String symbol(String name) {
            return named(name);
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
