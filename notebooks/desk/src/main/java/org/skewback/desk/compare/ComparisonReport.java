package org.skewback.desk.compare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.skewback.desk.Json;
import org.skewback.desk.render.Markup;
import org.skewback.desk.report.ReportPage;
import org.skewback.desk.report.Words;

/** Writes what changed between two issues. */
public final class ComparisonReport {

    private static final String FORMAT = "skewback-comparison";
    private static final int EDITION = 1;
    private static final int FEW = 20;
    private static final int FEW_CHAINS = 3;
    private static final String GONE = "gone";
    private static final String FRESH = "new";

    private ComparisonReport() {}

    /**
     * Writes for a terminal.
     *
     * @param comparison what changed
     * @param whole whether everything is written, however much it is
     * @return lines of text
     */
    public static String text(Comparison comparison, boolean whole) {
        List<String> lines = new ArrayList<>();
        lines.add(comparison.before());
        lines.add("→ " + comparison.now());
        lines.add("");
        lines.add(comparison.sentence());
        block(lines, "givens", comparison.givens().stream().map(ComparisonReport::line), whole);
        block(lines, "checks", comparison.checks().stream().map(ComparisonReport::line), whole);
        block(lines, "results", comparison.results().stream().map(ComparisonReport::line), whole);
        block(lines, "sources", comparison.sources().stream().map(List::of), whole);
        block(lines, "software", comparison.software().stream().map(List::of), whole);
        block(lines, "else", comparison.others().stream().map(List::of), whole);
        return String.join("\n", lines.stream().map(Words::line).toList()) + "\n";
    }

