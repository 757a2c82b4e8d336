package org.skewback.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;

/** Writes parts of a sheet as plain text, for terminals and for kernels that show nothing richer. */
final class PlainSheet {

    private PlainSheet() {}

    static String write(Part part) {
        List<String> lines = new ArrayList<>();
        Numbering numbering = part.sheet().numbering();
        for (Entry entry : part.entries()) {
            lines.add(
                    block(entry, numbering)
                            + (entry.stale() ? "   (stale: " + Summary.ofStale(entry) + ")" : ""));
        }
        lines.addAll(Summary.ofStaleElsewhere(part));
        SheetRecord closing = part.closing();
        if (closing != null) {
            lines.add(Summary.ofChecks(closing));
            lines.add(Summary.ofNumbersWithoutSource(closing));
            lines.add(Summary.ofSources(closing));
        }
        return String.join("\n", lines);
    }

    /** Writes what a block says by itself, wherever it stands and whatever has become of it. */
    static String words(Entry entry) {
        Entry alone = Entry.fresh(entry.id(), entry.cell(), entry.block());
        return block(alone, Numbering.of("", List.of(alone)));
    }

    private static String block(Entry entry, Numbering numbering) {
        Block block = entry.block();
        if (block instanceof Block.Purpose purpose) {
            return "Purpose: " + purpose.text();
        } else if (block instanceof Block.Assumption assumption) {
            return "Assumed: " + assumption.text();
        } else if (block instanceof Block.Given given) {
            Quantity q = given.quantity();
            return q.worked().text() + "   " + q.note() + " (" + q.source() + ")";
        } else if (block instanceof Block.Series series) {
            return series.symbol()
                    + " = "
                    + series.values().stream()
                            .map(Numerals::of)
                            .collect(Collectors.joining(", ", "(", ") "))
                    + series.values().get(0).unit().symbol()
                    + "   "
                    + series.note()
                    + " ("
                    + series.source()
                    + ")";
        } else if (block instanceof Block.Step step) {
            return capital(numbering.name(entry))
                    + ": "
                    + step.quantity().note()
                    + "\n"
                    + step.quantity().worked().text();
        } else if (block instanceof Block.Tabulated tabulated) {
            return capital(numbering.name(entry)) + ": " + table(tabulated.table());
        } else if (block instanceof Block.Drawn drawn) {
            return capital(numbering.name(entry))
                    + ": "
                    + drawn.title()
                    + ". "
                    + drawn.description();
        } else if (block instanceof Block.Section section) {
            return numbering.number(entry) + " " + section.title();
        } else if (block instanceof Block.Note note) {
            return note.text();
        } else if (block instanceof Block.Signed signed) {
            return capital(signed.role().inWords()) + " " + signed.name() + ", " + signed.date();
        } else if (block instanceof Block.Comment comment) {
            return "Comment by " + comment.by() + ", " + comment.date() + ": " + comment.text();
        } else if (block instanceof Block.Checked checked) {
            return entry.verdict().inWords().toUpperCase(Locale.ROOT)
                    + ": "
                    + numbering.name(entry)
                    + ": "
                    + checked.check().title()
                    + ": "
                    + Summary.comparison(checked.check());
        } else if (block instanceof Block.Caution caution) {
            return "Caution: " + caution.text();
        } else {
            return "Conclusion: " + ((Block.Conclusion) block).text();
        }
    }

    /** A sentence begins with a capital, such as Check 06.3. */
    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String table(Table table) {
        List<List<String>> columns = new ArrayList<>();
        for (Column column : table.columns()) {
            List<String> cells = new ArrayList<>();
            cells.add(column.fullHeading());
            cells.addAll(column.texts());
            int width = cells.stream().mapToInt(String::length).max().orElse(0);
            columns.add(
                    cells.stream()
                            .map(
                                    text ->
                                            column.isNumeric()
                                                    ? " ".repeat(width - text.length()) + text
                                                    : text + " ".repeat(width - text.length()))
                            .toList());
        }
        StringBuilder text = new StringBuilder(table.title());
        for (int row = 0; row <= table.rows(); row++) {
            int at = row;
            text.append('\n')
                    .append(
                            columns.stream()
                                    .map(cells -> cells.get(at))
                                    .collect(Collectors.joining("  "))
                                    .stripTrailing());
        }
        return text.toString();
    }
}
