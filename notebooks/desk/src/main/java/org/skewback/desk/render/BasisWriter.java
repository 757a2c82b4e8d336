package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.issue.Basis;
import org.skewback.quantity.Dimension;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Block;
import org.skewback.sheet.Entry;

/**
 * Sets the basis of the calculations: what the package states of it, and what its records cite, which
 * nobody has to keep in step by hand.
 */
final class BasisWriter {

    /** Letters of partial factors and factors of combination (EN 1990:2002, 1.6; from memory). */
    private static final Pattern FACTOR = Pattern.compile("(γ|gamma|ψ|psi)(_.*)?");

    private static final Map<Source.Kind, String> DOCUMENTS = documents();

    private final ReadPackage whole;
    private final Registers registers;

    BasisWriter(ReadPackage whole, Registers registers) {
        this.whole = whole;
        this.registers = registers;
    }

    private static Map<Source.Kind, String> documents() {
        Map<Source.Kind, String> kinds = new LinkedHashMap<>();
        kinds.put(Source.Kind.DRAWING, "Drawing");
        kinds.put(Source.Kind.SURVEY, "Survey");
        kinds.put(Source.Kind.TEST_REPORT, "Test report");
        kinds.put(Source.Kind.DATA, "File of data");
        return kinds;
    }

    /** All of it, under headings of level 2. */
    String all() {
        Basis basis = whole.info().basis();
        return section(
                        "Standards and codes",
                        stated(basis.standards()) + cited(Map.of(Source.Kind.STANDARD, "Standard")),
                        "No standard is stated for the package and no sheet cites one.")
                + section(
                        "Partial factors and choices",
                        stated(basis.factors()) + factors(),
                        "None is stated for the package and no sheet has one as a given.")
                + section(
                        "Drawings, surveys, tests and data",
                        cited(DOCUMENTS),
                        "No sheet cites any.")
                + section("Units", stated(basis.units()) + units(), "No sheet has a number.")
                + section(
                        "Sign conventions",
                        stated(basis.signs()),
                        "None is stated for the whole package; each sheet states its own.")
                + section(
                        "Status of the values",
                        stated(basis.values()) + values(),
                        "No sheet has a given.");
    }

    private static String section(String title, String content, String otherwise) {
        return "<h2>"
                + title
                + "</h2>"
                + (content.isEmpty() ? "<p>" + otherwise + "</p>\n" : content);
    }

    private static String stated(List<String> texts) {
        StringBuilder items = new StringBuilder();
        texts.forEach(text -> items.append("<li>").append(Markup.text(text)).append("</li>"));
        return items.isEmpty() ? "" : "<ul class=\"stated\">" + items + "</ul>\n";
    }

    /** What the sheets cite of some kinds, in the order of the kinds. */
    private String cited(Map<Source.Kind, String> kinds) {
        Map<Source.Kind, Map<String, ReadPackage.Cited>> all = whole.cited();
        StringBuilder rows = new StringBuilder();
        kinds.forEach(
                (kind, name) ->
                        all.getOrDefault(kind, Map.of())
                                .forEach(
                                        (reference, where) ->
                                                row(
                                                        rows,
                                                        name,
                                                        Markup.text(reference),
                                                        Markup.text(
                                                                String.join("; ", where.places())),
                                                        registers.sheets(where))));
        return table("sources", List.of("Kind", "Cited", "Where in it", "On sheet"), rows);
    }

    private String factors() {
        StringBuilder rows = new StringBuilder();
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.entries().values()) {
                if (entry.block() instanceof Block.Given given && isFactor(given.quantity())) {
                    @Nullable Source source = given.quantity().source();
                    row(
                            rows,
                            BlockWriter.value(given.quantity()),
                            Markup.text(given.quantity().note()),
                            source == null ? "no source" : Markup.text(source.toString()),
                            registers.sheet(document, entry));
                }
            }
        }
        return table("factors", List.of("Factor", "What it is", "Source", "Sheet"), rows);
    }

    /** An angle bears the letter of a factor of combination, and a unit. */
    private static boolean isFactor(Quantity quantity) {
        return quantity.unit().symbol().isEmpty()
                && quantity.dimension().equals(Dimension.NONE)
                && FACTOR.matcher(String.valueOf(quantity.symbol())).matches();
    }

    private String units() {
        Set<String> units = new TreeSet<>();
        for (Quantity quantity : shown()) {
            if (!quantity.unit().symbol().isEmpty()) {
                units.add(quantity.unit().symbol());
            }
        }
        return units.isEmpty()
                ? ""
                : "<p>Every number stands with its unit and is kept in the base units of the SI"
                        + " (kg, m, s, K) behind that. Shown are "
                        + units.stream()
                                .map(unit -> "<span class=\"unit\">" + Markup.text(unit))
                                .collect(Collectors.joining("</span>, "))
                        + "</span>.</p>\n";
    }

    private List<Quantity> shown() {
        List<Quantity> shown = new ArrayList<>();
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.entries().values()) {
                if (entry.block() instanceof Block.Given given) {
                    shown.add(given.quantity());
                } else if (entry.block() instanceof Block.Series series) {
                    shown.addAll(series.values());
                } else if (entry.block() instanceof Block.Step step) {
                    shown.add(step.quantity());
                }
            }
        }
        return shown;
    }

    /** How many givens rest on what. */
    private String values() {
        Map<String, Integer> counts = new TreeMap<>();
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.entries().values()) {
                if (entry.block() instanceof Block.Given given) {
                    count(counts, given.quantity().source(), 1);
                } else if (entry.block() instanceof Block.Series series) {
                    count(counts, series.source(), series.values().size());
                }
            }
        }
        if (counts.isEmpty()) {
            return "";
        }
        StringBuilder rows = new StringBuilder();
        counts.forEach((kind, count) -> row(rows, kind, String.valueOf(count)));
        return "<p>The status of this issue is <b>"
                + Markup.text(whole.info().status())
                + "</b>. What rests on an assumption, or on no source, is to be confirmed before"
                + " anything is built from it. Its givens rest on:</p>"
                + table("values", List.of("Source", "Givens"), rows)
                + "\n";
    }

    private static void count(Map<String, Integer> counts, @Nullable Source source, int number) {
        counts.merge(source == null ? "no source" : source.kind().inWords(), number, Integer::sum);
    }

    private static void row(StringBuilder rows, String... cells) {
        rows.append("<tr><td>").append(String.join("</td><td>", cells)).append("</td></tr>");
    }

    private static String table(String kind, List<String> heads, StringBuilder rows) {
        return rows.isEmpty()
                ? ""
                : "<table class=\""
                        + kind
                        + "\"><thead><tr><th scope=\"col\">"
                        + String.join("</th><th scope=\"col\">", heads)
                        + "</th></tr></thead><tbody>"
                        + rows
                        + "</tbody></table>\n";
    }
}