    private static void block(
            List<String> lines, String title, Stream<List<String>> items, boolean whole) {
        List<List<String>> all = items.toList();
        if (all.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(title);
        int shown = whole ? all.size() : Math.min(FEW, all.size());
        for (List<String> item : all.subList(0, shown)) {
            for (int i = 0; i < item.size(); i++) {
                lines.add((i == 0 ? "  " : "      ") + item.get(i));
            }
        }
        if (shown < all.size()) {
            lines.add("  … and " + (all.size() - shown) + " more; --verbose shows them all");
        }
    }

    private static List<String> line(Moved moved) {
        List<String> lines = new ArrayList<>();
        lines.add(moved.sheet() + ": " + moved.name() + "  " + values(moved));
        if (!moved.source().isEmpty()) {
            lines.add(moved.source());
        }
        addChains(lines, moved.chain());
        return lines;
    }

    private static List<String> line(Turned turned) {
        List<String> lines = new ArrayList<>();
        lines.add(turned.sheet() + ": " + turned.name() + "  " + values(turned));
        addChains(lines, turned.chain());
        return lines;
    }

    private static void addChains(List<String> lines, List<String> chains) {
        lines.addAll(chains.subList(0, Math.min(FEW_CHAINS, chains.size())));
        if (chains.size() > FEW_CHAINS) {
            lines.add("and " + Words.counted(chains.size() - FEW_CHAINS, "more way"));
        }
    }

    private static String values(Moved moved) {
        if (moved.before().isEmpty()) {
            return FRESH + ", " + moved.now();
        } else if (moved.now().isEmpty()) {
            return GONE + ", was " + moved.before();
        } else if (moved.relative() == 0) {
            return moved.now() + ", as before";
        }
        String relative = Words.relative(moved.relative());
        return moved.before()
                + " → "
                + moved.now()
                + (relative.isEmpty() ? "" : " (" + relative + ")");
    }

    private static String values(Turned turned) {
        if (turned.verdictBefore().isEmpty()) {
            return FRESH + ", " + turned.verdictNow() + utilisation(turned.utilisationNow());
        } else if (turned.verdictNow().isEmpty()) {
            return GONE + ", was " + turned.verdictBefore();
        }
        String verdicts =
                turned.isTurned()
                        ? turned.verdictBefore() + " → " + turned.verdictNow()
                        : turned.verdictNow();
        boolean both =
                Double.isFinite(turned.utilisationBefore())
                        && Double.isFinite(turned.utilisationNow());
        return both
                ? verdicts
                        + String.format(
                                Locale.ROOT,
                                ", utilisation %.2f → %.2f",
                                turned.utilisationBefore(),
                                turned.utilisationNow())
                : verdicts;
    }

    private static String utilisation(double value) {
        return Double.isFinite(value)
                ? String.format(Locale.ROOT, ", utilisation %.2f", value)
                : "";
    }

    /**
     * Writes a page.
     *
     * @param comparison what changed
     * @return a page that stands alone
     */
    public static String page(Comparison comparison) {
        StringBuilder body = new StringBuilder("<p>");
        body.append(Markup.text(comparison.before()))
                .append("<br/>→ ")
                .append(Markup.text(comparison.now()))
                .append("</p>\n<p class=\"verdict\">")
                .append(Markup.text(comparison.sentence()))
                .append("</p>\n");
        moved(body, "Givens", comparison.givens());
        checks(body, comparison.checks());
        moved(body, "Results", comparison.results());
        list(body, "Sources", comparison.sources());
        list(body, "Software", comparison.software());
        list(body, "Else", comparison.others());
        return ReportPage.of("What changed between two issues", body.toString());
    }

    private static void moved(StringBuilder body, String title, List<Moved> moved) {
        StringBuilder rows = new StringBuilder();
        for (Moved one : moved) {
            row(rows, one.sheet(), one.name(), "", values(one), ways(one.source(), one.chain()));
        }
        table(body, title, rows);
    }

    private static void checks(StringBuilder body, List<Turned> checks) {
        StringBuilder rows = new StringBuilder();
        for (Turned one : checks) {
            boolean failed = one.isTurned() && one.verdictNow().equals("failed");
            row(
                    rows,
                    one.sheet(),
                    one.name(),
                    failed ? "bad" : one.isTurned() ? "open" : "",
                    values(one),
                    ways("", one.chain()));
        }
        table(body, "Checks", rows);
    }

    private static String ways(String source, List<String> chains) {
        StringBuilder ways = new StringBuilder();
        if (!source.isEmpty()) {
            ways.append("<li>").append(Markup.text(source)).append("</li>");
        }
        chains.forEach(chain -> ways.append("<li>").append(Markup.text(chain)).append("</li>"));
        return ways.isEmpty() ? "" : "<ul>" + ways + "</ul>";
    }

    private static void row(
            StringBuilder rows, String sheet, String name, String kind, String values, String why) {
        rows.append("<tr><td>")
                .append(Markup.text(sheet))
                .append("</td><td>")
                .append(Markup.text(name))
                .append("</td><td class=\"")
                .append(kind)
                .append("\">")
                .append(Markup.text(values))
                .append("</td><td>")
                .append(why)
                .append("</td></tr>");
    }

    private static void table(StringBuilder body, String title, StringBuilder rows) {
        if (rows.isEmpty()) {
            return;
        }
        body.append("<h2>")
                .append(title)
                .append("</h2>\n")
                .append(
                        ReportPage.wide(
                                title,
                                "<table><thead><tr><th scope=\"col\">Sheet</th><th scope=\"col\">"
                                        + "What</th><th scope=\"col\">Change</th><th scope=\"col\">"
                                        + "From cause to effect</th></tr></thead><tbody>"
                                        + rows
                                        + "</tbody></table>"));
    }

    private static void list(StringBuilder body, String title, List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        body.append("<h2>").append(title).append("</h2>\n<ul>");
        items.forEach(item -> body.append("<li>").append(Markup.text(item)).append("</li>"));
        body.append("</ul>\n");
    }

    /**
     * Writes for a machine.
     *
     * @param comparison what changed
     * @return JSON
     */
    public static String json(Comparison comparison) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", FORMAT);
        root.put("edition", EDITION);
        root.put("before", comparison.before());
        root.put("now", comparison.now());
        root.put("sentence", comparison.sentence());
        comparison.givens().forEach(moved -> add(root.withArray("givens"), moved));
        comparison.results().forEach(moved -> add(root.withArray("results"), moved));
        for (Turned turned : comparison.checks()) {
            ObjectNode node = root.withArray("checks").addObject();
            node.put("sheet", turned.sheet());
            node.put("check", turned.name());
            node.put("verdictBefore", turned.verdictBefore());
            node.put("verdictNow", turned.verdictNow());
            put(node, "utilisationBefore", turned.utilisationBefore());
            put(node, "utilisationNow", turned.utilisationNow());
            turned.chain().forEach(node.putArray("chains")::add);
        }
        comparison.sources().forEach(root.withArray("sources")::add);
        comparison.software().forEach(root.withArray("software")::add);
        comparison.others().forEach(root.withArray("else")::add);
        return Json.page(root);
    }

    private static void add(ArrayNode to, Moved moved) {
        ObjectNode node = to.addObject();
        node.put("sheet", moved.sheet());
        node.put("quantity", moved.name());
        node.put("before", moved.before());
        node.put("now", moved.now());
        put(node, "relativeChange", moved.relative());
        if (!moved.source().isEmpty()) {
            node.put("source", moved.source());
        }
        moved.chain().forEach(node.putArray("chains")::add);
    }

    private static void put(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        }
    }
}
