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

    private FlatBrackets() {}

    static String in(String mathml) {
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
            if (!TALL.matcher(written.substring(from, to)).find()) {
                shift += mark(written, to) + mark(written, from);
            }
        }
        return written.toString();
    }

    private static int mark(StringBuilder mathml, int at) {
        String attribute = " stretchy=\"false\"";
        mathml.insert(at + "<mo".length(), attribute);
        return attribute.length();
    }
}
