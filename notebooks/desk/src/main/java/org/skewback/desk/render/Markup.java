package org.skewback.desk.render;

import org.skewback.quantity.Expression;
import org.skewback.quantity.HtmlWriter;

/** Turns what others wrote into text of a page: nothing in it is markup any more. */
public final class Markup {

    private static final char REPLACEMENT = '\uFFFD';

    private Markup() {}

    /**
     * Escapes text to stand between tags.
     *
     * @param written any text
     * @return the text without any markup; what XML cannot hold becomes U+FFFD
     */
    public static String text(String written) {
        return HtmlWriter.text(written);
    }

    /**
     * Puts U+FFFD in place of what XML cannot hold and leaves all else as it is.
     *
     * @param written any markup
     * @return the markup
     */
    public static String allowed(String written) {
        StringBuilder allowed = new StringBuilder(written.length());
        int from = 0;
        int c;
        for (int i = 0; i < written.length(); i += Character.charCount(c)) {
            c = written.codePointAt(i);
            if (!HtmlWriter.isAllowed(c)) {
                allowed.append(written, from, i).append(REPLACEMENT);
                from = i + Character.charCount(c);
            }
        }
        return allowed.append(written, from, written.length()).toString();
    }

    /** Escapes text to stand between the double quotes of an attribute. */
    static String attribute(String written) {
        return text(written).replace("\n", "&#10;").replace("\t", "&#9;");
    }

    /**
     * Makes an identifier of an element.
     *
     * @param written any text
     * @return letters, digits and hyphens only
     */
    public static String identifier(String written) {
        return written.replaceAll("[^A-Za-z0-9-]", "-");
    }

    /** A symbol such as N_Ed: one letter is italic, a word upright, the subscript lowered. */
    static String symbol(String name) {
        return HtmlWriter.write(new Expression.Symbol(name));
    }
}
