package org.skewback.desk.issue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;

/**
 * Which notebooks must have run before which, found from their code without running it.
 *
 * <p>A notebook that says {@code sheet.take("06", "H")} needs the one before it that says {@code
 * Sheet.numbered("06", …)}. Where a notebook takes from what cannot be found in this way, it needs
 * all before it.
 */
final class SheetNeeds {

    private static final Pattern NUMBERED =
            Pattern.compile("\\bSheet\\s*\\.\\s*numbered\\s*\\(\\s*\"([^\"\\\\]*)\"");
    private static final Pattern TAKES =
            Pattern.compile("\\btake\\s*\\(\\s*(\"([^\"\\\\]*)\"\\s*,)?");

    /** The rest of a line; what stands behind // in a text goes too, which names no sheet. */
    private static final Pattern COMMENT = Pattern.compile("//[^\\n]*");

    /** What can reach the records of other sheets without the word {@code take}. */
    private static final Pattern UNSEEN =
            Pattern.compile(
                    Pattern.quote(PackageIssue.RECORDS)
                            + "|\\bgetenv\\b|::\\s*take\\b|\\breflect\\b|%(?!maven\\b)\\w+");

    private SheetNeeds() {}

    /**
     * Finds what each notebook needs.
     *
     * @param notebooks the notebooks in reading order
     * @return for each the positions of those that must have run before it
     */
    static List<Set<Integer>> of(List<Notebook> notebooks) {
        Map<String, Integer> numbered = new HashMap<>();
        List<Set<Integer>> needs = new ArrayList<>();
        for (int i = 0; i < notebooks.size(); i++) {
            String code = code(notebooks.get(i));
            needs.add(needs(code, i, numbered));
            Matcher own = NUMBERED.matcher(code);
            while (own.find()) {
                numbered.put(own.group(1), i);
            }
        }
        return needs;
    }

    /**
     * Finds the number of the sheet that a notebook keeps, from its code alone.
     *
     * @param notebook a notebook
     * @return the number; empty where its code names none, or several, or where a comment or a text
     *     might be mistaken for code
     */
    static String number(Notebook notebook) {
        String code = code(notebook);
        if (code.contains("/*") || code.contains("\"\"\"")) {
            return "";
        }
        Set<String> numbers = new TreeSet<>();
        Matcher own = NUMBERED.matcher(COMMENT.matcher(code).replaceAll(""));
        while (own.find()) {
            numbers.add(own.group(1));
        }
        return numbers.size() == 1 ? numbers.iterator().next() : "";
    }

    private static String code(Notebook notebook) {
        return notebook.cells().stream()
                .filter(cell -> cell.kind() == Cell.Kind.CODE)
                .map(Cell::source)
                .collect(Collectors.joining("\n"));
    }

    private static Set<Integer> needs(String code, int position, Map<String, Integer> numbered) {
        Set<Integer> needs = new TreeSet<>();
        boolean unseen = UNSEEN.matcher(code).find();
        Matcher takes = TAKES.matcher(code);
        while (takes.find() && !unseen) {
            @Nullable String from = takes.group(2);
            @Nullable Integer there = from == null ? null : numbered.get(from);
            if (there == null) {
                unseen = true;
            } else {
                needs.add(there);
            }
        }
        for (int i = 0; unseen && i < position; i++) {
            needs.add(i);
        }
        return needs;
    }
}
