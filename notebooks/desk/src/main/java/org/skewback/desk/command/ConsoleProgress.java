package org.skewback.desk.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import org.skewback.desk.issue.Progress;

/** Shows progress: a line for each cell, or on a terminal one line for each sheet that counts up. */
final class ConsoleProgress implements Progress {

    private static final int TITLE_WIDTH = 44;

    private final PrintWriter out;
    private final boolean terminal;
    private final boolean verbose;

    /**
     * Makes the progress.
     *
     * @param out where to print
     * @param terminal whether a line can be written over
     * @param verbose whether each cell has a line on a terminal too, and stages say what they took
     */
    ConsoleProgress(PrintWriter out, boolean terminal, boolean verbose) {
        this.out = out;
        this.terminal = terminal && !verbose;
        this.verbose = verbose;
    }

    @Override
    public synchronized void sheetStarts(String sheet, int cells) {
        if (terminal) {
            over(title(sheet) + "starting");
        }
    }

    @Override
    public synchronized void cellStarts(String sheet, int cell, int cells) {
        if (terminal) {
            over(title(sheet) + of(cell, cells));
        }
    }

    @Override
    public synchronized void cellEnds(String sheet, int cell, int cells, Duration time) {
        if (!terminal) {
            out.println(title(sheet) + of(cell, cells) + "   " + seconds(time));
            out.flush();
        }
    }

    @Override
    public synchronized void sheetEnds(String sheet, int cells, Duration time) {
        String end = title(sheet) + cells + (cells == 1 ? " cell   " : " cells   ") + seconds(time);
        if (terminal) {
            over(end);
            out.println();
        } else {
            out.println(end);
        }
        out.flush();
    }

    @Override
    public synchronized void pagesStart(Duration time) {
        if (verbose) {
            out.println("All notebooks   " + seconds(time));
        }
        out.println("Making the pages");
        out.flush();
    }

    @Override
    public synchronized void pagesEnd(Duration time) {
        if (verbose) {
            out.println("Pages and print   " + seconds(time));
            out.flush();
        }
    }

    private void over(String line) {
        // Back to the first column, then the rest of the old line is wiped (ECMA-48, EL).
        out.print("\r" + line + "\u001B[K");
        out.flush();
    }

    private String title(String sheet) {
        String shown =
                terminal && sheet.length() > TITLE_WIDTH
                        ? sheet.substring(0, TITLE_WIDTH - 1) + "…"
                        : sheet;
        return shown + "   ";
    }

    private static String of(int cell, int cells) {
        return "cell " + cell + " of " + cells;
    }

    private static String seconds(Duration time) {
        return String.format(Locale.ROOT, "%.1f s", time.toMillis() / 1000.0);
    }
}
