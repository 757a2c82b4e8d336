package org.skewback.desk.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.skewback.desk.issue.Progress;

/** Progress in plain lines, or in place on a terminal. */
class ConsoleProgressTest {

    private static String shown(boolean terminal, String title) {
        return shown(terminal, title, false);
    }

    private static String shown(boolean terminal, String title, boolean verbose) {
        StringWriter text = new StringWriter();
        Progress progress = new ConsoleProgress(new PrintWriter(text), terminal, verbose);
        progress.sheetStarts(title, 12);
        progress.cellStarts(title, 7, 12);
        progress.cellEnds(title, 7, 12, Duration.ofMillis(1340));
        progress.sheetEnds(title, 12, Duration.ofMillis(4200));
        progress.pagesStart(Duration.ofMillis(31_250));
        progress.pagesEnd(Duration.ofMillis(9_870));
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    @Test
    void elsewhereThanOnATerminalEachCellHasALine() {
        assertEquals(
                """
                06 Form of the rib   cell 7 of 12   1.3 s
                06 Form of the rib   12 cells   4.2 s
                Making the pages
                """,
                shown(false, "06 Form of the rib"));
    }

    @Test
    void whoWantsMoreHearsWhatStagesTookAndOfEachCellOnATerminalToo() {
        assertEquals(
                """
                06 Form of the rib   cell 7 of 12   1.3 s
                06 Form of the rib   12 cells   4.2 s
                All notebooks   31.3 s
                Making the pages
                Pages and print   9.9 s
                """,
                shown(true, "06 Form of the rib", true));
    }

    @Test
    void onATerminalASheetHasOneLine() {
        assertEquals(
                "\r06 Form of the rib   starting\u001B[K"
                        + "\r06 Form of the rib   cell 7 of 12\u001B[K"
                        + "\r06 Form of the rib   12 cells   4.2 s\u001B[K\n"
                        + "Making the pages\n",
                shown(true, "06 Form of the rib"));
    }
}
