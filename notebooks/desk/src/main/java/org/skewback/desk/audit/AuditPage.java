package org.skewback.desk.audit;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.render.Markup;
import org.skewback.desk.report.ReportPage;
import org.skewback.desk.report.Words;

/** Writes the report of an audit as a page. */
public final class AuditPage {

    private static final String QUANTITIES =
            "<th scope=\"col\">Recorded</th><th scope=\"col\">Now</th><th scope=\"col\">Fed"
                    + " by</th>";

    private AuditPage() {}

    /**
     * Writes a report.
     *
     * @param report what came of an audit
     * @return a page that stands alone
     */
    public static String of(AuditReport report) {
        StringBuilder body = new StringBuilder();
        @Nullable Identity identity = report.identity();
        body.append("<p>")
                .append(
                        Markup.text(
                                identity == null ? report.what() : AuditText.identity(identity)))
                .append("</p>\n<p class=\"quiet\">")
                .append(
                        identity == null
                                ? ""
                                : "Issued by version " + Markup.text(identity.program()) + ". ")
                .append("Audited by version ")
                .append(Markup.text(report.program()))
                .append(".</p>\n<p class=\"verdict ")
                .append(colour(report.verdict()))
                .append("\">Verdict: ")
                .append(report.verdict().inWords())
                .append("</p>\n<ul>");
        for (Tally tally : Tally.values()) {
            if (report.count(tally) > 0) {
                body.append("<li>").append(tally.inWords(report.count(tally))).append("</li>");
            }
        }
        body.append("</ul>\n");
        for (Subject subject : Subject.values()) {
            List<Finding> findings =
                    report.findings().stream().filter(f -> f.subject() == subject).toList();
            if (!findings.isEmpty()) {
                add(body, subject, findings);
            }
        }
        body.append("<p class=\"quiet\">").append(AuditText.REMINDER).append("</p>\n");
        return ReportPage.of("Audit of an issued package", body.toString());
    }

    private static void add(StringBuilder body, Subject subject, List<Finding> findings) {
        boolean quantities = findings.stream().anyMatch(finding -> finding.change() != null);
        StringBuilder rows = new StringBuilder();
        for (Finding finding : findings) {
            @Nullable Change change = finding.change();
            rows.append("<tr><td class=\"")
                    .append(colour(finding.verdict()))
                    .append("\">")
                    .append(AuditText.mark(finding.verdict()))
                    .append("</td><td>")
                    .append(Markup.text(finding.place()))
                    .append("</td><td>");
            if (change == null) {
                rows.append(Markup.text(finding.words()))
                        .append("</td>")
                        .append(quantities ? "<td></td><td></td><td></td>" : "");
            } else {
                rows.append(Markup.text(change.quantity()))
                        .append(": ")
                        .append(Markup.text(finding.words()))
                        .append("</td><td>")
                        .append(Markup.text(change.before()))
                        .append("</td><td>")
                        .append(Markup.text(change.now()))
                        .append(change.now().isEmpty() ? "" : " ")
                        .append(Markup.text(Words.relative(change.relative())))
                        .append("</td><td>")
                        .append(givens(change.givens()))
                        .append("</td>");
            }
            rows.append("</tr>");
        }
        body.append("<h2>")
                .append(subject.inWords().substring(0, 1).toUpperCase(Locale.ROOT))
                .append(subject.inWords().substring(1))
                .append("</h2>\n")
                .append(
                        ReportPage.wide(
                                subject.inWords(),
                                "<table><thead><tr><th scope=\"col\">Verdict</th><th"
                                        + " scope=\"col\">Where</th><th scope=\"col\">What</th>"
                                        + (quantities ? QUANTITIES : "")
                                        + "</tr></thead><tbody>"
                                        + rows
                                        + "</tbody></table>"));
    }

    private static String givens(List<String> givens) {
        if (givens.isEmpty()) {
            return "";
        }
        StringBuilder items = new StringBuilder();
        givens.forEach(given -> items.append("<li>").append(Markup.text(given)).append("</li>"));
        return "<details><summary>"
                + Words.counted(givens.size(), "given")
                + "</summary><ul>"
                + items
                + "</ul></details>";
    }

    private static String colour(Verdict verdict) {
        return switch (verdict) {
            case REPRODUCED -> "good";
            case DIFFERS -> "bad";
            case CANNOT_TELL -> "open";
        };
    }
}
