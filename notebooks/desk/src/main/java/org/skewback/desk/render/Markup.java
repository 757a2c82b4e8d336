package org.skewback.desk.render;

/** Turns what others wrote into text of a page: nothing in it is markup any more. */
final class Markup {

    private static final char REPLACEMENT = '\uFFFD';

    private Markup() {}

    /** Escapes text to stand between tags; what XML cannot hold becomes U+FFFD. */
    static String text(String written) {
        StringBuilder escaped = new StringBuilder(written.length() + 16);
        written.codePoints()
                .forEach(
                        c -> {
                            switch (c) {
                                case '&' -> escaped.append("&amp;");
                                case '<' -> escaped.append("&lt;");
                                case '>' -> escaped.append("&gt;");
                                case '"' -> escaped.append("&quot;");
                                default -> {
                                    if (isAllowed(c)) {
                                        escaped.appendCodePoint(c);
                                    } else {
                                        escaped.append(REPLACEMENT);
                                    }
                                }
                            }
                        });
        return escaped.toString();
    }

    /** Puts U+FFFD in place of what XML cannot hold and leaves all else as it is. */
    static String allowed(String written) {
        StringBuilder allowed = new StringBuilder(written.length());
        written.codePoints().forEach(c -> allowed.appendCodePoint(isAllowed(c) ? c : REPLACEMENT));
        return allowed.toString();
    }

    /** Escapes text to stand between the double quotes of an attribute. */
    static String attribute(String written) {
        return text(written).replace("\n", "&#10;").replace("\t", "&#9;");
    }

    /** Makes an identifier of an element: letters, digits and hyphens only. */
    static String identifier(String written) {
        return written.replaceAll("[^A-Za-z0-9-]", "-");
    }

    /** A symbol such as N_Ed: one letter is italic, a word upright, the subscript lowered. */
    static String symbol(String name) {
        int underscore = name.indexOf('_');
        String base = underscore < 0 ? name : name.substring(0, underscore);
        String lowered = underscore < 0 ? "" : name.substring(underscore + 1);
        String written = base.codePointCount(0, base.length()) == 1 ? italic(base) : text(base);
        return lowered.isEmpty() ? written : written + "<sub>" + text(lowered) + "</sub>";
    }

    private static String italic(String letter) {
        return "<i>" + text(letter) + "</i>";
    }

    /** The characters of XML 1.0, production 2, without the controls that HTML forbids. */
    private static boolean isAllowed(int c) {
        if (c < 0x20) {
            return c == '\n' || c == '\t';
        }
        boolean control = c >= 0x7F && c <= 0x9F;
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        boolean noncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        return !control && !surrogate && !noncharacter;
    }
}
