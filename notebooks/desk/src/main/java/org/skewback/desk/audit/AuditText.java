package org.skewback.desk.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.report.Words;

/** Writes the report of an audit for a terminal. */
public final class AuditText {

    static final String REMINDER =
            "Reproduced is not checked: that a number comes out again does not say that it was the"
                    + " right number to ask for. Local codes and the judgement of a licensed"
                    + " engineer come first.";

    private static final int FEW = 25;
    private static final int FEW_GIVENS = 6;

    private AuditText() {}

    /**
     * Writes a report.
     *
     * @param report what came of an audit
     * @param whole whether every finding is written, however many there are, and what each stage
     *     took
     * @return lines of text
     */
    public static String of(AuditReport report, boolean whole) {
        List<String> lines = new ArrayList<>();
        lines.add("Audit of " + report.what());
        @Nullable Identity identity = report.identity();
        if (identity != null) {
            lines.add("  " + identity(identity));
            lines.add(
                    "  issued by version "
                            + identity.program()
                            + ", audited by version "
                            + report.program());
        }
        lines.add("");
        for (Tally tally : Tally.values()) {
            if (report.count(tally) > 0) {
                lines.add("  " + tally.inWords(report.count(tally)));
            }
        }
        List<Finding> findings = report.findings();
        int shown = whole ? findings.size() : Math.min(FEW, findings.size());
        @Nullable Subject subject = null;
        for (Finding finding : findings.subList(0, shown)) {
            if (finding.subject() != subject) {
                subject = finding.subject();
                lines.add("");
                lines.add(subject.inWords());
            }
            add(lines, finding);
        }
        if (shown < findings.size()) {
            lines.add("  … and " + (findings.size() - shown) + " more; --verbose shows them all");
        }
        if (whole) {
            add(lines, report.efforts());
        }
        lines.add("");
        lines.add("Verdict: " + report.verdict().inWords());
        lines.add(REMINDER);
        return String.join("\n", lines.stream().map(Words::line).toList()) + "\n";
    }

    static String identity(Identity identity) {
        return identity.title()
                + ", "
                + identity.number()
                + ", revision "
                + identity.revision()
                + ", "
                + identity.status()
                + ", "
                + identity.date();
    }

    /** Says a verdict in the way that fits a single finding. */
    static String mark(Verdict verdict) {
        return verdict == Verdict.REPRODUCED ? "remark" : verdict.inWords();
    }

    private static void add(List<String> lines, List<Effort> efforts) {
        if (efforts.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("time, in seconds from the start of each process");
        lines.add(
                String.format(
                        Locale.ROOT,
                        "  %-34s%8s%8s%9s%11s",
                        "",
                        "from",
                        "to",
                        "threads",
                        "processor"));
        for (Effort effort : efforts) {
            lines.add(
                    String.format(
                            Locale.ROOT,
                            "  %-34s%8.2f%8.2f%9.2f%11.2f",
                            effort.stage().inWords(),
                            effort.from(),
                            effort.to(),
                            effort.threads(),
                            effort.processor()));
        }
    }

    private static void add(List<String> lines, Finding finding) {
        @Nullable Change change = finding.change();
        String mark = "  " + mark(finding.verdict()).toUpperCase(Locale.ROOT) + "  ";
        if (change == null) {
            lines.add(mark + finding.place() + ": " + finding.words());
            return;
        }
        lines.add(mark + change.sheet() + ": " + change.quantity());
        lines.add("      " + values(change));
        lines.add("      " + finding.words());
        List<String> givens = change.givens();
        for (int i = 0; i < Math.min(FEW_GIVENS, givens.size()); i++) {
            lines.add((i == 0 ? "      fed by " : "             ") + givens.get(i));
        }
        if (givens.size() > FEW_GIVENS) {
            lines.add("             … and " + (givens.size() - FEW_GIVENS) + " more");
        }
    }

    private static String values(Change change) {
        String relative = Words.relative(change.relative());
        return "recorded "
                + change.before()
                + (change.now().isEmpty() ? "" : ", now " + change.now())
                + (relative.isEmpty() ? "" : ", change " + relative);
    }
}
