package org.skewback.desk.issue;

import java.util.ArrayList;
import java.util.List;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Content;
import org.skewback.desk.checking.Readiness;
import org.skewback.desk.checking.Status;
import org.skewback.sheet.RecordReader;
import org.skewback.sheet.SheetRecord;

/** Refuses an issue whose status promises more than its checks, comments and signatures hold. */
final class CheckedStatus {

    private CheckedStatus() {}

    /**
     * Lets a package be issued, or says all that stands against it.
     *
     * @param run the package as run
     * @throws Problem with every reason at once
     */
    static void require(RunPackage run) throws Problem {
        boolean construction = run.info().status().equals(Status.FOR_CONSTRUCTION.inWords());
        if (run.checking().isNone() && !construction) {
            return;
        }
        List<SheetRecord> sheets = new ArrayList<>();
        for (RunDocument document : run.documents()) {
            String record = document.record();
            if (record != null) {
                try {
                    sheets.add(RecordReader.read(record));
                } catch (IllegalArgumentException e) {
                    throw new Problem(document.title() + ": " + e.getMessage(), e);
                }
            }
        }
        List<String> loose = Readiness.loose(run.checking(), sheets);
        if (!loose.isEmpty()) {
            throw new Problem("the checker's side speaks of what no sheet has:" + listed(loose));
        }
        if (construction) {
            List<String> reasons =
                    Readiness.reasons(run.info(), run.checking(), sheets, Content.digests(run));
            if (!reasons.isEmpty()) {
                throw new Problem("cannot be issued for construction:" + listed(reasons));
            }
        }
    }

    private static String listed(List<String> lines) {
        return String.join("", lines.stream().map(line -> "\n  " + line).toList());
    }
}
