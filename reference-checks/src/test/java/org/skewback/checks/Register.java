package org.skewback.checks;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The register of checks as CSV, for machines, and as a page, for readers. */
final class Register {

    private static final List<String> COLUMNS =
            List.of(
                    "id",
                    "topic",
                    "routine",
                    "quantity",
                    "expected",
                    "computed",
                    "unit",
                    "deviation",
                    "tolerance",
                    "kind",
                    "source",
                    "verdict");

    private final List<Outcome> outcomes;

    Register(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
    }

    /** Writes both files whole: beside their place first, then moved into it. */
    void writeTo(Path folder) throws IOException {
        Files.createDirectories(folder);
        write(folder.resolve("register.csv"), csv());
        write(folder.resolve("register.html"), html());
    }

    private static void write(Path file, String text) throws IOException {
        Path beside = file.resolveSibling(file.getFileName() + ".part");
        Files.writeString(beside, text);
        Files.move(
                beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    String csv() {
        StringBuilder csv = new StringBuilder(String.join(",", COLUMNS)).append("\r\n");
        for (Outcome outcome : outcomes) {
            csv.append(
                            fields(outcome).stream()
                                    .map(Register::quoted)
                                    .collect(Collectors.joining(",")))
                    .append("\r\n");
        }
        return csv.toString();
    }

    private static List<String> fields(Outcome outcome) {
        Row row = outcome.row();
        return List.of(
                row.id(),
                row.topic(),
                row.routine(),
                row.quantity(),
                row.expected(),
                computed(outcome),
                row.unit(),
                deviation(outcome),
                decimal(row.tolerance(), 3),
                row.kind().words(),
                row.source(),
                outcome.verdict());
    }

    private static String computed(Outcome outcome) {
        return outcome.computed().isPresent() ? decimal(outcome.computed().getAsDouble(), 15) : "";
    }

    private static String deviation(Outcome outcome) {
        return outcome.deviation().isPresent() ? decimal(outcome.deviation().getAsDouble(), 3) : "";
    }

    private static String decimal(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
        // Plain digits where they are few, as 250 reads better than 2.5E+2.
        return Math.abs(rounded.scale()) <= 15 && rounded.precision() - rounded.scale() > -4
                ? rounded.toPlainString()
                : rounded.toString();
    }

    private static String quoted(String field) {
        boolean plain =
                field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }

    String html() {
        long agreeing = outcomes.stream().filter(Outcome::agrees).count();
        long disagreeing = outcomes.size() - agreeing;
        return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>Register of reference checks</title>
        <style>
        body { font: 1rem/1.45 system-ui, sans-serif; color: #111; background: #fff; margin: 2rem auto;
          max-width: 88rem; padding: 0 1rem; }
        table { border-collapse: collapse; margin: 1rem 0 2rem; }
        caption { text-align: left; font-weight: 600; padding-bottom: .4rem; }
        th, td { border: 1px solid #777; padding: .25rem .5rem; text-align: left; vertical-align: top; }
        thead th { background: #e8e8e8; }
        td.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        td.wide { min-width: 18rem; }
        tr.disagrees td, tr.disagrees th { border-width: 3px; font-weight: 700; }
        .scroll { overflow-x: auto; }
        @media print { body { max-width: none; font-size: 8pt; } thead { display: table-header-group; } }
        </style>
        </head>
        <body>
        <main>
        <h1>Register of reference checks</h1>
        """
                + "<p><strong>"
                + (disagreeing == 0
                        ? "All " + agreeing + " checks agree."
                        : disagreeing + " of " + outcomes.size() + " checks disagree.")
                + "</strong></p>\n"
                + """
                <p>Each row holds a value from a source against the value that the library computes. The
                deviation is computed less expected, divided by the size of the value expected; where that is
                0, it is the difference itself, in the unit of the row. A row agrees when the deviation is not
                larger than the tolerance. A value known from memory says so and never stands alone for a
                routine.</p>
                <p>That a routine agrees with these values says that it computes what its source describes.
                It does not say that the formula fits a given structure: that judgement, the code that applies
                at the place, and an independent check remain with the licensed engineer.</p>
                """
                + summary("Checks by topic", "topic", by(Row::topic))
                + summary("Checks by kind of source", "kind", by(row -> row.kind().words()))
                + """
                <div class="scroll" role="region" aria-label="All checks" tabindex="0">
                <table>
                <caption>All checks</caption>
                <thead><tr>
                <th scope="col">Check</th><th scope="col">Verdict</th><th scope="col">Topic</th>
                <th scope="col">Routine</th><th scope="col">Inputs</th><th scope="col">Quantity</th>
                <th scope="col">Expected</th><th scope="col">Computed</th><th scope="col">Unit</th>
                <th scope="col">Deviation</th><th scope="col">Tolerance</th><th scope="col">Why that tolerance</th>
                <th scope="col">Kind</th><th scope="col">Source</th>
                </tr></thead>
                <tbody>
                """
                + outcomes.stream().map(Register::line).collect(Collectors.joining())
                + """
                </tbody>
                </table>
                </div>
                </main>
                </body>
                </html>
                """;
    }

    private static String line(Outcome outcome) {
        Row row = outcome.row();
        Throwable failure = outcome.failure();
        String mark = outcome.agrees() ? "✓ agrees" : "✗ disagrees";
        String why = failure == null ? "" : ": " + failure.getMessage();
        return "<tr class=\""
                + outcome.verdict()
                + "\"><th scope=\"row\">"
                + escaped(row.id())
                + "</th>"
                + cell("", mark + why)
                + cell("", row.topic())
                + cell("", row.routine())
                + cell("wide", row.inputs())
                + cell("", row.quantity())
                + cell("number", row.expected())
                + cell("number", computed(outcome))
                + cell("", row.unit())
                + cell("number", deviation(outcome))
                + cell("number", decimal(row.tolerance(), 3))
                + cell("wide", row.toleranceReason())
                + cell("", row.kind().words())
                + cell("wide", row.source())
                + "</tr>\n";
    }

    private Map<String, List<Outcome>> by(Function<Row, String> key) {
        return outcomes.stream()
                .collect(
                        Collectors.groupingBy(
                                outcome -> key.apply(outcome.row()),
                                LinkedHashMap::new,
                                Collectors.toList()));
    }

    private static String summary(
            String caption, String heading, Map<String, List<Outcome>> groups) {
        StringBuilder table = new StringBuilder();
        table.append("<table>\n<caption>").append(escaped(caption)).append("</caption>\n");
        table.append("<thead><tr><th scope=\"col\">").append(escaped(heading));
        table.append("</th><th scope=\"col\">checks</th><th scope=\"col\">agree</th>");
        table.append("<th scope=\"col\">disagree</th></tr></thead>\n<tbody>\n");
        groups.forEach(
                (name, group) -> {
                    long agreeing = group.stream().filter(Outcome::agrees).count();
                    table.append("<tr><th scope=\"row\">").append(escaped(name)).append("</th>");
                    table.append(cell("number", Integer.toString(group.size())));
                    table.append(cell("number", Long.toString(agreeing)));
                    table.append(cell("number", Long.toString(group.size() - agreeing)));
                    table.append("</tr>\n");
                });
        return table.append("</tbody>\n</table>\n").toString();
    }

    private static String cell(String style, String text) {
        return (style.isEmpty() ? "<td>" : "<td class=\"" + style + "\">")
                + escaped(text)
                + "</td>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
