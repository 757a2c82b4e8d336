package org.skewback.sheet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.skewback.quantity.HtmlWriter;

/**
 * Writes the states of a figure for a notebook, as radio buttons that a style shows the states by. The
 * buttons are moved by the arrow keys, as every group of them is.
 *
 * <p>All stands on one line without a blank one and without a dollar sign, so that it may also stand in
 * Markdown. A notebook program takes styles from what it does not trust; a reader then sees all states
 * below each other.
 *
 * @see <a href="https://www.w3.org/WAI/ARIA/apg/patterns/radio/">ARIA Authoring Practices Guide,
 *     "Radio Group Pattern"</a>
 */
final class StatesMarkup {

    private static final int IDENTIFIER_BYTES = 5;

    private StatesMarkup() {}

    static String html(FigureStates figure) {
        List<FigureStates.State> states = figure.states();
        String id = identifier(figure);
        StringBuilder style = new StringBuilder();
        StringBuilder buttons = new StringBuilder();
        StringBuilder frames = new StringBuilder();
        for (int i = 0; i < states.size(); i++) {
            String button = id + "-" + i;
            style.append(i == 0 ? "" : ",")
                    .append('#')
                    .append(button)
                    .append(":checked~.frames>div:nth-child(")
                    .append(i + 1)
                    .append(')');
            // A notebook program takes the arrow keys for itself where the button does not say
            // this. A line may end only at the spaces in a span: never between a button and its
            // words.
            buttons.append("<input type=\"radio\" data-lm-suppress-shortcuts=\"true\" name=\"")
                    .append(id)
                    .append("\" id=\"")
                    .append(button)
                    .append('"')
                    .append(i == figure.opening() ? " checked" : "")
                    .append(">&nbsp;<label for=\"")
                    .append(button)
                    .append("\">")
                    .append(escape(states.get(i).label()))
                    .append("</label><span> </span>");
            frames.append("<div>").append(image(states.get(i))).append("</div>");
        }
        return "<div class=\"skewback-sweep\" id=\""
                + id
                + "\" role=\"radiogroup\" aria-label=\""
                + escape(figure.parameter())
                + "\"><style>#"
                + id
                + "{white-space:nowrap}#"
                + id
                + " p,#"
                + id
                + " span{white-space:normal}#"
                + id
                + " label{margin-right:.8em}#"
                + id
                + " input{margin:0;vertical-align:baseline}#"
                + id
                + " .frames>div{display:none}#"
                + id
                + " .frames img{max-width:100%}"
                + style
                + "{display:block}</style><p>"
                + escape(figure.parameter())
                + ":</p>"
                + buttons
                + "<div class=\"frames\">"
                + frames
                + "</div></div>";
    }

    private static String image(FigureStates.State state) {
        return "<img alt=\""
                + escape(state.description())
                + "\" src=\""
                + MarkdownSheet.address(state.svg())
                + "\">";
    }

    private static String escape(String text) {
        return HtmlWriter.text(text)
                .replace("$", "&#36;")
                .replace("\\", "&#92;")
                .replace("\n", " ");
    }

    /** The same for the same content, so that a notebook run again is the same. */
    private static String identifier(FigureStates figure) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(figure.toString().getBytes(StandardCharsets.UTF_8));
            return "sweep-" + HexFormat.of().formatHex(digest.digest(), 0, IDENTIFIER_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
