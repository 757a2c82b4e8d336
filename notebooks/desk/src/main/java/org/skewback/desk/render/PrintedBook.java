package org.skewback.desk.render;

import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.desk.issue.PackageInfo;

/** The one page from which the PDF is made: cover, contents, basis, documents, registers, cautions. */
final class PrintedBook {

    private static final String STALE = "What is stale";

    private static final String BASIS = "Basis of the calculations";

    private static final String GIVENS = "Register of givens and assumptions";

    private final ReadPackage whole;
    private final PackageInfo info;
    private final Drawing drawing;
    private final PrintMedium medium;
    private final Registers registers;

    /**
     * Makes the book.
     *
     * @param drawing {@link Drawing#DONE} where it is to be printed; else it has no style either
     */
    PrintedBook(ReadPackage whole, Drawing drawing) {
        this.whole = whole;
        this.info = whole.info();
        this.drawing = drawing;
        this.medium = new PrintMedium(whole, drawing);
        this.registers = new Registers(whole, medium::address);
    }

    /** Writes the page as XML. */
    String page() {
        StringBuilder body = new StringBuilder();
        body.append(cover()).append(contents());
        part(body, "basis", BASIS, new BasisWriter(whole, registers).all());
        part(body, "givens", GIVENS, registers.givens(2));
        for (ReadDocument document : whole.documents()) {
            body.append(document(document));
        }
        part(body, "checks", "Register of checks", registers.checks());
        if (anyStale()) {
            part(body, "stale", STALE, registers.stale());
        }
        if (!whole.checking().isEmpty()) {
            part(body, "checking", "From the checker", whole.checking().all());
        }
        flowing(body, "bare", "Numbers without a source", registers.withoutSource());
        flowing(body, "sources", "Sources cited", registers.sources());
        flowing(body, "software", "Software and environment", registers.environment());
        part(body, "cautions", "Cautions", registers.allCautions());
        String page =
                "<html lang=\"en\"><head><title>"
                        + Markup.text(info.title())
                        + "</title><meta name=\"subject\" content=\""
                        + Markup.attribute(info.summary())
                        + "\"/>"
                        + bookmarks()
                        + (drawing == Drawing.DONE ? style() : "")
                        + "</head><body>"
                        + body
                        + "</body></html>";
        return new Coverage().printable(PdfPackage.normal(Markup.allowed(page)));
    }

    private String style() {
        return "<style>" + HtmlPackage.resource("print.css") + running() + "</style>";
    }

    private boolean anyStale() {
        return whole.documents().stream().anyMatch(document -> !document.stale().isEmpty());
    }

    private String bookmarks() {
        StringBuilder markup = new StringBuilder("<bookmarks>");
        bookmark(markup, "Contents", "contents");
        parts().forEach((id, name) -> bookmark(markup, name, id));
        return markup.append("</bookmarks>").toString();
    }

