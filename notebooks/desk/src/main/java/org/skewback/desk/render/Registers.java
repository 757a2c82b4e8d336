package org.skewback.desk.render;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Block;
import org.skewback.sheet.Check;
import org.skewback.sheet.Entry;

/** The lists over all sheets: checks, numbers without a source, sources, software. */
final class Registers {

    private static final String DEFERENCE =
            "These pages are calculations, not permission to build. Deference is owed to local"
                    + " codes and licensed practice: the requirements of the authority and the"
                    + " judgement of a licensed engineer come before anything printed here, and"
                    + " whoever uses a number answers for it.";

    private final ReadPackage whole;
    private final Links links;

    Registers(ReadPackage whole, Links links) {
        this.whole = whole;
        this.links = links;
    }

    /** How the front pages reach a document, or a block in it. */
    interface Links {
        /** Gives the address, or null where it cannot be reached. */
        @Nullable String to(String slug, @Nullable String block);
    }

    static String deference() {
        return "<p class=\"deference\">" + DEFERENCE + "</p>\n";
    }

    /** Number, revision, status, date, who prepared and who checked. */
    String title() {
        PackageInfo info = whole.info();
        StringBuilder markup = new StringBuilder("<table class=\"block\"><tbody>");
        line(markup, "Document", info.number());
        line(markup, "Revision", info.revision());
        line(markup, "Status", info.status());
        line(markup, "Date", info.date().toString());
        line(markup, "Prepared by", info.preparedBy());
        line(markup, "Checked by", info.checkedBy().isBlank() ? "nobody yet" : info.checkedBy());
        return markup.append(whole.checking().signatures()).append("</tbody></table>\n").toString();
    }

    private static void line(StringBuilder markup, String label, String text) {
        markup.append("<tr><th scope=\"row\">")
                .append(label)
                .append("</th><td>")
                .append(Markup.text(text.isBlank() ? "not stated" : text))
                .append("</td></tr>");
    }

    /** What a reader must know before using any number. */
    static String cautions(PackageInfo info) {
        if (info.cautions().isEmpty()) {
            return "";
        }
        return info.cautions().stream()
                .map(Markup::text)
                .collect(
                        Collectors.joining(
                                "</li><li>", "<ul class=\"cautions\"><li>", "</li></ul>\n"));
    }

    Tally tally() {
        return Tally.of(whole.documents().stream().flatMap(d -> d.checks().stream()).toList());
    }

