package org.skewback.desk.render;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Origin;
import org.skewback.quantity.Quantity;

/** The screen: equations as MathML, code and origins folded away. */
final class PageMedium implements Medium {

    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    /** A formula of more letters may be wider than a telephone, and stands on its own line there. */
    private static final int LONGEST_IN_TEXT = 24;

    private final ReadPackage whole;

    PageMedium(ReadPackage whole) {
        this.whole = whole;
    }

    /** A telephone shows so many letters; a browser breaks no formula. */
    @Override
    public int letters() {
        return 40;
    }

    @Override
    public String equation(String mathml, boolean display) {
        String flat = FlatBrackets.in(mathml);
        if (display) {
            return "<span class=\"wide\">" + flat + "</span>";
        }
        boolean isLong = TAG.matcher(mathml).replaceAll("").length() > LONGEST_IN_TEXT;
        return isLong ? "<span class=\"long\">" + flat + "</span>" : flat;
    }

    @Override
    public String picture(String mediaType, String base64, String alternative) {
        return "<img alt=\""
                + Markup.attribute(alternative)
                + "\" src=\"data:"
                + mediaType
                + ";base64,"
                + base64
                + "\"/>";
    }

    @Override
    public String result(Quantity quantity) {
        return "";
    }

    @Override
    public String origin(Quantity quantity) {
        Origin origin = quantity.origin();
        return origin.root().isEnd() ? "" : origin.html();
    }

    @Override
    public String code(String source) {
        return "<details class=\"code\"><summary>code that ran here</summary>"
                + wide("<pre><code>" + Markup.text(source) + "</code></pre>", "Code")
                + "</details>";
    }

    @Override
    public String lines(String kind, String text) {
        return wide("<pre class=\"" + kind + "\">" + Markup.text(text) + "</pre>", "Output");
    }

    @Override
    public @Nullable String address(String slug, @Nullable String block) {
        if (!whole.has(slug)) {
            return null;
        }
        String fragment = block == null ? "" : "#" + identifier(slug, block);
        return slug + ".html" + fragment;
    }

    @Override
    public String identifier(String slug, String block) {
        return Markup.identifier(block);
    }

    @Override
    public String wide(String markup, String label) {
        if (label.isEmpty()) {
            return "<div class=\"wide\">" + markup + "</div>";
        }
        return "<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\""
                + Markup.attribute(label)
                + "\">"
                + markup
                + "</div>";
    }

    @Override
    public String answer(String title, String markup) {
        return "<details class=\"answer prose\"><summary>"
                + Markup.text(title)
                + "</summary>"
                + markup
                + "</details>";
    }

    // Radio buttons and a style need no script, and the arrow keys move them.
    @Override
    public String sweep(SweepStates sweep, String name, String number) {
        StringBuilder buttons = new StringBuilder();
        StringBuilder frames = new StringBuilder();
        for (int i = 0; i < sweep.states().size(); i++) {
            SweepStates.State state = sweep.states().get(i);
            String button = name + "-" + i;
            buttons.append("<input type=\"radio\" name=\"")
                    .append(name)
                    .append("\" id=\"")
                    .append(button)
                    .append('"')
                    .append(i == sweep.opening() ? " checked=\"checked\"" : "")
                    .append("/><label for=\"")
                    .append(button)
                    .append("\">")
                    .append(Markup.text(state.label()))
                    .append("</label>");
            frames.append(sweep.printed().contains(i) ? "<div class=\"printed\">" : "<div>")
                    .append(picture("image/svg+xml", state.base64(), state.description()))
                    .append("<p class=\"caption\">")
                    .append(Markup.text(state.label()))
                    .append("</p></div>");
        }
        return "<div class=\"sweep\" role=\"radiogroup\" aria-label=\""
                + Markup.attribute(sweep.title() + ": " + sweep.parameter())
                + "\"><p><b>"
                + number
                + Markup.text(sweep.title())
                + "</b></p><p class=\"parameter\">"
                + Markup.text(sweep.parameter())
                + ":</p>"
                + buttons
                + "<div class=\"frames\">"
                + frames
                + "</div></div>";
    }
}
