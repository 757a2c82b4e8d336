package org.skewback.desk.issue;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;

/** Finds what a notebook is called. */
public final class Titles {

    /**
     * An ATX heading (CommonMark 0.31.2, section 4.2), without the closing run of hashes.
     *
     * @see <a href="https://spec.commonmark.org/0.31.2/#atx-headings">CommonMark, ATX headings</a>
     */
    private static final Pattern HEADING =
            Pattern.compile(" {0,3}#{1,6}[ \\t]+(.*?)(?:[ \\t]+#+)?[ \\t]*");

    private static final Pattern FENCE = Pattern.compile(" {0,3}(```|~~~).*");
    private static final Pattern MARKS = Pattern.compile("[*`]");

    private Titles() {}

    /**
     * Finds the title of a notebook.
     *
     * @param notebook the notebook
     * @param otherwise title where it has no heading
     * @return the text of its first heading, without marks of emphasis
     */
    public static String of(Notebook notebook, String otherwise) {
        for (Cell cell : notebook.cells()) {
            if (cell.kind() == Cell.Kind.MARKDOWN) {
                Optional<String> heading = heading(cell.source());
                if (heading.isPresent()) {
                    return heading.get();
                }
            }
        }
        return otherwise;
    }

    private static Optional<String> heading(String markdown) {
        boolean fenced = false;
        for (String line : markdown.lines().toList()) {
            if (FENCE.matcher(line).matches()) {
                fenced = !fenced;
            }
            Matcher heading = HEADING.matcher(line);
            if (!fenced && heading.matches()) {
                String title = MARKS.matcher(heading.group(1)).replaceAll("").strip();
                if (!title.isEmpty()) {
                    return Optional.of(title);
                }
            }
        }
        return Optional.empty();
    }
}
