package org.skewback.desk.render;

import java.util.Optional;
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

    /** A figure as the library's notebooks send it: one picture and nothing else. */
    private static final Pattern FIGURE =
            Pattern.compile(
                    "\\s*<img\\s+alt=\"([^\"<>]*)\"\\s+"
                            + "src=\"data:(image/(?:svg\\+xml|png));base64,([A-Za-z0-9+/=]+)\""
                            + "(?:\\s+(?:style|width|height)=\"[^\"<>]*\")*\\s*/?>\\s*");

    private ForeignHtml() {}

    /** Takes markup apart and keeps what is harmless and well-formed, else shows it as text. */
    static String harmless(String html) {
        String kept = Markup.allowed(POLICY.sanitize(html));
        boolean wellFormed = Xml.parse("<div>" + kept + "</div>") != null;
        return wellFormed ? kept : "<pre>" + Markup.text(html) + "</pre>";
    }

    /** Reads markup that is one picture standing in the page. */
    static Optional<Picture> picture(String html) {
        Matcher matcher = FIGURE.matcher(html);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        return Optional.of(
                new Picture(unescaped(matcher.group(1)), matcher.group(2), matcher.group(3)));
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

    /**
     * A picture.
     *
     * @param alternative words that stand for it
     * @param mediaType its type
     * @param base64 its bytes
     */
    record Picture(String alternative, String mediaType, String base64) {}
}
