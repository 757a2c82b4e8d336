package org.skewback.desk.render;

import java.util.List;
import org.skewback.desk.render.Prose.Formula;

/** Finds mathematics between dollar signs in Markdown, outside code. */
final class MathInProse {

    private final String text;
    private final char open;
    private final char close;
    private final List<Formula> formulas;
    private final StringBuilder left = new StringBuilder();
    private int at;

    private MathInProse(String text, char open, char close, List<Formula> formulas) {
        this.text = text;
        this.open = open;
        this.close = close;
        this.formulas = formulas;
    }

    /**
     * Takes the formulas out.
     *
     * @param markdown the prose
     * @param open character before a formula's index; taken out of the prose itself
     * @param close character after it
     * @param formulas where the formulas go
     * @return the prose with an index in place of each formula
     */
    static String takeOut(String markdown, char open, char close, List<Formula> formulas) {
        String text =
                markdown.replace("\r\n", "\n")
                        .replace('\r', '\n')
                        .replace(String.valueOf(open), "")
                        .replace(String.valueOf(close), "");
        MathInProse finder = new MathInProse(text, open, close, formulas);
        finder.run();
        return finder.left.toString();
    }

    private void run() {
        boolean lineStart = true;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (lineStart && isFence()) {
                copyFenced();
                lineStart = true;
                continue;
            }
            if (c == '\\' && at + 1 < text.length()) {
                left.append(c).append(text.charAt(at + 1));
                lineStart = text.charAt(at + 1) == '\n';
                at += 2;
                continue;
            } else if (c == '`') {
                copyCodeSpan();
            } else if (c == '$') {
                takeFormula();
            } else {
                left.append(c);
                at++;
            }
            lineStart = c == '\n';
        }
    }

    private boolean isFence() {
        int from = at;
        while (from < text.length() && text.charAt(from) == ' ' && from - at < 4) {
            from++;
        }
        return from - at < 4 && (text.startsWith("```", from) || text.startsWith("~~~", from));
    }

    private void copyFenced() {
        String opening = line();
        String fence = run(opening.strip());
        left.append(opening);
        while (at < text.length()) {
            String next = line();
            left.append(next);
            String closing = next.strip();
            if (closing.startsWith(fence) && run(closing).length() == closing.length()) {
                return;
            }
        }
    }

    /** The run of one character with which a text starts. */
    private static String run(String line) {
        int end = 1;
        while (end < line.length() && line.charAt(end) == line.charAt(0)) {
            end++;
        }
        return line.substring(0, end);
    }

    private String line() {
        int end = text.indexOf('\n', at);
        int from = at;
        at = end < 0 ? text.length() : end + 1;
        return text.substring(from, at);
    }

    private void copyCodeSpan() {
        String ticks = run(text.substring(at, Math.min(text.length(), at + 64)));
        int from = at + ticks.length();
        int end = from;
        while (true) {
            end = text.indexOf(ticks, end);
            if (end < 0) {
                left.append(ticks);
                at = from;
                return;
            }
            int after = end + ticks.length();
            boolean longer = after < text.length() && text.charAt(after) == '`';
            if (!longer && text.charAt(end - 1) != '`') {
                left.append(text, at, after);
                at = after;
                return;
            }
            while (end < text.length() && text.charAt(end) == '`') {
                end++;
            }
        }
    }

    private void takeFormula() {
        boolean display = text.startsWith("$$", at);
        int from = at + (display ? 2 : 1);
        int end = display ? text.indexOf("$$", from) : endOfInline(from);
        if (end <= from || text.substring(from, end).isBlank()) {
            left.append(text, at, from);
            at = from;
            return;
        }
        left.append(open).append(formulas.size()).append(close);
        formulas.add(new Formula(text.substring(from, end), display));
        at = end + (display ? 2 : 1);
    }

    /** A sum of money opens with a dollar sign too: see the conditions. */
    private int endOfInline(int from) {
        if (from >= text.length() || Character.isWhitespace(text.charAt(from))) {
            return -1;
        }
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\') {
                i++;
            } else if (c == '\n' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                return -1;
            } else if (c == '$') {
                boolean blankBefore = Character.isWhitespace(text.charAt(i - 1));
                boolean digitAfter = i + 1 < text.length() && Character.isDigit(text.charAt(i + 1));
                return blankBefore || digitAfter ? -1 : i;
            }
        }
        return -1;
    }
}
