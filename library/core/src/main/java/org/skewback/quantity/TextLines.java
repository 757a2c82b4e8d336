package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Breaks a formula in plain text over lines, where it binds most loosely.
 *
 * <p>It may break before an operator and after a comma, never inside a number with its unit, for
 * {@link TextWriter} sets ordinary spaces around operators alone. Whoever joins the lines with one
 * space has the formula again.
 */
final class TextLines {

    /** The longest line, in characters. */
    static final int WIDTH = 88;

    /** How far a line that goes on stands behind the one it belongs to. */
    private static final int HANGING = 2;

    private static final String SUMS = "+−";
    private static final String PRODUCTS = "·/";
    private static final String RELATIONS = "<>≤≥";
    private static final int RANKS = 5;

    private final String text;
    private final List<Gap> gaps = new ArrayList<>();

    /** A place to break at; the lower its level, the more loosely the formula binds there. */
    private record Gap(int at, int level) {}

    private TextLines(String text) {
        this.text = text;
        findGaps();
    }

    /**
     * Breaks a text that starts somewhere in a line.
     *
     * @param text one line as {@link TextWriter} writes it
     * @param column where in its line the text starts
     * @return the text, with line breaks and spaces before the lines that go on
     */
    static String broken(String text, int column) {
        return text.length() + column <= WIDTH ? text : new TextLines(text).broken(column);
    }

    private String broken(int column) {
        StringBuilder lines = new StringBuilder();
        int from = 0;
        int indent = column;
        while (text.length() - from + indent > WIDTH) {
            Gap gap = best(from, from + WIDTH - indent);
            if (gap == null) {
                break;
            }
            indent = column + HANGING;
            lines.append(text, from, gap.at).append('\n').append(" ".repeat(indent));
            from = gap.at + 1;
        }
        return lines.append(text, from, text.length()).toString();
    }

    /** The last of the loosest gaps that fit in the line, else the first gap after it. */
    private @Nullable Gap best(int from, int end) {
        Gap best = null;
        for (Gap gap : gaps) {
            if (gap.at <= from) {
                continue;
            }
            if (gap.at > end) {
                return best == null ? gap : best;
            }
            if (best == null || gap.level <= best.level) {
                best = gap;
            }
        }
        return best;
    }

    private void findGaps() {
        int depth = 0;
        List<Boolean> bars = new ArrayList<>();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '(') {
                depth++;
            } else if (c == ')') {
                depth--;
            } else if (c == '|') {
                boolean opens = i == 0 || opensAfter(text.charAt(i - 1), bars);
                bars.add(opens);
                depth += opens ? 1 : -1;
            } else if (c == ' ' && i > 0 && !isOperator(i - 1)) {
                gaps.add(new Gap(i, depth * RANKS + rank(i + 1)));
            }
        }
    }

    private static boolean opensAfter(char before, List<Boolean> bars) {
        boolean afterOpeningBar = before == '|' && bars.get(bars.size() - 1);
        return " (−".indexOf(before) >= 0 || afterOpeningBar;
    }

    private int rank(int next) {
        if (text.startsWith("since ", next) || text.charAt(next - 2) == ',') {
            return 0;
        }
        if (!isOperator(next)) {
            return RANKS - 1;
        }
        char sign = text.charAt(next);
        return RELATIONS.indexOf(sign) >= 0 ? 1 : SUMS.indexOf(sign) >= 0 ? 2 : 3;
    }

    /** An operator stands between two ordinary spaces; a sign before a number does not. */
    private boolean isOperator(int at) {
        return (SUMS + PRODUCTS + RELATIONS).indexOf(text.charAt(at)) >= 0
                && at > 0
                && text.charAt(at - 1) == ' '
                && at + 1 < text.length()
                && text.charAt(at + 1) == ' ';
    }
}
