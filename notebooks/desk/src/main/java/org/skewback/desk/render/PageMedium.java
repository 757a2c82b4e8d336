package org.skewback.desk.render;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Origin;
import org.skewback.quantity.Quantity;

/** The screen: equations as MathML, code and origins folded away. */
final class PageMedium implements Medium {

    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    /** A formula of more letters may be wider than a telephone, and stands on its own line there. */
    private static final int LONGEST_IN_TEXT = 24;

    /** So many letters of a formula stand in the width of a telephone. */
    private static final int NARROW = 38;

    /** So many stand in the width of the text; a browser breaks no formula. */
    private static final int BROAD = 84;

    /** Width of a telephone, in em of a table's text there, and what each column needs beside it. */
    private static final double TELEPHONE = 358 / 14.0;

    private static final double BETWEEN = 8 / 14.0;

    /** A table whose rows have more lines on a telephone is read row by row there. */
    private static final double MOST_LINES = 3;

    /** A text of more em has a line of its own where a table is read row by row. */
    private static final double SHORT = 7;

    /** A picture among words counts as so many em. */
    private static final double PICTURE = 8;

    private final ReadPackage whole;

    PageMedium(ReadPackage whole) {
        this.whole = whole;
    }

    /** Both ways of breaking stand in the page, and its style shows the one for its width. */
    @Override
    public String worked(Quantity quantity) {
        return both(quantity.worked().mathml(BROAD), quantity.worked().mathml(NARROW));
    }

    @Override
    public String equation(String mathml, boolean display) {
        int letters = TAG.matcher(mathml).replaceAll("").length();
        if (display) {
            return both(mathml, letters > NARROW ? SplitAtEquals.in(mathml) : mathml);
        }
        String flat = FlatBrackets.in(mathml);
        return letters > LONGEST_IN_TEXT ? "<span class=\"long\">" + flat + "</span>" : flat;
    }

    private static String both(String broad, String narrow) {
        String shown = boxed(narrow);
        return narrow.equals(broad)
                ? shown
                : "<span class=\"broad\">"
                        + boxed(broad)
                        + "</span><span class=\"narrow\">"
                        + shown
                        + "</span>";
    }

    private static String boxed(String mathml) {
        return "<span class=\"wide\">" + FlatBrackets.in(mathml) + "</span>";
    }

    /** A drawing keeps the size of its letters on a telephone, and scrolls in its own box there. */
    @Override
    public String picture(String mediaType, String base64, String alternative) {
        String picture =
                "<img alt=\""
                        + Markup.attribute(alternative)
                        + "\" src=\"data:"
                        + mediaType
                        + ";base64,"
                        + base64
                        + "\"/>";
        return mediaType.equals("image/svg+xml")
                ? "<span class=\"drawn\" role=\"region\" tabindex=\"0\" aria-label=\"Figure\">"
                        + picture
                        + "</span>"
                : picture;
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
    public String table(String markup, String label) {
        TableMarkup table = TableMarkup.of(markup, tag -> PICTURE);
        if (!table.isRegular()) {
            return wide(markup, label);
        }
        ColumnWidths columns = new ColumnWidths(table, BETWEEN);
        boolean narrow =
                columns.fitUnbroken(TELEPHONE)
                        || (columns.fit(TELEPHONE) && columns.linesARow(TELEPHONE) <= MOST_LINES);
        return wide(narrow ? markup : cards(table, columns), label);
    }

    /**
     * Names each cell by the head of its column, so that a style can set each row as a card. What is
     * no table to the eye is still named as one.
     */
    private static String cards(TableMarkup table, ColumnWidths columns) {
        List<TableMarkup.Cell> heads = table.rows().get(0);
        StringBuilder named = new StringBuilder();
        int from = 0;
        for (int row = 0; row < table.rows().size(); row++) {
            for (int i = 0; i < heads.size(); i++) {
                TableMarkup.Cell cell = table.rows().get(row).get(i);
                named.append(table.markup(), from, cell.at());
                from = cell.at();
                if (row == 0) {
                    named.append(" role=\"columnheader\"");
                    continue;
                }
                named.append(" role=\"cell\" data-head=\"")
                        .append(heads.get(i).text().replace("\"", "&quot;"))
                        .append('"');
                if (columns.longest(i) > SHORT && !cell.hasClass()) {
                    named.append(" class=\"said\"");
                }
            }
        }
        String all = named.append(table.markup().substring(from)).toString();
        String kind = heads.size() == 2 ? "cards pairs" : "cards";
        return (all.contains("<table class=\"")
                        ? all.replaceFirst("<table class=\"", "<table class=\"" + kind + " ")
                        : all.replaceFirst("<table", "<table class=\"" + kind + "\""))
                .replaceFirst("<table", "<table role=\"table\"")
                .replace("<thead>", "<thead role=\"rowgroup\">")
                .replace("<tbody>", "<tbody role=\"rowgroup\">")
                .replace("<tr>", "<tr role=\"row\">");
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
