package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Origin.Branch;

/** Writes the origin of a number as indented lines. */
final class OriginText extends Origin.Writer {

    private final List<String> lines = new ArrayList<>();

    OriginText(int deepest, int most) {
        super(deepest, most);
    }

    String write(Branch root) {
        add(root, "", "");
        return String.join("\n", lines);
    }

    private void add(Branch branch, String before, String beforeInner) {
        start(branch);
        lines.add(before + said(branch));
        List<String> ends = new ArrayList<>();
        for (InterpolationTable table : branch.tables()) {
            ends.add(oneLine(table.symbol() + ", " + table(table) + " (" + table.source() + ")"));
        }
        if (branch.leftOut() > 0) {
            ends.add(more(branch));
        }
        int left = branch.behind().size() + ends.size();
        for (Branch inner : branch.behind()) {
            boolean last = --left == 0;
            add(inner, beforeInner + rule(last), beforeInner + (last ? "   " : "│  "));
        }
        for (String end : ends) {
            lines.add(beforeInner + rule(--left == 0) + end);
        }
    }

    private static String rule(boolean last) {
        return last ? "└─ " : "├─ ";
    }

    private String said(Branch branch) {
        Quantity quantity = branch.quantity();
        StringBuilder line = new StringBuilder(quantity.toString());
        if (!quantity.note().isBlank()) {
            line.append(", ").append(quantity.note());
        }
        for (Expression formula : formula(branch)) {
            line.append(", from ").append(TextWriter.write(formula));
        }
        for (String remark : List.of(source(quantity), remark(branch))) {
            if (!remark.isEmpty()) {
                line.append(" (").append(remark).append(')');
            }
        }
        return oneLine(line.toString());
    }

    /** A line break in somebody's note must not look like another number of the tree. */
    private static String oneLine(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}\\u2028\\u2029]+", " ");
    }
}
