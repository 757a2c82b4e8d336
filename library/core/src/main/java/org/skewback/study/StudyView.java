package org.skewback.study;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.skewback.quantity.Expression;
import org.skewback.quantity.HtmlWriter;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Column;
import org.skewback.sheet.Figure;
import org.skewback.sheet.Table;

/** A study put together to be shown: title, sentences, tables and figures, as HTML and as text. */
final class StudyView {

    private static final String CAUTION =
            "A probability found here is that of the calculation with the distributions put in. It"
                + " holds nothing of errors in the model, in the work on site, or of what nobody"
                + " thought of. What is enough, the code that applies at the place and the licensed"
                + " engineer say.";

    private static final Pattern SYMBOL =
            Pattern.compile("[\\p{L}\\p{N}]+_[\\p{L}\\p{N}]+(?:,[\\p{L}\\p{N}]+)*");

    private final StringBuilder html = new StringBuilder();
    private final StringBuilder text = new StringBuilder();

    private final String title;

    private StudyView(String title) {
        this.title = title;
    }

    static StudyView titled(String title) {
        StudyView view = new StudyView(title);
        view.html.append("<p><b>").append(withSymbols(title)).append("</b></p>");
        view.text.append(title);
        return view;
    }

    /** Lowers the subscripts of what has the form of a symbol, such as M_Ed. */
    private static String withSymbols(String words) {
        StringBuilder set = new StringBuilder();
        Matcher symbols = SYMBOL.matcher(words);
        int from = 0;
        while (symbols.find()) {
            set.append(HtmlWriter.text(words.substring(from, symbols.start())))
                    .append(HtmlWriter.write(new Expression.Symbol(symbols.group())));
            from = symbols.end();
        }
        return set.append(HtmlWriter.text(words.substring(from))).toString();
    }

    StudyView saying(String sentence) {
        html.append("<p>").append(HtmlWriter.text(sentence)).append("</p>");
        text.append('\n').append(sentence);
        return this;
    }

    StudyView cautioning() {
        return saying("Caution: " + CAUTION);
    }

    /** Adds a table; what is written as one of the givens is set as its symbol. */
    StudyView table(Table table, List<Quantity> named) {
        List<String> symbols = new ArrayList<>();
        named.forEach(quantity -> symbols.add(Require.name(quantity)));
        html.append("<table>");
        if (!table.title().equals(title)) {
            html.append("<caption>").append(withSymbols(table.title())).append("</caption>");
        }
        html.append("<thead><tr>");
        for (Column column : table.columns()) {
            html.append("<th scope=\"col\">")
                    .append(withSymbols(column.fullHeading()))
                    .append("</th>");
        }
        html.append("</tr></thead><tbody>");
        for (int row = 0; row < table.rows(); row++) {
            html.append("<tr>");
            for (Column column : table.columns()) {
                String cell = column.texts().get(row);
                html.append(column.isNumeric() ? "<td style=\"text-align:right\">" : "<td>")
                        .append(
                                symbols.contains(cell)
                                        ? HtmlWriter.write(new Expression.Symbol(cell))
                                        : HtmlWriter.text(cell))
                        .append("</td>");
            }
            html.append("</tr>");
        }
        html.append("</tbody></table>");
        text.append("\n\n").append(plain(table, !table.title().equals(title)));
        return this;
    }

    private static String plain(Table table, boolean titled) {
        List<Integer> widths = new ArrayList<>();
        for (Column column : table.columns()) {
            int width = length(column.fullHeading());
            for (String cell : column.texts()) {
                width = Math.max(width, length(cell));
            }
            widths.add(width);
        }
        StringBuilder lines = new StringBuilder(titled ? table.title() + "\n" : "");
        for (int row = -1; row < table.rows(); row++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.size(); i++) {
                Column column = table.columns().get(i);
                String cell = row < 0 ? column.fullHeading() : column.texts().get(row);
                String gap = " ".repeat(widths.get(i) - length(cell));
                line.append(i == 0 ? "" : "  ")
                        .append(column.isNumeric() ? gap + cell : cell + gap);
            }
            lines.append(row < 0 ? "" : "\n").append(line.toString().stripTrailing());
        }
        return lines.toString();
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }

    /** Adds what installed illustrators draw of a study. */
    StudyView figures(Object study) {
        for (Illustrator illustrator :
                ServiceLoader.load(Illustrator.class, Illustrator.class.getClassLoader())) {
            for (Figure figure : illustrator.draw(study)) {
                String data =
                        Base64.getEncoder()
                                .encodeToString(figure.svg().getBytes(StandardCharsets.UTF_8));
                html.append("<p><img alt=\"")
                        .append(HtmlWriter.text(figure.title() + ". " + figure.description()))
                        .append("\" src=\"data:image/svg+xml;base64,")
                        .append(data)
                        .append("\" style=\"max-width:100%\"></p>");
                text.append("\n\n").append(figure.title()).append("\n");
                text.append(figure.description());
            }
        }
        return this;
    }

    String text() {
        return text.toString();
    }

    Map<String, String> bundle() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put("text/html", html.toString());
        bundle.put("text/plain", text());
        return bundle;
    }
}
