package org.skewback.desk.render;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Graph;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Block;
import org.skewback.sheet.Check;
import org.skewback.sheet.Column;
import org.skewback.sheet.Entry;
import org.skewback.sheet.FigureStates;
import org.skewback.sheet.Numbering;
import org.skewback.sheet.SheetRecord;
import org.skewback.sheet.Table;
import org.skewback.sheet.Verdict;

/** Sets the blocks of one sheet, from its record alone. */
final class BlockWriter {

    private static final int FEW = 6;

    /** What may be a symbol: letters and digits with subscripts such as N_c,Rd. */
    private static final Pattern WORD =
            Pattern.compile("[\\p{L}\\p{N}]+_[\\p{L}\\p{N}]+(?:,[\\p{L}\\p{N}]+)*");

    private static final Base64.Encoder BASE64 = Base64.getEncoder();

    private final Medium medium;
    private final ReadPackage whole;
    private final ReadDocument document;
    private final Numbering numbering;
    private final Set<String> symbols;
    private final Set<String> placed = new HashSet<>();

    BlockWriter(Medium medium, ReadPackage whole, ReadDocument document) {
        this.medium = medium;
        this.whole = whole;
        this.document = document;
        this.numbering = document.numbering();
        this.symbols = symbols(document);
    }

    /** The entries that no cell has shown so far, so that nothing is silently absent. */
    List<Entry> notShown() {
        return document.entries().values().stream()
                .filter(entry -> !placed.contains(entry.id()))
                .toList();
    }

    /** Sets entries in order; givens that follow each other stand in one table. */
    String set(List<Entry> entries) {
        StringBuilder markup = new StringBuilder();
        List<Entry> givens = new ArrayList<>();
        for (Entry entry : entries) {
            boolean given =
                    entry.block() instanceof Block.Given || entry.block() instanceof Block.Series;
            if (given) {
                givens.add(entry);
                continue;
            }
            markup.append(givens(givens));
            givens.clear();
            markup.append(block(entry));
        }
        return markup.append(givens(givens)).toString();
    }

    /** Sums the sheet up: its checks and the numbers without a source. */
    String closing(SheetRecord record) {
        StringBuilder markup = new StringBuilder("<div class=\"closing\">");
        List<Entry> checks = record.checks();
        markup.append("<p><b>Checks.</b> ").append(Tally.of(checks).inWords()).append("</p>");
        List<Quantity> bare = record.withoutSource();
        markup.append("<p><b>Numbers without a source.</b> ");
        if (bare.isEmpty()) {
            markup.append("None: every number with a unit has a source.");
        } else {
            markup.append(each(bare)).append('.');
        }
        markup.append("</p><p><b>Sources.</b> ");
        if (record.sources().isEmpty()) {
            markup.append("None is named.</p>");
        } else {
            markup.append("</p><ul class=\"cited\">");
            record.sources()
                    .forEach(
                            (source, symbols) ->
                                    markup.append("<li>")
                                            .append(source(source))
                                            .append(": ")
                                            .append(symbols(symbols))
                                            .append("</li>"));
            markup.append("</ul>");
        }
        return markup.append("</div>\n").toString();
    }

