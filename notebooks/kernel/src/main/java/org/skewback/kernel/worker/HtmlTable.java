package org.skewback.kernel.worker;

import java.util.List;

/**
 * Writes rows of text as an HTML table that needs no style and no script. Beyond a page of rows, each
 * further page is folded away under a line that says which rows it holds.
 */
final class HtmlTable {

    static final int PAGE = 20;
    static final int MOST_ROWS = 400;
    static final int MOST_COLUMNS = 40;

    private HtmlTable() {}

    /**
     * A column.
     *
     * @param heading its heading
     * @param type what it holds, in a word, or empty
     * @param numeric whether its cells are numbers, to be set flush right
     */
    record Column(String heading, String type, boolean numeric) {}

    /**
     * Writes a table.
     *
     * @param caption what stands above it, or empty
     * @param columns its columns
     * @param rows its first rows, no more than {@value #MOST_ROWS}
     * @param of how many rows there are in all
     */
    static String write(String caption, List<Column> columns, List<List<String>> rows, int of) {
        StringBuilder html = new StringBuilder();
        for (int from = 0; from == 0 || from < rows.size(); from += PAGE) {
            int to = Math.min(rows.size(), from + PAGE);
            if (from > 0) {
                html.append("<details><summary>rows ")
                        .append(from + 1)
                        .append(" to ")
                        .append(to)
                        .append(" of ")
                        .append(of)
                        .append("</summary>");
            }
            page(html, from == 0 ? caption : "", columns, rows.subList(from, to));
            if (from > 0) {
                html.append("</details>");
            }
        }
        if (of > rows.size()) {
            html.append("<p>… ").append(of - rows.size()).append(" more rows of ").append(of);
            html.append("</p>");
        }
        return html.toString();
    }

    private static void page(
            StringBuilder html, String caption, List<Column> columns, List<List<String>> rows) {
        int shown = Math.min(columns.size(), MOST_COLUMNS);
        html.append("<table>");
        if (!caption.isEmpty()) {
            html.append("<caption>").append(escape(caption)).append("</caption>");
        }
        html.append("<thead><tr>");
        for (Column column : columns.subList(0, shown)) {
            html.append("<th scope=\"col\"").append(side(column)).append('>');
            html.append(escape(column.heading()));
            if (!column.type().isEmpty()) {
                html.append("<br><small>").append(escape(column.type())).append("</small>");
            }
            html.append("</th>");
        }
        if (shown < columns.size()) {
            html.append("<th>… ").append(columns.size() - shown).append(" more</th>");
        }
        html.append("</tr></thead><tbody>");
        for (List<String> row : rows) {
            html.append("<tr>");
            for (int i = 0; i < shown; i++) {
                html.append("<td").append(side(columns.get(i))).append('>');
                html.append(escape(row.get(i))).append("</td>");
            }
            html.append("</tr>");
        }
        html.append("</tbody></table>");
    }

    private static String side(Column column) {
        // Said for each cell, because notebook programs set all of them flush right.
        return " style=\"text-align:" + (column.numeric() ? "right" : "left") + "\"";
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
