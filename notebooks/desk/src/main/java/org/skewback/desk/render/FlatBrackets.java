package org.skewback.desk.render;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps round brackets from stretching where nothing between them is taller than a line.
 *
 * <p>Browsers give a bracket that may stretch the width of its tallest form even where it does not
 * stretch, which leaves gaps; seen in Chromium 156.
 */
final class FlatBrackets {

    private static final Pattern BRACKET = Pattern.compile("<mo>([()])</mo>");
    private static final Pattern TALL =
            Pattern.compile("<(mfrac|msqrt|mroot|mtable|munder|mover|munderover)\\b");

    private static final Pattern ROW = Pattern.compile("</?mtr>");

    private FlatBrackets() {}

    static String in(String mathml) {
        return in(mathml, false);
    }

    /**
     * Keeps a bracket from stretching that closes in another row than it opens in, for it would be
     * as tall as its own row and not as its partner.
     */
    static String acrossRows(String mathml) {
        return in(mathml, true);
    }

    private static String in(String mathml, boolean acrossOnly) {
        StringBuilder written = new StringBuilder(mathml);
        Deque<Integer> open = new ArrayDeque<>();
        Matcher matcher = BRACKET.matcher(mathml);
        int shift = 0;
        // Each pair is marked from its closing bracket back, so that earlier positions still hold.
        while (matcher.find()) {
            if (matcher.group(1).equals("(")) {
                open.push(matcher.start() + shift);
                continue;
            }
            if (open.isEmpty()) {
                continue;
            }
            int from = open.pop();
            int to = matcher.start() + shift;
            String between = written.substring(from, to);
            boolean flat = !acrossOnly && !TALL.matcher(between).find();
            if (flat || goesOnBelow(between)) {
                shift += mark(written, to) + mark(written, from);
            }
        }
        return written.toString();
    }

    /** Whether the closing bracket stands in a later row than the opening one. */
    private static boolean goesOnBelow(String between) {
        int depth = 0;
        Matcher rows = ROW.matcher(between);
        while (rows.find()) {
            depth += rows.group().equals("<mtr>") ? 1 : -1;
            if (depth < 0) {
                return true;
            }
        }
        return false;
    }

    private static int mark(StringBuilder mathml, int at) {
        String attribute = " stretchy=\"false\"";
        mathml.insert(at + "<mo".length(), attribute);
        return attribute.length();
    }
}