    /** Lists numbers, and what stands in many formulas only once. */
    static String each(List<Quantity> numbers) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        numbers.forEach(number -> counts.merge(value(number), 1, Integer::sum));
        List<String> set = new ArrayList<>();
        counts.forEach(
                (text, count) -> set.add(text + (count > 1 ? " (" + count + " times)" : "")));
        return String.join(", ", set);
    }

    /** A long series is named by its first members and its last. */
    private static String symbols(List<String> symbols) {
        List<String> set = new ArrayList<>(symbols.stream().map(Markup::symbol).toList());
        if (set.size() > FEW) {
            set.subList(FEW - 2, set.size() - 1).clear();
            set.add(FEW - 2, "…");
        }
        return String.join(", ", set);
    }

    private String block(Entry entry) {
        Block block = entry.block();
        if (block instanceof Block.Purpose purpose) {
            return said(entry, "purpose", "Purpose", purpose.text());
        } else if (block instanceof Block.Assumption assumption) {
            return said(entry, "assumption", "Assumed", assumption.text());
        } else if (block instanceof Block.Step step) {
            return step(entry, step.quantity());
        } else if (block instanceof Block.Tabulated tabulated) {
            return table(entry, tabulated.table());
        } else if (block instanceof Block.Drawn drawn) {
            return figure(entry, drawn);
        } else if (block instanceof Block.Checked checked) {
            return check(entry, checked.check());
        } else if (block instanceof Block.Caution caution) {
            return said(entry, "caution", "Caution", caution.text());
        } else if (block instanceof Block.Conclusion conclusion) {
            return said(entry, "conclusion", "Conclusion", conclusion.text());
        } else if (block instanceof Block.Section section) {
            return section(entry, section);
        } else if (block instanceof Block.Note note) {
            return said(entry, "remark", "", note.text());
        } else if (block instanceof Block.Signed signed) {
            return said(
                    entry,
                    "signature",
                    capital(signed.role().inWords()),
                    signed.name() + ", " + signed.date());
        } else if (block instanceof Block.Comment comment) {
            String label = "Comment by " + comment.by() + ", " + comment.date();
            return said(entry, "comment", label, comment.text());
        }
        return givens(List.of(entry));
    }

    private String said(Entry entry, String kind, String label, String text) {
        return "<div class=\""
                + kind
                + "\""
                + identifier(entry)
                + "><p>"
                + (label.isEmpty() ? "" : "<b class=\"label\">" + Markup.text(label) + "</b> ")
                + paragraphs(text)
                + "</p>"
                + staleMark(entry)
                + "</div>\n";
    }

    /** The sheet's title is the first heading of its page, so a section is of the second order. */
    private String section(Entry entry, Block.Section section) {
        String heading = "h" + (section.level() + 1);
        return "<"
                + heading
                + identifier(entry)
                + ">"
                + numbering.number(entry)
                + " "
                + Markup.text(section.title())
                + "</"
                + heading
                + ">\n";
    }

    /** Names a table, a figure or a check as people speak of it, such as Check 06.3. */
    private String name(Entry entry) {
        return "<b>" + Markup.text(capital(numbering.name(entry))) + "</b> ";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String paragraphs(String text) {
        return Markup.text(text.strip()).replaceAll("\n\\s*\n", "</p><p>").replace("\n", "<br/>");
    }

    private String step(Entry entry, Quantity quantity) {
        return "<div class=\"step\""
                + identifier(entry)
                + "><p class=\"note\"><span class=\"ordinal\">"
                + Markup.text(numbering.number(entry))
                + "</span> "
                + Markup.text(quantity.note())
                + medium.result(quantity)
                + "</p>"
                + "<p class=\"worked\">"
                + medium.worked(quantity)
                + "</p>"
                + staleMark(entry)
                + medium.origin(quantity)
                + "</div>\n";
    }

    private String givens(List<Entry> givens) {
        if (givens.isEmpty()) {
            return "";
        }
        StringBuilder markup =
                new StringBuilder(
                        "<table class=\"givens\"><thead><tr><th scope=\"col\">Given</th>"
                                + "<th scope=\"col\">What it is</th><th scope=\"col\">Source</th>"
                                + "</tr></thead><tbody>");
        for (Entry entry : givens) {
            markup.append("<tr").append(identifier(entry)).append('>');
            if (entry.block() instanceof Block.Given given) {
                Quantity quantity = given.quantity();
                row(markup, "", value(quantity), quantity.note(), quantity.source());
            } else if (entry.block() instanceof Block.Series series) {
                row(markup, " series", values(series), series.note(), series.source());
            }
            markup.append("</tr>");
        }
        return markup.append("</tbody></table>\n").toString();
    }

    private void row(
            StringBuilder markup, String kind, String value, String note, @Nullable Source source) {
        markup.append("<td class=\"value")
                .append(kind)
                .append("\">")
                .append(value)
                .append("</td><td>")
                .append(Markup.text(note))
                .append("</td><td class=\"source\">")
                .append(source == null ? "no source" : source(source))
                .append("</td>");
    }

    static String value(Quantity quantity) {
        String symbol = quantity.symbol();
        String value = Markup.text(Numerals.withUnit(quantity));
        return symbol == null ? value : Markup.symbol(symbol) + "\u00A0=\u00A0" + value;
    }

    private static String values(Block.Series series) {
        String unit = series.values().get(0).unit().symbol();
        return Markup.symbol(series.symbol())
                + "\u00A0= ("
                + series.values().stream()
                        .map(Numerals::of)
                        .map(Markup::text)
                        .collect(Collectors.joining(", "))
                + ")"
                + (unit.isEmpty() ? "" : "\u00A0" + Markup.text(unit));
    }

    /** Cites a source; a result of another sheet of the package leads there. */
    private String source(Source source) {
        if (source.kind() == Source.Kind.SHEET) {
            ReadDocument there = whole.sheet(source.reference());
            String address = there == null ? null : medium.address(there.slug(), null);
            if (address != null) {
                String place = source.place().isEmpty() ? "" : ", " + Markup.text(source.place());
                return "<a href=\""
                        + Markup.attribute(address)
                        + "\">sheet "
                        + Markup.text(source.reference())
                        + "</a>"
                        + place;
            }
        }
        return Markup.text(source.toString());
    }

    private String table(Entry entry, Table table) {
        StringBuilder markup =
                new StringBuilder("<table class=\"values\"><caption>")
                        .append(name(entry))
                        .append(withSymbols(table.title()))
                        .append("</caption><thead><tr>");
        for (Column column : table.columns()) {
            markup.append("<th scope=\"col\"")
                    .append(side(column))
                    .append('>')
                    .append(withSymbols(column.fullHeading()))
                    .append("</th>");
        }
        markup.append("</tr></thead><tbody>");
        for (int row = 0; row < table.rows(); row++) {
            markup.append("<tr>");
            for (Column column : table.columns()) {
                markup.append("<td")
                        .append(side(column))
                        .append('>')
                        .append(
                                column.isNumeric()
                                        ? Markup.text(column.texts().get(row))
                                        : withSymbols(column.texts().get(row)))
                        .append("</td>");
            }
            markup.append("</tr>");
        }
        markup.append("</tbody></table>");
        return "<div class=\"tabulated\""
                + identifier(entry)
                + ">"
                + medium.table(markup.toString(), "Table: " + table.title())
                + staleMark(entry)
                + "</div>\n";
    }

    /**
     * Sets words, and lowers the subscript where one of them is a symbol of this sheet that has one;
     * a symbol without might as well be a word, and stays as it is.
     */
    private String withSymbols(String text) {
        StringBuilder set = new StringBuilder();
        Matcher words = WORD.matcher(text);
        int from = 0;
        while (words.find()) {
            if (symbols.contains(words.group())) {
                set.append(Markup.text(text.substring(from, words.start())))
                        .append(Markup.symbol(words.group()));
                from = words.end();
            }
        }
        return set.append(Markup.text(text.substring(from))).toString();
    }

    private static Set<String> symbols(ReadDocument document) {
        Set<String> symbols = new HashSet<>();
        SheetRecord record = document.record();
        if (record != null) {
            for (Quantity node : Graph.ordered(record.quantities())) {
                String symbol = node.symbol();
                if (symbol != null && symbol.indexOf('_') > 0) {
                    symbols.add(symbol);
                }
            }
        }
        return symbols;
    }

    private static String side(Column column) {
        return column.isNumeric() ? " class=\"number\"" : "";
    }

    private String figure(Entry entry, Block.Drawn drawn) {
        FigureStates states = drawn.states();
        if (states != null) {
            return "<div"
                    + identifier(entry)
                    + ">"
                    + medium.sweep(
                            SweepStates.of(drawn.title(), states),
                            "states-" + Markup.identifier(entry.id()),
                            name(entry))
                    + staleMark(entry)
                    + "</div>\n";
        }
        String base64 = BASE64.encodeToString(drawn.svg().getBytes(StandardCharsets.UTF_8));
        return "<div class=\"figure\""
                + identifier(entry)
                + ">"
                + medium.picture("image/svg+xml", base64, drawn.description())
                + "<p class=\"caption\">"
                + name(entry)
                + withSymbols(drawn.title())
                + "</p>"
                + staleMark(entry)
                + "</div>\n";
    }

    private String check(Entry entry, Check check) {
        Verdict verdict = entry.verdict();
        return "<div class=\"check "
                + verdict.inWords()
                + "\""
                + identifier(entry)
                + "><p class=\"requirement\">"
                + verdict(verdict)
                + " "
                + name(entry)
                + Markup.text(check.title())
                + "</p><p class=\"comparison\">"
                + comparison(check)
                + "</p>"
                + staleMark(entry)
                + "</div>\n";
    }

    static String verdict(Verdict verdict) {
        return "<b class=\"verdict " + verdict.inWords() + "\">" + verdict.inWords() + "</b>";
    }

    static String comparison(Check check) {
        Quantity utilisation = check.utilisation();
        return value(check.demand())
                + " "
                + relation(check)
                + " "
                + check.limits().stream()
                        .map(BlockWriter::value)
                        .collect(Collectors.joining(" and "))
                + (utilisation == null
                        ? ""
                        : "; utilisation\u00A0" + Numerals.fixed(utilisation.si(), 2))
                + "; margin\u00A0"
                + Markup.text(Numerals.withUnit(check.margin()));
    }

    private static String relation(Check check) {
        if (!check.isMet()) {
            return "is not " + check.inWords();
        }
        return check.limits().size() > 1 ? "is between" : check.relation();
    }

    private String identifier(Entry entry) {
        if (!placed.add(entry.id())) {
            return "";
        }
        return " id=\"" + medium.identifier(document.slug(), entry.id()) + "\"";
    }

    private static String staleMark(Entry entry) {
        return entry.stale()
                ? "<p class=\"stale-mark\"><b class=\"verdict stale\">stale</b> "
                        + Markup.text(entry.because())
                        + "; its cell was not run again</p>"
                : "";
    }
}