    /** Every check of every sheet. */
    String checks() {
        if (tally().all() == 0) {
            return "<p>No sheet has a check.</p>\n";
        }
        StringBuilder markup =
                new StringBuilder(
                        "<table class=\"register\"><thead><tr><th scope=\"col\">Sheet</th>"
                                + "<th scope=\"col\">Check</th>"
                                + "<th scope=\"col\">Verdict</th>"
                                + "<th scope=\"col\" class=\"number\">Utilisation</th>"
                                + "<th scope=\"col\" class=\"number\">Demand</th>"
                                + "<th scope=\"col\"><span class=\"unseen\">must be</span></th>"
                                + "<th scope=\"col\" class=\"number\">Capacity</th>"
                                + "</tr></thead><tbody>");
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.checks()) {
                if (entry.block() instanceof Block.Checked checked) {
                    check(markup, document, entry, checked.check());
                }
            }
        }
        return markup.append("</tbody></table>\n").toString();
    }

    private void check(StringBuilder markup, ReadDocument document, Entry entry, Check check) {
        Quantity utilisation = check.utilisation();
        String name = document.numbering().number(entry) + " " + check.title();
        markup.append("<tr><td>")
                .append(link(document, null, sheetName(document)))
                .append("</td><td>")
                .append(link(document, entry.id(), Markup.text(name)))
                .append("</td><td>")
                .append(BlockWriter.verdict(entry.verdict()))
                .append(whole.checking().conceded(document.number(), check.title()))
                .append("</td><td class=\"number\">")
                .append(utilisation == null ? "–" : Numerals.fixed(utilisation.si(), 2))
                .append("</td><td class=\"number\">")
                .append(Markup.text(Numerals.withUnit(check.demand())))
                .append("</td><td class=\"relation\">")
                .append(Markup.text(check.relation()))
                .append("</td><td class=\"number\">")
                .append(
                        check.limits().stream()
                                .map(Numerals::withUnit)
                                .map(Markup::text)
                                .collect(Collectors.joining(" and ")))
                .append("</td></tr>");
    }

    private static String sheetName(ReadDocument document) {
        String number = document.number();
        return Markup.text(number.isEmpty() ? document.title() : number);
    }

    private String link(ReadDocument document, @Nullable String block, String words) {
        String address = links.to(document.slug(), block);
        return address == null
                ? words
                : "<a href=\"" + Markup.attribute(address) + "\">" + words + "</a>";
    }

    /** What must be worked out again before it counts; empty where nothing is stale. */
    String stale() {
        StringBuilder items = new StringBuilder();
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.stale()) {
                items.append("<li>")
                        .append(link(document, null, sheetName(document)))
                        .append(", ")
                        .append(
                                link(
                                        document,
                                        entry.id(),
                                        Markup.text(document.numbering().called(entry))))
                        .append(": ")
                        .append(Markup.text(entry.because()))
                        .append("</li>");
            }
        }
        return items.isEmpty()
                ? ""
                : "<p>What these rest on was changed after they were worked out, and their cells"
                        + " were not run again:</p><ul class=\"stale\">"
                        + items
                        + "</ul>\n";
    }

    /**
     * Every given of every sheet, but those that were taken from another, and every assumption.
     *
     * @param level level of the heading over the assumptions
     */
    String givens(int level) {
        StringBuilder rows = new StringBuilder();
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.entries().values()) {
                given(rows, document, entry);
            }
        }
        String table =
                rows.isEmpty()
                        ? "<p>No sheet has a given of its own.</p>\n"
                        : "<table class=\"givens all\"><thead><tr><th scope=\"col\""
                                + " class=\"value\">Given</th><th scope=\"col\">What it is</th><th"
                                + " scope=\"col\" class=\"source\">Source</th><th scope=\"col\""
                                + " class=\"sheet\">Sheet</th></tr></thead><tbody>"
                                + rows
                                + "</tbody></table>\n";
        return table + said(Block.Assumption.class, "Assumed", level);
    }

    private void given(StringBuilder rows, ReadDocument document, Entry entry) {
        String value;
        String note;
        Source source;
        if (entry.block() instanceof Block.Given given) {
            value = BlockWriter.value(given.quantity());
            note = given.quantity().note();
            source = given.quantity().source();
        } else if (entry.block() instanceof Block.Series series) {
            int count = series.values().size();
            value =
                    Markup.symbol(series.symbol())
                            + "\u00A0= "
                            + Markup.text(Numerals.withUnit(series.values().get(0)))
                            + (count > 1
                                    ? " … "
                                            + Markup.text(
                                                    Numerals.withUnit(
                                                            series.values().get(count - 1)))
                                            + " ("
                                            + count
                                            + ")"
                                    : "");
            note = series.note();
            source = series.source();
        } else {
            return;
        }
        if (source != null && source.kind() == Source.Kind.SHEET) {
            return;
        }
        rows.append("<tr><td class=\"value series\">")
                .append(value)
                .append("</td><td>")
                .append(Markup.text(note))
                .append("</td><td class=\"source\">")
                .append(source == null ? "no source" : Markup.text(source.toString()))
                .append("</td><td>")
                .append(link(document, entry.id(), sheetName(document)))
                .append("</td></tr>");
    }

    /** All cautions: what deference is owed to, those of the whole package, those of its sheets. */
    String allCautions() {
        return deference()
                + "<h2>Of the whole package</h2>"
                + cautions(whole.info())
                + said(Block.Caution.class, "On the sheets", 2);
    }

    private String said(Class<? extends Block> kind, String title, int level) {
        StringBuilder items = new StringBuilder();
        for (ReadDocument document : whole.documents()) {
            for (Entry entry : document.entries().values()) {
                if (kind.isInstance(entry.block())) {
                    items.append("<li>")
                            .append(link(document, entry.id(), sheetName(document)))
                            .append(": ")
                            .append(Markup.text(words(entry.block())))
                            .append("</li>");
                }
            }
        }
        return items.isEmpty()
                ? ""
                : "<h"
                        + level
                        + ">"
                        + title
                        + "</h"
                        + level
                        + "><ul class=\"said\">"
                        + items
                        + "</ul>\n";
    }

    private static String words(Block block) {
        return block instanceof Block.Assumption assumption
                ? assumption.text()
                : block instanceof Block.Caution caution ? caution.text() : "";
    }

    /** Numbers that an author wrote into a formula without naming a source. */
    String withoutSource() {
        StringBuilder items = new StringBuilder();
        for (ReadDocument document : whole.documents()) {
            List<Quantity> bare = document.withoutSource();
            if (!bare.isEmpty()) {
                items.append("<li>")
                        .append(link(document, null, Markup.text(document.heading())))
                        .append(": ")
                        .append(BlockWriter.each(bare))
                        .append("</li>");
            }
        }
        return items.isEmpty()
                ? "<p>None: every number with a unit has a source.</p>\n"
                : "<p>A number with a unit that stands in a formula without saying where it came"
                        + " from:</p><ul class=\"bare\">"
                        + items
                        + "</ul>\n";
    }

    /** What is cited, by kind. */
    String sources() {
        Map<Source.Kind, Map<String, ReadPackage.Cited>> cited = whole.cited();
        if (cited.isEmpty()) {
            return "<p>No sheet cites a source.</p>\n";
        }
        StringBuilder markup =
                new StringBuilder(
                        "<table class=\"sources\"><thead><tr><th scope=\"col\">Kind</th>"
                                + "<th scope=\"col\">Source</th><th scope=\"col\">Where in it</th>"
                                + "<th scope=\"col\">Cited on</th></tr></thead><tbody>");
        cited.forEach(
                (kind, references) ->
                        references.forEach(
                                (reference, where) ->
                                        source(markup, kind.inWords(), reference, where)));
        return markup.append("</tbody></table>\n").toString();
    }

    private void source(
            StringBuilder markup, String kind, String reference, ReadPackage.Cited where) {
        markup.append("<tr><td>")
                .append(Markup.text(kind))
                .append("</td><td>")
                .append(Markup.text(reference))
                .append("</td><td>")
                .append(Markup.text(String.join("; ", where.places())))
                .append("</td><td>")
                .append(sheets(where))
                .append("</td></tr>");
    }

    /** Names the documents that cite something. */
    String sheets(ReadPackage.Cited where) {
        return whole.documents().stream()
                .filter(document -> where.slugs().contains(document.slug()))
                .map(document -> link(document, null, sheetName(document)))
                .collect(Collectors.joining(", "));
    }

    /** Names the sheet of an entry, and leads to it. */
    String sheet(ReadDocument document, Entry entry) {
        return link(document, entry.id(), sheetName(document));
    }

    /** What the package ran on. */
    String environment() {
        StringBuilder markup = new StringBuilder("<table class=\"environment\"><tbody>");
        whole.environment()
                .forEach(
                        (name, version) ->
                                markup.append("<tr><th scope=\"row\">")
                                        .append(Markup.text(name))
                                        .append("</th><td>")
                                        .append(Markup.text(version))
                                        .append("</td></tr>"));
        return whole.environment().isEmpty()
                ? "<p>Not stated.</p>\n"
                : markup.append("</tbody></table>\n").toString();
    }
}
