package org.skewback.desk.audit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What came of an audit.
 *
 * @param what the folder or file that was audited
 * @param program version of the program that audited it
 * @param identity what the issue says of itself, or null where that could not be read
 * @param counts how much was looked at and is as recorded
 * @param findings all that is to be said, in the order of the parts
 * @param efforts what each stage took, in each process; differs from run to run
 */
public record AuditReport(
        String what,
        String program,
        @Nullable Identity identity,
        Map<Tally, Long> counts,
        List<Finding> findings,
        List<Effort> efforts) {

    /** How a finding ends that says that a part did not come to its end. */
    static final String UNFINISHED = "so the rest was not looked at";

    /** Keeps copies. */
    public AuditReport {
        efforts = List.copyOf(efforts);
        counts = counts.isEmpty() ? Map.of() : new EnumMap<>(counts);
        findings = List.copyOf(findings);
    }

    /**
     * Gives the verdict over all.
     *
     * @return the gravest of the findings
     */
    public Verdict verdict() {
        return findings.stream().map(Finding::verdict).reduce(Verdict.REPRODUCED, Verdict::and);
    }

    /**
     * Tells whether each part of the audit came to its end, so that the issue can be read within the
     * bounds of an audit.
     *
     * @return false where a part was ended for its memory or time, or the issue could not be read
     */
    public boolean isWhole() {
        return identity != null && findings.stream().noneMatch(f -> f.words().endsWith(UNFINISHED));
    }

    /**
     * Gives the count of something.
     *
     * @param tally what is counted
     * @return how many
     */
    public long count(Tally tally) {
        return counts.getOrDefault(tally, 0L);
    }

    /** Gathers a report. */
    static final class Gathering implements Findings {

        private final Map<Tally, Long> counts = new EnumMap<>(Tally.class);
        private final List<Finding> findings = new ArrayList<>();
        private final List<Effort> efforts = new ArrayList<>();
        private @Nullable Identity identity;

        /** Begins with nothing. */
        Gathering() {}

        /** Goes on from a report. */
        Gathering(AuditReport report) {
            counts.putAll(report.counts());
            findings.addAll(report.findings());
            efforts.addAll(report.efforts());
            identity = report.identity();
        }

        @Override
        public synchronized void add(Finding finding) {
            findings.add(finding);
        }

        @Override
        public synchronized void count(Tally tally, long number) {
            counts.merge(tally, number, Long::sum);
        }

        @Override
        public synchronized void spend(Effort effort) {
            efforts.add(effort);
        }

        @Override
        public synchronized void identify(Identity said) {
            identity = said;
        }

        /** Gives the report, its findings by part. */
        synchronized AuditReport report(String what, String program) {
            List<Finding> ordered = new ArrayList<>(findings);
            ordered.sort((a, b) -> a.subject().compareTo(b.subject()));
            List<Effort> spent = new ArrayList<>(efforts);
            spent.sort((a, b) -> a.stage().compareTo(b.stage()));
            return new AuditReport(what, program, identity, counts, ordered, spent);
        }
    }
}
