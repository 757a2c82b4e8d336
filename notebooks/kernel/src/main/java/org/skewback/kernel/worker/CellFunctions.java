package org.skewback.kernel.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What every cell can call without an import. */
public final class CellFunctions {

    private static volatile @Nullable CellRunner runner;

    private CellFunctions() {}

    /** Connects the functions, which cells can only reach statically, to the running worker. */
    static void connect(CellRunner running) {
        runner = running;
    }

    private static CellRunner runner(String function) {
        CellRunner running = runner;
        if (running == null) {
            throw new IllegalStateException(function + " works in the cells of a notebook only");
        }
        return running;
    }

    /**
     * Shows a value under the cell at once.
     *
     * @param value the value, may be null
     */
    public static void display(@Nullable Object value) {
        runner("display(…)").display(value, "", false);
    }

    /**
     * Shows a value under the cell at once, so that {@link #updateDisplay} can change it later.
     *
     * @param value the value, may be null
     * @param name name of the display, not blank
     * @throws IllegalArgumentException if the name is blank
     */
    public static void display(@Nullable Object value, String name) {
        runner("display(…)").display(value, named(name), false);
    }

    /**
     * Shows a value wherever one was shown by {@link #display(Object, String)} under the same name.
     *
     * @param value the value, may be null
     * @param name name of the display, not blank
     * @throws IllegalArgumentException if the name is blank
     */
    public static void updateDisplay(@Nullable Object value, String name) {
        runner("updateDisplay(…)").display(value, named(name), true);
    }

    private static String named(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(
                    "the name of a display is blank; it must have at least one letter");
        }
        return name;
    }

    /**
     * Clears what the cell has printed and shown so far.
     *
     * @param wait whether to clear only when the next output comes, which avoids flicker
     */
    public static void clearOutput(boolean wait) {
        runner("clearOutput(…)").clearOutput(wait);
    }

    /**
     * Opens a line to a target of the front end.
     *
     * @param target name of the target
     * @param json what to send along, a JSON object as text
     * @return the line
     */
    public static Comm openComm(String target, String json) {
        try {
            return runner("openComm(…)").comms().open(target, json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Offers a target to which the front end may open lines.
     *
     * @param target name of the target
     * @param opened told of each line that is opened
     */
    public static void offerComm(String target, Consumer<Comm> opened) {
        runner("offerComm(…)").comms().offer(target, opened);
    }

    /**
     * Asks whoever runs the notebook for a line of text.
     *
     * @param prompt what to ask
     * @return the line, without its end
     */
    public static String input(String prompt) {
        return runner("input(…)").ask(prompt, false);
    }

    /**
     * Asks whoever runs the notebook for a line of text that is not shown while it is typed.
     *
     * @param prompt what to ask
     * @return the line, without its end
     */
    public static String password(String prompt) {
        return runner("password(…)").ask(prompt, true);
    }
}
