package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/** Makes HTML that a notebook gave harmless: words and tables stay, all else goes. */
final class ForeignHtml {

    private static final PolicyFactory POLICY =
            new HtmlPolicyBuilder()
                    .allowElements(
                            "p",
                            "br",
                            "hr",
                            "div",
                            "span",
                            "b",
                            "strong",
                            "i",
                            "em",
                            "u",
                            "sub",
                            "sup",
                            "small",
                            "code",
                            "pre",
                            "blockquote",
                            "ul",
                            "ol",
                            "li",
                            "dl",
                            "dt",
                            "dd",
                            "table",
                            "caption",
                            "thead",
                            "tbody",
                            "tfoot",
                            "tr",
                            "th",
                            "td",
                            "h2",
                            "h3",
                            "h4",
                            "h5",
                            "h6",
                            "details",
                            "summary",
                            "a")
                    .allowAttributes("colspan", "rowspan")
                    .matching(Pattern.compile("[1-9]\\d?"))
                    .onElements("td", "th")
                    .allowAttributes("scope")
                    .matching(Pattern.compile("row|col"))
                    .onElements("th")
                    .allowStandardUrlProtocols()
                    .allowAttributes("href")
                    .matching(Pattern.compile("(?i)https?://.*"))
                    .onElements("a")
                    .toFactory();

    /** A figure as the library's notebooks send it, perhaps in a paragraph of its own. */
    private static final Pattern FIGURE =
            Pattern.compile(
                    "\\s*(?:<p>\\s*)?<img\\s+alt=\"([^\"<>]*)\"\\s+"
                            + "src=\"data:(image/(?:svg\\+xml|png));base64,([A-Za-z0-9+/=]+)\""
                            + "(?:\\s+(?:style|width|height)=\"[^\"<>]*\")*\\s*/?>"
                            + "(?:\\s*</p>)?\\s*");

    private ForeignHtml() {}

    /** Takes markup apart and keeps what is harmless and well-formed, else shows it as text. */
    static String harmless(String html) {
        String kept = Markup.allowed(POLICY.sanitize(html));
        boolean wellFormed = Xml.parse("<div>" + kept + "</div>") != null;
        return wellFormed ? kept : "<pre>" + Markup.text(html) + "</pre>";
    }

    /** Parts markup at the pictures in it, each of which then stands by itself. */
    static List<Piece> pieces(String html) {
        List<Piece> pieces = new ArrayList<>();
        Matcher matcher = FIGURE.matcher(html);
        int from = 0;
        while (matcher.find()) {
            addWords(html.substring(from, matcher.start()), pieces);
            pieces.add(
                    new Picture(unescaped(matcher.group(1)), matcher.group(2), matcher.group(3)));
            from = matcher.end();
        }
        addWords(html.substring(from), pieces);
        return pieces;
    }

    private static void addWords(String html, List<Piece> pieces) {
        if (!html.isBlank()) {
            pieces.add(new Words(harmless(html)));
        }
    }

    private static String unescaped(@Nullable String attribute) {
        return String.valueOf(attribute)
                .replace("&quot;", "\"")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
    }

    /** What markup is made of. */
    sealed interface Piece permits Words, Picture {}

    /**
     * Markup without pictures.
     *
     * @param html what is harmless of it, well-formed
     */
    record Words(String html) implements Piece {}

    /**
     * A picture.
     *
     * @param alternative words that stand for it
     * @param mediaType its type
     * @param base64 its bytes
     */
    record Picture(String alternative, String mediaType, String base64) implements Piece {}
}
