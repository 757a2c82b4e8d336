package org.skewback.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;

/**
 * Writes the progress of a simulation on one line that is written over: each report begins with a
 * carriage return, which notebooks and terminals heed, and the last ends with a line feed.
 *
 * <p>Belongs to one simulation and to the thread that runs it.
 */
public final class ProgressLine implements Consumer<Progress> {

    private final Appendable out;
    private int longest;

    private ProgressLine(Appendable out) {
        this.out = out;
    }

    /**
     * Writes on a stream.
     *
     * @param out such as the standard output of a notebook
     * @return what a simulation tells its progress
     */
    public static ProgressLine on(Appendable out) {
        return new ProgressLine(out);
    }

    /**
     * Writes a report over the one before.
     *
     * @param progress where the simulation stands
     */
    @Override
    public void accept(Progress progress) {
        String text = progress.toString();
        longest = Math.max(longest, text.length());
        String end = progress.samples() == progress.wanted() ? "\n" : "";
        try {
            out.append('\r' + text + " ".repeat(longest - text.length()) + end);
        } catch (IOException e) {
            throw new UncheckedIOException("the progress of a simulation cannot be written", e);
        }
    }
}
