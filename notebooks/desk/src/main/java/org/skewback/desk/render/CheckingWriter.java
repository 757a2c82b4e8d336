package org.skewback.desk.render;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.checking.CheckerNumber;
import org.skewback.desk.checking.Checking;
import org.skewback.desk.checking.Concession;
import org.skewback.desk.checking.Content;
import org.skewback.desk.checking.Keys;
import org.skewback.desk.checking.Readiness;
import org.skewback.desk.checking.Remark;
import org.skewback.desk.checking.Signature;
import org.skewback.desk.checking.Signatures;
import org.skewback.desk.issue.RunPackage;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.SheetRecord;

/** Sets what the checker's side says: numbers beside the author's, comments, concessions, names. */
final class CheckingWriter {

    private final Checking checking;
    private final LocalDate date;
    private final List<SheetRecord> sheets;
    private final Map<String, String> faults;

    CheckingWriter(RunPackage run, List<ReadDocument> documents) {
        this.checking = run.checking();
        this.date = run.info().date();
        this.sheets =
                documents.stream().map(ReadDocument::record).filter(Objects::nonNull).toList();
        this.faults =
                checking.signatures().isEmpty()
                        ? Map.of()
                        : Signatures.faults(checking, run.info(), Content.digests(run));
    }

    /** Rows of the title block: who signed, and whether that holds for these pages. */
    String signatures() {
        if (checking.isNone()) {
            return "";
        }
        StringBuilder rows = new StringBuilder();
        for (String role : Checking.ROLES) {
            rows.append("<tr><th scope=\"row\">Signed as ")
                    .append(role)
                    .append("</th><td>")
                    .append(Markup.text(signed(role)))
                    .append("</td></tr>");
        }
        return rows.toString();
    }

    private String signed(String role) {
        @Nullable Signature signature = checking.signatures().get(role);
        if (signature == null) {
            return "by nobody yet";
        }
        String fault = faults.getOrDefault(role, "");
        return signature.name()
                + ", "
                + signature.date()
                + ", key "
                + Keys.fingerprint(signature.key())
                + (fault.isEmpty() ? "" : "; does not hold: " + fault);
    }

    boolean isEmpty() {
        return checking.numbers().isEmpty()
                && checking.remarks().isEmpty()
                && checking.concessions().isEmpty();
    }

    /** All of it, with the sheets named. */
    String all() {
        return numbers(null) + remarks(null) + concessions(null);
    }

    /** What is about one sheet; empty where there is nothing. */
    String about(String sheet) {
        return numbers(sheet) + remarks(sheet) + concessions(sheet);
    }

    private String numbers(@Nullable String sheet) {
        StringBuilder rows = new StringBuilder();
        for (CheckerNumber number : checking.numbers()) {
            if (sheet == null || sheet.equals(number.sheet())) {
                number(rows, number);
            }
        }
        return table(
                "The checker's own numbers",
                List.of("Sheet", "Quantity", "Author", "Checker", "Tolerance", "Method", "Verdict"),
                rows);
    }

    private void number(StringBuilder rows, CheckerNumber number) {
        @Nullable Quantity author = Readiness.author(sheets, number);
        boolean agrees = author != null && number.agrees(author);
        cells(
                rows,
                Markup.text(number.sheet()),
                Markup.symbol(number.quantity()),
                author == null ? "none" : Markup.text(Numerals.withUnit(author)),
                Markup.text(Numerals.withUnit(number.value())),
                Markup.text(Numerals.significant(number.tolerance() * 100, 2) + "\u00A0%"),
                Markup.text(number.method()),
                agrees
                        ? "<b class=\"verdict passed\">agrees</b>"
                        : "<b class=\"verdict failed\">does not agree</b>");
    }

    private String remarks(@Nullable String sheet) {
        StringBuilder rows = new StringBuilder();
        for (Remark remark : checking.remarks()) {
            if (sheet != null && !sheet.equals(remark.sheet())) {
                continue;
            }
            Remark.@Nullable Said closed = remark.closed();
            cells(
                    rows,
                    Markup.text(remark.id()),
                    Markup.text(remark.sheet() + (remark.on().isEmpty() ? "" : ", " + remark.on())),
                    said(remark.opened()),
                    said(remark.answer()),
                    closed == null
                            ? "<b class=\"verdict stale\">" + remark.state() + "</b>"
                            : "closed: " + said(closed));
        }
        return table("Comments", List.of("No.", "On", "Comment", "Answer", "State"), rows);
    }

    private static String said(Remark.@Nullable Said said) {
        if (said == null) {
            return "none yet";
        }
        return Markup.text(
                said.by() + ", " + said.date() + (said.text().isBlank() ? "" : ": " + said.text()));
    }

    private String concessions(@Nullable String sheet) {
        StringBuilder rows = new StringBuilder();
        for (Concession concession : checking.concessions()) {
            if (sheet == null || sheet.equals(concession.sheet())) {
                cells(
                        rows,
                        Markup.text(concession.sheet()),
                        Markup.text(concession.check()),
                        Markup.text(concession.reason()),
                        Markup.text(concession.by()),
                        Markup.text(
                                concession.until()
                                        + (concession.holdsOn(date) ? "" : ", which is over")));
            }
        }
        return table("Concessions", List.of("Sheet", "Check", "Reason", "By", "Until"), rows);
    }

    /** What stands beside the verdict of a check that is conceded; empty where it is not. */
    String conceded(String sheet, String check) {
        @Nullable Concession concession = Readiness.concession(checking, sheet, check);
        return concession == null
                ? ""
                : ", conceded by " + Markup.text(concession.by()) + " until " + concession.until();
    }

    private static void cells(StringBuilder rows, String... cells) {
        rows.append("<tr><td>").append(String.join("</td><td>", cells)).append("</td></tr>");
    }

    private static String table(String caption, List<String> heads, StringBuilder rows) {
        if (rows.isEmpty()) {
            return "";
        }
        return "<table class=\"checking\"><caption>"
                + caption
                + "</caption><thead><tr><th scope=\"col\">"
                + String.join("</th><th scope=\"col\">", heads)
                + "</th></tr></thead><tbody>"
                + rows
                + "</tbody></table>\n";
    }
}
