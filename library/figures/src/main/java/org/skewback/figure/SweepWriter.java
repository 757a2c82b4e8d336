package org.skewback.figure;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;

/**
 * Writes a sweep for a notebook, as radio buttons that a style shows the states by, and as JSON for
 * whoever issues the notebook. The buttons are moved by the arrow keys, as every group of them is.
 *
 * @see <a href="https://www.w3.org/WAI/ARIA/apg/patterns/radio/">ARIA Authoring Practices Guide,
 *     "Radio Group Pattern"</a>
 */
final class SweepWriter {

    private static final int EDITION = 1;
    private static final int IDENTIFIER_BYTES = 5;

    private SweepWriter() {}

    static String json(Sweep sweep) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("format", "skewback-sweep");
            json.writeNumberField("edition", EDITION);
            json.writeStringField("title", sweep.title());
            json.writeStringField("parameter", sweep.parameter());
            json.writeNumberField("opening", sweep.opening());
            json.writeArrayFieldStart("printed");
            for (int index : sweep.printed()) {
                json.writeNumber(index);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("states");
            for (Sweep.State state : sweep.drawn()) {
                json.writeStartObject();
                json.writeStringField("label", state.label());
                json.writeStringField("description", state.description());
                json.writeStringField("svg", state.figure().svg());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    static String html(Sweep sweep) {
        List<Sweep.State> states = sweep.drawn();
        String id = identifier(sweep);
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
            // this.
            buttons.append("<input type=\"radio\" data-lm-suppress-shortcuts=\"true\" name=\"")
                    .append(id)
                    .append("\" id=\"")
                    .append(button)
                    .append('"')
                    .append(i == sweep.opening() ? " checked" : "")
                    .append("><label for=\"")
                    .append(button)
                    .append("\">")
                    .append(SvgWriter.escape(states.get(i).label()))
                    .append("</label>");
            frames.append("<div>").append(image(states.get(i))).append("</div>");
        }
        return "<div class=\"skewback-sweep\" id=\""
                + id
                + "\" role=\"radiogroup\" aria-label=\""
                + SvgWriter.escape(sweep.parameter())
                + "\"><style>#"
                + id
                + " label{margin:0 .8em 0 .4em;white-space:nowrap}#"
                + id
                + " input{margin:0;vertical-align:baseline}#"
                + id
                + " .frames>div{display:none}#"
                + id
                + " .frames img{max-width:100%}"
                + style
                + "{display:block}</style><p><b>"
                + SvgWriter.escape(sweep.title())
                + "</b><br>"
                + SvgWriter.escape(sweep.parameter())
                + ":</p>"
                + buttons
                + "<div class=\"frames\">"
                + frames
                + "</div></div>";
    }

    private static String image(Sweep.State state) {
        return "<img alt=\""
                + SvgWriter.escape(state.description())
                + "\" src=\"data:image/svg+xml;base64,"
                + Base64.getEncoder()
                        .encodeToString(state.figure().svg().getBytes(StandardCharsets.UTF_8))
                + "\">";
    }

    /** The same for the same content, so that a notebook run again is the same. */
    private static String identifier(Sweep sweep) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(json(sweep).getBytes(StandardCharsets.UTF_8));
            return "sweep-" + HexFormat.of().formatHex(digest, 0, IDENTIFIER_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
