package org.skewback.lesson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.skewback.display.Displayable;
import org.skewback.quantity.Expression;
import org.skewback.quantity.LatexWriter;
import org.skewback.quantity.Quantity;

/**
 * An answer that is hidden until asked for: folded in a notebook and in an issued page, printed at
 * the end of its lesson on paper. A terminal, which can fold nothing, shows it at once.
 *
 * <p>Numbers in it are quantities with their formulas, so that an answer is worked out and not typed.
 */
public final class HiddenAnswer implements Displayable {

    /** MIME type under which a notebook keeps the answer, for whoever issues it. */
    public static final String TYPE = "application/vnd.skewback.answer+json";

    private static final int EDITION = 1;

    private final String title;
    private final List<Line> lines;

    /** A paragraph in three ways of writing. */
    private record Line(String markdown, String html, String text) {}

    private HiddenAnswer(String title, List<Line> lines) {
        this.title = title;
        this.lines = List.copyOf(lines);
    }

    /**
     * Starts an answer.
     *
     * @param title what stands on its fold, such as {@code Answer to question 1}
     * @return an answer that says nothing yet
     * @throws IllegalArgumentException if the title is blank
     */
    public static HiddenAnswer under(String title) {
        if (title.isBlank()) {
            throw new IllegalArgumentException("the title of a hidden answer is blank");
        }
        return new HiddenAnswer(title, List.of());
    }

    /**
     * Says something.
     *
     * @param text in words, without markup
     * @return the answer that says this too
     */
    public HiddenAnswer saying(String text) {
        return with(new Line(Prose.escaped(text), Prose.html(text).replace("$", "&#36;"), text));
    }

    /**
     * Shows a quantity with its formula, the numbers put in and the result.
     *
     * @param quantity quantity with a symbol
     * @return the answer that shows it too
     */
    public HiddenAnswer showing(Quantity quantity) {
        String latex = "$" + quantity.worked().latex() + "$";
        return with(new Line(latex, Prose.html(latex), quantity.worked().text()));
    }

    private HiddenAnswer with(Line line) {
        List<Line> more = new ArrayList<>(lines);
        more.add(line);
        return new HiddenAnswer(title, more);
    }

    /** The symbol of a named quantity in LaTeX. */
    static String symbol(Quantity quantity) {
        return LatexWriter.write(new Expression.Symbol(String.valueOf(quantity.symbol())));
    }

    private String json() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("format", "skewback-answer");
            json.writeNumberField("edition", EDITION);
            json.writeStringField("title", title);
            json.writeStringField(
                    "markdown",
                    lines.stream().map(Line::markdown).collect(Collectors.joining("\n\n")));
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put(TYPE, json());
        bundle.put(
                "text/html",
                "<details><summary>"
                        + Prose.html(title)
                        + "</summary>"
                        + lines.stream()
                                .map(line -> "<p>" + line.html() + "</p>")
                                .collect(Collectors.joining())
                        + "</details>");
        bundle.put("text/plain", toString());
        return bundle;
    }

    @Override
    public String toString() {
        return title
                + lines.stream().map(Line::text).collect(Collectors.joining("\n  ", "\n  ", ""));
    }
}
