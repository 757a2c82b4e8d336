package org.skewback.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.skewback.quantity.Expression;
import org.skewback.quantity.Formula;
import org.skewback.quantity.LatexWriter;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;

/** Writes parts of a sheet as Markdown with LaTeX mathematics, for notebooks. */
final class MarkdownSheet {

    private MarkdownSheet() {}

    static String write(Part part) {
        List<String> paragraphs = new ArrayList<>();
        Numbering numbering = part.sheet().numbering();
        for (Entry entry : part.entries()) {
            String mark =
                    entry.stale() ? "\n\n**Stale:** " + escape(Summary.ofStale(entry)) + "." : "";
            paragraphs.add(block(entry, numbering) + mark);
        }
        Summary.ofStaleElsewhere(part).forEach(sentence -> paragraphs.add("> " + line(sentence)));
        SheetRecord closing = part.closing();
        if (closing != null) {
            paragraphs.add(escape(Summary.ofChecks(closing)));
            paragraphs.add(escape(Summary.ofNumbersWithoutSource(closing)));
            paragraphs.add(escape(Summary.ofSources(closing)));
        }
        return String.join("\n\n", paragraphs);
    }

    private static String inline(Quantity quantity) {
        Expression value = Formula.value(quantity);
        String symbol = quantity.symbol();
        return "$"
                + (symbol == null
                        ? LatexWriter.write(value)
                        : LatexWriter.write(new Expression.Symbol(symbol))
                                + " = "
                                + LatexWriter.write(value))
                + "$";
    }

    private static String block(Entry entry, Numbering numbering) {
        Block block = entry.block();
        if (block instanceof Block.Purpose purpose) {
            return "**Purpose.** " + escape(purpose.text());
        } else if (block instanceof Block.Assumption assumption) {
            return "**Assumed.** " + escape(assumption.text());
        } else if (block instanceof Block.Given given) {
            Quantity q = given.quantity();
            return "$"
                    + q.worked().latex()
                    + "$ — "
                    + escape(q.note())
                    + " *("
                    + escape(String.valueOf(q.source()))
                    + ")*";
        } else if (block instanceof Block.Series series) {
            return "$"
                    + LatexWriter.write(new Expression.Symbol(series.symbol()))
                    + "$ = "
                    + series.values().stream()
                            .map(Numerals::of)
                            .collect(Collectors.joining(", ", "(", ") "))
                    + escape(series.values().get(0).unit().symbol())
                    + " — "
                    + escape(series.note())
                    + " *("
                    + escape(series.source().toString())
                    + ")*";
        } else if (block instanceof Block.Step step) {
            return "**"
                    + PlainSheet.capital(numbering.name(entry))
                    + "** "
                    + escape(step.quantity().note())
                    + "\n\n$$"
                    + step.quantity().worked().latex()
                    + "$$";
        } else if (block instanceof Block.Tabulated tabulated) {
            return table(PlainSheet.capital(numbering.name(entry)), tabulated.table());
        } else if (block instanceof Block.Drawn drawn) {
            return figure(PlainSheet.capital(numbering.name(entry)), drawn);
        } else if (block instanceof Block.Section section) {
            return "#".repeat(section.level() + 1)
                    + " "
                    + numbering.number(entry)
                    + " "
                    + line(section.title());
        } else if (block instanceof Block.Note note) {
            return escape(note.text());
        } else if (block instanceof Block.Signed signed) {
            return "**"
                    + PlainSheet.capital(signed.role().inWords())
                    + "** "
                    + escape(signed.name())
                    + ", "
                    + signed.date();
        } else if (block instanceof Block.Comment comment) {
            return "> **Comment** by "
                    + escape(comment.by())
                    + ", "
                    + comment.date()
                    + ": "
                    + escape(comment.text()).replace("\n", "\n> ");
        } else if (block instanceof Block.Checked checked) {
            return "**"
                    + entry.verdict().inWords().toUpperCase(Locale.ROOT)
                    + "** "
                    + numbering.name(entry)
                    + " — "
                    + escape(checked.check().title())
                    + ": "
                    + Summary.comparison(checked.check(), MarkdownSheet::inline);
        } else if (block instanceof Block.Caution caution) {
            return "> **Caution.** " + escape(caution.text()).replace("\n", "\n> ");
        } else {
            return "**Conclusion.** " + escape(((Block.Conclusion) block).text());
        }
    }

    private static String figure(String name, Block.Drawn drawn) {
        FigureStates states = drawn.states();
        return (states == null ? picture(drawn) : states.html())
                + "\n\n*"
                + name
                + ": "
                + escape(drawn.title())
                + "*";
    }

    private static String picture(Block.Drawn drawn) {
        return "![" + escape(drawn.description()) + "](" + address(drawn.svg()) + ")";
    }

    /** Writes a picture as an address that holds it (RFC 2397). */
    static String address(String svg) {
        return "data:image/svg+xml;base64,"
                + Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
    }

    private static String table(String name, Table table) {
        StringBuilder text = new StringBuilder("**" + name + ": " + line(table.title()) + "**\n\n");
        text.append(
                table.columns().stream()
                        .map(column -> line(column.fullHeading()))
                        .collect(Collectors.joining(" | ", "| ", " |\n")));
        text.append(
                table.columns().stream()
                        .map(column -> column.isNumeric() ? "---:" : ":---")
                        .collect(Collectors.joining(" | ", "| ", " |\n")));
        for (int row = 0; row < table.rows(); row++) {
            int at = row;
            text.append(
                    table.columns().stream()
                            .map(column -> line(column.texts().get(at)))
                            .collect(Collectors.joining(" | ", "| ", " |\n")));
        }
        return text.toString();
    }

    /** A heading is one line, and so is a cell of a table. */
    private static String line(String text) {
        return escape(text).replaceAll("\\s+", " ");
    }

    /** What an author wrote is text: no markup, no mathematics and no HTML may come of it. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replaceAll("([\\\\`*_{}\\[\\]#|~])", "\\\\$1")
                .replaceAll("(?m)^([ \\t]*)([-+=])", "$1\\\\$2")
                .replaceAll("(?m)^([ \\t]*[0-9]+)([.)])", "$1\\\\$2")
                .replace("$", "&#36;");
    }
}
