package org.skewback.kernel.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
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

    /**
     * Gives HTML to be shown.
     *
     * @param text the HTML
     * @return what shows as it
     */
    public static CellContent html(String text) {
        return new CellContent("text/html", text, text.replaceAll("<[^>]*>", "").strip());
    }

    /**
     * Gives Markdown to be shown.
     *
     * @param text the Markdown
     * @return what shows as it
     */
    public static CellContent markdown(String text) {
        return new CellContent("text/markdown", text, text);
    }

    /**
     * Gives a formula to be shown.
     *
     * @param formula the formula as LaTeX, without dollar signs around it
     * @return what shows as it
     */
    public static CellContent latex(String formula) {
        return new CellContent("text/latex", "$$" + formula + "$$", formula);
    }

    /**
     * Gives a picture to be shown.
     *
     * @param text a whole SVG document
     * @return what shows as it
     */
    public static CellContent svg(String text) {
        return new CellContent("image/svg+xml", text, "(a picture)");
    }

    /**
     * Gives a picture to be shown.
     *
     * @param bytes a PNG file
     * @return what shows as it
     */
    public static CellContent png(byte[] bytes) {
        return new CellContent(
                "image/png", Base64.getEncoder().encodeToString(bytes), "(a picture)");
    }

    /**
     * Gives JSON to be shown, as a tree that can be folded where the front end can.
     *
     * @param text the JSON
     * @return what shows as it
     */
    public static CellContent json(String text) {
        return new CellContent("application/json", text, text);
    }
}
