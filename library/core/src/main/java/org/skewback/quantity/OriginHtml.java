package org.skewback.quantity;

import org.skewback.quantity.Origin.Branch;

/** Writes the origin of a number as nested lists that unfold. */
final class OriginHtml extends Origin.Writer {

    private final StringBuilder markup = new StringBuilder();

    OriginHtml(int deepest, int most) {
        super(deepest, most);
    }

    String write(Branch root) {
        start(root);
        if (root.isEnd()) {
            return "<p>" + said(root) + "</p>";
        }
        String symbol = root.quantity().symbol();
        markup.append("<details class=\"origin\"><summary>where ")
                .append(
                        symbol == null
                                ? "this number"
                                : HtmlWriter.write(new Expression.Symbol(symbol)))
                .append(" comes from</summary>");
        addInner(root);
        return markup.append("</details>").toString();
    }

    private void addInner(Branch branch) {
        markup.append("<ul>");
        for (Branch inner : branch.behind()) {
            start(inner);
            if (inner.isEnd()) {
                markup.append("<li>").append(said(inner)).append("</li>");
            } else {
                markup.append("<li><details><summary>").append(said(inner)).append("</summary>");
                addInner(inner);
                markup.append("</details></li>");
            }
        }
        for (InterpolationTable table : branch.tables()) {
            markup.append("<li>")
                    .append(HtmlWriter.write(new Expression.Symbol(table.symbol())))
                    .append(", ")
                    .append(HtmlWriter.text(table(table)))
                    .append(from(table.source().toString()))
                    .append("</li>");
        }
        if (branch.leftOut() > 0) {
            markup.append("<li>").append(more(branch)).append("</li>");
        }
        markup.append("</ul>");
    }

    private String said(Branch branch) {
        Quantity quantity = branch.quantity();
        StringBuilder said = new StringBuilder();
        String symbol = quantity.symbol();
        if (symbol != null) {
            said.append(HtmlWriter.write(new Expression.Symbol(symbol))).append("\u00A0= ");
        }
        said.append(HtmlWriter.text(Numerals.withUnit(quantity)));
        if (!quantity.note().isBlank()) {
            said.append(", ").append(HtmlWriter.text(quantity.note()));
        }
        for (Expression formula : formula(branch)) {
            said.append(", from ").append(HtmlWriter.write(formula));
        }
        return said.append(from(source(quantity))).append(from(remark(branch))).toString();
    }

    private static String from(String where) {
        return where.isEmpty()
                ? ""
                : " <span class=\"from\">(" + HtmlWriter.text(where) + ")</span>";
    }
}
