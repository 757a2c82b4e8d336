package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sets a chain of equations with one side a line, for browsers break no formula. */
final class SplitAtEquals {

    private static final Pattern TAG = Pattern.compile("<(/?)[a-z]+[^>]*?(/?)>");
    private static final String OPEN = "<math display=\"block\"><mrow>";
    private static final String CLOSE = "</mrow></math>";
    private static final String EQUALS = "<mo>=</mo>";

    private SplitAtEquals() {}

    /**
     * Splits a formula.
     *
     * @param mathml a complete {@code <math>} element
     * @return the same in lines; as it was where it is no chain of one row
     */
    static String in(String mathml) {
        if (!mathml.startsWith(OPEN) || !mathml.endsWith(CLOSE)) {
            return mathml;
        }
        List<String> sides =
                sides(mathml.substring(OPEN.length(), mathml.length() - CLOSE.length()));
        if (sides.size() < 2) {
            return mathml;
        }
        StringBuilder rows = new StringBuilder("<math display=\"block\">");
        rows.append("<mtable displaystyle=\"true\">");
        for (int i = 0; i < sides.size(); i++) {
            rows.append("<mtr><mtd class=\"right\"><mrow>")
                    .append(i == 0 ? "" : EQUALS)
                    .append(sides.get(i))
                    .append("</mrow></mtd></mtr>");
        }
        return rows.append("</mtable></math>").toString();
    }

    /** The parts between the equals signs that stand in no other element. */
    private static List<String> sides(String row) {
        List<String> sides = new ArrayList<>();
        int from = 0;
        int depth = 0;
        Matcher tags = TAG.matcher(row);
        while (tags.find()) {
            if (depth == 0 && row.startsWith(EQUALS, tags.start())) {
                sides.add(row.substring(from, tags.start()));
                from = tags.start() + EQUALS.length();
            }
            if (tags.group(2).isEmpty()) {
                depth += tags.group(1).isEmpty() ? 1 : -1;
            }
            if (depth < 0) {
                // The row was closed before its end, so that there are several.
                return List.of();
            }
        }
        sides.add(row.substring(from));
        return sides;
    }
}
