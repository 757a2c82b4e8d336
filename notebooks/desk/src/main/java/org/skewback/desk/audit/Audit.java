package org.skewback.desk.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.skewback.desk.Problem;

/**
 * Audits an issue: whether its files are as issued, its numbers come out again from its records, and
 * its pages show what is recorded.
 *
 * <p>No code of a notebook runs. All that reads the issue does so in Java processes of their own, which
 * may use little memory and time; where one is ended for that, the audit cannot tell.
 */
public final class Audit {

    private final String program;
    private final Duration time;
    private final boolean redraw;
    private final Map<String, String> keys;

    /**
     * Makes an auditor.
     *
     * @param program version of this program
     * @param time longest time that it may take
     * @param redraw whether the PDF is made again and compared to the last byte
     * @param keys public keys of those who may sign, by role
     */
    public Audit(String program, Duration time, boolean redraw, Map<String, String> keys) {
        this.keys = Map.copyOf(keys);
        this.program = program;
        this.time = time;
        this.redraw = redraw;
    }

    /**
     * Audits an issue.
     *
     * @param issue an issued folder, or the PDF of one
     * @return what came of it
     * @throws Problem when there is no such thing, or no process can be started
     */
    public AuditReport audit(Path issue) throws Problem {
        if (!Files.isDirectory(issue) && !Files.isRegularFile(issue)) {
            throw new Problem("there is no issued folder or PDF " + issue);
        }
        Stopwatch watch = new Stopwatch();
        AuditReport.Gathering gathering = new AuditReport.Gathering();
        List<AuditTask.Kind> kinds =
                List.of(
                        AuditTask.Kind.NUMBERS,
                        redraw ? AuditTask.Kind.REDRAW : AuditTask.Kind.PAGES);
        CountDownLatch done = new CountDownLatch(kinds.size());
        for (AuditTask.Kind kind : kinds) {
            ChildJava child = ChildJava.start(kind, issue, program, keys);
            Thread reader =
                    new Thread(
                            () -> {
                                child.gather(gathering, time);
                                done.countDown();
                            },
                            "audit-" + kind);
            reader.start();
        }
        try {
            done.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Problem("the audit was interrupted", e);
        }
        watch.tell(Stage.PROGRAM, gathering);
        return gathering.report(issue.toString(), program);
    }
}
