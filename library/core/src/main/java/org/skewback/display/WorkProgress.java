package org.skewback.display;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * How far long work has come, shown in one place that changes as the work goes on.
 *
 * <pre>{@code
 * WorkProgress work = WorkProgress.of("Chance that the pier slides", "samples", System.out::println);
 * display(work);
 * reliability.simulate(sampling, stop, p -> work.at(p.samples(), p.wanted()));
 * work.done();
 * }</pre>
 *
 * <p>The display changes at most every 100 ms. In a kernel that cannot change what it has shown, a
 * line of text goes to the consumer at most every five seconds. When the work is done, the display
 * holds no time, so that the same work shows the same. Safe for many threads.
 */
public final class WorkProgress implements Changing {

    private static final long PERIOD_NANOS = TimeUnit.MILLISECONDS.toNanos(100);
    private static final long TEXT_PERIOD_NANOS = TimeUnit.SECONDS.toNanos(5);
    private static final double LEAST_SHARE = 0.02;

    private final String title;
    private final String counted;
    private final Consumer<String> text;
    private final LongSupplier clock;
    private final long start;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    // Guarded by this.
    private long count;
    private long wanted;
    private String note = "";
    private boolean done;
    private long lastShown;
    private long lastText;

    /** With a clock in nanoseconds. */
    WorkProgress(String title, String counted, Consumer<String> text, LongSupplier clock) {
        if (title.isBlank() || counted.isBlank()) {
            throw new IllegalArgumentException(
                    "the title of the work is \""
                            + title
                            + "\" and what it counts \""
                            + counted
                            + "\"; both must say something");
        }
        this.title = title;
        this.counted = counted;
        this.text = text;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.lastShown = start - PERIOD_NANOS;
        this.lastText = start;
    }

    /**
     * Makes the progress of work that is about to begin.
     *
     * @param title what the work is, in words
     * @param counted what it counts, such as {@code samples}
     * @param text takes a line of text where the display cannot change, such as {@code
     *     System.out::println}
     * @return the progress
     * @throws IllegalArgumentException if the title or what is counted is blank
     */
    public static WorkProgress of(String title, String counted, Consumer<String> text) {
        return new WorkProgress(title, counted, text, System::nanoTime);
    }

    /**
     * Says how far the work has come.
     *
     * @param count how many are done, not negative
     * @param of how many there are in all; 0 where that is not known
     * @throws IllegalArgumentException if a count is negative
     */
    public void at(long count, long of) {
        at(count, of, "");
    }

    /**
     * Says how far the work has come, and what it has found so far.
     *
     * @param count how many are done, not negative
     * @param of how many there are in all; 0 where that is not known
     * @param note what is known so far, in words; may be empty
     * @throws IllegalArgumentException if a count is negative
     */
    public void at(long count, long of, String note) {
        if (count < 0 || of < 0) {
            throw new IllegalArgumentException(
                    "progress of \""
                            + title
                            + "\" is "
                            + count
                            + " of "
                            + of
                            + " "
                            + counted
                            + "; neither may be negative");
        }
        change(count, of, note, false);
    }

    /** Says that the work is done. */
    public void done() {
        long last;
        String found;
        synchronized (this) {
            last = wanted > 0 ? wanted : count;
            found = note;
        }
        change(last, last, found, true);
    }

    private void change(long newCount, long newWanted, String newNote, boolean ends) {
        boolean show;
        String line = null;
        synchronized (this) {
            count = newCount;
            wanted = newWanted;
            note = newNote;
            done = ends;
            long now = clock.getAsLong();
            show = ends || now - lastShown >= PERIOD_NANOS;
            if (show) {
                lastShown = now;
            }
            boolean wroteText = lastText > start;
            if (listeners.isEmpty()
                    && (now - lastText >= TEXT_PERIOD_NANOS || (ends && wroteText))) {
                lastText = now;
                line = words();
            }
        }
        if (line != null) {
            text.accept(line);
        }
        if (show) {
            listeners.forEach(Runnable::run);
        }
    }

    @Override
    public void whenChanged(Runnable show) {
        listeners.add(show);
    }

    @Override
    public synchronized Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        StringBuilder html = new StringBuilder("<div><b>");
        html.append(escape(title)).append("</b><br>");
        if (!done) {
            html.append("<progress aria-label=\"").append(escape(title)).append('"');
            if (wanted > 0) {
                html.append(" max=\"").append(wanted).append("\" value=\"");
                html.append(Math.min(count, wanted)).append('"');
            }
            html.append("></progress> ");
        }
        html.append(escape(amount()));
        if (!note.isEmpty()) {
            html.append("<br>").append(escape(note));
        }
        bundle.put("text/html", html.append("</div>").toString());
        bundle.put("text/plain", words());
        return bundle;
    }

    private String words() {
        return title + ": " + amount() + (note.isEmpty() ? "" : "; " + note);
    }

    private String amount() {
        if (done) {
            return number(count) + " " + counted + ", done";
        }
        if (wanted == 0) {
            return number(count) + " " + counted;
        }
        double share = Math.min(1, count / (double) wanted);
        String so =
                (int) (100 * share)
                        + " %, "
                        + number(count)
                        + " of "
                        + number(wanted)
                        + " "
                        + counted;
        if (share < LEAST_SHARE) {
            return so;
        }
        double seconds = (clock.getAsLong() - start) / 1e9 * (1 - share) / share;
        return so + ", about " + left(seconds) + " left";
    }

    private static String left(double seconds) {
        long whole = Math.max(1, Math.round(seconds));
        if (whole < 120) {
            return whole + " s";
        }
        long minutes = Math.round(whole / 60.0);
        return minutes < 120 ? minutes + " min" : Math.round(minutes / 60.0) + " h";
    }

    private static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value).replace(',', '\u202F');
    }

    private static String escape(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    @Override
    public synchronized String toString() {
        return words();
    }
}