    /** The names of the parts by their identifiers, in order. */
    private Map<String, String> parts() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("basis", BASIS);
        parts.put("givens", GIVENS);
        for (ReadDocument document : whole.documents()) {
            parts.put(PrintMedium.anchor(document.slug()), document.heading());
        }
        parts.put("checks", "Register of checks");
        if (anyStale()) {
            parts.put("stale", STALE);
        }
        if (!whole.checking().isEmpty()) {
            parts.put("checking", "From the checker");
        }
        parts.put("bare", "Numbers without a source");
        parts.put("sources", "Sources cited");
        parts.put("software", "Software and environment");
        parts.put("cautions", "Cautions");
        return parts;
    }

    private static void bookmark(StringBuilder markup, String name, String id) {
        markup.append("<bookmark name=\"")
                .append(Markup.attribute(name))
                .append("\" href=\"#")
                .append(id)
                .append("\"/>");
    }

    private String running() {
        return "@page{size:A4;margin:24mm 20mm 22mm 22mm;"
                + marginBox(
                        "top-left",
                        "vertical-align:bottom;padding-bottom:5mm",
                        quoted(PdfPackage.identity(info)))
                + marginBox(
                        "top-right",
                        "vertical-align:bottom;padding-bottom:5mm;text-align:right",
                        quoted(info.title()))
                + marginBox(
                        "bottom-left",
                        "vertical-align:top;padding-top:4mm",
                        quoted(info.date().toString()))
                + marginBox(
                        "bottom-right",
                        "vertical-align:top;padding-top:4mm;text-align:right",
                        "\"page \" counter(page) \" of \" counter(pages)")
                + "}@font-face{font-family:\"Source Sans 3\";src:url(data:font/ttf;base64,"
                + Base64.getEncoder().encodeToString(Fonts.TEXT.plain())
                + ");-fs-pdf-font-embed:embed;-fs-font-subset:subset}";
    }

    private static String marginBox(String where, String place, String content) {
        return "@"
                + where
                + "{font-family:\"Source Sans 3\",\"DejaVu Sans\";font-size:8pt;color:#4a545c;"
                + place
                + ";content:"
                + content
                + "}";
    }

    /** A string of the style sheet: whatever is not a letter or a digit is written by its number. */
    private static String quoted(String text) {
        StringBuilder css = new StringBuilder("\"");
        text.codePoints()
                .forEach(
                        c -> {
                            if (c < 0x20) {
                                css.append(' ');
                            } else if (Character.isLetterOrDigit(c) || c == ' ') {
                                css.appendCodePoint(c);
                            } else {
                                css.append('\\').append(Integer.toHexString(c)).append(' ');
                            }
                        });
        return css.append('"').toString();
    }

    private String cover() {
        Tally tally = registers.tally();
        return "<div class=\"cover\"><h1>"
                + Markup.text(info.title())
                + "</h1><p class=\"summary\">"
                + Markup.text(info.summary())
                + "</p>"
                + registers.title()
                + "<p><b>Checks.</b> "
                + (tally.all() == 0 ? "None." : tally.inWords())
                + "</p><h2>Before using any number</h2>"
                + Registers.deference()
                + Registers.cautions(info)
                + "</div>\n";
    }

    private String contents() {
        StringBuilder markup =
                new StringBuilder("<div class=\"part\" id=\"contents\"><h1>Contents</h1>");
        markup.append("<table class=\"contents\"><tbody>");
        parts().forEach((id, name) -> line(markup, name, id));
        return markup.append("</tbody></table></div>\n").toString();
    }

    private static void line(StringBuilder markup, String name, String id) {
        String words = Markup.text(name);
        markup.append("<tr><td><a href=\"#")
                .append(id)
                .append("\" title=\"")
                .append(words)
                .append("\">")
                .append(words)
                .append("</a></td><td class=\"page\"><a class=\"page\" href=\"#")
                .append(id)
                .append("\" title=\"page of ")
                .append(words)
                .append("\"></a></td></tr>");
    }

    private static void part(StringBuilder body, String id, String title, String content) {
        headed(body, "part", id, title, content);
    }

    /** Goes on where the part before it ended, on the same page. */
    private static void flowing(StringBuilder body, String id, String title, String content) {
        headed(body, "part flowing", id, title, content);
    }

    private static void headed(
            StringBuilder body, String kind, String id, String title, String content) {
        body.append("<div class=\"")
                .append(kind)
                .append("\" id=\"")
                .append(id)
                .append("\"><h1>")
                .append(title)
                .append("</h1>")
                .append(content)
                .append("</div>\n");
    }

    private String document(ReadDocument document) {
        String cells = new CellWriter(medium, whole, document).all();
        Tally tally = Tally.of(document.checks());
        StringBuilder markup = new StringBuilder("<div class=\"part\" id=\"");
        markup.append(PrintMedium.anchor(document.slug()))
                .append("\"><h1>")
                .append(Markup.text(document.heading()))
                .append("</h1>");
        if (tally.all() > 0) {
            markup.append("<p class=\"tally\">").append(tally.inWords()).append("</p>");
        }
        markup.append(cells);
        List<String> answers = medium.takeAnswers();
        if (!answers.isEmpty()) {
            markup.append("<h2>Answers</h2>");
            answers.forEach(answer -> markup.append("<div class=\"prose\">" + answer + "</div>"));
        }
        String checking =
                document.record() == null ? "" : whole.checking().about(document.number());
        if (!checking.isEmpty()) {
            markup.append("<h2>From the checker</h2>").append(checking);
        }
        List<String> sources = medium.takeCells();
        if (!sources.isEmpty()) {
            markup.append("<h2>The code that ran</h2>");
            sources.forEach(source -> markup.append(medium.lines("code", source)));
        }
        return markup.append("</div>\n").toString();
    }
}
