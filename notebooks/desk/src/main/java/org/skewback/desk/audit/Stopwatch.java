package org.skewback.desk.audit;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;

/** Takes how long each stage is at work, on whatever threads. */
final class Stopwatch {

    private static final double NANO = 1e-9;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final long zero = System.nanoTime();
    private final double before = sinceStart();
    private final Map<Stage, Effort> efforts = new EnumMap<>(Stage.class);

    /** The time since this process started, s; 0 where the system does not tell. */
    private static double sinceStart() {
        return ProcessHandle.current()
                .info()
                .startInstant()
                .map(start -> seconds(Duration.between(start, Instant.now())))
                .orElse(0.0);
    }

    private static double seconds(Duration time) {
        return time.toNanos() * NANO;
    }

    /** The time since this process started, s. */
    private double now() {
        return before + (System.nanoTime() - zero) * NANO;
    }

    private double processor() {
        return threads.isCurrentThreadCpuTimeSupported()
                ? threads.getCurrentThreadCpuTime() * NANO
                : 0;
    }

    /** Begins a share of a stage on this thread, within which none of another stage is to begin. */
    Share begin(Stage stage) {
        return new Share(stage, now(), processor());
    }

    /** Does something and counts it to a stage. */
    <V> V time(Stage stage, Supplier<V> work) {
        Share share = begin(stage);
        V done = work.get();
        share.end();
        return done;
    }

    /** Does something that gives nothing, and counts it to a stage. */
    void run(Stage stage, Runnable work) {
        Share share = begin(stage);
        work.run();
        share.end();
    }

    private synchronized void add(Effort effort) {
        efforts.merge(effort.stage(), effort, Effort::and);
    }

    /** Takes down what has been spent, and what the whole process has under a name of its own. */
    synchronized void tell(Stage process, Findings findings) {
        efforts.values().forEach(findings::spend);
        double now = now();
        double all =
                ProcessHandle.current()
                        .info()
                        .totalCpuDuration()
                        .map(Stopwatch::seconds)
                        .orElse(0.0);
        findings.spend(new Effort(process, 0, now, now, all));
    }

    /** A share of a stage that has begun; where it ends by a fault it does not count. */
    final class Share {

        private final Stage stage;
        private final double from;
        private final double processor;

        private Share(Stage stage, double from, double processor) {
            this.stage = stage;
            this.from = from;
            this.processor = processor;
        }

        /** Ends it, on the thread on which it began. */
        void end() {
            double to = now();
            add(new Effort(stage, from, to, to - from, processor() - processor));
        }
    }
}
