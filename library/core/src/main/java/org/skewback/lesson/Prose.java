package org.skewback.lesson;

/** What an author wrote is text: no markup, no mathematics and no HTML may come of it. */
final class Prose {

    private Prose() {}

    /** Escapes text for Markdown. */
    static String escaped(String text) {
        return html(text)
                .replaceAll("([\\\\`*_{}\\[\\]#|~])", "\\\\$1")
                .replaceAll("(?m)^([ \\t]*)([-+=])", "$1\\\\$2")
                .replaceAll("(?m)^([ \\t]*[0-9]+)([.)])", "$1\\\\$2")
                .replace("$", "&#36;");
    }

    /** Escapes text for HTML. */
    static String html(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
